// Finding vessels by what the maker wrote: the name, the notes, and the lots of batches and of what went into them.

const words = new WeakMap();

const list = (thing) => (Array.isArray(thing) ? thing : []);
const text = (thing) => (typeof thing === "string" ? thing : "");
const lotsOf = (batch) => [batch?.lot, ...list(batch?.used).map((used) => used?.lot)];

/** All that a vessel is found by, in small letters; made once for each entry. */
function wordsOf(entry) {
  if (!words.has(entry)) {
    const { name, notes, own_notes: own, batches } = entry.record;
    words.set(entry, [name, notes, own, ...list(batches).flatMap(lotsOf)].map(text).join("\n").toLowerCase());
  }
  return words.get(entry);
}

/** The entries in which every word of a text stands. */
export function search(entries, sought) {
  const parts = sought.toLowerCase().split(" ").filter(Boolean);
  return parts.length ? entries.filter((entry) => parts.every((part) => wordsOf(entry).includes(part))) : entries;
}
