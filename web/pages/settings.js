// Settings: how figures are shown, the theme, and what the program is made of.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { askNewest } from "../core/door.js";
import { chooseTheme, keepSettings, madeForSettings, settings, theme } from "../keep/settings.js";
import { fieldView } from "../parts/field.js";
import { back, fold } from "../parts/icons.js";
import { padView } from "../parts/pad.js";
import { repaint } from "../parts/paint.js";
import { first } from "../parts/world.js";

const THEME = {
  path: "theme", label: "Light or dark", kind: "choice",
  choices: [{ value: "auto", label: "Auto" }, { value: "light", label: "Light" }, { value: "dark", label: "Dark" }],
};
const themeHand = { textAt: () => theme(), choose: (_, { value }) => { chooseTheme(value); repaint(); } };

const drafts = new Map();
let about = null;
let fault = "";

/** The settings' three parts: bar, main and dock. */
export function settingsPage() {
  return { title: "Settings · Brimbook", kind: "settings", bar: bar(), main: main(), dock: padView() };
}

const bar = () => html`<a class="button only-sign" href="#/" aria-label="Back to the shelf">${back()}</a><h1 class="page-title">Settings</h1>`;

/** The fields write into the settings instead of a vessel's record. */
const hand = {
  textAt: (path, otherwise) => drafts.get(path) ?? settings()[path] ?? otherwise,
  type: (path, text) => { drafts.set(path, text); change({ [path]: text }); },
  leave: (path) => drafts.delete(path) && repaint(),
  choose: (path, { value, sets }) => change({ ...sets, [path]: value }),
};

/** A form that an older version made and kept may lack a question, so it is made anew. */
export function renewForm() {
  if (madeForSettings()) change({});
}

/** Keep the change at once, then let the core make the form and the blank that go with it. */
async function change(part) {
  const chosen = { ...settings(), ...part };
  keepSettings(chosen);
  repaint();
  try {
    const made = await askNewest("settings", "settings", { settings: chosen });
    if (!made) return;
    keepSettings({ ...settings(), ...made.settings }, made);
    fault = "";
  } catch (error) {
    fault = error.message;
  }
  repaint();
}

function main() {
  const form = madeForSettings()?.settings_form ?? first()?.settings_form ?? [];
  return html`<section class="card is-open" aria-label="How figures are shown"><div class="card-body settings-form">
      ${fieldView(THEME, themeHand)}
      ${form.map((field) => fieldView(field, hand))}
      ${fault ? html`<p class="fault" role="status">${fault}</p>` : nothing}
    </div></section>
    <details class="group more" @toggle=${readAbout}><summary><span>What this is made of</span>${fold()}</summary>${aboutView()}</details>
    <p class="quiet">Brimbook works everything out on this device. It sends nothing anywhere.</p>`;
}

async function readAbout() {
  if (about) return;
  try {
    about = await (await fetch(new URL("../about.json", import.meta.url))).json();
  } catch {
    about = null;
  }
  repaint();
}

function aboutView() {
  const own = about?.find(({ name }) => name === "Brimbook");
  return html`${own ? html`<p>Brimbook ${own.version}</p>` : nothing}
    <ul class="about">${about?.filter((thing) => thing !== own).map(thingView)}</ul>`;
}

function thingView({ name, version, license, license_text: words }) {
  return html`<li><strong>${name}</strong> ${version} <span class="source">${license}</span>
    ${words ? html`<details class="more"><summary><span>License of ${name}</span>${fold()}</summary><p class="license">${words}</p></details>` : nothing}</li>`;
}
