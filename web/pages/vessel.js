// One vessel: its name, and a card a step in the job's order.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { keepPlan, planEntry } from "../keep/plan.js";
import { NO_PLAN } from "./plan.js";
import { openShare } from "./share.js";
import { actionsView } from "../parts/actions.js";
import { coreBanner, rivalBanner } from "../parts/banners.js";
import { belowField, described, fieldId } from "../parts/below.js";
import { cardsView } from "../parts/card.js";
import { fieldView } from "../parts/field.js";
import { chaptersView } from "../parts/chapters.js";
import { footLine } from "../parts/foot.js";
import { back, fold, onward, share } from "../parts/icons.js";
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
    ${cardsView(opened.sheet)}${actionsView(opened.sheet.actions)}${planAction()}
    <details class="group more"><summary><span>Notes and date</span>${fold()}</summary>${about()}</details>
    ${footLine()}`;
}

const about = () => html`${notes("notes", "Notes")}
  ${notes("own_notes", "Notes to yourself", "A link leaves these out unless you say so.")}${fieldView(MADE_ON)}`;

function notes(path, label, hint = "") {
  return html`<div class="field"><label for=${fieldId(path)}>${label}</label>
      <div class="window"><textarea id=${fieldId(path)} data-path=${path} rows="4" aria-describedby=${described({ path, hint })} .value=${textAt(path)}
        @input=${(event) => type(path, event.target.value)} @blur=${() => leave(path)}></textarea></div>
      ${belowField({ path, hint })}</div>`;
}

/** A vessel of the book can be put on the plan from here. */
function planAction() {
  if (opened.kind !== "book") return nothing;
  return html`<div class="actions"><button type="button" class="button quiet-button" @click=${plan}><span>Plan to make it</span>${onward()}</button></div>`;
}

/** One that is planned already is only shown there. */
function plan() {
  const { id } = opened.record;
  const { record } = planEntry() ?? NO_PLAN;
  if (!record.plan.some((item) => item?.id === id)) {
    keepPlan({ record: { ...record, plan: [...record.plan, { id, count: "1" }] }, saved: new Date().toISOString() });
  }
  location.hash = "#/plan";
}
