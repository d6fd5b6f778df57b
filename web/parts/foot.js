// The quiet line at the foot of a page: what is kept, and whether the page needs the network.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { door } from "../core/door.js";
import { store } from "../keep/store.js";
import { offlineLine } from "./update.js";

const KEPT = "Everything stays on this device.";
const NOT_KEPT = "This device does not let the page keep anything, its storage is closed or full. What you type lasts only while this page is open.";

const SLOW = "Starting took longer than usual today; the figures are the same.";

/** The foot of a page. */
export function footLine() {
  return html`<p class="quiet" role="status">${store.sound ? KEPT : NOT_KEPT} ${offlineLine()} ${door.slow ? SLOW : nothing}</p>`;
}
