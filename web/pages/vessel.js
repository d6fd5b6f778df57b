// One vessel: its name, and a card a step in the job's order.

import { html } from "../vendor/lit/lit-html.js";
import { openShare } from "./share.js";
import { actionsView } from "../parts/actions.js";
import { coreBanner, rivalBanner } from "../parts/banners.js";
import { cardsView } from "../parts/card.js";
import { fieldView } from "../parts/field.js";
import { chaptersView } from "../parts/chapters.js";
import { footLine } from "../parts/foot.js";
import { back, fold, share } from "../parts/icons.js";
import { leave, opened, textAt, type } from "../parts/opened.js";
import { pad, padView } from "../parts/pad.js";
import { visitBanner } from "../parts/visit.js";

const MADE_ON = { path: "made_on", label: "Made on", kind: "date", value: "" };

/** The vessel's three parts: bar, main and dock. */
export function vesselPage() {
  const title = `${opened.record?.name || "New vessel"} · Brimbook`;
  return { title, kind: "vessel", bar: bar(), main: opened.sheet ? main() : waiting(), dock: dock() };
}

function bar() {
  return html`<a class="button only-sign" href="#/" aria-label="Back to the shelf">${back()}</a>
    ${opened.record ? named() : html`<h1 class="page-title">Vessel</h1>`}`;
}

function named() {
  return html`<h1 class="heard-only">${opened.record.name || "New vessel"}</h1>
    <input class="vessel-name" data-path="name" aria-label="Name of the vessel" placeholder="Name this vessel" autocomplete="off"
      enterkeyhint="done" .value=${textAt("name")} @input=${(event) => type("name", event.target.value)}
      @blur=${() => leave("name")} @keydown=${(event) => event.key === "Enter" && event.target.blur()}>
    <button type="button" class="button only-sign" aria-label="Pass this vessel on" @click=${openShare}>${share()}</button>`;
}

const dock = () => (pad.field || !opened.sheet ? padView() : chaptersView(opened.sheet));

const waiting = () => html`<p class="quiet" role="status">getting ready…</p>`;

function main() {
  return html`${visitBanner()}${rivalBanner("This vessel was changed in another tab. The newer one is shown.")}${coreBanner()}
    ${cardsView(opened.sheet)}${actionsView(opened.sheet.actions)}
    <details class="group more"><summary><span>Notes and date</span>${fold()}</summary>${about()}</details>
    ${footLine()}`;
}

function about() {
  return html`<div class="field"><label for="at.notes">Notes</label>
      <div class="window"><textarea id="at.notes" data-path="notes" rows="4" .value=${textAt("notes")}
        @input=${(event) => type("notes", event.target.value)} @blur=${() => leave("notes")}></textarea></div></div>
    ${fieldView(MADE_ON)}`;
}
