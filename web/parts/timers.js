// What the record's moments still have to wait for. The core tells how long, once a second and only while it is seen.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { askIfIdle, door } from "../core/door.js";
import { settings } from "../keep/settings.js";
import { ring } from "./bell.js";
import { nowToSecond } from "./clock.js";
import { opened } from "./opened.js";
import { repaint } from "./paint.js";
import { toastBell } from "./toast.js";

const SECOND = 1000;
const MINUTE = 60000;
const AHEAD = new Set(["running", "soon"]);

const told = new Map();
let clock = 0;

const timers = () => opened.sheet?.cards.flatMap((card) => card.timers ?? []) ?? [];
const dues = () => [...new Set(timers().map(({ due }) => due))];

/** Begin to ask, or stop, as what lies open needs it; called after each painting. */
export function tendTimers() {
  const due = dues();
  if (!due.length) told.clear();
  if (!due.length || document.hidden || door.state !== "ready") return rest();
  if (!clock || !due.every((each) => told.has(each))) ask(due);
  return undefined;
}

/** Be there again as soon as the page is seen again. */
export function watchTimers() {
  document.addEventListener("visibilitychange", tendTimers);
}

function rest() {
  clearTimeout(clock);
  clock = 0;
}

/** What is past changes slowly. */
const pace = (due) => (due.every((each) => told.get(each)?.state === "past") ? MINUTE : SECOND);

function later() {
  clock = 0;
  tendTimers();
}

/** What the maker types is answered first: while anything else waits at the door, this is not asked. */
async function ask(due) {
  clearTimeout(clock);
  clock = setTimeout(later, pace(due));
  try {
    const answers = await askIfIdle("countdown", { now: nowToSecond(), due, settings: settings() });
    if (answers) hear(due, answers);
  } catch {
    // The core has stopped; when it is back the next painting asks anew.
  }
}

/** Paint only when a text has changed. */
function hear(due, answers) {
  const before = due.map((each) => told.get(each));
  for (const [place, each] of due.entries()) told.set(each, answers[place]);
  for (const each of [...told.keys()].filter((known) => !due.includes(known))) told.delete(each);
  const rung = due.filter((each, place) => AHEAD.has(before[place]?.state) && !AHEAD.has(told.get(each).state));
  if (rung.length) ringFor(rung);
  if (due.some((each, place) => before[place]?.shown !== told.get(each).shown)) repaint();
}

function ringFor(rung) {
  const labels = timers().filter(({ due }) => rung.includes(due)).map(({ label }) => label);
  toastBell(`It is time: ${[...new Set(labels)].join(", ")}.`);
  ring();
}

const line = (timer) => ({ ...timer, ...told.get(timer.due) });

/** All timers of an open card. */
export function timersView(list = []) {
  if (!list.length) return nothing;
  return html`<ul class="timers">${list.map(line).map(({ label, shown, state }) => html`
    <li class="timer ${state ?? ""}"><span>${label}</span> <strong class="number">${shown ?? "…"}</strong></li>`)}</ul>`;
}

/** The one timer that a closed card shows: what comes next. */
export function nextTimer(list = []) {
  const ahead = list.map(line).filter(({ state }) => state && state !== "past");
  const next = ahead.sort((one, other) => one.due.localeCompare(other.due)).at(0);
  return next ? html`<span class="timer ${next.state}"><span>${next.label}</span> <strong class="number">${next.shown}</strong></span>` : nothing;
}
