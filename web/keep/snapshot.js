// What stood under some names before they were written, so that all of them can be put back together.

import { drop, get, put } from "./store.js";

const savedIn = (text) => {
  try {
    return JSON.parse(text)?.saved ?? text;
  } catch {
    return text;
  }
};

/** The texts under these names now. */
export const snapshot = (names) => names.map((name) => ({ name, text: get(name), written: null }));

/** Note what was written since, so that what changes after it is noticed. */
export const noteWritten = (shots) => shots.map((shot) => ({ ...shot, written: get(shot.name) }));

/** The core's spelling alone is no change: what was saved anew by the maker is. */
const isUntouched = ({ name, written }) => savedIn(get(name)) === savedIn(written);

/** Put back what stood there. What was changed since stays; whether anything had to. */
export function restore(shots) {
  const [untouched, changed] = [shots.filter(isUntouched), shots.filter((shot) => !isUntouched(shot))];
  for (const { name, text } of untouched) {
    if (text === null) drop(name);
    else put(name, text);
  }
  return changed.length > 0;
}
