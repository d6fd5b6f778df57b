// The maker's book: one entry a vessel, {record, line, saved, stamps}. What the maker said is the truth;
// `line` is only the shelf's remembered answer, `saved` is when the maker last changed the record, and `stamps` holds for
// each device when it did so last, so that two books can tell whose vessel is newer. An entry is read once and then known
// by its text.

import { device } from "./device.js";
import { drop, get, names, put } from "./store.js";

const VESSEL = "vessel.";
const TRASH = "trash.";
const TRASH_HOLDS = 20;

const known = new Map();
let listed = { pieces: [], entries: [] };

/** An entry out of its text; null when the text is damaged. */
export function parsed(text) {
  try {
    const entry = JSON.parse(text);
    return typeof entry?.record?.id === "string" ? entry : null;
  } catch {
    return null;
  }
}

function newestFirst(entries) {
  return entries.sort((one, other) => String(other.saved).localeCompare(String(one.saved)));
}

/** What stands under a name: {id, text, entry}. The same text is the same piece. */
function pieceAt(beginning, id) {
  const name = `${beginning}${id}`;
  const text = get(name);
  const before = known.get(name);
  if (before?.text === text) return before;
  const made = { id, text, entry: parsed(text) };
  known.set(name, made);
  return made;
}

const all = (beginning) => names(beginning).map((id) => pieceAt(beginning, id));

/** Every vessel in the book, newest first; the same list while nothing changes. */
export function vessels() {
  const pieces = all(VESSEL);
  const { pieces: before } = listed;
  if (pieces.length !== before.length || pieces.some((piece, place) => piece !== before[place])) {
    listed = { pieces, entries: newestFirst(pieces.map(({ entry }) => entry).filter(Boolean)) };
  }
  return listed.entries;
}

/** The vessels as they are kept: their ids, and each one's entry as one line of text. */
export function vesselTexts() {
  const pieces = all(VESSEL).filter(({ entry }) => entry);
  return { ids: pieces.map(({ entry }) => entry.record.id), texts: pieces.map(({ text, entry }) => (text.includes("\n") ? JSON.stringify(entry) : text)) };
}

/** The ids of entries that cannot be read. They are left as they are. */
export function damaged() {
  return all(VESSEL).filter(({ entry }) => !entry).map(({ id }) => id);
}

/** The ids of all vessels that are there or could come back: damaged ones and those in the trash too. */
export const vesselIds = () => [...names(VESSEL), ...names(TRASH)];

/** Whether nothing at all has been kept yet. */
export function isEmpty() {
  return !names(VESSEL).length;
}

/** The entry of a vessel, or null. */
export function entryOf(id) {
  return get(`${VESSEL}${id}`) === null ? null : pieceAt(VESSEL, id).entry;
}

/** The damaged text of an entry, to be copied out by hand. */
export function damagedText(id) {
  return get(`${VESSEL}${id}`);
}

/** Write an entry under its record's id just as it is, such as one of another device. */
export function lay(entry) {
  put(`${VESSEL}${entry.record.id}`, JSON.stringify(entry));
}

/** When each device last changed a vessel; of an older entry only the moment is known. */
export const stampsOf = (entry) => entry?.stamps ?? (entry?.saved ? { "": entry.saved } : {});

/** Moments of one kind sort as texts. A clock that was set back must not undo a later stamp. */
const later = (one, other) => (one > other ? one : other);

/** Write an entry under its record's id. One that was saved anew bears this device's stamp. */
export function keep(entry) {
  const before = entryOf(entry.record.id);
  const stamps = { ...stampsOf(before), ...entry.stamps };
  if (entry.saved !== before?.saved) stamps[device()] = later(stamps[device()] ?? "", entry.saved);
  lay({ ...entry, stamps });
}

/** Take a vessel out of the book and lay it in the trash. */
export function remove(id) {
  const entry = entryOf(id);
  if (!entry) return;
  put(`${TRASH}${id}`, JSON.stringify({ ...entry, removed: new Date().toISOString() }));
  drop(`${VESSEL}${id}`);
  for (const { record } of removed().slice(TRASH_HOLDS)) drop(`${TRASH}${record.id}`);
}

/** What was removed lately, newest removal first. */
export function removed() {
  const entries = all(TRASH).map(({ entry }) => entry).filter(Boolean);
  return entries.sort((one, other) => String(other.removed).localeCompare(String(one.removed)));
}

/** Put a removed vessel back. */
export function putBack(id) {
  const { removed: when, ...entry } = pieceAt(TRASH, id).entry ?? {};
  if (!when || entryOf(id)) return;
  lay(entry);
  drop(`${TRASH}${id}`);
}

/** Whether a vessel's entry stands under this name in the device's storage. */
export const isVesselName = (name) => name.startsWith(VESSEL);

/** The name of a vessel's entry in the device's storage. */
export const vesselName = (id) => `${VESSEL}${id}`;
