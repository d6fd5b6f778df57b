// What seldom changes, folded away.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { fieldView } from "./field.js";
import { fold } from "./icons.js";

/** The fields behind More. */
export function moreView(fields = []) {
  if (!fields.length) return nothing;
  return html`<details class="more"><summary><span>More</span>${fold()}</summary>${fields.map((field) => fieldView(field))}</details>`;
}
