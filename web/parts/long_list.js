// A long list, a part at a time: more of it comes as one scrolls there, or by its button.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { repaint } from "./paint.js";

const PART = 60;
const AHEAD = "800px";

const seen = new Map();
let watchers = [];

function inParts(items) {
  const rest = [...items];
  const parts = [];
  while (rest.length) parts.push(rest.splice(0, PART));
  return parts;
}

const seenOf = (name) => seen.get(name) ?? [true];

/** Begin a list from its top again, when something else is sought. */
export const rewind = (name) => seen.delete(name);

function more(name) {
  seen.set(name, [...seenOf(name), true]);
  repaint();
}

/** The rows of the items seen so far, in `frame`, and below it the way to more of them. */
export function longList(name, items, row, frame) {
  const parts = inParts(items);
  const shown = parts.slice(0, seenOf(name).length);
  return html`${frame(shown.flat().map(row))}
    ${shown.length < parts.length ? html`<button type="button" class="button quiet-button show-more" data-list=${name}
      @click=${() => more(name)}>Show more</button>` : nothing}`;
}

/** After each painting: where the end of a list comes near the screen, it goes on by itself. */
export function tendLists() {
  for (const watcher of watchers) watcher.disconnect();
  watchers = [...document.querySelectorAll(".show-more")].map(watch);
}

function watch(button) {
  const watcher = new IntersectionObserver((seenNow) => {
    if (seenNow.some(({ isIntersecting }) => isIntersecting)) more(button.dataset.list);
  }, { root: button.closest(".page, .over"), rootMargin: AHEAD });
  watcher.observe(button);
  return watcher;
}
