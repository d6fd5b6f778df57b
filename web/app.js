// Brimbook's page: starts the core and the first paint side by side, and goes where the address says.

import { html, render } from "./vendor/lit/lit-html.js";
import { ask, door, onDoor } from "./core/door.js";
import { firstAnswer } from "./core/first.js";
import { entryOf, isEmpty, isVesselName } from "./keep/book.js";
import { MATERIALS, materialsEntry } from "./keep/materials.js";
import { planEntry } from "./keep/plan.js";
import { showTheme } from "./keep/settings.js";
import { onOtherTab } from "./keep/store.js";
import { visitOf } from "./keep/visiting.js";
import { bookPage } from "./pages/book.js";
import { enterLots, lotsPage } from "./pages/lots.js";
import { materialsPage } from "./pages/materials.js";
import { NO_PLAN, planPage } from "./pages/plan.js";
import { renewForm, settingsPage } from "./pages/settings.js";
import { shelfPage } from "./pages/shelf.js";
import { unfoundPage } from "./pages/unfound.js";
import { vesselPage } from "./pages/vessel.js";
import { noteHandle } from "./parts/drag.js";
import { liveView } from "./parts/live.js";
import { tendLists } from "./parts/long_list.js";
import { giveWay, hooks, lay, layAside, opened, workOut } from "./parts/opened.js";
import { overView, showOver } from "./parts/over.js";
import { pad, watchFingers } from "./parts/pad.js";
import { paintWith, repaint } from "./parts/paint.js";
import { sweepFiles, tendPicks } from "./parts/picking.js";
import { watchPrinting } from "./parts/print.js";
import { remember, remembered, renameRoute, replaceRoute, route, vesselAddress } from "./parts/route.js";
import { bareSheet } from "./parts/sheet.js";
import { tendTimers, watchTimers } from "./parts/timers.js";
import { toastView } from "./parts/toast.js";
import { updateView, watchUpdates } from "./parts/update.js";
import { first, learn, makersOwn, newRecord } from "./parts/world.js";

const root = document.getElementById("page");
let screen = () => shelfPage();
let here = null;
let arrived = false;
const scrolls = new Map();
const OF_A_VESSEL = ["book", "new", "visit"];

function paint() {
  const { title, kind, bar, main, dock } = screen();
  document.title = title;
  root.dataset.pad = pad.field ? "open" : "shut";
  const keepHandle = noteHandle(root);
  render(html`<header class="bar">${bar}</header>
    <main class="page" tabindex="-1" data-screen=${kind}><div class="page-inner">${updateView()}${main}</div></main>
    <footer class="dock">${dock}</footer>${toastView()}${liveView()}${overView()}`, root);
  keepHandle();
  showOver();
  if (arrived) arrive();
  focusAdded();
  tendTimers();
  tendPicks();
  tendLists();
}

/** A screen is entered at its top, the shelf where it was left; the focus goes along for those who listen. */
function arrive() {
  arrived = false;
  const page = root.querySelector("main");
  page.scrollTop = scrolls.get(here) ?? 0;
  page.focus({ preventScroll: true });
}

function leaveScreen() {
  const page = root.querySelector("main");
  if (page) scrolls.set(here, page.scrollTop);
}

/** After one item more, its first field takes the focus. */
function focusAdded() {
  const { openAt } = opened;
  if (!openAt) return;
  const inputs = [...root.querySelectorAll(".card :is(input, select, textarea)")];
  const input = inputs.find(({ dataset, name }) => (dataset.path ?? name).startsWith(openAt));
  if (!input) return;
  opened.openAt = "";
  input.focus();
}

/** A sheet with the questions only, until the core's own arrives. */
const questions = () => bareSheet(first().sheet);

function openNew() {
  lay({ kind: "new", record: newRecord(), sheet: first().sheet });
  screen = vesselPage;
  arrived = true;
  paint();
  document.querySelector("input.reading")?.focus();
}

function openFromBook(id) {
  const entry = entryOf(id);
  if (!entry) return showUnfound("That vessel is not in the book on this device.");
  lay({ kind: "book", record: entry.record, line: entry.line, saved: entry.saved, sheet: questions() });
  return show(vesselPage);
}

