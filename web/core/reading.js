// Has a file read by a second worker, a second Python, which ends with its answer and gives its memory back.
// The first one goes on answering meanwhile, whatever becomes of the second.

const NOT_STARTED = "The part that reads files did not start. Nothing was changed.";
const STOPPED = "This device couldn't read so large a file. Nothing was changed. Save it with fewer triangles, or read it on another device.";

/** An Error whose message is the sentence for the maker. */
function asError(sentence, detail) {
  return Object.assign(new Error(sentence), { detail });
}

/** Take one message of the worker: how far it is, its answer, or what went wrong. */
function hear({ told, step, detail }, { resolve, reject, onProgress }) {
  if (step === "failed") return reject(asError(NOT_STARTED, detail));
  if (!told) return undefined;
  const { progress, answer, fault } = JSON.parse(told);
  if (progress) return onProgress(progress);
  return fault ? reject(asError(fault.sentence, fault.detail)) : resolve(answer);
}

/**
 * Read a file.
 * @param {object} what name: the core's for this kind of reading; file; request: its arguments;
 *   onProgress: called with {share, says}; signal: aborts it
 * @returns {Promise<object>} the answer; rejects with an Error whose message is one plain sentence, or with the signal's reason
 */
export async function read({ name, file, request, onProgress, signal }) {
  signal.throwIfAborted();
  const worker = new Worker(new URL("./worker.js", import.meta.url), { type: "module", name: "reading" });
  try {
    return await new Promise((resolve, reject) => {
      signal.addEventListener("abort", () => reject(signal.reason));
      worker.addEventListener("message", ({ data }) => hear(data, { resolve, reject, onProgress }));
      worker.addEventListener("error", (event) => reject(asError(STOPPED, event.message)));
      worker.addEventListener("messageerror", () => reject(asError(STOPPED, "a message could not be read")));
      worker.postMessage({ ask: name, with: request, file });
    });
  } finally {
    worker.terminate();
  }
}
