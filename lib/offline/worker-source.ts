/** Pages that a phone opens with no signal and does not wait long for; of any other it is told that it needs one. */
const shellFor = ['/', '/today', '/unsent'];
const shellUnder = ['/quick/', '/batches/'];

/**
 * The service worker, as text. It keeps one page that holds nothing personal, with its scripts, styles and font, under
 * a name that changes with each build; answers with it when the server does not within 2.5 seconds, or for any other page
 * at once while the phone knows of no network; and lets everything else through untouched. It never stores an answer of the server, posts nothing and decides nothing.
 *
 * @param build id of the build; another one replaces the worker and its files.
 */
export function workerSource(build: string): string {
  return `'use strict';
const files = ${JSON.stringify(`pinset-pages-${build}`)};
const shell = '/offline';
const patience = 2500;
const exact = ${JSON.stringify(shellFor)};
const under = ${JSON.stringify(shellUnder)};

const assetsIn = (text) => [...new Set(text.match(/\\/_next\\/static\\/[^"'\\\\\\s)<>]+/g) ?? [])];

async function keepShell() {
  const cache = await caches.open(files);
  const page = await fetch(shell, { credentials: 'omit', cache: 'no-store' });
  if (!page.ok || page.redirected) throw new Error('the page for no signal did not come: ' + page.status);
  const wanted = assetsIn(await page.clone().text());
  for (const path of wanted.filter((one) => one.includes('.css'))) {
    const style = await fetch(path);
    for (const found of (await style.text()).match(/url\\(([^)]+)\\)/g) ?? []) {
      const name = found.slice(4, -1).replace(/["']/g, '');
      if (!name.startsWith('data:')) wanted.push(new URL(name, new URL(path, location.origin)).pathname);
    }
  }
  await cache.addAll([...new Set(wanted)]);
  await cache.put(shell, page);
}

self.addEventListener('install', (event) => {
  event.waitUntil(keepShell().then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) if (name !== files) await caches.delete(name);
    await self.clients.claim();
  })());
});

const opensShell = ({ pathname }) =>
  exact.includes(pathname) || under.some((start) => pathname.startsWith(start));

async function pageOrShell(event, url) {
  const page = fetch(event.request);
  page.catch(() => {});
  const late = new Promise((resolve) => setTimeout(resolve, patience, 'late'));
  const first = await Promise.race([page, late]).catch(() => 'late');
  const down = first !== 'late' && first.type !== 'opaqueredirect' && [502, 503, 504].includes(first.status);
  if (first !== 'late' && !down) return first;
  const cache = await caches.open(files);
  if (!(await cache.match(shell, { ignoreVary: true, ignoreSearch: true }))) return page;
  return toShell(url);
}

const toShell = (url) => Response.redirect(shell + '?at=' + encodeURIComponent(url.pathname + url.search), 302);

async function shellIfKept(event, url) {
  const cache = await caches.open(files);
  const kept = await cache.match(shell, { ignoreVary: true, ignoreSearch: true });
  return kept ? toShell(url) : fetch(event.request);
}

async function shellPage(request) {
  const cache = await caches.open(files);
  return (await cache.match(shell, { ignoreVary: true, ignoreSearch: true })) ?? fetch(request);
}

async function asset(request) {
  const cache = await caches.open(files);
  return (await cache.match(request, { ignoreVary: true })) ?? fetch(request);
}

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== location.origin) return;
  if (url.pathname.startsWith('/_next/static/')) event.respondWith(asset(request));
  else if (request.mode !== 'navigate') return;
  else if (url.pathname === shell) event.respondWith(shellPage(request));
  else if (opensShell(url)) event.respondWith(pageOrShell(event, url));
  else if (!navigator.onLine) event.respondWith(shellIfKept(event, url));
});
`;
}
