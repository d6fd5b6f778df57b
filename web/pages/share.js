// The sheet for passing a vessel on: a code to photograph, and a link that holds the whole vessel.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { ask } from "../core/door.js";
import { drawing } from "../parts/drawing.js";
import { cross } from "../parts/icons.js";
import { opened } from "../parts/opened.js";
import { repaint } from "../parts/paint.js";
import { bareAddress, closeOver, openOver } from "../parts/route.js";
import { toast } from "../parts/toast.js";
import { makersOwn } from "../parts/world.js";

const HOLDS = {
  plain: "The link holds the vessel as you typed it, but for prices, buyers and notes to yourself. It is not sent to any server; only whoever gets the link can open it.",
  private: "The link holds everything you typed, prices, buyers and notes to yourself too. It is not sent to any server; only whoever gets the link can open it.",
};

let made = null;
let isPrivate = false;

/** Open the sheet, with a link made afresh. What is private stays out of it unless the maker says so each time. */
export function openShare() {
  made = null;
  isPrivate = false;
  openOver("share");
}

/** Ask for the link of the vessel that lies open. An older vessel's link is never shown. */
async function make(record) {
  made = { record, link: null, fault: "" };
  const mine = made;
  try {
    Object.assign(mine, await ask("share", { record, ...makersOwn(), address: bareAddress(), private: isPrivate }));
  } catch (error) {
    mine.fault = error.message;
  }
  repaint();
}

/** The sheet's content. */
export function shareView() {
  if (made?.record !== opened.record) make(opened.record);
  return html`<header class="over-head"><h2 id="over-title">Pass this vessel on</h2>
      <button type="button" class="button only-sign" aria-label="Close" @click=${closeOver}>${cross()}</button></header>
    <label class="tick-line"><input type="checkbox" .checked=${isPrivate} @change=${choosePrivate}><span>With prices and notes to yourself</span></label>
    ${made.fault ? html`<p class="fault" role="status">${made.fault}</p>` : nothing}
    ${made.link ? linkView() : html`<p class="quiet" role="status">${made.fault ? nothing : "getting ready…"}</p>`}
    <p>${isPrivate ? HOLDS.private : HOLDS.plain}</p>`;
}

function choosePrivate({ target }) {
  isPrivate = target.checked;
  make(opened.record);
  repaint();
}

function linkView() {
  return html`
    ${made.qr ? html`<div class="code-frame">${drawing(made.qr, made.qr_label)}</div>` : html`<p class="note">${made.qr_label}</p>`}
    ${made.note ? html`<p class="note" role="status">${made.note}</p>` : nothing}
    <label class="heard-only" for="link">Link</label>
    <textarea id="link" class="link-text" readonly rows="3" .value=${made.link} @focus=${(event) => event.target.select()}></textarea>
    <div class="acts">
      <button type="button" class="button big" @click=${copy}>Copy the link</button>
      ${navigator.share ? html`<button type="button" class="button" @click=${pass}>Share…</button>` : nothing}
    </div>`;
}

async function copy() {
  try {
    await navigator.clipboard.writeText(made.link);
    toast("Link copied.");
  } catch {
    document.getElementById("link").select();
    toast("Copy the marked link by hand.");
  }
}

/** Closing the device's own sheet is no fault. */
function pass() {
  navigator.share({ title: opened.record.name || "A vessel", url: made.link }).catch(() => {});
}
