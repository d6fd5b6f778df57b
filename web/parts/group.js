// Things of one kind on a card, such as its pours: each a line that opens to its fields.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { actionsView } from "./actions.js";
import { fieldView } from "./field.js";
import { fold, mind } from "./icons.js";
import { moreView } from "./more.js";
import { opened } from "./opened.js";
import { repaint } from "./paint.js";
import { isFaulty } from "./sheet.js";

/** The groups of a card, with the buttons that add one. */
export function groupsView(groups, adds) {
  if (!groups.length && !adds.length) return nothing;
  return html`<div class="groups">${groups.map(groupView)}${actionsView(adds)}</div>`;
}

/** An entry to be mended must be seen; else a group is as the maker or the core folded it. */
const isOpen = (group) => isFaulty(group) || Boolean(opened.folds.get(group.id) ?? group.open);

/** The page has folded it already; this only takes note, so that no repaint folds it back. */
export function folded(id, isNow) {
  if (opened.folds.get(id) === isNow) return;
  opened.folds.set(id, isNow);
  repaint();
}

function groupView(group) {
  const { id, title, summary } = group;
  return html`<details class="group-item" data-group=${id} ?open=${isOpen(group)} @toggle=${({ target }) => folded(id, target.open)}>
    <summary><span class="group-title">${title}${isFaulty(group) ? mind() : nothing}</span>
      ${summary ? html`<span class="group-summary">${summary}</span>` : nothing}${fold()}</summary>
    <div class="group-body">${(group.fields ?? []).map((field) => fieldView(field))}
      ${moreView(group.more)}${actionsView(group.actions)}</div>
  </details>`;
}
