// The number pad at the bottom of the page. It types into the field that has the focus, and keeps
// the device's own keyboard down. A hardware keyboard types beside it.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { settings } from "../keep/settings.js";
import { rub } from "./icons.js";
import { repaint } from "./paint.js";

const DIGITS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];
const SLIDE = 400;
const LETTER = /[\p{L}°%]/u;
const UNIT_AT_END = /[\s\p{L}°%²³/]+$/u;
const FOLDED = "details:not([open]) > :not(summary)";
const LETTER_AT_END = /\p{L}$/u;

/** The field the pad types into. `byHand` holds the paths that use the device's keyboard instead. */
export const pad = { field: null, input: null, byHand: new Set() };

let pressed = null;
let held = false;
let left = false;
let taken = false;

/** Open the pad for a field that took the focus. */
export function takeField(field, input) {
  left = false;
  Object.assign(pad, { field, input });
  taken = true;
  input.select();
  repaint();
  requestAnimationFrame(() => input.closest(".field").scrollIntoView({ block: "nearest" }));
}

/** The tap that brought the focus set the caret; the whole reading is marked again, ready to be replaced. */
export function tapField(input) {
  if (taken) input.select();
  taken = false;
}

/** Close the pad when the focus goes anywhere but to the pad itself. */
export function letGo(event) {
  if (event.relatedTarget?.closest(".pad") || event.target !== pad.input) return;
  left = true;
  if (!held) setTimeout(closeIfLeft);
}

function closeIfLeft() {
  if (left) closePad();
  left = false;
}

/** While a finger is down nothing may move under it, or the press would land on something else. */
export function watchFingers() {
  addEventListener("pointerdown", () => { held = true; }, true);
  for (const end of ["pointerup", "pointercancel"]) addEventListener(end, fingerUp, true);
}

function fingerUp() {
  held = false;
  setTimeout(() => { pressed = null; }, SLIDE);
  setTimeout(closeIfLeft);
}

/** Close the pad. */
export function closePad() {
  const { input } = pad;
  Object.assign(pad, { field: null, input: null });
  input?.blur();
  repaint();
}

function told(input) {
  taken = false;
  input.dispatchEvent(new InputEvent("input", { bubbles: true }));
}

function insert(text) {
  const { input } = pad;
  input.setRangeText(text, input.selectionStart, input.selectionEnd, "end");
  told(input);
}

/** A digit after a unit starts the next part: "1 lb" and then "4". */
function digit(text) {
  const { value, selectionStart } = pad.input;
  insert(LETTER_AT_END.test(value.slice(0, selectionStart)) ? ` ${text}` : text);
}

/** A unit takes the place of the unit at the end; anything else is put in where the caret stands. */
function extra(text) {
  if (!LETTER.test(text)) return insert(text);
  const { input } = pad;
  input.value = `${input.value.replace(UNIT_AT_END, "")} ${text}`.trimStart();
  return told(input);
}

function rubOut() {
  const { input } = pad;
  const { selectionStart: from, selectionEnd: to, value } = input;
  if (from !== to) return insert("");
  const before = [...value.slice(0, from)];
  before.pop();
  input.setRangeText(before.join(""), 0, from, "end");
  return told(input);
}

/** The fields of the card that can be typed in, in order, closed folds left out. */
function typed(input) {
  const all = [...input.closest(".card").querySelectorAll("input[data-path], textarea[data-path]")];
  return all.filter((field) => field.offsetParent && !field.closest(FOLDED));
}

/** Go to the card's next field; after the last one the pad closes. */
export function next() {
  const { input } = pad;
  const fields = typed(input);
  const following = fields.slice(fields.indexOf(input)).at(1);
  if (following) following.focus();
  else closePad();
}

/** Swap between the pad and the device's keyboard for this field. */
function swap() {
  const { field, input } = pad;
  if (!pad.byHand.delete(field.path)) pad.byHand.add(field.path);
  input.inputMode = pad.byHand.has(field.path) ? "text" : "none";
  input.blur();
  input.focus();
}

/** Keys act when the finger comes down, since a wet finger slides; a click without one still counts. */
function down(event, work) {
  event.preventDefault();
  pressed = event.currentTarget;
  work();
}

function click(event, work) {
  if (pressed !== event.currentTarget) work();
  pressed = null;
}

const keepFocus = (event) => event.preventDefault();

function quick(label, work, kind = "", name = nothing) {
  return html`<button type="button" class="key ${kind}" tabindex="-1" aria-label=${name}
    @pointerdown=${(event) => down(event, work)} @click=${(event) => click(event, work)}>${label}</button>`;
}

function slow(label, work, kind, name = nothing) {
  return html`<button type="button" class="key ${kind}" tabindex="-1" aria-label=${name}
    @pointerdown=${keepFocus} @click=${work}>${label}</button>`;
}

const mark = () => (settings().decimal === "comma" ? "," : ".");

function extras(keys) {
  return keys.length ? html`<div class="extras">${keys.map((key) => slow(key, () => extra(key), "extra"))}</div>` : nothing;
}

function wholePad(field) {
  return html`${extras(field.keys ?? [])}
    <div class="keys">
      ${DIGITS.map((text) => quick(text, () => digit(text), "digit"))}
      ${quick(mark(), () => digit(mark()), "digit", "decimal mark")}
      ${quick("0", () => digit("0"), "digit")}
      ${slow("abc", swap, "small-key", "Use the device's keyboard")}
      ${quick(rub(), rubOut, "rub", "Delete")}
      ${slow("Next", next, "next")}
    </div>`;
}

function slimPad() {
  return html`<div class="slim">${slow("123", swap, "small-key", "Use the number pad")}${slow("Next", next, "next")}</div>`;
}

/** The pad, while a measuring field has the focus. */
export function padView() {
  const { field } = pad;
  if (!field) return nothing;
  const slim = pad.byHand.has(field.path);
  return html`<div class="pad ${slim ? "pad-slim" : ""}" role="group" aria-label="Number pad" @pointerdown=${keepFocus} @mousedown=${keepFocus}>
    ${slim ? slimPad() : wholePad(field)}</div>`;
}
