// The proof that what ships loads: micropip installs the page's wheels in the page's
// Pyodide, and the core answers "first". Prints the answer.
//   node prove.mjs DIST WHEEL-OF-MICROPIP WHEEL-OF-PACKAGING
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { startPyodide, telling, unpackWheel, wheelNames } from "./pyodide.mjs";

const INSTALL_AND_ASK = `
import micropip
await micropip.install(addresses.split("\\n"), deps=False)
from brimbook import door
door.ask("first", "{}")
`;

async function prove(dist, installers) {
  const pyodide = await startPyodide(dist);
  for (const path of installers) await unpackWheel(pyodide, path);
  pyodide.FS.mkdir("/wheels");
  const addresses = [];
  for (const name of await wheelNames(dist)) {
    pyodide.FS.writeFile(`/wheels/${name}`, await readFile(join(dist, "python", name)));
    addresses.push(`emfs:/wheels/${name}`);
  }
  pyodide.globals.set("addresses", addresses.join("\n"));
  process.stdout.write(`${await pyodide.runPythonAsync(INSTALL_AND_ASK)}\n`);
}

const [dist, ...installers] = process.argv.slice(2);
await telling(() => prove(dist, installers));
