// What to mind at a step: one line each that opens to the sentence and its source.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { fold, mind } from "./icons.js";

/** The cautions of a step. */
export function cautionsView(cautions) {
  return cautions.length ? html`<div class="cautions" role="group" aria-label="Mind this">${cautions.map(caution)}</div>` : nothing;
}

/** All cautions of a closed step in one line; it opens to all of them. */
export function cautionLine(cautions) {
  if (!cautions.length) return nothing;
  return html`<details class="caution-line"><summary>${mind()}<span>${cautions.map(({ title }) => title).join(" · ")}</span>${fold()}</summary>
    ${cautions.map(({ title, sentence, source }) => html`<p><strong>${title}.</strong> ${sentence}</p>
      ${source ? html`<p class="source">Source: ${source}</p>` : nothing}`)}</details>`;
}

function caution({ title, sentence, source }) {
  return html`<details class="caution">
    <summary>${mind()}<span>${title}</span>${fold()}</summary>
    <p>${sentence}</p>
    ${source ? html`<p class="source">Source: ${source}</p>` : nothing}
  </details>`;
}
