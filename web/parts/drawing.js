// A drawing that the core made. It is parsed as SVG and adopted, never put in as markup.

import { html, nothing } from "../vendor/lit/lit-html.js";

const KNOWN = 40;
const drawn = new Map();

function parse(text, name) {
  const parsed = new DOMParser().parseFromString(text, "image/svg+xml");
  const picture = parsed.documentElement;
  if (picture.localName !== "svg") return nothing;
  picture.setAttribute("role", "img");
  if (name) picture.setAttribute("aria-label", name);
  return document.adoptNode(picture);
}

/** The drawing as a node; the same text gives the same node, so a repaint does not redraw it. */
export function drawing(text, name) {
  const key = `${name}\n${text}`;
  if (!drawn.has(key)) {
    if (drawn.size > KNOWN) drawn.clear();
    drawn.set(key, parse(text, name));
  }
  return drawn.get(key);
}

/** The drawing in its frame, with the same numbers as text below it. */
export function drawingView({ drawing: text, drawing_text: words }) {
  if (!text) return nothing;
  return html`<figure class="drawing">${drawing(text, words)}
    ${words ? html`<details><summary>In words</summary><p>${words}</p></details>` : nothing}
  </figure>`;
}
