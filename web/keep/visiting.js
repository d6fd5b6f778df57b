// Changes made to a vessel that was opened from a link or as an example, before it is kept.
// They never touch the book. A visit that was only looked at leaves nothing behind.

import { drop, get, put } from "./store.js";

const VISIT = "visiting.";

/** The record as changed during a visit, or null when nothing was changed. */
export function visitOf(token) {
  try {
    return JSON.parse(get(`${VISIT}${token}`) ?? "null");
  } catch {
    return null;
  }
}

/** Remember a visit's changed record. */
export function keepVisit(token, record) {
  put(`${VISIT}${token}`, JSON.stringify(record));
}

/** Forget a visit. */
export function endVisit(token) {
  drop(`${VISIT}${token}`);
}