function openDemo(id) {
  const demo = first().demos.find(({ record }) => record.id === id);
  if (!demo) return showUnfound("There is no such example.");
  return openVisit(`/demo/${id}`, { record: demo.record, sheet: questions(), line: demo.line });
}

function openVisit(token, { record, sheet, line }) {
  lay({ kind: "visit", token, record: visitOf(token) ?? record, sheet, line: line ?? sheet.line });
  show(vesselPage);
}

async function openLink(fragment) {
  layAside();
  show(vesselPage);
  try {
    const answer = await ask("open_link", { fragment, ...makersOwn() });
    if (location.hash.slice(1) === fragment) openVisit(fragment, answer);
  } catch (error) {
    if (location.hash.slice(1) === fragment) showUnfound(error.message);
  }
}

function showUnfound(sentence) {
  layAside();
  show(() => unfoundPage(sentence));
}

function show(page) {
  screen = page;
  arrived = true;
  repaint();
}

/** On the very first visit the question comes before the shelf. */
function start() {
  replaceRoute(isEmpty() ? "#/new" : "#/");
}

function openShelf() {
  layAside();
  show(shelfPage);
}

/** From a vessel, the way back leads there again. */
function noteWayBack(from) {
  if (from && OF_A_VESSEL.includes(opened.kind)) remember({ from: remembered().from ?? from });
}

/** The maker's own materials. */
function openMaterials(_, from) {
  noteWayBack(from);
  const { record, sheet } = first().shelf;
  lay({ kind: "materials", record, sheet: bareSheet(sheet), ...materialsEntry() });
  show(materialsPage);
}

/** What the maker plans to make. */
function openPlan(_, from) {
  noteWayBack(from);
  lay({ kind: "plan", ...NO_PLAN, ...planEntry() });
  show(planPage);
}

function openLots(lot) {
  layAside();
  enterLots(lot);
  show(lotsPage);
}

function openBook() {
  layAside();
  show(bookPage);
}

function openSettings() {
  layAside();
  renewForm();
  show(settingsPage);
}

const SCREENS = {
  start, new: openNew, vessel: openFromBook, demo: openDemo, link: openLink, materials: openMaterials, plan: openPlan,
  lots: openLots, book: openBook, settings: openSettings, shelf: openShelf,
};

function go() {
  if (location.hash === here) return repaint();
  leaveScreen();
  const from = here;
  here = location.hash;
  const { page, id } = route();
  return (SCREENS[page] ?? openShelf)(id, from);
}

/** A new vessel gets its own address with the first thing typed. */
hooks.entered = (id) => {
  renameRoute(vesselAddress(id));
  here = location.hash;
};

/** Another tab changed something: what lies open gives way to what is newer, or is worked out with it. */
function otherTab(name, text) {
  const { holder } = opened;
  const entry = text && holder?.place === name ? holder.parse(text) : null;
  if (entry && holder.isOlderThan(entry)) giveWay(entry);
  const concerns = name === MATERIALS || (opened.kind === "plan" && isVesselName(name));
  if (concerns && holder?.place !== name) workOut();
  repaint();
}

/** When the core comes (back), what lies open is worked out. Only then may other fetching begin. */
function doorChanged() {
  if (door.state === "ready" && opened.record && !opened.fresh) workOut();
  if (door.state !== "starting") {
    watchUpdates();
    sweepFiles();
  }
  repaint();
}

/** Without the build's first answer there is no question to ask, only a sentence to say. */
async function readFirst() {
  try {
    learn(await firstAnswer());
    clearShell();
    return true;
  } catch (error) {
    clearShell();
    show(() => unfoundPage(error.message));
    return false;
  }
}

/** The shell's own words go when the first screen comes. */
function clearShell() {
  root.replaceChildren();
  paintWith(paint);
}

async function begin() {
  onDoor(doorChanged);
  onOtherTab(otherTab);
  watchFingers();
  watchTimers();
  watchPrinting();
  if (await readFirst()) travel();
}

function travel() {
  showTheme();
  addEventListener("hashchange", go);
  addEventListener("popstate", go);
  go();
  // The core may have come before this screen did.
  doorChanged();
}

begin();
