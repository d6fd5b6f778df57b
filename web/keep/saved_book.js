// When the whole book was last saved as a file, so that the maker knows how old that file is.

import { get, put } from "./store.js";

const SAVED = "book-saved";

/** When that was, {at, shown}: for comparing with vessels, and on the maker's own clock; null if never. */
export function lastSaved() {
  try {
    return JSON.parse(get(SAVED) ?? "null");
  } catch {
    return null;
  }
}

/** Remember that it was saved. */
export const noteSaved = (saved) => put(SAVED, JSON.stringify(saved));
