// Starts the Python core inside the worker: from the memory image, or plainly where that can't be had.

import { plainStart } from "./plain.js";
import { restore } from "./restore.js";

/**
 * Start the core.
 * @param {object} begun what the worker began on its first line: runtime, pages, module, loader, image
 * @param {(step: string) => void} tell called with each step of a start that takes longer
 * @returns {Promise<{ask: (name: string, request: string) => string, slow: string}>} the core's one door,
 *   JSON in, JSON out; and why the start was slow, or an empty text
 */
export async function start(begun, tell) {
  try {
    return { ask: await restore(begun), slow: "" };
  } catch (error) {
    return { ask: await plainStart(begun, tell), slow: String(error) };
  }
}
