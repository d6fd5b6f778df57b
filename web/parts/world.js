// What is known before any vessel lies open: the build's first answer, and the blank for new vessels.

import { newId } from "../core/ids.js";
import { madeForSettings } from "../keep/settings.js";

let known = null;

/** Take in what the build worked out. */
export function learn(answer) {
  known = answer;
}

/** The build's first answer, or null while it is still being read. */
export const first = () => known;

/** Two digits for each month and day that a calendar has, so that a date needs no sum. */
const TWO = (text) => text.padStart(2, "0");
const MONTHS = ["01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"];

/** Today on this device, as "YYYY-MM-DD". */
export function today() {
  const now = new Date();
  return `${now.getFullYear()}-${MONTHS.at(now.getMonth())}-${TWO(`${now.getDate()}`)}`;
}

/** A new record with an id of its own and today's date. */
export function newRecord() {
  const blank = madeForSettings()?.blank ?? known.blank;
  return { ...structuredClone(blank), id: newId(), made_on: today() };
}
