// What a book of many vessels takes: each thing is done as a maker does it, and timed until it is there to see.

const BATCH = "W4711";

/** Do it, wait until `until` finds something in the page, and one frame more so that it is painted; how long it took. */
async function timed(win, seen, act, until) {
  const began = win.performance.now();
  act();
  const { found } = await seen(win, until);
  await new Promise((painted) => win.requestAnimationFrame(() => setTimeout(painted)));
  return { ms: win.performance.now() - began, found };
}

const go = (win, where) => () => { win.location.hash = where; };
const button = (doc, text) => [...doc.querySelectorAll("button")].find((each) => each.textContent.includes(text) && !each.disabled);
const rows = (doc) => doc.querySelector("ul.shelf[aria-label='Your vessels'] li.row");

/** What the page would hand over as a file: caught, so that nothing is left among the downloads. */
function catchFiles(win) {
  const caught = { file: null };
  win.HTMLAnchorElement.prototype.click = () => {};
  win.URL.createObjectURL = (file) => {
    caught.file = file;
    win.document.documentElement.dataset.caught = String(file.size);
    return "";
  };
  return caught;
}

async function save(win, seen, caught, label) {
  delete win.document.documentElement.dataset.caught;
  await timed(win, seen, go(win, "#/book"), (doc) => button(doc, label));
  const began = win.performance.now();
  button(win.document, label).click();
  const { at } = await seen(win, (doc) => doc.documentElement.dataset.caught);
  return { ms: at - began, text: await caught.file.text() };
}

/** Read a file up to its preview, and leave it. */
async function preview(win, seen, text, name) {
  await timed(win, seen, go(win, "#/book"), (doc) => button(doc, "Choose a file"));
  const input = win.document.querySelector("input[type=file]");
  const files = new win.DataTransfer();
  files.items.add(new win.File([text], name));
  input.files = files.files;
  const { ms } = await timed(win, seen, () => input.dispatchEvent(new win.Event("change")), (doc) => button(doc, "Leave the file"));
  const says = win.document.querySelector("main").textContent;
  await timed(win, seen, () => button(win.document, "Leave the file").click(), (doc) => button(doc, "Choose a file"));
  return { ms, says };
}

/** Every tenth time that a text stands there it is another one. */
function edited(text, from, to) {
  return text.split(from).map((piece, place) => (place === 0 ? piece : (place % 10 ? from : to) + piece)).join("");
}

function fill(entries) {
  for (const [id, text] of entries) localStorage.setItem(`brimbook.vessel.${id}`, text);
}

async function searches(win, seen, put, times) {
  await timed(win, seen, go(win, "#/"), rows);
  const input = win.document.querySelector("#find");
  for (const word of ["t", "ti", "tide", "tide cup", "seam"]) {
    const before = win.document.querySelector(".count").textContent;
    times.push((await timed(win, seen, () => put(win, input, word), (doc) => doc.querySelector(".count").textContent !== before)).ms);
  }
  put(win, input, "");
}

async function kept(win, seen, put, id, name, times) {
  await timed(win, seen, go(win, `#/vessel/${id}`), (doc) => doc.querySelector("input.vessel-name"));
  const input = win.document.querySelector("input.vessel-name");
  await seen(win, () => input.value);
  const began = win.performance.now();
  put(win, input, name);
  // What is kept is no change of the document, so nothing tells of it.
  while (!localStorage.getItem(`brimbook.vessel.${id}`).includes(name)) await new Promise((soon) => setTimeout(soon));
  times.push(win.performance.now() - began);
}

/** All of it, so many rounds after a first one that is not counted: with it the core starts. */
export async function book({ file, rounds }, { open, seen, put }) {
  const lines = (await (await fetch(`/site/${file}`)).text()).split("\n");
  const entries = lines.map((text) => [JSON.parse(text).record.id, text]);
  const win = await open("#/settings", () => fill(entries));
  await seen(win, (doc) => doc.querySelector("h1"));
  const caught = catchFiles(win);
  const times = { list: [], search: [], json: [], csv: [], read_json: [], read_csv: [], restore: [], keep: [], trace: [] };
  const read = {};
  for (let round = 0; round <= rounds; round += 1) {
    await timed(win, seen, go(win, "#/settings"), (doc) => !doc.querySelector("#find"));
    times.list.push((await timed(win, seen, go(win, "#/"), rows)).ms);
    await searches(win, seen, put, times.search);
    const whole = await save(win, seen, caught, "Save the whole book");
    const table = await save(win, seen, caught, "Save for a spreadsheet");
    const one = await preview(win, seen, edited(whole.text, '"water_to_powder":"4:1"', '"water_to_powder":"3.5:1"'), "book.json");
    const other = await preview(win, seen, edited(table.text, ",4:1,", ",3.5:1,"), "book.csv");
    localStorage.clear();
    const anew = await preview(win, seen, whole.text, "book.json");
    fill(entries);
    await kept(win, seen, put, entries[0][0], `Round ${round}`, times.keep);
    await timed(win, seen, go(win, "#/lots"), (doc) => doc.querySelector("#find-lot"));
    put(win, win.document.querySelector("#find-lot"), "");
    await seen(win, (doc) => !doc.querySelector(".lots-say"));
    times.trace.push((await timed(win, seen, () => put(win, win.document.querySelector("#find-lot"), BATCH), (doc) => doc.querySelector(".lots-say"))).ms);
    for (const [name, { ms, says }] of Object.entries({ json: whole, csv: table, read_json: one, read_csv: other, restore: anew })) {
      times[name].push(ms);
      if (says) read[name] = says.slice(0, 200);
    }
  }
  for (const each of Object.values(times)) each.splice(0, each.length / (rounds + 1));
  return { times, read, vessels: Object.keys(localStorage).filter((name) => name.startsWith("brimbook.vessel.")).length };
}
