// The page's side of the door: one worker, one reply to each request, and no promise left open.

import { newId } from "./ids.js";

const PATIENCE = 30000;
const STOPPED = "The part that works out the figures stopped.";

const pending = new Map();
const lanes = new Map();
const listeners = new Set();

let worker = null;
let mayRestart = true;

/**
 * What the door is doing: state is "starting", "ready" or "failed"; detail is for a report;
 * slow says why the start took the longer way, or is empty.
 */
export const door = { state: "starting", step: "", detail: "", slow: "" };

/** Be told whenever the door's state changes. */
export function onDoor(listener) {
  listeners.add(listener);
}

function become(state, step, detail) {
  Object.assign(door, { state, step, detail });
  for (const listener of listeners) listener(door);
}

/** A fault of the core as an Error: message is the sentence for the maker. */
function asError({ sentence, detail }) {
  const error = new Error(sentence);
  error.detail = detail;
  return error;
}

function settle(id) {
  const request = pending.get(id);
  pending.delete(id);
  clearTimeout(request?.watch);
  return request;
}

function rejectAll(fault) {
  for (const id of [...pending.keys()]) settle(id).reject(asError(fault));
}

/** The worker is lost: answer everybody, start once more by itself, then leave it to the maker. */
function crash(detail) {
  worker?.terminate();
  worker = null;
  rejectAll({ sentence: STOPPED, detail });
  if (!mayRestart) return become("failed", "", detail);
  mayRestart = false;
  return startDoor();
}

function receive({ id, step, slow, reply, fatal, detail }) {
  if (step === "failed") return crash(detail);
  if (step === "ready") return ready(slow);
  if (step) return become("starting", step, "");
  // The door's own words come as text: reading them here is cheaper than having them copied.
  const { answer, fault } = JSON.parse(reply);
  const request = settle(id);
  if (fault) request?.reject(asError(fault));
  else request?.resolve(answer);
  performance.mark("answered");
  if (fatal) crash(fault.detail);
  return undefined;
}

/** From here on an answer takes moments, so a long silence means that the worker hangs. */
function ready(slow) {
  door.slow = slow;
  become("ready", "", "");
  for (const request of pending.values()) watch(request);
}

function watch(request) {
  request.watch = setTimeout(() => crash("no answer in time"), PATIENCE);
}

/** Start the worker; requests may be sent at once and wait inside it. */
export function startDoor() {
  become("starting", "worker", "");
  performance.mark("core started");
  const made = new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
  worker = made;
  made.addEventListener("message", (event) => made === worker && receive(event.data));
  made.addEventListener("error", (event) => made === worker && crash(event.message ?? "the worker did not load"));
  made.addEventListener("messageerror", () => made === worker && crash("a message could not be read"));
}

/** Start again at the maker's wish, with one more restart of its own in hand. */
export function restartDoor() {
  worker?.terminate();
  rejectAll({ sentence: STOPPED, detail: "restarted" });
  mayRestart = true;
  startDoor();
}

/**
 * Ask the core by name.
 * @param {string} name what is asked
 * @param {object|string} request its arguments, or the same as a text
 * @returns {Promise<object>} the answer; rejects with an Error whose message is one plain sentence
 */
export function ask(name, request) {
  if (!worker) return Promise.reject(asError({ sentence: STOPPED, detail: door.detail }));
  return new Promise((resolve, reject) => {
    const id = newId();
    const entry = { resolve, reject };
    pending.set(id, entry);
    if (door.state === "ready") watch(entry);
    send({ id, ask: name, with: request });
  });
}

/** A request that is a text may hold a whole book: its bytes are handed over, where a text would be copied letter by letter. */
function send(message) {
  if (typeof message.with !== "string") return worker.postMessage(message);
  const bytes = new TextEncoder().encode(message.with);
  return worker.postMessage({ ...message, with: bytes }, [bytes.buffer]);
}

/** Ask only while nobody waits for an answer, so that nobody waits longer for it; undefined while somebody does. */
export async function askIfIdle(name, request) {
  return door.state === "ready" && !pending.size ? ask(name, request) : undefined;
}

/** Send what waits in a lane, if anything does. */
async function run(lane) {
  const { name, request, resolve, reject } = lane.waiting;
  lane.waiting = null;
  lane.busy = true;
  try {
    const answer = await ask(name, request);
    resolve(lane.waiting ? undefined : answer);
  } catch (error) {
    if (lane.waiting) resolve(undefined);
    else reject(error);
  }
  lane.busy = false;
  if (lane.waiting) run(lane);
}

/**
 * Ask in a lane where only the newest request matters: one is in flight, one waits.
 * @returns {Promise<object|undefined>} undefined when a newer request has overtaken this one
 */
export function askNewest(laneName, name, request) {
  const lane = lanes.get(laneName) ?? { busy: false, waiting: null };
  lanes.set(laneName, lane);
  return new Promise((resolve, reject) => {
    lane.waiting?.resolve(undefined);
    lane.waiting = { name, request, resolve, reject };
    if (!lane.busy) run(lane);
  });
}
