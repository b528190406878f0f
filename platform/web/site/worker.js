// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// Keeps the program on the phone, so that it starts without a network. It keeps no records: those lie in another storage
// (kept_storage.js), which this never touches.
//
// Each file's name has a hash of its content in it, and the list of names below is part of this file: a new version of
// the program is a new list. It is fetched beside the old one, file by file (what has the same name is not fetched
// again), and comes into force when no page of the old one is open any more: never in the middle of a wash.
'use strict';

const cacheName = 'halfcup-@version@';
const files = @files@;

self.addEventListener('install', (event) => event.waitUntil(fetchAll()));
self.addEventListener('activate', (event) => event.waitUntil(dropOthers()));
self.addEventListener('message', ({ data }) => {
  if (data === 'take over') self.skipWaiting();
});
self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method === 'GET' && url.origin === location.origin) event.respondWith(answer(event.request, url));
});

async function fetchAll() {
  const cache = await caches.open(cacheName);
  await Promise.all(
    files.map(async (name) => {
      const kept = name === './' ? undefined : await caches.match(name);
      // 'reload': not what the browser's own cache may have of an earlier version under the name "./".
      const response = kept ?? (await fetch(name, { cache: name === './' ? 'reload' : 'default' }));
      if (!response.ok) throw new Error(`${name}: ${response.status}`);
      await cache.put(name, response);
    }),
  );
}

async function dropOthers() {
  for (const name of await caches.keys()) if (name.startsWith('halfcup-') && name !== cacheName) await caches.delete(name);
  // The first page was loaded before there was a worker.
  await self.clients.claim();
}

async function answer(request, url) {
  const cache = await caches.open(cacheName);
  const kept = await cache.match(request.mode === 'navigate' ? './' : url.pathname);
  return kept ?? fetch(request);
}
