/** Writes the service worker: every file of the site with its checksum, so that all of it or none works offline. */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { allSheets } from '../sheets/allSheets.ts';

/** Pictures for handing on are large, and the planner makes the other sheets by itself; everything else is kept. */
const others = allSheets.map(({ id }) => id).filter((id) => id !== 'care-card');
const leftOut = new RegExp(`(^|/)(sw\\.js|sheets/.*\\.png|sheets/.*-(${others.join('|')})\\.pdf)$`);

/**
 * Fonts of rare scripts, and the list of them: most people need none. They are kept when they were used once, and stay
 * when the site changes, as a file of another content has another name.
 */
const packs =
  /(^|\/)(noto-sans-(?!latin|greek|cyrillic|vietnamese)[^/]*\.woff|(browserPacks|unicode|bidi)-[^/]*\.js)$/;

/** Lists the finished site and writes `sw.js` into it. */
export async function writeOffline(site: string): Promise<void> {
  const files = (await readdir(site, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(site.length + 1)
        .split(sep)
        .join('/'),
    )
    .filter((path) => !leftOut.test(path) && !packs.test(path))
    .sort();
  const sums = await Promise.all(files.map(async (path) => checksum(await readFile(join(site, path)))));
  const version = checksum(Buffer.from(files.map((path, i) => `${path} ${sums[i]}`).join('\n')));
  await writeFile(join(site, 'sw.js'), worker(version, files));
}

function checksum(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex').slice(0, 16);
}

/** Plain JavaScript that runs in the browser: fetch all files once, then answer from them. */
function worker(version: string, files: readonly string[]): string {
  return `const store = 'bedfirst-${version}';
const packStore = 'bedfirst-packs';
const packs = ${packs};
const files = ${JSON.stringify(files)};
const base = new URL('./', self.location.href);
self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(store)
      .then((cache) => cache.addAll(files.map((file) => new Request(new URL(file, base), { cache: 'reload' }))))
      .then(() => self.skipWaiting()),
  );
});
self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((n) => n.startsWith('bedfirst-') && n !== store && n !== packStore).map((n) => caches.delete(n))))
      .then(() => self.clients.claim()),
  );
});
self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== base.origin) return;
  url.search = '';
  url.hash = '';
  if (url.pathname.endsWith('/')) url.pathname += 'index.html';
  else if (event.request.mode === 'navigate' && !/\\.[a-z0-9]+$/.test(url.pathname)) url.pathname += '/index.html';
  if (packs.test(url.pathname)) event.respondWith(packAt(url.href, event.request));
  else
    event.respondWith(
      caches.open(store).then((cache) => cache.match(url.href)).then((kept) => kept || fetch(event.request)),
    );
});
async function packAt(href, request) {
  const cache = await caches.open(packStore);
  const kept = await cache.match(href);
  if (kept) return kept;
  const fresh = await fetch(request);
  if (fresh.ok) await cache.put(href, fresh.clone());
  return fresh;
}
`;
}
