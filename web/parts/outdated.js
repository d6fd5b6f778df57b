// Where the shelf has another price or pack now than vessels were worked out with: said per material, and mended at a tap.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { askIfIdle } from "../core/door.js";
import { entryOf, isEmpty, keep, vesselName } from "../keep/book.js";
import { noteWritten, restore, snapshot } from "../keep/snapshot.js";
import { withBook } from "../keep/whole.js";
import { repaint } from "./paint.js";
import { withTexts } from "./record.js";
import { toast } from "./toast.js";
import { makersOwn } from "./world.js";

const PAUSE = 1200;

let told = [];
let asked = null;
let clock = 0;
const left = new Set();

const keyOf = ({ name, says }) => `${name}\n${says}`;

/** What is behind the shelf, asked for once the typing pauses and while nobody waits for an answer. */
export function outdatedView(shelf, isFresh) {
  if (isFresh && asked !== shelf) askLater(shelf);
  return html`${told.filter((each) => !left.has(keyOf(each))).map(banner)}`;
}

function askLater(shelf) {
  asked = shelf;
  clearTimeout(clock);
  if (!isEmpty()) clock = setTimeout(look, PAUSE, shelf);
}

async function look(shelf) {
  try {
    const answer = await askIfIdle("outdated", withBook(makersOwn()));
    if (asked !== shelf) return;
    if (answer) told = answer;
    else clock = setTimeout(look, PAUSE, shelf);
  } catch {
    // The vessels still say it on their own cards.
    told = [];
  }
  repaint();
}

const banner = (each) => html`<div class="banner" role="status"><p>${each.says}</p><div class="banner-acts">
    <button type="button" class="button" @click=${() => mend(each)}>Bring them up to date</button>
    <button type="button" class="button quiet-button" @click=${() => leave(each)}>Leave</button></div></div>`;

function leave(each) {
  left.add(keyOf(each));
  repaint();
}

function mend({ vessels }) {
  const there = vessels.filter(({ id }) => entryOf(id));
  const shots = snapshot(there.map(({ id }) => vesselName(id)));
  for (const { id, sets } of there) {
    const entry = entryOf(id);
    keep({ ...entry, record: withTexts(entry.record, sets), saved: new Date().toISOString() });
  }
  const done = noteWritten(shots);
  again();
  toast(there.length === 1 ? "1 vessel is up to date." : `${there.length} vessels are up to date.`, "Undo", () => putBack(done));
}

function putBack(shots) {
  if (restore(shots)) toast("What was changed since was left as it is.");
  again();
}

/** What is behind now is another question. */
function again() {
  asked = null;
  told = [];
  repaint();
}
