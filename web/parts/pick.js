// A file to be read: a button that opens the device's own chooser, how far the reading is, and what came of it.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { cross, mind, paper } from "./icons.js";
import { forget, isKept, pickFile, readingFor, stopReading, toldFor } from "./picking.js";

// The chooser of a phone knows few endings and would offer nothing at all; the core says what it can't read.
const KNOWS_ENDINGS = "(pointer: fine)";

/** The files that a card can have read. */
export function picksView(list = []) {
  return list.length ? html`<div class="picks">${list.map(pickView)}</div>` : nothing;
}

function pickView(pick) {
  const reading = readingFor(pick);
  return html`<div class="pick" data-pick=${pick.place}>
    <input type="file" hidden accept=${matchMedia(KNOWS_ENDINGS).matches ? pick.accept : nothing} @change=${(event) => chosen(pick, event.target)}>
    ${reading ? html`<progress max="1" .value=${reading.share} aria-label=${pick.label}></progress>` : nothing}
    ${words(reading, toldFor(pick) ?? pick)}
    <div class="actions">${button(pick, reading)}${!reading && isKept(pick) ? forgets(pick) : nothing}</div>
  </div>`;
}

/** The same chooser again must tell of the same file too. */
function chosen(pick, input) {
  const [file] = input.files;
  if (file) pickFile(pick, file);
  input.value = "";
}

/** What is being done, else what came of it. */
const words = (reading, { says, isFault }) => html`<div role="status">${reading ? html`<p class="note">${reading.says}…</p>` : said(says, isFault)}</div>`;

function said(says, isFault) {
  if (!says) return nothing;
  return isFault ? html`<p class="fault">${mind()}<span>${says}</span></p>` : html`<p class="note">${says}</p>`;
}

/** One and the same button chooses and cancels, so that it keeps the focus. */
const button = (pick, reading) => html`<button type="button" class="button quiet-button" @click=${reading ? stopReading : openChooser}>
  ${reading ? cross() : paper()}<span>${reading ? "Cancel" : pick.label}</span></button>`;

const openChooser = ({ currentTarget }) => currentTarget.closest(".pick").querySelector("input").click();

const forgets = (pick) => html`<button type="button" class="plain" @click=${() => forget(pick)}>Forget the file</button>`;

/** What a card does with a file that is dropped on it. */
export function dropHand({ picks: [pick] = [] }) {
  return {
    over: (event) => pick && event.preventDefault(),
    drop: (event) => drop(event, pick),
  };
}

function drop(event, pick) {
  const [file] = event.dataTransfer?.files ?? [];
  if (!pick || !file) return;
  event.preventDefault();
  pickFile(pick, file);
}
