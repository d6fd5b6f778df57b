// Answers door requests under Pyodide: a line of JSON in, a line of JSON out.
//   node ask.mjs DIST
// In: {"name": "work_out", "request": {...}}. Out: the door's reply. Loads just what the page loads.
import { join } from "node:path";
import { createInterface } from "node:readline";
import { startPyodide, telling, unpackWheel, wheelNames } from "./pyodide.mjs";

async function answer(dist) {
  const pyodide = await startPyodide(dist);
  for (const name of await wheelNames(dist)) await unpackWheel(pyodide, join(dist, "python", name));
  const door = pyodide.pyimport("brimbook.door");
  for await (const line of createInterface({ input: process.stdin })) {
    const { name, request } = JSON.parse(line);
    process.stdout.write(`${door.ask(name, JSON.stringify(request))}\n`);
  }
}

const [dist] = process.argv.slice(2);
await telling(() => answer(dist));
