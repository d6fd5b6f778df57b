// What to make and what to buy for it: the vessels of the plan, and the core's list for them.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { coreBanner, rivalBanner } from "../parts/banners.js";
import { actionsView } from "../parts/actions.js";
import { cardsView } from "../parts/card.js";
import { footLine } from "../parts/foot.js";
import { back, plus } from "../parts/icons.js";
import { opened } from "../parts/opened.js";
import { pad, padView } from "../parts/pad.js";
import { openChooser } from "./choose.js";
import { remembered } from "../parts/route.js";

/** The questions and answers before the core has told any. */
export const NO_PLAN = { record: { plan: [] }, sheet: { title: "Make and buy", line: "", cards: [], faults: [], actions: [] } };

/** The plan's three parts: bar, main and dock. */
export function planPage() {
  return { title: "Make and buy · Brimbook", kind: "plan", bar: bar(), main: main(), dock: pad.field ? padView() : dock() };
}

function bar() {
  const { from } = remembered();
  return html`<a class="button only-sign" href=${from ?? "#/"} aria-label="Back to the ${from ? "vessel" : "shelf"}">${back()}</a>
    <h1 class="page-title">Make and buy</h1>`;
}

const dock = () => html`<div class="dock-acts"><button type="button" class="button big" @click=${openChooser}>${plus()}<span>Add a vessel</span></button></div>`;

function main() {
  const { record, sheet, fresh } = opened;
  const isEmpty = !record.plan.length;
  return html`${rivalBanner("Your plan was changed in another tab. The newer one is shown.")}${coreBanner()}
    ${isEmpty ? html`<p class="empty">Nothing is planned yet. Add the vessels that you want to make, and what they take is added up here: what is on the shelf, and what to buy.</p>` : nothing}
    ${isEmpty || fresh ? nothing : html`<p class="quiet" role="status">getting ready…</p>`}
    ${sheet.cards.length ? cardsView(sheet) : nothing}${actionsView(sheet.actions)}
    ${footLine()}`;
}
