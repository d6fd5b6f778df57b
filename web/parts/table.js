// An answer that is a table. A row that can be taken is a button all along.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { tick } from "./icons.js";
import { take } from "./opened.js";

const FEW = 4;

/** The core's table with the sentence on it. */
export function tableView(table) {
  if (!table?.rows.length) return nothing;
  return html`<div class="answer-table">${isWide(table) ? scroller(table) : bare(table)}${table.says ? html`<p class="note">${table.says}</p>` : nothing}</div>`;
}

const isWide = ({ columns }) => columns.length > FEW;

const bare = (table) => html`<table>
    <thead><tr>${table.columns.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
    <tbody>${table.rows.map(row)}</tbody>
  </table>`;

/** A wide table scrolls inside its frame, which the keyboard can reach too. */
const scroller = (table) => html`<div class="table-frame" role="group" tabindex="0" aria-label=${table.columns.join(", ")}>${bare(table)}</div>`;

const offers = ({ sets }) => Object.keys(sets ?? {}).length;

/** A tap anywhere on the row counts; the button in it is for the keyboard and for those who listen. */
function row(each) {
  const [first, ...others] = each.cells;
  const cells = others.map((text) => html`<td>${text}</td>`);
  const chosen = each.chosen ? "is-chosen" : "";
  if (!offers(each)) return html`<tr class=${chosen}><th scope="row">${first}${each.chosen ? mark() : nothing}</th>${cells}</tr>`;
  return html`<tr class="offered ${chosen}" @click=${() => each.chosen || take(each.sets)}><th scope="row">
      <button type="button" class="row-button" aria-pressed=${each.chosen ? "true" : "false"}><span>${first}</span>${heard(each)}
        ${each.chosen ? tick() : nothing}</button></th>${cells}</tr>`;
}

const mark = () => html`${tick()}<span class="heard-only"> (chosen)</span>`;

const heard = ({ says }) => (says ? html`<span class="heard-only">: ${says}</span>` : nothing);
