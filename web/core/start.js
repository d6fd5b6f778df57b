// Starts the Python core inside a worker: from the memory image, or plainly where that can't be had.

import { plainStart } from "./plain.js";
import { restore } from "./restore.js";

const withDoor = (python, slow) => ({ python, door: python.pyimport("brimbook.door"), slow });

/**
 * Start the core.
 * @param {object} begun what the worker began on its first line: runtime, pages, module, loader, image
 * @param {(step: string) => void} tell called with each step of a start that takes longer
 * @returns {Promise<{python: object, door: object, slow: string}>} Pyodide; the core's one door, whose ask
 *   takes JSON and gives JSON; and why the start was slow, or an empty text
 */
export async function start(begun, tell) {
  try {
    return withDoor(await restore(begun), "");
  } catch (error) {
    return withDoor(await plainStart(begun, tell), String(error));
  }
}
