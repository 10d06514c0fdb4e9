/* Keeps the page and its few files, so that after one visit it opens without a network. */
const FILES = ['./', 'index.html', 'manifest.webmanifest', 'icon.svg'];
const PREFIX = `medlar ${globalThis.registration.scope} `;
const NAME = `${PREFIX}{{digest}}`;

globalThis.addEventListener('install', (event) => {
  event.waitUntil(globalThis.caches.open(NAME).then((cache) => cache.addAll(FILES)).then(() => globalThis.skipWaiting()));
});

globalThis.addEventListener('activate', (event) => {
  event.waitUntil(globalThis.caches.keys()
    .then((names) => Promise.all(names.filter((n) => n.startsWith(PREFIX) && n !== NAME).map((n) => globalThis.caches.delete(n))))
    .then(() => globalThis.clients.claim()));
});

globalThis.addEventListener('fetch', (event) => {
  if (event.request.method !== 'GET') return;
  event.respondWith(globalThis.caches.open(NAME).then((cache) => cache.match(event.request, { ignoreSearch: true })).then((kept) => kept ?? globalThis.fetch(event.request)));
});
