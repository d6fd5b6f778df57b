// What is known before any vessel lies open: the build's first answer, and the blank for new vessels.

import { newId } from "../core/ids.js";
import { ownMaterials, ownWicks } from "../keep/materials.js";
import { madeForSettings, settings } from "../keep/settings.js";
import { today } from "./clock.js";

let known = null;

/** Take in what the build worked out. */
export function learn(answer) {
  known = answer;
}

/** The build's first answer, or null while it is still being read. */
export const first = () => known;

/** A new record with an id of its own and today's date. */
export function newRecord() {
  const blank = madeForSettings()?.blank ?? known.blank;
  return { ...structuredClone(blank), id: newId(), made_on: today() };
}

/** What goes along with every request about a vessel: how this maker reads figures, and their own materials and wicks. */
export const makersOwn = () => ({ settings: settings(), materials: ownMaterials(), wicks: ownWicks() });
