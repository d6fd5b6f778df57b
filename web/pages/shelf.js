// The shelf: the vessels in the book, newest first, and the ways to what concerns all of them.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { damaged, damagedText, putBack, remove, removed, vessels } from "../keep/book.js";
import { search } from "../keep/search.js";
import { bin, fold, mark, materialsSign, plus, settingsSign } from "../parts/icons.js";
import { finderView } from "../parts/finder.js";
import { tendLines } from "../parts/lines.js";
import { longList, rewind } from "../parts/long_list.js";
import { repaint } from "../parts/paint.js";
import { demoAddress, lotAddress, vesselAddress } from "../parts/route.js";
import { footLine } from "../parts/foot.js";
import { toast } from "../parts/toast.js";
import { first } from "../parts/world.js";

const LIST = "shelf";
const MANY = 20;
const IN_SIGHT = 60;

let sought = "";

/** Name of a vessel on the shelf; one that has none yet is called what it is. */
export const nameOf = (record) => record.name || "Vessel without a name";

/** The shelf's three parts: bar, main and dock. */
export function shelfPage() {
  return { title: "Brimbook", kind: "shelf", bar: bar(), main: main(), dock: dock() };
}

const bar = () => html`<h1 class="wordmark">${mark()}<span>Brimbook</span></h1>
  <a class="button only-sign" href="#/materials" aria-label="My materials and wicks">${materialsSign()}</a>
  <a class="button only-sign" href="#/settings" aria-label="Settings">${settingsSign()}</a>`;

const dock = () => html`<div class="dock-acts"><nav class="ways" aria-label="For the whole book">
    <a class="plain" href="#/plan">Make and buy</a><a class="plain" href="#/lots">Find a lot</a><a class="plain" href="#/book">Save the book</a></nav>
  <a class="button big" href="#/new">${plus()}<span>New vessel</span></a></div>`;

function main() {
  const all = vessels();
  const found = search(all, sought);
  tendLines(found.slice(0, IN_SIGHT));
  return html`
    ${all.length ? finderView({ id: "find", label: "Find by name, notes or lot", sought, seek })
      : html`<p class="empty">The book is empty. A new vessel begins with one question: what did the water weigh?</p>
        <p><a class="plain" href="#/book">Read a book that was saved</a></p>`}
    ${all.length > MANY ? html`<p class="quiet count" role="status">${sought ? `${found.length} of ${all.length} vessels` : `${all.length} vessels`}</p>` : nothing}
    ${all.length ? longList(LIST, found, row, list) : nothing}
    ${all.length && !found.length ? nothingFound() : nothing}
    ${broken()}
    ${demos()}
    ${trash()}
    ${footLine()}`;
}

/** A lot that was made up for a batch stands in no record: the core finds it. */
const nothingFound = () => html`<p class="empty" role="status">Nothing is found for “${sought}”.</p>
  <p><a class="plain" href=${lotAddress(sought.trim())}>Look for it as a lot</a></p>`;

const list = (rows) => html`<ul class="shelf" aria-label="Your vessels">${rows}</ul>`;

function seek(text) {
  sought = text;
  rewind(LIST);
  repaint();
}

function row({ record, line }) {
  return html`<li class="row">
    <a class="row-face" href=${vesselAddress(record.id)}>
      <span class="row-name">${nameOf(record)}</span>
      <span class="row-line">${line || "not worked out yet"}</span>
      <span class="row-date">${record.made_on}</span>
    </a>
    <button type="button" class="plain only-sign" aria-label="Remove ${nameOf(record)}" @click=${() => take(record)}>${bin()}</button>
  </li>`;
}

function take(record) {
  remove(record.id);
  toast(`${nameOf(record)} removed.`, "Undo", () => back(record.id));
}

function back(id) {
  putBack(id);
  repaint();
}

/** Copies a damaged entry's text, so that nothing is lost that a person could still read. */
async function copyText(id) {
  try {
    await navigator.clipboard.writeText(damagedText(id));
    toast("Copied.");
  } catch {
    toast("The text could not be copied.");
  }
}

function broken() {
  const ids = damaged();
  if (!ids.length) return nothing;
  return html`<section class="group" aria-label="Damaged"><h2>Damaged</h2>
    <p class="quiet">These could not be read. They are left as they are.</p>
    <ul class="shelf">${ids.map((id) => html`<li class="row"><span class="row-face"><span class="row-name">Damaged vessel</span>
      <span class="row-line">${id}</span></span><button type="button" class="plain" @click=${() => copyText(id)}>Copy text</button></li>`)}</ul></section>`;
}

function demos() {
  const list = first()?.demos ?? [];
  if (!list.length) return nothing;
  return html`<section class="group" aria-label="Examples"><h2>Examples to look into</h2>
    <ul class="shelf examples">${list.map(({ record, line }) => html`<li class="row">
      <a class="row-face" href=${demoAddress(record.id)}><span class="row-name">${nameOf(record)}</span>
      <span class="row-line">${line}</span></a></li>`)}</ul></section>`;
}

function trash() {
  const kept = new Set(vessels().map(({ record }) => record.id));
  const list = removed().filter(({ record }) => !kept.has(record.id));
  if (!list.length) return nothing;
  return html`<details class="group more"><summary><span>Removed lately</span>${fold()}</summary>
    <ul class="shelf">${list.map(({ record, line }) => html`<li class="row"><span class="row-face">
      <span class="row-name">${nameOf(record)}</span><span class="row-line">${line}</span></span>
      <button type="button" class="plain" @click=${() => back(record.id)}>Put back</button></li>`)}</ul></details>`;
}
