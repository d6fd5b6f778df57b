// A figure and its working. The sentence is the button; the number in it is set large.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { fold } from "./icons.js";
import { opened, showFigure, toggleFigure } from "./opened.js";

const LONG = 36;
const WIDE = 13;
const AFTER_NUMBER = /^[\s.,;:]/;

const anchor = (key) => `figure.${key}`;

/** The sentence around its number, or null where the number is only a piece of another ("1 g" in "311 g"). */
function around({ says, shown }) {
  if (!says || says.length > LONG) return null;
  const [before, after, ...more] = ` ${says} `.split(shown);
  const alone = after !== undefined && !more.length && before.endsWith(" ") && AFTER_NUMBER.test(after);
  return alone ? { before: before.trim(), after: after.trim() } : null;
}

/** The core's sentence with its number set large; a long sentence waits in the working. */
function sentence(figure) {
  const { shown, label } = figure;
  const words = around(figure) ?? { before: label, after: "" };
  return html`${span(words.before)} ${largeNumber(shown)} ${span(words.after)} `;
}

const span = (words) => (words ? html`<span>${words}</span>` : nothing);

/** A figure set large, a bit less so where it is long, such as a date. */
export const largeNumber = (shown) => html`<strong class="number ${shown.length > WIDE ? "wide" : ""}">${shown}</strong>`;

/** A figure as a button; its working opens below it. */
export function figureView(figure) {
  const { key, plus_minus: spread, working } = figure;
  const open = opened.openFigure === key;
  return html`<div class="figure ${open ? "is-open" : ""}" id=${anchor(key)}>
    <button type="button" class="figure-face" aria-expanded=${open ? "true" : "false"} @click=${() => toggleFigure(key)}>
      <span class="figure-line">${sentence(figure)}${spread ? html`<span class="spread">${spread}</span>` : nothing}</span>${fold()}
    </button>
    ${open && working ? workingView(figure) : nothing}
  </div>`;
}

function workingView(figure) {
  const { label, says, working, notes } = figure;
  return html`<div class="working" role="group" aria-label="How ${label} comes about">
    ${around(figure) ? nothing : html`<p>${says}</p>`}
    ${working.formula ? html`<p class="formula">${working.formula}</p>` : nothing}
    ${working.numbers ? html`<p class="numbers">${working.numbers}</p>` : nothing}
    ${working.spread ? html`<p>${working.spread}</p>` : nothing}
    ${(notes ?? []).map((note) => html`<p>${note}</p>`)}
    ${constants(working.constants ?? [])}
    ${uses(working.uses ?? [])}
  </div>`;
}

function constants(list) {
  if (!list.length) return nothing;
  return html`<dl class="constants">${list.map(({ name, shown, source, standing }) => html`
    <div><dt>${name}</dt><dd><strong class="number-small">${shown}</strong>
      <span class="source">${standing ? html`<em class="standing">${standing}</em> ` : nothing}${source}</span></dd></div>`)}</dl>`;
}

function uses(keys) {
  const figures = opened.sheet.cards.flatMap((card) => card.figures).filter(({ key }) => keys.includes(key));
  if (!figures.length) return nothing;
  return html`<div class="uses"><p>Worked out from</p>${figures.map(({ key, label, shown }) => html`
    <button type="button" class="chip" @click=${() => goTo(key)}>${label} <strong>${shown}</strong></button>`)}</div>`;
}

function goTo(key) {
  showFigure(key);
  requestAnimationFrame(() => {
    const place = document.getElementById(anchor(key));
    place?.scrollIntoView({ block: "center" });
    place?.querySelector("button").focus({ preventScroll: true });
  });
}
