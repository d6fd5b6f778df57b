// Has the core read a file that the maker chose: one at a time, in a worker of its own. What it tells is written only
// where it belongs, and a text that the maker changed meanwhile stays as they left it.

import { read } from "../core/reading.js";
import { vesselIds } from "../keep/book.js";
import { fileKey, forgetFile, forgetOthers, keepFile, keptFile } from "../keep/files.js";
import { store } from "../keep/store.js";
import { opened, take, write } from "./opened.js";
import { repaint } from "./paint.js";
import { readAt, same } from "./record.js";
import { toast } from "./toast.js";
import { makersOwn } from "./world.js";

const BEGIN = { share: 0, says: "Getting ready" };
const STOPPED = "Stopped. Nothing was changed.";
const LEFT = "The vessel was left while its file was being read, so nothing was changed.";
const MOVED = "Molds or wells were added or removed while the file was being read, so nothing was changed. Choose it again.";

let running = null;
let told = null;
const kept = new Map();
const tried = new Set();

/** What is being read for a pick: {share, says}, or null. */
export const readingFor = ({ place }) => (running?.place === place && running.of === opened.holder?.place ? running.progress : null);

/** What came of the last reading for a pick, until its entry is changed: {says, isFault}, or null. */
export function toldFor({ place }) {
  const isHere = told?.place === place && told.of === opened.holder?.place;
  return isHere && same(told.entry, entryAt(place)) ? told : null;
}

const entryAt = (place) => readAt(opened.record, place) ?? {};

/** Only a vessel of the book has files kept: a visit may be another maker's. */
const keyOf = ({ keep, place }) => (keep && opened.kind !== "visit" ? fileKey(opened.record.id, place) : "");

/** Whether this device keeps a pick's file. */
export const isKept = (pick) => Boolean(kept.get(keyOf(pick)));

function tell(place, of, says, isFault = false) {
  told = { place, of, says, isFault, entry: entryAt(place) };
  repaint();
}

/** Have a file read that the maker chose; what was being read before gives way. */
export function pickFile(pick, file) {
  if (file.size > pick.most_bytes) return tell(pick.place, opened.holder.place, pick.too_large, true);
  return run(pick, file, (answer, before) => taken(pick, file, answer, before));
}

async function run(pick, file, finish) {
  running?.stop.abort();
  const { holder, record } = opened;
  const mine = { place: pick.place, of: holder.place, progress: BEGIN, stop: new AbortController() };
  running = mine;
  told = null;
  repaint();
  try {
    const answer = await read({
      name: pick.reading, file, request: { record, ...makersOwn(), place: pick.place, name: file.name }, signal: mine.stop.signal,
      onProgress: (progress) => show(mine, progress),
    });
    if (running === mine) finish(answer, record);
  } catch (error) {
    if (running === mine) tell(mine.place, mine.of, error.message, true);
  }
  if (running !== mine) return;
  running = null;
  repaint();
}

function show(mine, progress) {
  mine.progress = progress;
  repaint();
}

/** Stop reading at the maker's wish. */
export function stopReading() {
  const { place, of, stop } = running;
  running = null;
  stop.abort();
  tell(place, of, STOPPED);
}

/** The list that a place lies in must be as long as it was, or the place may be another's now. */
const isWhereItWas = ({ place }, before) => {
  const [list] = place.split(".");
  return readAt(opened.record, list)?.length === readAt(before, list)?.length;
};

/** What was read, without the texts that the maker changed meanwhile. */
const unchanged = (sets, before) => Object.fromEntries(
  Object.entries(sets).filter(([path]) => (readAt(opened.record, path) ?? "") === (readAt(before, path) ?? "")));

function taken(pick, file, { sets, says }, before) {
  if (!isWhereItWas(pick, before)) return toast(MOVED);
  const key = keyOf(pick);
  const last = kept.get(key);
  take(unchanged(sets, before), `${file.name} was read.`, () => hold(key, last));
  hold(key, file);
  return tell(pick.place, opened.holder.place, says);
}

/** What was read another way follows from what the maker just changed, so it needs no way back of its own. */
function takenAnew(pick, { sets, says }, before) {
  if (!isWhereItWas(pick, before)) return;
  write(unchanged(sets, before));
  tell(pick.place, opened.holder.place, says);
}

/** Keep this file under a key, or none. */
function hold(key, file) {
  if (!key) return;
  kept.set(key, file);
  if (file) keepFile(key, file);
  else forgetFile(key);
}

/** Forget a pick's file, with a way back; said only when it is gone from the device. */
export async function forget(pick) {
  const key = keyOf(pick);
  const file = kept.get(key);
  await forgetFile(key);
  kept.set(key, null);
  toast("The file is no longer kept here. What was read from it stays.", "Undo", () => putBack(key, file));
  repaint();
}

function putBack(key, file) {
  hold(key, file);
  repaint();
}

/** After each painting: know which files are kept, read those anew whose reading no longer fits, and stop for a vessel that was left. */
export function tendPicks() {
  if (running && running.of !== opened.holder?.place) abandon();
  if (!opened.record || !opened.sheet) return;
  for (const pick of opened.sheet.cards.flatMap(({ picks = [] }) => picks)) tend(pick, keyOf(pick));
}

function abandon() {
  running.stop.abort();
  running = null;
  toast(LEFT);
}

function tend(pick, key) {
  if (!key) return;
  if (!kept.has(key)) learn(key);
  // Once only: where another reading does not fit either, the maker chooses.
  if (!pick.again && opened.fresh) tried.delete(key);
  const file = kept.get(key);
  if (!pick.again || !opened.fresh || running || tried.has(key) || !file || file.name !== pick.name) return;
  tried.add(key);
  run(pick, file, (answer, before) => takenAnew(pick, answer, before));
}

async function learn(key) {
  kept.set(key, null);
  const file = await keptFile(key);
  if (!file || kept.get(key)) return;
  kept.set(key, file);
  repaint();
}

/** Forget the files of vessels that are gone for good. */
export function sweepFiles() {
  if (store.sound) forgetOthers(vesselIds());
}
