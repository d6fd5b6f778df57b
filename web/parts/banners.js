// What has to be said above what lies open: another tab changed it, or the figures cannot be worked out.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { door, restartDoor } from "../core/door.js";
import { dropRival, opened, useRival } from "./opened.js";

/** Another tab's version is shown; this tab's can come back. */
export function rivalBanner(words) {
  if (!opened.rival) return nothing;
  return html`<div class="banner" role="status"><p>${words}</p><div class="banner-acts">
    <button type="button" class="button" @click=${dropRival}>All right</button>
    <button type="button" class="button quiet-button" @click=${useRival}>Use mine instead</button></div></div>`;
}

/** The core is gone, or could not answer. */
export function coreBanner() {
  const words = door.state === "failed" ? "The figures cannot be worked out just now. What you type is kept." : opened.fault;
  if (!words) return nothing;
  return html`<div class="banner warn-banner" role="status"><p>${words}</p>
    ${door.state === "failed" ? html`<div class="banner-acts"><button type="button" class="button" @click=${restartDoor}>Try again</button></div>` : nothing}</div>`;
}
