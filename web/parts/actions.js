// Buttons that add something, take something away or lead somewhere.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { bin, onward, plus, rub } from "./icons.js";
import { act } from "./opened.js";

/** The buttons of a card, of a group or of a whole sheet. */
export function actionsView(list = []) {
  return list.length ? html`<div class="actions">${list.map(actionView)}</div>` : nothing;
}

function actionView(action) {
  if (action.go) return html`<a class="button quiet-button" href=${action.go}><span>${action.label}</span>${onward()}</a>`;
  if (action.append) return button("button quiet-button", plus(), action);
  return button("plain", action.clear ? rub() : bin(), action);
}

/** The one button that a screen is for. */
export const bigAction = (action) => button("button big", plus(), action);

const button = (kind, sign, action) => html`<button type="button" class=${kind} @click=${() => act(action)}>${sign}<span>${action.label}</span></button>`;
