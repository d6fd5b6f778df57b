// Speaks the answers to those who cannot see them, once the typing pauses.

import { html } from "../vendor/lit/lit-html.js";
import { repaint } from "./paint.js";

const PAUSE = 900;
let spoken = "";
let clock = 0;
let known = new Set();

const told = ({ title, answer }) => `${title}: ${answer.map(({ shown, label }) => `${shown} ${label}`).join(", ")}.`;

function sentences(sheet) {
  const faults = (sheet.faults ?? []).map(({ sentence }) => sentence);
  return [...faults, ...sheet.cards.filter(({ answer }) => answer.length).map(told)];
}

/** Take a sheet as known already, so that only what changes after it is spoken. */
export function takeAsKnown(sheet) {
  known = new Set(sentences(sheet));
}

/** Announce what is new in a sheet after a pause, faults first. */
export function announce(sheet) {
  clearTimeout(clock);
  clock = setTimeout(() => {
    spoken = sentences(sheet).filter((sentence) => !known.has(sentence)).join(" ");
    takeAsKnown(sheet);
    repaint();
  }, PAUSE);
}

/** The region that speaks. */
export function liveView() {
  return html`<p class="heard-only" role="status" aria-live="polite">${spoken}</p>`;
}
