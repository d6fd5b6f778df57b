// Carries out one step of the bench's plan in this page's frame, hands in what it read, and goes on to the next.

const FIRST_TEXT = "640";
const FIRST_ANSWER = "1205 g";
const OFFLINE = "Ready to work offline";
const SLOW = "Starting took longer than usual today";
const DEMO = "#/demo/demo-tide-cup";

const frame = document.getElementById("site");
const pause = (time) => new Promise((resolve) => setTimeout(resolve, time));

/** Send the frame to the site with only what `fill` keeps there, and wait until its document is no longer the blank one. */
async function open(fragment, fill = () => {}) {
  localStorage.clear();
  sessionStorage.clear();
  fill();
  frame.src = `/site/${fragment}`;
  while (!frame.contentDocument?.documentElement || frame.contentWindow.location.href === "about:blank") await pause(4);
  return frame.contentWindow;
}

/** Wait until `read` finds something in the frame; looks after every change of the document. */
function seen(win, read) {
  return new Promise((resolve) => {
    const look = () => {
      const found = read(win.document);
      if (!found) return;
      observer.disconnect();
      resolve({ found, at: win.performance.now() });
    };
    const observer = new win.MutationObserver(look);
    observer.observe(win.document, { subtree: true, childList: true, characterData: true, attributes: true });
    look();
  });
}

function put(win, input, text) {
  input.value = text;
  const at = win.performance.now();
  input.dispatchEvent(new win.Event("input", { bubbles: true }));
  return at;
}

const card = (doc, title) => doc.querySelector(`section[aria-label="${title}"]`);
const says = (text) => (doc) => doc.body?.textContent.includes(text);
const marks = (win, name) => win.performance.getEntriesByName(name).map(({ startTime }) => startTime);

/** From navigation to the first figure that the maker waits for. All times are in ms from navigation. */
async function toAnswer({ ready, stay }) {
  const win = await open("");
  const { found: input } = await seen(win, (doc) => doc.querySelector("input.reading"));
  const typed = put(win, input, FIRST_TEXT);
  const { at: shown } = await seen(win, (doc) => card(doc, "Mix")?.textContent.includes(FIRST_ANSWER));
  const answered = marks(win, "answered").at(-1);
  const started = marks(win, "core started");
  // The line at the foot comes with the paint after the core has told that it is ready.
  await pause(250);
  const slow = says(SLOW)(win.document);
  if (ready) await seen(win, says(OFFLINE));
  await pause(stay ?? 0);
  return { typed, shown, answered, started: started[0], starts: started.length, slow };
}

const powder = (doc) => card(doc, "Mix")?.querySelector("strong.number")?.textContent;

/** Change the first reading of a filled vessel many times, and time each until the new figure stands there. */
async function edits({ count }) {
  const win = await open(DEMO);
  await seen(win, powder);
  card(win.document, "Mold").querySelector("button.card-face").click();
  const { found: input } = await seen(win, (doc) => card(doc, "Mold")?.querySelector("input.reading"));
  const times = [];
  for (let round = 0; round < count; round += 1) {
    const before = powder(win.document);
    const at = put(win, input, `${290 + ((round * 7) % 45)}`);
    times.push((await seen(win, (doc) => ![undefined, before].includes(powder(doc)))).at - at);
    await pause(15);
  }
  return { times };
}

/** Read a file in a second worker, as the page does: from the file in hand to its answer. */
async function reading({ file: name }) {
  const { read } = await import("/site/core/reading.js");
  const { answer: first } = await (await fetch("/site/first.json")).json();
  const file = new File([await (await fetch(`/site/${name}`)).arrayBuffer()], name);
  const request = { record: first.blank, settings: first.settings, place: "casts.0.cavity", name };
  let steps = 0;
  const began = performance.now();
  const answer = await read({
    name: "model", file, request, signal: new AbortController().signal, onProgress: () => { steps += 1; },
  });
  return { ms: performance.now() - began, steps, says: answer.says };
}

const book = async (asked) => (await import("/bench_book.js")).book(asked, { open, seen, put });

const TASKS = { answer: toAnswer, edits, reading, book };

async function carryOut() {
  const step = location.search.slice(1);
  const asked = await (await fetch(`/bench/step?${step}`)).json();
  const read = await TASKS[asked.task](asked);
  const reply = await fetch("/bench/result", { method: "POST", body: JSON.stringify({ step: Number(step), ...read }) });
  const { next } = await reply.json();
  if (next) location.replace(next);
}

carryOut().catch((error) => fetch("/bench/result", { method: "POST", body: JSON.stringify({ fault: String(error) }) }));
