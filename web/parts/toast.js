// Short messages over the bottom of the page: what was done, with what can be done about it, and what time it is for.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { cross } from "./icons.js";
import { repaint } from "./paint.js";

const STAYS = 20000;
let deed = null;
let bell = null;
let clock = 0;

/** Show what was done; `label` and `act` offer one thing to do, such as to undo. */
export function toast(message, label = "", act = () => {}) {
  clearTimeout(clock);
  deed = { message, label, act };
  clock = setTimeout(clearToast, STAYS);
  repaint();
}

/** Take the message about what was done away. */
export function clearToast() {
  clearTimeout(clock);
  if (deed) repaint();
  deed = null;
}

/** Show what it is time for. It stays until it is dismissed, for hands may be busy. */
export function toastBell(message) {
  bell = { message };
  repaint();
}

function clearBell() {
  bell = null;
  repaint();
}

function doIt() {
  const { act } = deed;
  clearToast();
  act();
}

/** The messages there are. */
export function toastView() {
  return html`<div class="toasts" role="status">${bell ? one(bell, clearBell) : nothing}${deed ? one(deed, clearToast) : nothing}</div>`;
}

function one({ message, label }, clear) {
  return html`<div class="toast">
    <p>${message}</p>
    ${label ? html`<button class="plain" @click=${doIt}>${label}</button>` : nothing}
    <button class="plain only-sign" aria-label="Dismiss" @click=${clear}>${cross()}</button>
  </div>`;
}
