// The maker's own materials and wicks, a card each, and the generic ones to copy from.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { damagedMaterials, forgetDamaged, putDamagedBack } from "../keep/materials.js";
import { bigAction } from "../parts/actions.js";
import { coreBanner, rivalBanner } from "../parts/banners.js";
import { cardsView } from "../parts/card.js";
import { footLine } from "../parts/foot.js";
import { back } from "../parts/icons.js";
import { opened } from "../parts/opened.js";
import { outdatedView } from "../parts/outdated.js";
import { pad, padView } from "../parts/pad.js";
import { repaint } from "../parts/paint.js";
import { remembered } from "../parts/route.js";
import { toast } from "../parts/toast.js";

/** The materials' three parts: bar, main and dock. */
export function materialsPage() {
  return { title: "My materials and wicks · Brimbook", kind: "materials", bar: bar(), main: main(), dock: pad.field ? padView() : dock() };
}

/** The way back leads to the vessel that one came from. */
function bar() {
  const { from } = remembered();
  return html`<a class="button only-sign" href=${from ?? "#/"} aria-label="Back to the ${from ? "vessel" : "shelf"}">${back()}</a>
    <h1 class="page-title">Materials and wicks</h1>`;
}

const dock = () => html`<div class="dock-acts">${(opened.sheet.actions ?? []).map(bigAction)}</div>`;

const isEmpty = () => !opened.record.materials.length && !opened.record.wicks?.length;

function main() {
  return html`${rivalBanner("Your materials were changed in another tab. The newer ones are shown.")}${coreBanner()}${broken()}${outdatedView(opened.record, opened.fresh)}
    ${isEmpty() || opened.fresh ? nothing : html`<p class="quiet" role="status">getting ready…</p>`}
    ${cardsView(opened.sheet)}
    ${footLine()}`;
}

function broken() {
  if (!damagedMaterials()) return nothing;
  return html`<div class="banner" role="status"><p>Materials kept earlier could not be read. Their text is left as it is.</p>
    <div class="banner-acts"><button type="button" class="button" @click=${copyText}>Copy text</button>
    <button type="button" class="button quiet-button" @click=${forget}>Forget it</button></div></div>`;
}

function forget() {
  const text = damagedMaterials();
  forgetDamaged();
  toast("Forgotten.", "Undo", () => {
    putDamagedBack(text);
    repaint();
  });
}

/** Nothing is lost that a person could still read. */
async function copyText() {
  try {
    await navigator.clipboard.writeText(damagedMaterials());
    toast("Copied.");
  } catch {
    toast("The text could not be copied.");
  }
}
