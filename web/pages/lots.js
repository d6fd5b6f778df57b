// Where a lot went: the batches that it stands in, and who got them.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { askNewest } from "../core/door.js";
import { vessels } from "../keep/book.js";
import { settings } from "../keep/settings.js";
import { withBook } from "../keep/whole.js";
import { finderView } from "../parts/finder.js";
import { footLine } from "../parts/foot.js";
import { back, onward, printer } from "../parts/icons.js";
import { longList, rewind } from "../parts/long_list.js";
import { repaint } from "../parts/paint.js";
import { vesselAddress } from "../parts/route.js";
import { handOver } from "../parts/save.js";
import { toast } from "../parts/toast.js";

const LIST = "lots";
const NOT_IN_A_NAME = /[^\p{L}\p{N}]+/gu;

let sought = "";
let found = null;
let fault = "";

/** The three parts of the page: bar, main and dock. */
export function lotsPage() {
  return { title: "Find a lot · Brimbook", kind: "lots", bar: bar(), main: main(), dock: dock() };
}

/** Come to the page, with a lot to look for or with the one that was sought last; the book may have changed since. */
export function enterLots(lot) {
  seek(lot || sought);
}

const bar = () => html`<a class="button only-sign" href="#/" aria-label="Back to the shelf">${back()}</a><h1 class="page-title">Find a lot</h1>`;

function seek(text) {
  sought = text;
  rewind(LIST);
  if (text.trim()) trace(text);
  else forget();
  repaint();
}

function forget() {
  found = null;
  fault = "";
}

/** What was found stays until the answer for what is sought now has come. */
async function trace(text) {
  try {
    const answer = await askNewest("lots", "trace", withBook({ sought: text.trim(), settings: settings() }));
    if (!answer || text !== sought) return;
    found = answer;
    fault = "";
  } catch (error) {
    if (text !== sought) return;
    found = null;
    fault = error.message;
  }
  repaint();
}

function main() {
  return html`${finderView({ id: "find-lot", label: "A lot, or a part of it", sought, seek })}
    ${fault ? html`<p class="fault" role="status">${fault}</p>` : nothing}
    ${sought.trim() ? answer() : start()}
    ${footLine()}`;
}

function start() {
  return vessels().length
    ? html`<p class="empty">Type the lot of a batch, or that of a wax, a fragrance, a powder or a wick. It tells which vessels hold it and who got them.</p>`
    : html`<p class="empty">The book is empty. Lots are noted with a vessel's batches.</p>`;
}

function answer() {
  if (!found) return fault ? nothing : html`<p class="quiet" role="status">looking…</p>`;
  return html`<p class="lots-say" role="status">${found.says}</p>${found.rows.length ? longList(LIST, found.rows, row, list) : nothing}`;
}

const list = (rows) => html`<ul class="shelf" aria-label="Vessels with this lot">${rows}</ul>`;

const row = ({ id, name, lines }) => html`<li class="row"><a class="row-face" href=${vesselAddress(id)}><span class="row-name">${name}</span>
    ${lines.map((line) => html`<span class="row-line">${line}</span>`)}</a><span class="row-state">${onward()}</span></li>`;

/** Once something is found the list can be taken along, so that everybody on it can be called. */
function dock() {
  if (!sought.trim() || !found?.rows.length) return nothing;
  return html`<div class="dock-acts"><button type="button" class="button big" @click=${passOn}>Take the list along</button>
    <button type="button" class="button quiet-button" @click=${() => print()}>${printer()}<span>Print</span></button></div>`;
}

const asText = ({ says, rows }) => [says, ...rows.map(({ name, lines }) => [name, ...lines.map((line) => `- ${line}`)].join("\n"))].join("\n\n");

async function passOn() {
  const name = `lot-${sought.trim().replace(NOT_IN_A_NAME, "-")}.txt`;
  try {
    await handOver(new File([`${asText(found)}\n`], name, { type: "text/plain" }));
  } catch (error) {
    toast(error.message);
  }
}
