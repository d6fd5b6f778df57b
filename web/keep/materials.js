// The maker's own materials and wicks: two lists, kept under one name, as {materials, wicks, saved}.
// `saved` is when the maker last changed it, so that two tabs see which is newer.

import { drop, get, put } from "./store.js";

/** The name of the materials in the device's storage. */
export const MATERIALS = "materials";
const DAMAGED = "damaged-materials";

/** The materials out of their text, as an entry {record, saved}; null when the text is damaged. */
export function parsedMaterials(text) {
  try {
    const { saved = "", ...record } = JSON.parse(text);
    const { materials, wicks = [] } = record;
    return Array.isArray(materials) && Array.isArray(wicks) ? { record: { ...record, wicks }, saved } : null;
  } catch {
    return null;
  }
}

/** The kept materials, or null while there are none that can be read. */
export function materialsEntry() {
  const text = get(MATERIALS);
  return text === null ? null : parsedMaterials(text);
}

const isDamaged = () => get(MATERIALS) !== null && !materialsEntry();

/** The maker's own materials as a list. */
export const ownMaterials = () => materialsEntry()?.record.materials ?? [];

/** The maker's own wicks as a list. */
export const ownWicks = () => materialsEntry()?.record.wicks ?? [];

/** Keep the materials. A damaged text that stood there is laid beside, so that a person can still read it. */
export function keepMaterials({ record, saved }) {
  if (isDamaged()) put(DAMAGED, get(MATERIALS));
  put(MATERIALS, JSON.stringify({ ...record, saved }));
}

/** The text of materials that cannot be read, or "". */
export const damagedMaterials = () => (isDamaged() ? get(MATERIALS) : get(DAMAGED) ?? "");

/** Forget the text that cannot be read. */
export function forgetDamaged() {
  if (isDamaged()) drop(MATERIALS);
  drop(DAMAGED);
}

/** Lay a text that cannot be read beside the materials again. */
export const putDamagedBack = (text) => put(DAMAGED, text);
