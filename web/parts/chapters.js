// The way from one chapter of a long page to another, where thumbs are.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { opened } from "./opened.js";

const FEW = 3;
const NUMBER_AT_END = / \d+$/;

/** A chapter's name; a second well's chapters carry its number, as its cards do. */
export const chapterName = ({ chapter, title }) => `${chapter}${NUMBER_AT_END.exec(title)?.at(0) ?? ""}`;

/** The id of a chapter's heading, by its first card. */
export const chapterId = ({ id }) => `chapter.${id}`;

/** A button for each chapter, in one line; while a card lies open, the screen is its own. */
export function chaptersView({ cards }) {
  const firsts = cards.filter(({ chapter }) => chapter);
  if (firsts.length < FEW || opened.openCard) return nothing;
  return html`<nav class="chapters" aria-label="Chapters">${firsts.map((card) => html`
    <button type="button" class="plain" @click=${() => goTo(card)}>${chapterName(card)}</button>`)}</nav>`;
}

function goTo(card) {
  const heading = document.getElementById(chapterId(card));
  heading.scrollIntoView({ block: "start" });
  heading.focus({ preventScroll: true });
}
