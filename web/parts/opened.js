// What lies open, a vessel, the maker's materials or their plan: what was typed, and the newest sheet the core made of it.

import { askNewest, door } from "../core/door.js";
import { nowToMinute, today } from "./clock.js";
import { holderOf } from "./holders.js";
import { announce, takeAsKnown } from "./live.js";
import { repaint } from "./paint.js";
import { remember, remembered } from "./route.js";
import { readAt, withAt, withItem, withTexts, withoutItem } from "./record.js";
import { bareSheet, fieldsOf, isAbout, isFaulty } from "./sheet.js";
import { clearToast, toast } from "./toast.js";

const NOTHING = {
  kind: "", token: "", record: null, sheet: null, line: "", holder: null, fresh: false, fault: "",
  openCard: "", openFigure: "", rival: null, openAt: "", touched: false, moved: null,
};

const nothingOpen = () => ({ ...NOTHING, drafts: new Map(), folds: new Map() });

/** What lies open; kind is "book", "new", "visit", "materials" or "plan". */
export const opened = nothingOpen();

/** Called with the vessel's id when a new vessel enters the book. */
export const hooks = { entered: () => {} };

/** Lay something open and have it worked out: {kind, record, sheet} with line, saved and token as its kind has them. */
export function lay({ saved = "", ...what }) {
  Object.assign(opened, nothingOpen(), what, { holder: holderOf({ ...what, saved }) });
  openCard(remembered().card ?? firstUnanswered());
  workOut();
}

/** Close what lies open. */
export function layAside() {
  Object.assign(opened, nothingOpen());
}

/** What was folded by hand stays so while its card is shown. */
function openCard(id) {
  if (id !== opened.openCard) opened.folds.clear();
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
  const { record, holder } = opened;
  if (!record) return;
  try {
    const answer = await askNewest("opened", holder.ask, holder.along(record));
    if (answer && opened.record === record) hear(answer);
  } catch (error) {
    if (opened.record === record) fail(error);
  }
}

function hear({ record, sheet }) {
  const { holder, touched } = opened;
  Object.assign(opened, { record, sheet, line: sheet.line ?? "", fresh: true, fault: "" });
  holder.keepAnswer(record, opened.line);
  if (touched) announce(sheet);
  else arrive(sheet);
  openAdded(sheet);
  repaint();
}

/** The first sheet of what was just opened: where something is to be mended, that card opens. */
function arrive(sheet) {
  takeAsKnown(sheet);
  const faulty = sheet.cards.find(isFaulty);
  if (faulty && !opened.openCard) openCard(faulty.id);
}

/** What was just added comes into sight: its card and its group open, and the next painting puts the focus there. */
function openAdded(sheet) {
  const card = opened.openAt && sheet.cards.find((each) => isAbout(each, opened.openAt));
  if (!card) {
    opened.openAt = "";
    return;
  }
  openCard(card.id);
  const group = card.groups?.find((each) => isAbout(each, opened.openAt));
  if (group) opened.folds.set(group.id, true);
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

/** Replace the record after something the maker did: keep it at once, then have it worked out. */
function change(record) {
  clearToast();
  Object.assign(opened, { record, touched: true, moved: null });
  if (door.state !== "ready") dropAnswers();
  persist();
  workOut();
  repaint();
}

/** Keep the record, unless another tab wrote there in the meantime. */
function persist() {
  const { holder, record, line, kind } = opened;
  const newer = holder.keep(record, line);
  if (newer) return giveWay(newer);
  if (kind === "new") {
    opened.kind = "book";
    hooks.entered(record.id);
  }
  return undefined;
}

/** Another tab changed what lies open: show its version, and hold this one ready to come back. */
export function giveWay(entry) {
  clearToast();
  opened.rival = opened.record;
  opened.drafts.clear();
  opened.holder.follow(entry);
  Object.assign(opened, { record: entry.record, line: entry.line });
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
  change(withTexts(opened.record, { [path]: choice.value, ...choice.sets }));
}

/** Take what a row of a table offers or a file tells, with a way back; `also` is done on that way too. */
export const take = (texts, words = "Taken.", also = () => {}) => withWayBack(words, withTexts(opened.record, texts), also);

/** Put one item more on a list, and leave what lies open as it is. */
export const putOn = (list, item) => change(withItem(opened.record, list, item));

/** Write several texts, by path. */
export const write = (texts) => change(withTexts(opened.record, texts));

/** Write what moving a mark sets. All moves of one run have one way back. */
export function move(run, texts) {
  const { moved, record, holder, line } = opened;
  const start = moved?.run === run ? moved : { run, record, holder, line };
  change(withTexts(record, texts));
  opened.moved = start;
}

/** Offer the way back to before the last run of moves. */
export function offerWayBack(words) {
  const { moved } = opened;
  if (moved) toast(words, "Undo", () => putBack(moved.holder, moved.record, moved.line));
}

/** What writes the fields of what lies open. */
export const openedHand = { textAt, type, leave, choose };

/** Do what a button offers: one item more, or something taken away, with a way back. */
export function act(action) {
  if (action.append) add(action);
  else if (action.clear) withWayBack("Cleared.", withTexts(opened.record, Object.fromEntries(action.clear.map((path) => [path, ""]))));
  else removeItem(action);
}

const each = (names, text) => Object.fromEntries(names.map((name) => [name, text]));

/** The leaves that `now` and `today` name begin with what this device's clock says. */
function add({ append, value, sets = {}, now = [], today: days = [] }) {
  const before = opened.record;
  const item = { ...value, ...each(now, nowToMinute()), ...each(days, today()) };
  opened.openAt = `${append}.${(readAt(before, append) ?? []).length}.`;
  change(withTexts(withItem(before, append, item), sets));
}

/** A card that was all about the item goes with it, and the items after it move up. What it sets lies outside the list. */
function removeItem({ remove: place, sets = {} }) {
  const card = opened.sheet.cards.find(({ id }) => id === opened.openCard);
  const fields = card ? fieldsOf(card) : [];
  if (fields.length && fields.every(({ path }) => path.startsWith(`${place}.`))) openCard("");
  opened.folds.clear();
  withWayBack("Removed.", withTexts(withoutItem(opened.record, place), sets));
}

function withWayBack(words, record, also = () => {}) {
  const { holder, record: before, line } = opened;
  opened.drafts.clear();
  change(record);
  if (opened.record !== record) return;
  toast(words, "Undo", () => {
    also();
    putBack(holder, before, line);
  });
}

/** The way back also leads to what was laid aside since, but never over something newer. */
function putBack(holder, record, line) {
  if (holder.isBehind()) return toast("It was changed since, so nothing was put back.");
  if (opened.holder?.place === holder.place) return change(record);
  holder.keep(record, line);
  return repaint();
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
