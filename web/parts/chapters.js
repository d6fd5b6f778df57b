// The way from one chapter of a long page to another, where thumbs are.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { opened } from "./opened.js";

const FEW = 3;
const NUMBER_AT_END = / \d+$/;

/** A chapter's name; a second well's chapters carry its number, as its cards do. */
export const chapterName = ({ chapter, title }) => `${chapter}${NUMBER_AT_END.exec(title)?.at(0) ?? ""}`;

/** The id of a chapter's heading, by its first card. */
export const chapterId = ({ id }) => `chapter.${id}`;

/** The first card of each chapter, with whether the open card is in it. */
function chapters(cards) {
  const found = [];
  let last = null;
  for (const card of cards) {
    if (card.chapter) {
      last = { card, isOpen: false };
      found.push(last);
    }
    if (last && card.id === opened.openCard) last.isOpen = true;
  }
  return found;
}

/** A button for each chapter, in one line. */
export function chaptersView(sheet) {
  const found = chapters(sheet?.cards ?? []);
  if (found.length < FEW) return nothing;
  return html`<nav class="chapters" aria-label="Chapters">${found.map(({ card, isOpen }) => html`
    <button type="button" class="plain" aria-current=${isOpen ? "true" : nothing} @click=${() => goTo(card)}>${chapterName(card)}</button>`)}</nav>`;
}

let shown = "";

/** The way to where one is comes into sight by itself, once for each chapter. */
export function showChapter(root) {
  const way = root.querySelector(".chapters > [aria-current]");
  const name = way?.textContent ?? "";
  if (name !== shown) way?.scrollIntoView({ block: "nearest", inline: "center" });
  shown = name;
}

function goTo(card) {
  const heading = document.getElementById(chapterId(card));
  heading.scrollIntoView({ block: "start" });
  heading.focus({ preventScroll: true });
}
