// The whole book for the core: its entries go along as they are kept, each on a line of its own, behind the request itself.

import { vesselTexts } from "./book.js";
import { ownMaterials, ownWicks } from "./materials.js";
import { planned } from "./plan.js";
import { settings } from "./settings.js";

/** A request with the whole book, and with the text of a file behind it where there is one. */
export function withBook(request, file) {
  const { ids, texts } = vesselTexts();
  const first = JSON.stringify({ ...request, entries: [], texts: texts.length, marks: ids });
  return [first, ...texts, ...(file === undefined ? [] : [file])].join("\n");
}

/** What the maker keeps besides vessels. */
export const ownThings = () => ({ materials: ownMaterials(), wicks: ownWicks(), plan: planned(), settings: settings() });
