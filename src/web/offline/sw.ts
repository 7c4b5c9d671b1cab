// The worker that keeps the page for the time without a signal, in one file with the list of what it keeps. It ties keep.ts
// to the browser's events; a newer version is taken by the grower's touch alone (app/offline.ts).

import { answerFile, answerPage, clearAway, install, type World } from './keep.ts';
import { type ListedFile, versionOf } from './version.ts';

interface Later {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface Events {
  readonly install: Later;
  readonly activate: Later;
  readonly message: { readonly data?: { readonly type?: string } };
  readonly fetch: { readonly request: Request; readonly respondWith: (answer: Promise<Response>) => void };
}
/** What of a worker's own scope is used here; the types at hand are those of a page. */
interface Scope {
  /** Written in by the build. */
  readonly __WB_MANIFEST: readonly ListedFile[];
  readonly clients: { readonly claim: () => Promise<void> };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: <K extends keyof Events>(name: K, hear: (event: Events[K]) => void) => void;
}
declare const self: Scope;

const HASHED = '/assets/';
const files = self.__WB_MANIFEST;
const listed = new Set(files.map(({ url }) => `/${url}`));
const version = versionOf(files);
const world: World = {
  caches,
  ask: (path) => fetch(path, { cache: 'reload', redirect: 'error', credentials: 'same-origin' }),
};

self.addEventListener('install', (event) => {
  event.waitUntil(version.then((own) => install(own, world)));
});

self.addEventListener('activate', (event) => {
  const taken = async () => {
    await clearAway(await version, world);
    await self.clients.claim();
  };
  event.waitUntil(taken());
});

self.addEventListener('message', ({ data }) => {
  if (data?.type === 'SKIP_WAITING') void self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== location.origin || pathname.startsWith('/api/')) return;
  if (request.mode === 'navigate') event.respondWith(page(request, pathname));
  else if (listed.has(pathname) || pathname.startsWith(HASHED)) event.respondWith(file(request, pathname));
});

/** What is kept, or else the network as it answers, which is shown and never kept. */
async function page(request: Request, path: string): Promise<Response> {
  const kept = await version.then((own) => answerPage(own, path, world)).catch(() => undefined);
  return kept ?? (await fetch(request));
}

/** What is kept. A listed file that arrives with other bytes is no answer; what is not listed, the network has. */
async function file(request: Request, path: string): Promise<Response> {
  return (await answerFile(await version, path, world)) ?? (await fetch(request));
}
