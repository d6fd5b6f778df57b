// The stock start, as Pyodide's own guide has it: load the runtime, unpack the wheels, import the core.

import { loadPyodide } from "../pyodide/pyodide.mjs";

const WHEELS = new URL("../python/", import.meta.url);

async function start() {
  const python = await loadPyodide({ indexURL: new URL("../pyodide/", import.meta.url).href });
  const names = await (await fetch(new URL("wheels.json", WHEELS))).json();
  const archives = await Promise.all(names.map(async (name) => (await fetch(new URL(name, WHEELS))).arrayBuffer()));
  for (const archive of archives) python.unpackArchive(archive, "wheel");
  return python.pyimport("brimbook.door").ask;
}

const opened = start();

async function answer({ id, ask: name, with: request }) {
  try {
    const ask = await opened;
    postMessage({ id, reply: ask(name, JSON.stringify(request)) });
  } catch (error) {
    const fault = { sentence: "The stock core stopped.", detail: String(error) };
    postMessage({ id, reply: JSON.stringify({ fault }), fatal: true });
  }
}

addEventListener("message", (event) => answer(event.data));

opened.then(
  () => postMessage({ step: "ready", slow: "" }),
  (error) => postMessage({ step: "failed", detail: String(error) }),
);
