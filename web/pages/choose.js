// The sheet from which vessels of the book are put on the plan, one after the other.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { vessels } from "../keep/book.js";
import { search } from "../keep/search.js";
import { finderView } from "../parts/finder.js";
import { cross, plus, tick } from "../parts/icons.js";
import { longList, rewind } from "../parts/long_list.js";
import { opened, putOn } from "../parts/opened.js";
import { repaint } from "../parts/paint.js";
import { closeOver, openOver } from "../parts/route.js";
import { nameOf } from "./shelf.js";

const LIST = "choose";
let sought = "";

/** Open the sheet. */
export function openChooser() {
  seek("");
  openOver("choose");
}

function seek(text) {
  sought = text;
  rewind(LIST);
  repaint();
}

/** The sheet's content. */
export function chooseView() {
  const all = vessels();
  const found = search(all, sought);
  return html`<header class="over-head"><h2 id="over-title">Vessels to make</h2>
      <button type="button" class="button only-sign" aria-label="Close" @click=${closeOver}>${cross()}</button></header>
    ${all.length ? finderView({ id: "find-to-make", label: "Find a vessel", sought, seek }) : nothing}
    ${found.length ? longList(LIST, found, row, list) : html`<p class="quiet" role="status">${all.length ? `Nothing is found for “${sought}”.`
      : "The book is empty. Make a vessel first, or keep one of the examples."}</p>`}
    <div class="acts"><button type="button" class="button big" @click=${closeOver}>Done</button></div>`;
}

const list = (rows) => html`<ul class="shelf">${rows}</ul>`;

/** One that is planned already need not be added: how many of it is asked on its card. */
function row({ record, line }) {
  const name = nameOf(record);
  const isPlanned = opened.record.plan?.some((item) => item?.id === record.id);
  const face = html`<span class="row-name">${name}</span><span class="row-line">${line || nothing}</span>`;
  if (isPlanned) return html`<li class="row"><span class="row-face">${face}</span><span class="row-state">${tick()}<span>on the plan</span></span></li>`;
  return html`<li class="row"><button type="button" class="row-face" @click=${() => putOn("plan", { id: record.id, count: "1" })}>${face}</button>
    <span class="row-state" aria-hidden="true">${plus()}</span></li>`;
}
