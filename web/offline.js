// The build writes one line above this file: const RELEASE = {version, files, packed, later}.

const PREFIX = "brimbook-";
const CACHE = `${PREFIX}${RELEASE.version}`;
const HOME = new URL("./", self.location.href).href;
const INDEX = new URL("./index.html", self.location.href).href;

const asked = (file) => new Request(new URL(file, HOME), { cache: "no-cache" });

/** Put the files that a start needs into this release's own cache, past the browser's HTTP cache. */
async function fill() {
  const cache = await caches.open(CACHE);
  await Promise.all([cache.addAll(RELEASE.files.map(asked)), ...RELEASE.packed.map((file) => unpack(cache, file))]);
}

/** Keep a packed file unpacked, so that no start has to do it again; the header says so. */
async function unpack(cache, file) {
  const response = await fetch(asked(file));
  if (!response.ok) throw new TypeError(`${file}: ${response.status}`);
  const body = response.body.pipeThrough(new DecompressionStream("gzip"));
  const headers = { "content-type": "application/octet-stream", "x-unpacked": "yes" };
  await cache.put(new URL(file, HOME), new Response(body, { headers }));
}

/** Fetch what only a plain start needs; a first visit does not wait for it. */
async function complete() {
  const cache = await caches.open(CACHE);
  const missing = await Promise.all(RELEASE.later.map(async (file) => ((await cache.match(new URL(file, HOME))) ? null : file)));
  await cache.addAll(missing.filter(Boolean).map(asked));
}

/** Drop the caches of older releases; other programs on the same host keep theirs. */
async function sweep() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
}

/** A page opened before the very first install is served from the cache from now on. */
async function settle() {
  await sweep();
  await self.clients.claim();
}

/** A navigation refuses a response that was redirected, so such a one is made anew. */
function straight(response) {
  if (!response.redirected) return response;
  const { body, headers, status, statusText } = response;
  return new Response(body, { headers, status, statusText });
}

/** Answer from this release's cache; ask the network only for what the release does not hold. */
async function answer(request) {
  const cache = await caches.open(CACHE);
  const wanted = request.mode === "navigate" ? INDEX : request;
  const kept = await cache.match(wanted, { ignoreSearch: true });
  return kept ? straight(kept) : fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(settle()));
self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
  if (event.data === "complete") event.waitUntil(complete().catch(() => {}));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(HOME)) return;
  event.respondWith(answer(request));
});
