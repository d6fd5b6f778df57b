// What stands below a field (what is wrong, a note, a hint), and how a reader's voice finds it.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { mind } from "./icons.js";

/** An id for a part of the field at this path. */
export const fieldId = (path, part = "") => `at.${path}${part && `.${part}`}`;

/** The ids of what describes a field; `first` names parts beside those below it. */
export function described({ path, fault, note, hint }, first = []) {
  const below = [["fault", fault], ["note", note], ["hint", hint]].filter(([, there]) => there).map(([part]) => part);
  return [...first, ...below].map((part) => fieldId(path, part)).join(" ");
}

/** What is wrong with a field's text, what to note, and how to answer. */
export function belowField({ path, fault, note, hint }) {
  return html`
    ${fault ? html`<p class="fault" id=${fieldId(path, "fault")}>${mind()}<span>${fault}</span></p>` : nothing}
    ${note ? html`<p class="note" id=${fieldId(path, "note")}>${note}</p>` : nothing}
    ${hint ? html`<p class="hint" id=${fieldId(path, "hint")}>${hint}</p>` : nothing}`;
}
