// Keeps what a reader used of this site for the aisle, where there is no network.
const VERSION = "@@VERSION@@";
const scope = new URL(self.registration.scope);
const PREFIX = `scantling ${scope.pathname} `;
const CACHE = PREFIX + VERSION;
const isEngine = (address) => /\/assets\/scantling\/live\/[0-9a-f]{16}\//.test(address);

self.addEventListener("install", () => self.skipWaiting());

// a new version takes over what the old one kept, fresh where it can be had
const takeOver = async () => {
  const old = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  const fresh = await caches.open(CACHE);
  for (const name of old) {
    const cache = await caches.open(name);
    for (const request of await cache.keys()) {
      if (isEngine(request.url) && !request.url.includes(VERSION)) continue;
      const answer = await fetch(request.url).catch(() => null);
      if (answer?.ok) await fresh.put(request.url, answer);
      else if (!answer) await fresh.put(request.url, await cache.match(request));
    }
    await caches.delete(name);
  }
};
self.addEventListener("activate", (event) => event.waitUntil(takeOver().then(() => self.clients.claim())));

self.addEventListener("message", ({ data }) => {
  for (const address of data?.keep ?? []) keep(address);
});
const keep = async (address) => {
  const cache = await caches.open(CACHE);
  if (await cache.match(address)) return;
  const answer = await fetch(address).catch(() => null);
  if (answer?.ok) await cache.put(address, answer);
};

const firstKept = async (request) => {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request.url);
  if (kept) return kept;
  const answer = await fetch(request);
  if (answer.ok) await cache.put(request.url, answer.clone());
  return answer;
};
const firstFresh = async (request) => {
  const cache = await caches.open(CACHE);
  // a size in the address is the same page
  const address = request.mode === "navigate" ? request.url.split(/[?#]/)[0] : request.url;
  const answer = await fetch(request).catch(() => null);
  if (answer?.ok && answer.type === "basic") await cache.put(address, answer.clone());
  return answer ?? (await cache.match(address)) ?? Response.error();
};
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(scope.href)) return;
  event.respondWith(isEngine(request.url) ? firstKept(request) : firstFresh(request));
});
