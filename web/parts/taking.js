// Takes what the maker chose out of a file into the book, and knows the way back.

import { ask } from "../core/door.js";
import { newId } from "../core/ids.js";
import { entryOf, keep, lay, stampsOf, vesselName } from "../keep/book.js";
import { MATERIALS, keepMaterials, materialsEntry } from "../keep/materials.js";
import { PLAN, keepPlan, planEntry } from "../keep/plan.js";
import { SETTINGS, keepSettings } from "../keep/settings.js";
import { noteWritten, snapshot } from "../keep/snapshot.js";
import { same } from "./record.js";

const NAMES = { materials: [MATERIALS], wicks: [MATERIALS], plan: [PLAN], settings: SETTINGS };

const now = () => new Date().toISOString();

/**
 * One that was changed in the file itself bears no other stamps than ours, so this device vouches for it. And what takes the
 * place of ours is always saved later, for by that another tab, where ours lies open, notices it.
 */
function takeFile({ entry }) {
  const { saved, stamps, record } = entry;
  const mine = entryOf(record.id);
  const isKnown = Boolean(saved) && !(mine && same(stamps, stampsOf(mine)));
  if (isKnown) lay(mine && !(saved > mine.saved) ? { ...entry, saved: now() } : entry);
  else keep({ ...entry, saved: now() });
}

/** A copy that lies in the book already and was changed there since is not written over. */
function takeBoth({ copy }) {
  const before = entryOf(copy.record.id);
  const id = before && !same(before.record, copy.record) ? newId() : copy.record.id;
  keep({ ...copy, record: { ...copy.record, id }, saved: now() });
  return id;
}

/** Where both were changed and ours was chosen, that is settled: the file's is older from now on. */
function keepMine({ id, entry, state }) {
  if (state === "conflict") lay({ ...entryOf(id), stamps: entry.stamps });
}

const shelfWith = (part) => keepMaterials({ record: { materials: [], wicks: [], ...materialsEntry()?.record, ...part }, saved: now() });

const TAKE_OWN = {
  materials: (value) => shelfWith({ materials: value }),
  wicks: (value) => shelfWith({ wicks: value }),
  plan: (value) => keepPlan({ record: { ...planEntry()?.record, plan: value }, saved: now() }),
  settings: async (value) => {
    const made = await ask("settings", { settings: value });
    keepSettings(made.settings, made);
  },
};

/** Whether a vessel is as it was when the file was read: {id, saved} with saved null where it was not there. */
const isAsItWas = ({ id }, seen) => (entryOf(id)?.saved ?? null) === (seen.get(id) ?? null);

/** When each vessel of a preview was saved last, to notice what changes while the maker chooses. */
export const seenNow = (rows) => new Map(rows.map(({ id }) => [id, entryOf(id)?.saved ?? null]));

/** The names that a row may write under. */
const namesOf = ({ id, copy }) => [vesselName(id), ...(copy ? [vesselName(copy.record.id)] : [])];

/**
 * Take in what was chosen.
 * @param {object[]} rows of the vessels, each with what was `chosen`: "take", "keep", "both" or "" for not yet
 * @param {object[]} own rows of the maker's own things, each with what was chosen
 * @param {Map<string, string|null>} seen as seenNow told it
 * @returns {Promise<{taken: object[], own: object[], passed: object[], shots: object[]}>} what was taken, what was passed over for
 *   having changed since, and what stood there before
 */
export async function takeIn(rows, own, seen) {
  const passed = rows.filter((row) => !isAsItWas(row, seen));
  const others = rows.filter((row) => !passed.includes(row));
  const ownTaken = own.filter(({ chosen }) => chosen === "take");
  const shots = snapshot([...new Set([...others.flatMap(namesOf), ...ownTaken.flatMap(({ key }) => NAMES[key])])]);
  const made = others.map(takeRow).filter(Boolean);
  for (const { key, value } of ownTaken) await TAKE_OWN[key](value);
  const added = made.map(vesselName).filter((name) => !shots.some((shot) => shot.name === name));
  const all = [...shots, ...added.map((name) => ({ name, text: null, written: null }))];
  return { taken: others.filter(({ chosen }) => chosen === "take" || chosen === "both"), own: ownTaken, passed, shots: noteWritten(all) };
}

/** The id of the vessel that was put into the book beside others, if one was. */
function takeRow(row) {
  if (row.chosen === "both") return takeBoth(row);
  if (row.chosen === "take") takeFile(row);
  if (row.chosen === "keep") keepMine(row);
  return "";
}
