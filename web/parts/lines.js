// The shelf's lines of vessels that came from a file without one, worked out while nobody waits for an answer.

import { askIfIdle, door } from "../core/door.js";
import { entryOf, lay } from "../keep/book.js";
import { repaint } from "./paint.js";
import { makersOwn } from "./world.js";

const PAUSE = 300;
const tried = new WeakSet();
let clock = 0;

/** Have the lines made that are missing among these entries, one after the other. */
export function tendLines(entries) {
  clearTimeout(clock);
  const entry = door.state === "ready" && entries.find((each) => !each.line && !tried.has(each));
  if (entry) clock = setTimeout(make, PAUSE, entry);
}

/** What was changed meanwhile gets its line when it is opened. */
async function make(entry) {
  try {
    const answer = await askIfIdle("work_out", { record: entry.record, ...makersOwn() });
    if (answer) tried.add(entry);
    if (answer?.sheet.line && entryOf(entry.record.id) === entry) lay({ ...entry, line: answer.sheet.line });
  } catch {
    tried.add(entry);
  }
  repaint();
}
