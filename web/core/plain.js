// The plain start: Python from its library and the wheels. Slower, and there on any engine.

import { lending } from "./lend.js";

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

/** Start Python with the core from its sources; returns Pyodide. */
export async function plainStart({ runtime, loader }, tell) {
  tell("loading");
  const { loadPyodide } = await loader;
  const archives = await wheels();
  const python = await lending(runtime, {}, () => loadPyodide({ indexURL: PYODIDE.href }));
  tell("unpacking");
  for (const archive of archives) python.unpackArchive(archive, "wheel");
  tell("importing");
  return python;
}
