// One short message over the bottom of the page, with what can be done about it.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { cross } from "./icons.js";
import { repaint } from "./paint.js";

const STAYS = 20000;
let shown = null;
let clock = 0;

/** Show a message; `label` and `act` offer one thing to do, such as to undo. */
export function toast(message, label = "", act = () => {}) {
  clearTimeout(clock);
  shown = { message, label, act };
  clock = setTimeout(clearToast, STAYS);
  repaint();
}

/** Take the message away. */
export function clearToast() {
  clearTimeout(clock);
  if (shown) repaint();
  shown = null;
}

function doIt() {
  const { act } = shown;
  clearToast();
  act();
}

/** The message, if there is one. */
export function toastView() {
  return html`<div class="toasts" role="status">${shown ? html`<div class="toast">
    <p>${shown.message}</p>
    ${shown.label ? html`<button class="plain" @click=${doIt}>${shown.label}</button>` : nothing}
    <button class="plain only-sign" aria-label="Dismiss" @click=${clearToast}>${cross()}</button>
  </div>` : nothing}</div>`;
}
