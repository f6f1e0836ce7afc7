/*
 * Keeps the notebook's own files at hand, so that it opens without a network. The page itself is asked of the server
 * first, so that a new build shows at once; the files it names carry their hash and never change. Nothing is ever
 * asked of another origin, and no log passes through here: logs never leave the page.
 */
const version = 'VERSION';
const files = ['FILES'];
const store = `beamkeep-${version}`;

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(store)
      .then((cache) => cache.addAll(files))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== store).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(request.mode === 'navigate' ? page(request) : file(request));
});

async function page(request) {
  try {
    return await fetch(request);
  } catch {
    const cache = await caches.open(store);
    return (await cache.match(request, { ignoreSearch: true })) ?? (await cache.match('./')) ?? Response.error();
  }
}

async function file(request) {
  const cache = await caches.open(store);
  return (await cache.match(request, { ignoreSearch: true })) ?? fetch(request);
}
