// What the maker plans to make: {plan: [{id, count}], saved}, kept under one name.

import { get, put } from "./store.js";

/** The name of the plan in the device's storage. */
export const PLAN = "plan";
const DAMAGED = "damaged-plan";

/** The plan out of its text, as an entry {record, saved}; null when the text is damaged. */
export function parsedPlan(text) {
  try {
    const { saved = "", ...record } = JSON.parse(text);
    return Array.isArray(record.plan) ? { record, saved } : null;
  } catch {
    return null;
  }
}

/** The kept plan, or null while there is none that can be read. */
export function planEntry() {
  const text = get(PLAN);
  return text === null ? null : parsedPlan(text);
}

/** What is planned, as a list. */
export const planned = () => planEntry()?.record.plan ?? [];

/** Keep the plan. A damaged text that stood there is laid beside, so that a person can still read it. */
export function keepPlan({ record, saved }) {
  const before = get(PLAN);
  if (before !== null && !parsedPlan(before)) put(DAMAGED, before);
  put(PLAN, JSON.stringify({ ...record, saved }));
}
