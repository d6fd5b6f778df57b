// A vessel that was opened from a link or as an example: looked at first, kept only when asked.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { newId } from "../core/ids.js";
import { entryOf, keep } from "../keep/book.js";
import { endVisit } from "../keep/visiting.js";
import { lay, opened } from "./opened.js";
import { closeOver, openOver, replaceRoute, vesselAddress } from "./route.js";
import { same } from "./record.js";
import { cross } from "./icons.js";
import { clearToast, toast } from "./toast.js";

/** The line above a vessel that is not in the book yet. */
export function visitBanner() {
  if (opened.kind !== "visit") return nothing;
  const words = opened.token.startsWith("/demo/") ? "An example — not in your book yet." : "Opened from a link — not in your book yet.";
  return html`<div class="banner"><p>${words}</p><div class="banner-acts">
    <button type="button" class="button" @click=${keepIt}>Keep it</button>
    <button type="button" class="button quiet-button" @click=${leaveIt}>Leave it</button></div></div>`;
}

function leaveIt() {
  clearToast();
  endVisit(opened.token);
  replaceRoute("#/");
}

/** Never over a vessel of the maker's own: where one with this id differs, the maker says what happens. */
function keepIt() {
  const { record } = opened;
  const mine = record.id ? entryOf(record.id) : null;
  if (!mine) return enter(record.id ? record : { ...record, id: newId() }, "Kept in your book.");
  if (same(mine.record, record)) return moveTo(record.id, "It was in your book already.");
  return openOver("keep");
}

function enter(record, words) {
  keep({ record, line: opened.line, saved: new Date().toISOString() });
  moveTo(record.id, words);
}

function moveTo(id, words, label, act) {
  endVisit(opened.token);
  replaceRoute(vesselAddress(id));
  toast(words, label, act);
}

/** What to do when the book has another vessel of this id. */
export function keepView() {
  return html`<header class="over-head"><h2 id="over-title">Your book has this vessel already, with other entries</h2>
      <button type="button" class="button only-sign" aria-label="Close" @click=${closeOver}>${cross()}</button></header>
    <p>Nothing of yours changes unless you say so.</p>
    <div class="acts">
      <button type="button" class="button big" @click=${keepBoth}>Keep both</button>
      <button type="button" class="button" @click=${replaceMine}>Replace mine</button>
    </div>`;
}

function keepBoth() {
  const { record } = opened;
  enter({ ...record, id: newId(), name: `${record.name || "Vessel"} (copy)` }, "Kept beside yours.");
}

function replaceMine() {
  const mine = entryOf(opened.record.id);
  keep({ record: opened.record, line: opened.line, saved: new Date().toISOString() });
  moveTo(opened.record.id, "Yours was replaced.", "Undo", () => putMineBack(mine));
}

function putMineBack(mine) {
  const entry = { ...mine, saved: new Date().toISOString() };
  keep(entry);
  if (opened.record?.id === entry.record.id) lay({ kind: "book", sheet: opened.sheet, ...entry });
}
