// The whole book as a file: saved, and read back with a preview in which nothing is written before the maker says so.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { ask } from "../core/door.js";
import { vessels } from "../keep/book.js";
import { lastSaved, noteSaved } from "../keep/saved_book.js";
import { restore } from "../keep/snapshot.js";
import { store } from "../keep/store.js";
import { ownThings, withBook } from "../keep/whole.js";
import { nowToMinute } from "../parts/clock.js";
import { footLine } from "../parts/foot.js";
import { back, mind, paper } from "../parts/icons.js";
import { rewind } from "../parts/long_list.js";
import { repaint } from "../parts/paint.js";
import { handOver } from "../parts/save.js";
import { seenNow, takeIn } from "../parts/taking.js";
import { toast } from "../parts/toast.js";
import { previewView, readyToChoose } from "./preview.js";

const LARGEST = 100_000_000;
const TOO_LARGE = "This file is larger than 100 MB. A book of vessels is smaller: choose another.";
const NOT_OPENED = "The file couldn't be opened. Choose it again.";
const FULL = "This device's storage is full, so not all of it is kept when the page is closed. Undo it, or remove some vessels.";
const THINGS = { materials: "materials", wicks: "wicks", plan: "the plan", settings: "the settings" };
const LISTS = ["conflict", "changed", "new", "older"].map((state) => `preview.${state}`);

const NOTHING = { name: "", busy: "", fault: "", preview: null, seen: null };
const state = { ...NOTHING, done: null };

/** The three parts of the page: bar, main and dock. */
export function bookPage() {
  return { title: "Save and read the book · Brimbook", kind: "book", bar: bar(), main: main(), dock: dock() };
}

const bar = () => html`<a class="button only-sign" href="#/" aria-label="Back to the shelf">${back()}</a>
  <h1 class="page-title">Save and read the book</h1>`;

function main() {
  return html`${doneBanner()}${state.preview ? chosenFile() : html`${saving()}${reading()}`}${footLine()}`;
}

function become(what) {
  Object.assign(state, what);
  repaint();
}

/** What comes now is another view, so it is seen from its top, and the focus goes along. */
function turnTo(what) {
  become(what);
  requestAnimationFrame(() => {
    const page = document.querySelector("main.page");
    page.scrollTop = 0;
    page.focus({ preventScroll: true });
  });
}

function saving() {
  const count = vessels().length;
  return html`<section class="card-alone" aria-label="Save"><h2>Save</h2>
    <p>One file holds everything: ${count === 1 ? "1 vessel" : `${count} vessels`}, your materials and wicks, the plan and the settings. Keep it somewhere else too, for what is only on this device is lost with it. Prices and notes to yourself are in it.</p>
    ${age()}
    <div class="acts"><button type="button" class="button big" @click=${() => save("json")}>Save the whole book</button>
      <button type="button" class="button" @click=${() => save("csv")}>Save for a spreadsheet</button></div>
    <p class="hint">The table for a spreadsheet holds the vessels alone, one a row. What you change there can be read back.</p></section>`;
}

/** How old the last file is, by what the maker did since. */
function age() {
  const saved = lastSaved();
  if (!saved) return html`<p class="note">It was not saved as a file yet.</p>`;
  const since = vessels().filter((entry) => String(entry.saved) > saved.at).length;
  const changed = since === 1 ? "1 vessel was changed since." : since ? `${since} vessels were changed since.` : "No vessel was changed since.";
  return html`<p class="note">Last saved ${saved.shown.replace("T", " at ")}. ${changed}</p>`;
}

/** Only the file of all counts as saved: a table lacks the rest. */
async function save(form) {
  const [at, shown] = [new Date().toISOString(), nowToMinute()];
  try {
    const made = await ask("book_file", withBook({ own: ownThings(), made: shown, form }));
    const left = await handOver(new File([made.text], made.name, { type: made.kind }));
    if (left && form === "json") noteSaved({ at, shown });
    repaint();
  } catch (error) {
    toast(error.message);
  }
}

