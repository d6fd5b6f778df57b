// A choice of a few: large targets side by side when their words are short, one below the other when not.

import { html, nothing } from "../vendor/lit/lit-html.js";

const FEW = 6;
const SHORT = 13;

const isShort = ({ label, hint }) => label.length < SHORT && !hint;

/** A choice field; `hand` writes what is chosen, `below` stands under every field (fault, note, hint). */
export function choiceField(field, hand, below) {
  // While nothing is chosen, what is taken then shows as chosen.
  const chosen = hand.textAt(field.path) || field.value;
  const take = (choice) => hand.choose(field.path, choice);
  const few = field.choices.length < FEW;
  return few ? radios(field, chosen, take, below) : list(field, chosen, take, below);
}

function radios(field, chosen, take, below) {
  const side = field.choices.every(isShort);
  return html`<fieldset class="field choice">
    <legend>${field.label}</legend>
    <div class="options ${side ? "side" : "stack"}">${field.choices.map((choice) => option(field.path, choice, chosen, take))}</div>
    ${below}
  </fieldset>`;
}

function option(path, choice, chosen, take) {
  return html`<label class="option">
    <input type="radio" name=${path} value=${choice.value} .checked=${choice.value === chosen} @change=${() => take(choice)}>
    <span class="face"><span class="says">${choice.label}</span>${choice.hint ? html`<small>${choice.hint}</small>` : nothing}</span>
  </label>`;
}

function list(field, chosen, take, below) {
  const picked = (event) => take(field.choices.find(({ value }) => value === event.target.value));
  const hint = field.choices.find(({ value }) => value === chosen)?.hint;
  return html`<div class="field choice">
    <label for="at.${field.path}">${field.label}</label>
    <div class="window"><select id="at.${field.path}" name=${field.path} @change=${picked}>
      ${unoffered(field.choices, chosen)}${grouped(field.choices, chosen)}</select></div>
    ${hint ? html`<p class="hint">${hint}</p>` : nothing}
    ${below}
  </div>`;
}

/** What stands in the record although it is not among the choices is shown as it is. */
function unoffered(choices, chosen) {
  const known = !chosen || choices.some(({ value }) => value === chosen);
  return known ? nothing : html`<option value=${chosen} disabled .selected=${true}>${chosen}</option>`;
}

const listed = ({ value, label }, chosen) => html`<option value=${value} .selected=${value === chosen}>${label}</option>`;

/** The options of one group stand together under its name. */
function grouped(choices, chosen) {
  const groups = new Map();
  for (const choice of choices) groups.set(choice.group ?? "", [...(groups.get(choice.group ?? "") ?? []), choice]);
  return [...groups].map(([group, members]) => {
    const options = members.map((choice) => listed(choice, chosen));
    return group ? html`<optgroup label=${group}>${options}</optgroup>` : options;
  });
}
