// A day, or a day with its time, in the device's own picker. A text that no picker holds is shown as it is.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { belowField, described, fieldId } from "./below.js";
import { nowToMinute } from "./clock.js";

const PICKERS = { date: "date", moment: "datetime-local" };
const asText = new Set();
const probe = document.createElement("input");

/** Whether fields of this kind are moments. */
export const isMoment = (kind) => kind in PICKERS;

/** Whether the device's picker can show this text. */
function fits(kind, text) {
  probe.type = PICKERS[kind];
  probe.value = text;
  return !text || probe.value !== "";
}

/** A field for a moment; "Now" writes what this device's clock says. */
export function momentField(field, hand) {
  const { path, kind } = field;
  const text = hand.textAt(path, field.value);
  const picked = fits(kind, text) && !asText.has(path);
  return html`<div class="field plain-field">
    <label for=${fieldId(path)}>${field.label}</label>
    <div class="moment">
      <div class="window ${field.fault ? "faulty" : ""}">${picked ? picker(field, text, hand) : plain(field, text, hand)}</div>
      ${kind === "moment" ? nowButton(field, hand) : nothing}
    </div>
    ${belowField(field)}
  </div>`;
}

/** A picker that is filled in half says that it is empty, which must not wipe what was there. */
function picker(field, text, hand) {
  const { path, kind } = field;
  const take = ({ target }) => target.validity.badInput || hand.type(path, target.value);
  const restore = ({ target }) => {
    if (target.validity.badInput && text) target.value = text;
    hand.leave(path);
  };
  return html`<input id=${fieldId(path)} data-path=${path} type=${PICKERS[kind]} autocomplete="off" .value=${text}
    aria-invalid=${field.fault ? "true" : "false"} aria-describedby=${described(field)} @input=${take} @blur=${restore}>`;
}

/** While it is typed into it stays a plain field, even when the text becomes one that a picker could hold. */
function plain(field, text, hand) {
  const { path } = field;
  const done = () => {
    asText.delete(path);
    hand.leave(path);
  };
  return html`<input id=${fieldId(path)} data-path=${path} type="text" autocomplete="off" .value=${text}
    aria-invalid=${field.fault ? "true" : "false"} aria-describedby=${described(field)}
    @focus=${() => asText.add(path)} @input=${({ target }) => hand.type(path, target.value)} @blur=${done}>`;
}

function nowButton({ path, label }, hand) {
  const write = () => {
    hand.type(path, nowToMinute());
    hand.leave(path);
  };
  return html`<button type="button" class="button quiet-button" aria-label="Now: ${label}" @click=${write}>Now</button>`;
}