function reading() {
  return html`<section class="card-alone" aria-label="Read a file"><h2>Read a file</h2>
    <p>A file that was saved here or on another device, or a table that came back from a spreadsheet. You see first what it holds; nothing changes before you say so.</p>
    <input type="file" hidden accept=".json,.csv,.txt,application/json,text/csv" @change=${chosen}>
    ${state.fault ? html`<p class="fault" role="status">${mind()}<span>${state.fault}</span></p>` : nothing}
    <div class="acts"><button type="button" class="button" ?disabled=${Boolean(state.busy)} @click=${openChooser}>${paper()}<span>${state.busy || "Choose a file"}</span></button></div></section>`;
}

const openChooser = ({ currentTarget }) => currentTarget.closest("section").querySelector("input").click();

/** The same file chosen again must be read again. */
function chosen({ target }) {
  const [file] = target.files;
  if (file) read(file);
  target.value = "";
}

async function read(file) {
  if (file.size > LARGEST) return become({ ...NOTHING, fault: TOO_LARGE });
  become({ ...NOTHING, busy: "Reading…", name: file.name });
  try {
    const text = await file.text().catch(() => { throw new Error(NOT_OPENED); });
    const mine = ownThings();
    const preview = await ask("book_preview", withBook({ own: mine }, text));
    LISTS.forEach(rewind);
    return turnTo({ busy: "", preview: readyToChoose(preview, mine), seen: seenNow(preview.rows) });
  } catch (error) {
    return become({ ...NOTHING, fault: error.message });
  }
}

const chosenFile = () => html`<p class="quiet" role="status">${state.name}</p>${previewView(state.preview)}`;

const isTaken = ({ chosen: what }) => what === "take" || what === "both";

/** What is chosen, told on the button; without anything to take there is only the way back. */
function dock() {
  if (!state.preview) return nothing;
  const { rows, own } = state.preview;
  const settles = rows.some(({ state: how, chosen: what }) => how === "conflict" && what === "keep");
  const takes = settles || [...rows, ...own].some(isTaken);
  return html`<div class="dock-acts">${takes ? html`<button type="button" class="button big" @click=${take}>Take these into the book</button>` : nothing}
    <button type="button" class="button ${takes ? "quiet-button" : "big"}" @click=${() => turnTo(NOTHING)}>Leave the file</button></div>`;
}

async function take() {
  const { preview: { rows, own }, seen, name } = state;
  become(NOTHING);
  try {
    const { taken, own: things, passed, shots } = await takeIn(rows, own, seen);
    turnTo({ done: { says: told(taken, things, passed, name), shots } });
  } catch (error) {
    become({ fault: error.message });
  }
}

const counted = (list, one, many) => (list.length === 1 ? `1 ${one}` : `${list.length} ${many}`);

function told(taken, things, passed, name) {
  const what = [...(taken.length || !things.length ? [counted(taken, "vessel", "vessels")] : []), ...new Set(things.map(({ key }) => THINGS[key]))];
  const over = passed.length ? ` ${counted(passed, "vessel was", "vessels were")} changed here while you chose, and left as they are. Read the file again.` : "";
  return `Taken from ${name}: ${what.join(", ")}.${over}`;
}

/** What was done stays in sight until it is dismissed, with the way back. */
function doneBanner() {
  if (!state.done) return nothing;
  return html`<div class="banner ${store.sound ? "" : "warn-banner"}" role="status"><p>${state.done.says} ${store.sound ? nothing : FULL}</p><div class="banner-acts">
    ${state.done.shots ? html`<button type="button" class="button" @click=${undo}>Undo</button>` : nothing}
    <button type="button" class="button quiet-button" @click=${() => become({ done: null })}>All right</button></div></div>`;
}

function undo() {
  const some = restore(state.done.shots);
  become({ done: { says: some ? "Put back, but for what was changed since." : "Everything is as it was.", shots: null } });
}
