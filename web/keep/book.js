// The maker's book: one entry a vessel, {record, line, saved}. What the maker said is the truth;
// `line` is only the shelf's remembered answer, and `saved` is when the maker last changed the record.

import { drop, get, names, put } from "./store.js";

const VESSEL = "vessel.";
const TRASH = "trash.";
const TRASH_HOLDS = 20;

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

function all(beginning) {
  return names(beginning).map((id) => ({ id, entry: parsed(get(`${beginning}${id}`)) }));
}

/** Every vessel in the book, newest first. */
export function vessels() {
  return newestFirst(all(VESSEL).map(({ entry }) => entry).filter(Boolean));
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
  const text = get(`${VESSEL}${id}`);
  return text === null ? null : parsed(text);
}

/** The damaged text of an entry, to be copied out by hand. */
export function damagedText(id) {
  return get(`${VESSEL}${id}`);
}

/** Write an entry under its record's id. */
export function keep(entry) {
  put(`${VESSEL}${entry.record.id}`, JSON.stringify(entry));
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
  const { removed: when, ...entry } = parsed(get(`${TRASH}${id}`)) ?? {};
  if (!when || entryOf(id)) return;
  keep(entry);
  drop(`${TRASH}${id}`);
}

/** The name of a vessel's entry in the device's storage. */
export const vesselName = (id) => `${VESSEL}${id}`;
