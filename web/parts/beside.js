// Two ways to the same answer, one below the other.

import { html, nothing } from "../vendor/lit/lit-html.js";

const row = ([name, ...figures]) => html`<tr><th scope="row">${name}</th>${figures.map((shown) => html`<td>${shown}</td>`)}</tr>`;

/** The core's small table of two ways, with the sentence on their difference. */
export function besideView(beside) {
  if (!beside) return nothing;
  return html`<div class="two-ways"><table>
      <thead><tr><td></td>${beside.columns.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
      <tbody>${beside.rows.map(row)}</tbody>
    </table><p class="note">${beside.says}</p></div>`;
}
