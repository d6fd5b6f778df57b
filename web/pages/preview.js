// What a file holds beside the book, by how it stands to it; for each the maker says what becomes of it.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { choiceField } from "../parts/choice.js";
import { longList } from "../parts/long_list.js";
import { repaint } from "../parts/paint.js";

const TAKE = { value: "take", label: "The file's" };
const KEEP = { value: "keep", label: "Mine" };
const BOTH = { value: "both", label: "Both" };
const NEW = [{ value: "take", label: "Take it" }, { value: "keep", label: "Leave it" }];

/** How a vessel of the file stands to the book: its heading, what that means, what is chosen at first, and the choices. */
const STATES = [
  { state: "conflict", title: "In conflict", usual: "", choices: [TAKE, KEEP, BOTH],
    says: "Changed here and in the file since they were last the same. One that you do not choose for stays as it is here." },
  { state: "changed", title: "Changed in the file", usual: "take", choices: [TAKE, KEEP, BOTH],
    says: "The file's is newer than yours." },
  { state: "new", title: "New", usual: "take", choices: NEW, says: "Not in your book." },
  { state: "older", title: "Older in the file", usual: "keep", choices: [TAKE, KEEP, BOTH], says: "Yours was changed since." },
];
const OWN = { new: { usual: "take", choices: NEW }, changed: { usual: "keep", choices: [TAKE, KEEP] } };

const usualOf = ({ state }) => STATES.find((each) => each.state === state)?.usual ?? "";

/** What is chosen at first. Where nothing of the kind is kept here, the file's own is taken. */
const usualOwn = ({ key, state }, mine) => (Object.keys(mine[key] ?? {}).length ? OWN[state].usual : "take");

/** A preview made ready to be chosen from; `mine` is what the maker keeps besides vessels. */
export function readyToChoose({ rows, own, same, damaged }, mine) {
  return {
    same, damaged, rows: rows.map((row) => ({ ...row, chosen: usualOf(row) })),
    own: own.filter(({ state }) => state in OWN).map((row) => ({ ...row, chosen: usualOwn(row, mine) })),
  };
}

/** The preview: what was damaged, what needs a choice, and what does not. */
export function previewView({ rows, own, same, damaged }) {
  return html`${damaged.length ? broken(damaged) : nothing}
    ${same ? html`<p class="note">${same === 1 ? "1 vessel is the same here and in the file." : `${same} vessels are the same here and in the file.`}</p>` : nothing}
    ${STATES.map((about) => html`${about.state === "new" ? ownGroup(own) : nothing}${group(about, rows.filter(({ state }) => state === about.state))}`)}
    ${rows.length || own.length ? nothing : html`<p class="empty" role="status">There is nothing in this file that your book does not have.</p>`}`;
}

const broken = (sentences) => html`<section class="banner warn-banner" aria-label="Not readable"><ul class="damaged">${sentences.map((each) => html`<li>${each}</li>`)}</ul></section>`;

const frame = (rows) => html`<ul class="shelf">${rows}</ul>`;

/** Before the new vessels, of which there may be very many. */
const ownGroup = (own) => (own.length ? html`<section class="group" aria-label="Besides vessels"><h2>Besides vessels</h2>${frame(own.map(ownRow))}</section>` : nothing);

function group({ state, title, says, choices }, rows) {
  if (!rows.length) return nothing;
  return html`<section class="group" aria-label=${title}><h2>${title}: ${rows.length}</h2><p class="quiet">${says}</p>
    ${rows.length > 1 ? html`<div class="for-all">${choose(`all.${state}`, "For all of them", choices, ...allHand(rows))}</div>` : nothing}
    ${longList(`preview.${state}`, rows, (row) => rowView(row, choices), frame)}</section>`;
}

/** One choice for all: it shows as chosen where all are alike. */
function allHand(rows) {
  const [{ chosen }] = rows;
  return [rows.every((row) => row.chosen === chosen) ? chosen : "", (value) => {
    for (const row of rows) row.chosen = value;
  }];
}

const rowView = (row, choices) => html`<li class="row preview-row"><p class="row-name">${row.name}</p><p class="row-says">${row.says}</p>
    ${choose(`row.${row.state}.${row.id}`, `What becomes of ${row.name}`, choices, row.chosen, (value) => { row.chosen = value; })}</li>`;

const ownRow = (row) => html`<li class="row preview-row"><p class="row-name">${row.name}</p><p class="row-says">${row.says}</p>
    ${choose(`own.${row.key}.${row.state}`, `What becomes of ${row.name}`, OWN[row.state].choices, row.chosen, (value) => { row.chosen = value; })}</li>`;

function choose(path, label, choices, chosen, write) {
  const hand = { textAt: () => chosen, choose: (_, { value }) => { write(value); repaint(); } };
  return choiceField({ path, label, choices, value: "" }, hand, nothing);
}
