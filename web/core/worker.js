// The worker's side of the door. Every request that comes in is answered, whatever happens here.
// A second worker of this kind reads a file: reading is long, and must not keep the maker waiting.

const at = (path) => new URL(path, import.meta.url);

/** The compiled runtime; from its bytes where the host does not name their kind. */
function compiled(url) {
  // Straight from the response: only so do browsers keep the compiled code for the next start.
  return WebAssembly.compileStreaming(fetch(url)).catch(async () => WebAssembly.compile(await (await fetch(url)).arrayBuffer()));
}

// What a start waits for longest is begun before any other file of ours is read.
const begun = {
  runtime: compiled(at("../pyodide/pyodide.asm.wasm")),
  pages: fetch(at("../image/pages.gz")),
  module: import("../pyodide/pyodide.asm.mjs"),
  loader: import("../pyodide/pyodide.mjs"),
  image: import("../image/image.js"),
};
// A part that fails is told of by whoever waits for it.
for (const part of Object.values(begun)) part.catch(() => {});

const tell = (step, more = {}) => postMessage({ step, ...more });
const opened = import("./start.js").then(({ start }) => start(begun, tell));

const WARM_AFTER = 1000;
const ROUNDS = Array(60).fill("first");
const CLOCKWORK = "countdown";
let warming = null;

/** Once the maker pauses, run the core hot: browsers keep what is hot compiled, and the next step answers sooner. */
function warmLater(ask) {
  clearTimeout(warming);
  if (ROUNDS.length) warming = setTimeout(warm, WARM_AFTER, ask);
}

/** One round at a time, so that a request never waits for more than one. */
function warm(ask) {
  ask(ROUNDS.pop(), "{}");
  if (ROUNDS.length) warming = setTimeout(warm, 0, ask);
}

/** A request as the core takes it. One that came as bytes may hold a whole book, and is copied once as it is. */
function given(request, python) {
  return request instanceof Uint8Array ? python.pyimport("operator").methodcaller("to_bytes")(request) : JSON.stringify(request);
}

/** Ask the core; a throw from the interpreter itself is fatal and is told as such. */
async function answer({ id, ask: name, with: request }) {
  try {
    const { door, python } = await opened;
    postMessage({ id, reply: door.ask(name, given(request, python)) });
    // What comes every second by itself is no sign that the maker goes on.
    if (name !== CLOCKWORK) warmLater(door.ask);
  } catch (error) {
    const fault = { sentence: "The part that works out the figures stopped.", detail: String(error) };
    postMessage({ id, reply: JSON.stringify({ fault }), fatal: true });
  }
}

/** Read a file; what that needs besides the core is fetched only now. */
async function read(asked) {
  const [{ readFile }, core] = await Promise.all([import("./reader.js"), opened]);
  await readFile(core, asked, (told) => postMessage({ told }));
}

addEventListener("message", ({ data }) => (data.file ? read(data) : answer(data)));

opened.then(
  ({ slow }) => tell("ready", { slow }),
  (error) => tell("failed", { detail: String(error) }),
);
