import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DIST } from '../faults/served.ts';

/**
 * What the app is measured against, served by the same host: a page with one button that adds 1 as a
 * finger comes down, a service worker that answers with its two files, and a page whose button puts
 * one record on the disk.
 */
const BARE = {
  'index.html':
    '<!doctype html><meta name="viewport" content="width=device-width"><title>Bare</title><body style="margin:0"><button id="bare" style="width:100vw;height:50vh;font-size:40vw;touch-action:none">0</button><script type="module" src="bare.js"></script>',
  'bare.js': `
const button = document.querySelector('button');
let count = 0;
button.addEventListener('pointerdown', () => { button.textContent = ++count; });
navigator.serviceWorker?.register('sw.js');
`,
  'keeper.html':
    '<!doctype html><meta name="viewport" content="width=device-width"><title>Keeper</title><body style="margin:0"><button style="width:100vw;height:50vh;touch-action:none">0</button><script type="module" src="keeper.js"></script>',
  'keeper.js': `
const button = document.querySelector('button');
let count = 0;
const open = indexedDB.open('bare', 1);
open.onupgradeneeded = () => open.result.createObjectStore('records');
open.onsuccess = () => button.addEventListener('pointerdown', () => {
  const work = open.result.transaction('records', 'readwrite', { durability: 'strict' });
  work.objectStore('records').put({ count: ++count, at: Date.now() }, count);
  work.oncomplete = () => { button.dataset.kept = count; };
});
`,
  'sw.js': `
const FILES = ['./', 'bare.js'];
addEventListener('install', (event) => {
  skipWaiting();
  event.waitUntil(caches.open('bare').then((cache) => cache.addAll(FILES)));
});
addEventListener('activate', (event) => event.waitUntil(clients.claim()));
addEventListener('fetch', (event) =>
  event.respondWith(caches.match(event.request).then((found) => found ?? fetch(event.request))));
`,
};

/** A folder with the built app, and the bare page in its folder `bare`. */
export function bareSite(): string {
  const folder = fileURLToPath(new URL('../../.cache/bench-site', import.meta.url));
  rmSync(folder, { recursive: true, force: true });
  cpSync(DIST, folder, { recursive: true });
  mkdirSync(join(folder, 'bare'));
  for (const [name, text] of Object.entries(BARE)) writeFileSync(join(folder, 'bare', name), text);
  return folder;
}
