// The vessel that lies open: what the maker typed, and the newest sheet the core made of it.

import { askNewest, door } from "../core/door.js";
import { entryOf, keep } from "../keep/book.js";
import { settings } from "../keep/settings.js";
import { keepVisit } from "../keep/visiting.js";
import { announce, takeAsKnown } from "./live.js";
import { repaint } from "./paint.js";
import { remember, remembered } from "./route.js";
import { readAt, withAt, withItem, withoutItem } from "./record.js";
import { bareSheet } from "./sheet.js";
import { clearToast, toast } from "./toast.js";

const NOTHING = {
  kind: "", token: "", record: null, sheet: null, line: "", saved: "", fresh: false, fault: "",
  openCard: "", openFigure: "", drafts: new Map(), rival: null, openAt: "", touched: false,
};

/** The vessel that lies open; kind is "book", "new" or "visit". */
export const opened = { ...NOTHING };

/** Called with the vessel's id when a new vessel enters the book. */
export const hooks = { entered: () => {} };

/** Lay a vessel open and have it worked out. */
export function lay(what) {
  Object.assign(opened, NOTHING, { drafts: new Map() }, what);
  openCard(remembered().card ?? firstUnanswered());
  workOut();
}

/** Close what lies open. */
export function layAside() {
  Object.assign(opened, NOTHING, { drafts: new Map() });
}

function openCard(id) {
  opened.openCard = id;
  remember({ card: id });
}

/** The first card is opened by itself while it has no answer; else all lie closed, as figures. */
function firstUnanswered() {
  const first = opened.sheet?.cards.at(0);
  const path = first?.fields.at(0)?.path;
  return first && path && !readAt(opened.record, path) ? first.id : "";
}

/** Ask the core for the newest sheet. An overtaken answer changes nothing. */
export async function workOut() {
  const { record } = opened;
  if (!record) return;
  try {
    const answer = await askNewest("work_out", "work_out", { record, settings: settings() });
    if (answer && opened.record === record) take(answer);
  } catch (error) {
    if (opened.record === record) fail(error);
  }
}

function take({ record, sheet }) {
  Object.assign(opened, { record, sheet, line: sheet.line, fresh: true, fault: "" });
  if (opened.kind === "book") keepAnswer();
  if (opened.touched) announce(sheet);
  else arrive(sheet);
  repaint();
}

/** The first sheet of a vessel just opened: where something is to be mended, that card opens. */
function arrive(sheet) {
  takeAsKnown(sheet);
  const faulty = sheet.cards.find(({ fields, more }) => [...fields, ...more].some(({ fault }) => fault));
  if (faulty && !opened.openCard) openCard(faulty.id);
}

/** Figures that do not belong to what was typed must not stay on the page. */
function dropAnswers() {
  opened.sheet = opened.sheet && bareSheet(opened.sheet);
  opened.fresh = false;
}

function fail(error) {
  dropAnswers();
  opened.fault = door.state === "ready" ? error.message : "";
  repaint();
}

/** The core's canonical spelling goes into the book without counting as a change by the maker. */
function keepAnswer() {
  const { record, line, saved } = opened;
  const kept = entryOf(record.id);
  if (kept && kept.saved === saved) keep({ ...kept, record, line });
}

/** Replace the record after something the maker did: keep it at once, then have it worked out. */
function change(record) {
  clearToast();
  Object.assign(opened, { record, touched: true });
  if (door.state !== "ready") dropAnswers();
  if (opened.kind === "visit") keepVisit(opened.token, record);
  else persist();
  workOut();
  repaint();
}

/** Write to the book, unless another tab wrote there in the meantime. */
function persist() {
  const kept = entryOf(opened.record.id);
  if (kept && opened.kind === "book" && kept.saved !== opened.saved) return giveWay(kept);
  opened.saved = new Date().toISOString();
  keep({ record: opened.record, line: opened.line, saved: opened.saved });
  if (opened.kind === "new") {
    opened.kind = "book";
    hooks.entered(opened.record.id);
  }
  return undefined;
}

/** Another tab changed this vessel: show its version, and hold this one ready to come back. */
export function giveWay(entry) {
  opened.rival = opened.record;
  opened.drafts.clear();
  Object.assign(opened, { record: entry.record, line: entry.line, saved: entry.saved });
  workOut();
  repaint();
}

/** Take this tab's version after all. */
export function useRival() {
  const mine = opened.rival;
  opened.rival = null;
  change(mine);
}

/** Stay with the other tab's version. */
export function dropRival() {
  opened.rival = null;
  repaint();
}

/** What the maker types into a field; the text is kept as typed while the field has the focus. */
export function type(path, text) {
  opened.drafts.set(path, text);
  change(withAt(opened.record, path, text));
}

/** Leave a field: from now on it shows the core's spelling. */
export function leave(path) {
  if (opened.drafts.delete(path)) repaint();
}

/** The text that a field shows. */
export function textAt(path, otherwise = "") {
  return opened.drafts.get(path) ?? readAt(opened.record, path) ?? otherwise;
}

/** Take one of the offered choices, with everything it sets. */
export function choose(path, choice) {
  const sets = Object.entries(choice.sets ?? {});
  change([[path, choice.value], ...sets].reduce((record, [at, text]) => withAt(record, at, text), opened.record));
}

/** What writes the fields of the vessel that lies open. */
export const vesselHand = { textAt, type, leave, choose };

/** Do what a card's button offers: one item more, or one less with a way back. */
export function act(action) {
  const before = opened.record;
  if (action.append) {
    opened.openAt = `${action.append}.${(readAt(before, action.append) ?? []).length}.`;
    return change(withItem(before, action.append, action.value));
  }
  change(withoutItem(before, action.remove));
  return toast("Removed.", "Undo", () => change(before));
}

/** Open one card and close the others; the open one closes. */
export function toggleCard(id) {
  openCard(opened.openCard === id ? "" : id);
  repaint();
}

/** Open a figure's working, or close it. */
export function toggleFigure(key) {
  opened.openFigure = opened.openFigure === key ? "" : key;
  repaint();
}

/** Go to a figure wherever it stands: its card opens and its working shows. */
export function showFigure(key) {
  const card = opened.sheet.cards.find(({ figures }) => figures.some((figure) => figure.key === key));
  if (!card) return;
  openCard(card.id);
  opened.openFigure = key;
  repaint();
}
