// Starts the Python core inside the worker. A quicker start-up can take this file's place.

const PYODIDE = new URL("../pyodide/", import.meta.url);
const WHEELS = new URL("../python/", import.meta.url);

/** Fetch a file of the release, or say by name which one is missing. */
async function fetched(url) {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url.pathname} could not be read (${response.status}).`);
  return response;
}

/** The core's wheels as buffers, in load order. */
async function wheels() {
  const names = await (await fetched(new URL("wheels.json", WHEELS))).json();
  return Promise.all(names.map(async (name) => (await fetched(new URL(name, WHEELS))).arrayBuffer()));
}

/** The bare Python runtime. */
async function runtime() {
  const { loadPyodide } = await import(new URL("pyodide.mjs", PYODIDE).href);
  return loadPyodide({ indexURL: PYODIDE.href });
}

/**
 * Start the core.
 * @param {(step: string) => void} tell called with each step of the start-up
 * @returns {Promise<(name: string, request: string) => string>} the core's one door: JSON in, JSON out
 */
export async function start(tell) {
  tell("loading");
  const [python, archives] = await Promise.all([runtime(), wheels()]);
  tell("unpacking");
  for (const archive of archives) python.unpackArchive(archive, "wheel");
  tell("importing");
  const door = python.pyimport("brimbook.door");
  return door.ask;
}
