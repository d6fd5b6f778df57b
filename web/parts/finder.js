// A search box: what is typed into it, and a button that empties it.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { cross, look } from "./icons.js";

/**
 * The search box.
 * @param {{id: string, label: string, sought: string, seek: (text: string) => void}} what `seek` is told what is sought from now on
 */
export function finderView({ id, label, sought, seek }) {
  return html`<div class="finder" role="search">${look()}
    <input type="search" id=${id} aria-label=${label} placeholder=${label} autocomplete="off" enterkeyhint="search" .value=${sought}
      @input=${({ target }) => seek(target.value)} @keydown=${onKey}>
    ${sought ? html`<button type="button" class="plain only-sign" aria-label="Show all" @click=${(event) => empty(event, seek)}>${cross()}</button>` : nothing}</div>`;
}

/** What is found shows at once, so the key that would search puts a phone's keyboard away. */
const onKey = ({ key, target }) => key === "Enter" && target.blur();

function empty({ currentTarget }, seek) {
  currentTarget.closest(".finder").querySelector("input").focus();
  seek("");
}
