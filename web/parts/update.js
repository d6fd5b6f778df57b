// The service worker from the page's side: offline at once, and never a new version unasked.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { door } from "../core/door.js";
import { repaint } from "./paint.js";

const state = { watching: false, registration: null, waiting: null, taking: false, elsewhere: false };
let hadController = Boolean(navigator.serviceWorker?.controller);

/** Register the service worker and look for a newer version now and whenever the page comes back. */
export async function watchUpdates() {
  if (state.watching || !("serviceWorker" in navigator)) return;
  state.watching = true;
  navigator.serviceWorker.addEventListener("controllerchange", onNewController);
  try {
    const address = new URL("../offline.js", import.meta.url);
    state.registration = await navigator.serviceWorker.register(address, { updateViaCache: "none" });
  } catch {
    return;
  }
  // A browser may answer with nothing where service workers are switched off.
  if (!state.registration) return;
  // What only a plain start needs is fetched from the second visit on, or at once where it was needed.
  if (door.slow) navigator.serviceWorker.ready.then(({ active }) => active.postMessage("complete"));
  navigator.serviceWorker.controller?.postMessage("complete");
  follow(state.registration);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && check());
}

/** Offline, the look for a newer version fails, and that is all right. */
function check() {
  state.registration.update().catch(() => {});
}

function follow(registration) {
  if (registration.waiting) announce(registration.waiting);
  if (registration.installing) awaitInstall(registration.installing);
  registration.addEventListener("updatefound", () => awaitInstall(registration.installing));
  if (!registration.installing) check();
}

/** The very first install takes the page over by itself; a later one waits to be asked. */
function awaitInstall(worker) {
  const first = !navigator.serviceWorker.controller;
  worker.addEventListener("statechange", () => {
    if (worker.state === "installed" && !first) announce(worker);
    if (worker.state === "activated") repaint();
  });
}

function announce(worker) {
  state.waiting = worker;
  repaint();
}

function onNewController() {
  if (state.taking) return location.reload();
  if (hadController) {
    state.elsewhere = true;
    repaint();
  }
  hadController = true;
  return undefined;
}

/** All that was typed is kept already, so the new version can take over at once. */
function take() {
  state.taking = true;
  state.waiting.postMessage("take over");
}

function later() {
  state.waiting = null;
  repaint();
}

/** The line about a new version, when there is one. */
export function updateView() {
  if (state.elsewhere) return line("A new version was taken in another tab.", "Load it", () => location.reload());
  return state.waiting ? line("A new version is ready.", "Take it", take, later) : nothing;
}

function line(words, label, act, wait) {
  return html`<div class="banner" role="status"><p>${words}</p><div class="banner-acts">
    <button type="button" class="button" @click=${act}>${label}</button>
    ${wait ? html`<button type="button" class="button quiet-button" @click=${wait}>Later</button>` : nothing}</div></div>`;
}

/** Whether the page works offline already, as a quiet line. */
export function offlineLine() {
  const worker = state.registration?.active;
  return html`<span>${worker?.state === "activated" ? "Ready to work offline." : nothing}</span>`;
}
