// The worker's side of the door. Every request that comes in is answered, whatever happens here.

import { start } from "./start.js";

const tell = (step) => postMessage({ step });

const opened = start(tell);

/** Ask the core; a throw from the interpreter itself is fatal and is told as such. */
async function answer({ id, ask: name, with: request }) {
  try {
    const ask = await opened;
    postMessage({ id, ...JSON.parse(ask(name, JSON.stringify(request))) });
  } catch (error) {
    const fault = { sentence: "The part that works out the figures stopped.", detail: String(error) };
    postMessage({ id, fault, fatal: true });
  }
}

addEventListener("message", (event) => answer(event.data));

opened.then(
  () => tell("ready"),
  (error) => postMessage({ step: "failed", detail: String(error) }),
);
