// How what lies open is kept: a vessel in the book, a visit beside the book, the maker's materials, or their plan.
// A holder knows the core's question for it and what goes along, and notices when another tab wrote in the meantime.

import { entryOf, keep, parsed, vesselName } from "../keep/book.js";
import { MATERIALS, keepMaterials, materialsEntry, parsedMaterials } from "../keep/materials.js";
import { PLAN, keepPlan, parsedPlan, planEntry } from "../keep/plan.js";
import { keepVisit } from "../keep/visiting.js";
import { makersOwn } from "./world.js";

const alone = (record) => ({ record, ...makersOwn() });

/** The vessels that a plan names go along with it. */
function withVessels(record) {
  const entries = record.plan.map((item) => entryOf(String(item?.id))).filter(Boolean);
  return { ...alone(record), vessels: Object.fromEntries(entries.map(({ record: vessel }) => [vessel.id, vessel])) };
}

/** What is kept as an entry {record, line, saved}: `read` and `write` reach it, `parse` makes it out of a text. */
function stored({ ask, place, read, write, parse, saved, along = alone }) {
  let mine = saved;
  const isBehind = () => (read()?.saved ?? mine) !== mine;
  return {
    ask, place, parse, isBehind, along,
    /** Whether this other tab's entry is newer. */
    isOlderThan: (entry) => entry.saved > mine,
    /** From now on this other tab's entry is the one that is changed. */
    follow: (entry) => { mine = entry.saved; },
    /** Keep what the maker did. Where another tab wrote in the meantime nothing is kept, and its entry is returned. */
    keep(record, line) {
      if (isBehind()) return read();
      mine = new Date().toISOString();
      write({ record, line, saved: mine });
      return null;
    },
    /** The core's canonical spelling is kept without counting as a change by the maker. */
    keepAnswer(record, line) {
      const kept = read();
      if (kept && kept.saved === mine) write({ ...kept, record, line });
    },
  };
}

const book = ({ record: { id }, saved }) => stored({
  ask: "work_out", place: vesselName(id), read: () => entryOf(id), write: keep, parse: parsed, saved,
});

const materials = ({ saved }) => stored({
  ask: "shelf", place: MATERIALS, read: materialsEntry, write: keepMaterials, parse: parsedMaterials, saved,
});

const plan = ({ saved }) => stored({
  ask: "shopping", place: PLAN, read: planEntry, write: keepPlan, parse: parsedPlan, saved, along: withVessels,
});

const visit = ({ token }) => ({
  ask: "work_out", place: `visit.${token}`, along: alone, parse: () => null, isBehind: () => false, isOlderThan: () => false,
  follow: () => {}, keepAnswer: () => {},
  keep(record) {
    keepVisit(token, record);
    return null;
  },
});

const HOLDERS = { book, new: book, visit, materials, plan };

/** The holder of what is laid open: {kind, record, saved, token}. */
export const holderOf = (what) => HOLDERS[what.kind](what);
