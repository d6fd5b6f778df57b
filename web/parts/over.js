// The one dialog that lies over the screen. The back button and Escape take it away.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { chooseView } from "../pages/choose.js";
import { shareView } from "../pages/share.js";
import { opened } from "./opened.js";
import { closeOver, over } from "./route.js";
import { keepView } from "./visit.js";

const VIEWS = { share: shareView, keep: keepView, choose: chooseView };

function cancel(event) {
  event.preventDefault();
  closeOver();
}

const outside = (event) => event.target === event.currentTarget && closeOver();

/** The dialog, when the history's present step asks for one. */
export function overView() {
  const view = opened.record && VIEWS[over()];
  if (!view) return nothing;
  return html`<dialog class="over" aria-labelledby="over-title" @cancel=${cancel} @click=${outside}><div class="over-body">${view()}</div></dialog>`;
}

/** A dialog can only be shown once it stands in the page. */
export function showOver() {
  const dialog = document.querySelector("dialog.over");
  if (dialog && !dialog.open) dialog.showModal();
}
