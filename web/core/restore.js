// The quick start: a memory image in which the build has already imported the core and used it once.
// How it is made: py/workshop/image.mjs.

import { lending } from "./lend.js";

const PYODIDE = new URL("../pyodide/", import.meta.url);
const STDLIB = "/pyodide/python_stdlib.zip";
const EMPTY_ZIP = Uint8Array.from([80, 75, 5, 6, ...Array(18).fill(0)]);

/** The image's pages as bytes. The service worker keeps them unpacked and says so. */
async function unpacked(fetched) {
  const response = await fetched;
  if (!response.ok) throw new Error(`the image could not be read (${response.status})`);
  const body = response.headers.has("x-unpacked") ? response.body : response.body.pipeThrough(new DecompressionStream("gzip"));
  return new Uint8Array(await new Response(body).arrayBuffer());
}

/** Put the pages where they belong in a fresh instance's memory, once there is enough of it. */
function patch(made, pages, { runs, length, words, memory }) {
  if (pages.length !== length) throw new Error("the image is not whole");
  if (made.HEAPU8.length < memory) made.growMemory(memory);
  const { HEAPU8, HEAP32 } = made;
  const own = words.map((place) => [place, HEAP32[place]]);
  for (const [to, from, until] of runs) HEAPU8.set(pages.subarray(from, until), to);
  for (const [place, word] of own) HEAP32[place] = word;
}

/** Start Python with the core from the image; returns Pyodide. */
export async function restore({ runtime, pages: fetched, module, loader, image }) {
  const pages = unpacked(fetched);
  pages.catch(() => {});
  const [{ loadPyodide }, { default: create }, placing] = await Promise.all([loader, module, image]);
  const createPyodideModule = async (settings) => {
    const made = await create(settings);
    patch(made, await pages, placing);
    return made;
  };
  const settings = {
    indexURL: PYODIDE.href, lockFileContents: placing.lock, createPyodideModule, _loadSnapshot: Promise.resolve(placing.header),
  };
  // The library is in the image already.
  const python = await lending(runtime, { [STDLIB]: () => new Response(EMPTY_ZIP) }, () => loadPyodide(settings));
  python.globals.get("reseed")();
  return python;
}
