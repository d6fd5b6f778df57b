// Starts the Pyodide of a built page in Node, just as the page does.
import { readFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

/** Pyodide from `dist`/pyodide, bare: none of the page's wheels yet. */
export async function startPyodide(dist) {
  const folder = resolve(dist, "pyodide");
  const { loadPyodide } = await import(pathToFileURL(join(folder, "pyodide.mjs")).href);
  return loadPyodide({ indexURL: `${folder}/` });
}

/** The names of the page's wheels, in the order in which the page unpacks them. */
export async function wheelNames(dist) {
  return JSON.parse(await readFile(join(dist, "python", "wheels.json"), "utf8"));
}

/** Unpacks the wheel at `path` into Pyodide. */
export async function unpackWheel(pyodide, path) {
  pyodide.unpackArchive(new Uint8Array(await readFile(path)), "wheel");
}

/**
 * Does the work; a failure is told by its trace and, last, its reason alone.
 * Left to itself Node would print the line of source it failed at: all of Pyodide.
 */
export async function telling(work) {
  try {
    await work();
  } catch (error) {
    const reason = String(error.message ?? error).trim().split("\n").at(-1);
    process.stderr.write(`${error.stack ?? ""}\n${reason}\n`);
    process.exitCode = 1;
  }
}
