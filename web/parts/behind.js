// The figures on the way to the answer: a few stand open, many are folded away until one is wanted.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { figureView } from "./figure.js";
import { fold } from "./icons.js";
import { opened } from "./opened.js";
import { folded } from "./group.js";

const FEW = 3;

/** What stands behind a card's answer. */
export function behindView({ id, figures, large }) {
  const others = figures.filter(({ key }) => !large.includes(key));
  if (!others.length) return nothing;
  const list = html`<div class="figures aside">${others.map((figure) => figureView(figure))}</div>`;
  if (others.length <= FEW) return list;
  const name = `behind.${id}`;
  const wanted = others.some(({ key }) => key === opened.openFigure);
  return html`<details class="more behind" ?open=${wanted || opened.folds.get(name)} @toggle=${({ target }) => folded(name, target.open)}>
    <summary><span>The figures behind it</span>${fold()}</summary>${list}</details>`;
}
