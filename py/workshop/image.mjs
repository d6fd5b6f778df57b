// Makes the memory image: Python with the whole core imported and used once, as the pages of
// memory in which it differs from a fresh instance.
//   node image.mjs DIST OUT
// Writes OUT/pages.bin; OUT/image.json: Pyodide's header of it, where its pages go, and which of the core's modules it
// holds; and OUT/site.zip: the page's wheels, compiled.
// Restoring it: web/core/restore.js.
import { readFile, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { startPyodide, telling, unpackWheel, wheelNames } from "./pyodide.mjs";

const PAGE = 256;
const SITE = "/lib/python3.14/site-packages";
const inside = (name) => readFile(new URL(`./inside/${name}`, import.meta.url), "utf8");

/** The standard library and the wheels, compiled: two zip files as bytes. */
async function compiledLibrary(dist) {
  const python = await startPyodide(dist);
  for (const name of await wheelNames(dist)) await unpackWheel(python, join(dist, "python", name));
  python.FS.mkdir("/out");
  python.runPython(await inside("compile_library.py"));
  python.globals.get("compile_library")("/lib/python314.zip", python.FS.cwd(), "/out");
  return ["/out/stdlib.zip", "/out/site.zip"].map((path) => python.FS.readFile(path));
}

/** Pyodide's own files and settings, with a wrapper round the making of its module. */
async function loader(dist, stdLibURL) {
  const folder = resolve(dist, "pyodide");
  const [{ loadPyodide }, { default: create }] = await Promise.all(
    ["pyodide.mjs", "pyodide.asm.mjs"].map((name) => import(pathToFileURL(join(folder, name)).href)));
  // The same hash seed at each build keeps two images nearly the same.
  const settings = { indexURL: `${folder}/`, stdLibURL, env: { PYTHONHASHSEED: "0" } };
  return (wrap, more) => loadPyodide({ ...settings, ...more, createPyodideModule: (made) => wrap(create, made) });
}

/** Lets memory stop growing while what is free in it is filled. */
function steadied() {
  const state = { full: false };
  const wrap = (create, made) => {
    const instantiate = made.instantiateWasm;
    made.instantiateWasm = (imports, done) => {
      const grow = imports.env.emscripten_resize_heap;
      imports.env.emscripten_resize_heap = (size) => (state.full ? 0 : grow(size));
      return instantiate(imports, done);
    };
    return create(made);
  };
  return { state, wrap };
}

/** Fills all free memory with zeros: what was freed would only make the image larger. */
function zeroFree({ _malloc, _free, HEAPU8 }) {
  const taken = [];
  for (let size = 4 << 20; size >= 8; size >>= 1) {
    for (let at = _malloc(size); at !== 0; at = _malloc(size)) {
      HEAPU8.fill(0, at, at + size);
      taken.push(at);
    }
  }
  for (const at of taken) _free(at);
}

/**
 * Places in memory that belong to the engine, by their index among its 32-bit words: a start must
 * leave there what it found. Python keeps one such pointer, to a helper that only some engines allow.
 */
function engineWords({ HEAP32, __PyRuntime, __PyEM_EMSCRIPTEN_TRAMPOLINE_OFFSET }) {
  return [(__PyRuntime + HEAP32[__PyEM_EMSCRIPTEN_TRAMPOLINE_OFFSET / 4]) / 4];
}

/** The whole memory of a Python that has done everything once, behind Pyodide's own header. */
async function snapshot(load, site) {
  const { state, wrap } = steadied();
  const python = await load(wrap, { _makeSnapshot: true });
  python.unpackArchive(site, "zip", { extractDir: SITE });
  python.runPython(await inside("exercise.py"));
  const length = python._module.HEAPU8.length;
  state.full = true;
  zeroFree(python._module);
  state.full = false;
  if (python._module.HEAPU8.length !== length) throw new Error("memory grew while the image was made");
  const modules = python.globals.get("loaded").split(" ");
  return { whole: python.makeMemorySnapshot(), words: engineWords(python._module), modules };
}

/** Memory as it is once it has grown: what is new is all zeros. */
function grown(memory, length) {
  const whole = new Uint8Array(length);
  whole.set(memory);
  return whole;
}

/** A fresh instance's memory as it comes from the file, and after its constructors ran. */
async function fresh(load, header) {
  const memory = {};
  const enough = new Error("enough");
  const wrap = async (create, made) => {
    const instantiate = made.instantiateWasm;
    made.instantiateWasm = (imports, done) => instantiate(imports, (instance, module) => {
      memory.before = new Uint8Array(instance.exports.memory.buffer).slice();
      return done(instance, module);
    });
    memory.after = (await create(made)).HEAPU8.slice();
    throw enough;
  };
  await load(wrap, { _loadSnapshot: Promise.resolve(header) }).catch((error) => {
    if (error !== enough) throw error;
  });
  return memory;
}

/** The runs of pages that must be shipped: those that differ, and those that constructors touch. */
function runs(heap, { before, after }) {
  const found = [];
  for (let at = 0; at < heap.length; at += PAGE) {
    const ship = differs(heap, before, after, at);
    const last = found.at(-1);
    if (ship && last && last[0] + last[1] === at) last[1] += PAGE;
    else if (ship) found.push([at, PAGE]);
  }
  return found;
}

function differs(heap, before, after, at) {
  for (let place = at; place < at + PAGE; place += 1) {
    if (heap[place] !== before[place] || before[place] !== after[place]) return true;
  }
  return false;
}

/** Where each run goes in memory, and where in the file of pages it begins and ends: [to, from, end]. */
function placed(found) {
  let from = 0;
  return found.map(([to, length]) => {
    const place = [to, from, from + length];
    from += length;
    return place;
  });
}

async function make(dist, out) {
  const [stdlib, site] = await compiledLibrary(dist);
  const library = join(out, "stdlib.zip");
  await writeFile(library, stdlib);
  await writeFile(join(out, "site.zip"), site);
  const load = await loader(dist, library);
  const { whole, words, modules } = await snapshot(load, site);
  if (!words.every(Number.isInteger)) throw new Error("the engine's own words in memory were not found");
  const [, offset] = new Uint32Array(whole.buffer, whole.byteOffset, 2);
  const header = whole.slice(0, offset);
  const heap = whole.subarray(offset);
  const { before, after } = await fresh(load, header);
  const found = runs(heap, { before: grown(before, heap.length), after: grown(after, heap.length) });
  const lock = JSON.parse(await readFile(join(dist, "pyodide", "pyodide-lock.json"), "utf8"));
  const image = { header: [...header], runs: placed(found), words, modules, memory: heap.length, lock };
  await writeFile(join(out, "image.json"), JSON.stringify(image));
  await writeFile(join(out, "pages.bin"), Buffer.concat(found.map(([at, length]) => heap.subarray(at, at + length))));
}

const [dist, out] = process.argv.slice(2);
await telling(() => make(dist, out));
