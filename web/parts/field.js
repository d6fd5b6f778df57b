// One field of a card, shown by its kind.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { belowField, described, fieldId } from "./below.js";
import { choiceField } from "./choice.js";
import { isMoment, momentField } from "./moment.js";
import { openedHand } from "./opened.js";
import { closePad, letGo, next, pad, takeField, tapField } from "./pad.js";

const MEASURES = new Set([
  "mass", "volume", "length", "temperature", "density", "share", "ratio", "count", "number",
  "duration", "pressure", "coverage", "heat", "money", "parts",
]);
const DIGIT_AT_END = /\d\s*$/;
const SHORT = 16;
const LONG = 60;
const long = new Set();

/**
 * The field, by its kind.
 * @param {object} hand what writes the maker's text: {textAt, type, leave, choose}
 */
export function fieldView(field, hand = openedHand) {
  if (field.kind === "choice") return choiceField(field, hand, belowField(field));
  if (MEASURES.has(field.kind)) return measureField(field, hand);
  return isMoment(field.kind) ? momentField(field, hand) : textField(field, hand);
}

function onKey(event) {
  if (event.key === "Enter") next();
  if (event.key === "Escape") closePad();
}

function onBlur(event, path, hand) {
  letGo(event);
  hand.leave(path);
}

/** What was understood, where it says more than the text itself does. */
const heard = ({ echo, fault }, text) => (!fault && echo !== text ? echo : "");

const isShort = (echo) => echo.length < SHORT;

/** The unit a bare number takes while there is only a number; what was understood once it is known. */
function beside(field, text) {
  const echo = heard(field, text);
  if (echo) return isShort(echo) ? html`<span class="echo">${echo.includes("=") ? echo : `= ${echo}`}</span>` : nothing;
  return !text || DIGIT_AT_END.test(text) ? html`<span class="unit">${field.unit}</span>` : nothing;
}

function longEcho(field, text) {
  const echo = heard(field, text);
  return echo && !isShort(echo) ? html`<p class="echo-line">${echo}</p>` : nothing;
}

function measureField(field, hand) {
  const { path } = field;
  const text = hand.textAt(path, field.value);
  const byHand = pad.byHand.has(path);
  return html`<div class="field measure">
    <label for=${fieldId(path)}>${field.label}</label>
    <div class="window ${field.fault ? "faulty" : ""}">
      <input id=${fieldId(path)} data-path=${path} class="reading" type="text" inputmode=${byHand ? "text" : "none"}
        autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="next" .value=${text}
        aria-invalid=${field.fault ? "true" : "false"} aria-describedby=${described(field, ["echo"])}
        @focus=${(event) => takeField(field, event.target)} @click=${(event) => tapField(event.target)} @blur=${(event) => onBlur(event, path, hand)}
        @input=${(event) => hand.type(path, event.target.value)} @keydown=${onKey}>
      <span class="beside" id=${fieldId(path, "echo")}>${beside(field, text)}</span>
    </div>
    ${longEcho(field, text)}
    ${belowField(field)}
  </div>`;
}

/** A long text gets a window of several lines; never while it is typed into, for the caret would be lost. */
function isLong(path, text) {
  if (document.activeElement?.dataset.path === path) return long.has(path);
  if (text.length > LONG) long.add(path);
  else long.delete(path);
  return long.has(path);
}

function textField(field, hand) {
  const { path } = field;
  const text = hand.textAt(path, field.value);
  return html`<div class="field plain-field">
    <label for=${fieldId(path)}>${field.label}</label>
    <div class="window ${field.fault ? "faulty" : ""}">
      ${isLong(path, text) ? longInput(field, text, hand) : shortInput(field, text, hand)}
    </div>
    ${belowField(field)}
  </div>`;
}

function shortInput(field, text, hand) {
  const { path } = field;
  return html`<input id=${fieldId(path)} data-path=${path} type="text" autocomplete="off" .value=${text}
    aria-invalid=${field.fault ? "true" : "false"} aria-describedby=${described(field)}
    @input=${(event) => hand.type(path, event.target.value)} @blur=${() => hand.leave(path)}>`;
}

function longInput(field, text, hand) {
  const { path } = field;
  return html`<textarea id=${fieldId(path)} data-path=${path} rows="4" autocomplete="off" .value=${text}
    aria-invalid=${field.fault ? "true" : "false"} aria-describedby=${described(field)}
    @input=${(event) => hand.type(path, event.target.value)} @blur=${() => hand.leave(path)}></textarea>`;
}
