// What stands where a vessel should: a link that is damaged, or a vessel that is not in this book.

import { html } from "../vendor/lit/lit-html.js";
import { back } from "../parts/icons.js";

/** A screen with one sentence and the way to the shelf. */
export function unfoundPage(sentence) {
  return {
    title: "Brimbook", kind: "unfound", dock: html``,
    bar: html`<a class="button only-sign" href="#/" aria-label="Back to the shelf">${back()}</a><h1 class="page-title">Not to be found</h1>`,
    main: html`<p class="empty" role="alert">${sentence}</p><p><a class="button big" href="#/">To the shelf</a></p>`,
  };
}
