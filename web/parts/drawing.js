// A drawing that the core made. It is parsed as SVG and adopted, never put in as markup.

import { html, nothing } from "../vendor/lit/lit-html.js";

import { dragHand } from "./drag.js";

const KNOWN = 40;
const drawn = new Map();

/** A text as a picture of its own, empty where the text is none. */
export function picture(text) {
  const parsed = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  return parsed.localName === "svg" ? document.adoptNode(parsed) : "";
}

/** A picture is one thing to those who listen, unless there are marks in it to be taken. */
function named(text, name) {
  const made = picture(text);
  if (!made) return nothing;
  made.setAttribute("role", made.querySelector(".handle") ? "group" : "img");
  if (name) made.setAttribute("aria-label", name);
  return made;
}

/** The drawing as a node; the same text gives the same node, so a repaint does not redraw it. */
export function drawing(text, name) {
  const key = `${name}\n${text}`;
  if (!drawn.has(key)) {
    if (drawn.size > KNOWN) drawn.clear();
    drawn.set(key, named(text, name));
  }
  return drawn.get(key);
}

/** The drawing in its frame, with the same numbers as text below it. */
export function drawingView({ drawing: text, drawing_text: words, drag }) {
  if (!text) return nothing;
  const inside = html`${drawing(text, words)}${words ? html`<details><summary>In words</summary><p>${words}</p></details>` : nothing}`;
  if (!drag) return html`<figure class="drawing">${inside}</figure>`;
  const { down, move, up, key, touch } = dragHand(drag);
  return html`<figure class="drawing movable" @pointerdown=${down} @pointermove=${move} @pointerup=${up} @pointercancel=${up}
    @keydown=${key} @touchstart=${touch}>${inside}</figure>`;
}
