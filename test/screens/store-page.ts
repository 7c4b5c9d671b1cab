// The script of a page that holds nothing but the browser's store: the page tests run the store's contract in it, and fill
// it without end while the browser is killed. Bundled by store-site.ts, never part of the app.

import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { write } from '#journal/write.ts';
import { type Opened, openBrowserStore } from '#store/browser.ts';
import { type Store, StoreFailure } from '#store/store.ts';
import { type StoreHarness, storeContract } from '../contract/store-contract.ts';
import { type BigFileTold, bigFile } from './big-file-page.ts';

const stores = new Map<string, Store>();

/** A new entry of this page; `name` is what a test finds it by. */
function entry(name: string): Entry {
  const random = crypto.getRandomValues(new Uint8Array(10));
  const stamp = { plot: 'p', by: 'Rake', device: 'd', nowMs: Date.now(), random };
  const body = { name, mass: { typed: '1 kg', massKg: 1 } };
  const written = write({ kind: 'scraps.weighed', on: '2026-06-01', body }, stamp);
  if (!written.ok) throw new Error(JSON.stringify(written.problems));
  return written.entry;
}

async function opened(name: string, version?: number): Promise<Store> {
  const tried = await openBrowserStore(name, version);
  if (!tried.ok) throw new Error(`no store: ${tried.why} ${String(tried.cause)}`);
  return tried.store;
}

/** Every write from the n-th on throws what a full disk throws. */
function failWrites(_: Store, from: number): () => void {
  const { add } = IDBObjectStore.prototype;
  let count = 0;
  IDBObjectStore.prototype.add = function (...args) {
    count++;
    if (count >= from) throw new DOMException('no room', 'QuotaExceededError');
    return add.apply(this, args);
  };
  return () => {
    IDBObjectStore.prototype.add = add;
  };
}

const names = (kept: readonly { readonly body?: unknown }[]) =>
  kept.map(({ body }) => (body as { readonly name?: string } | undefined)?.name ?? '');

const why = (error: unknown) => (error instanceof StoreFailure ? error.why : `not named: ${String(error)}`);

const storeTest = {
  async runCase(index: number): Promise<void> {
    const place = `case-${index}`;
    const harness: StoreHarness = { open: () => opened(place), shared: true, failWrites };
    const found = storeContract[index];
    if (found === undefined) throw new Error(`there is no case ${index}`);
    await found.run(harness);
  },
  /** Opens a store and keeps it under its name. */
  async open(name: string, version?: number): Promise<string> {
    const tried: Opened = await openBrowserStore(name, version);
    if (tried.ok) stores.set(name, tried.store);
    return tried.ok ? 'open' : tried.why;
  },
  /** Keeps one entry; tells 'kept' or why not. */
  keep: (store: string, name: string): Promise<string> =>
    (stores.get(store) as Store).append([entry(name)]).then(() => 'kept', why),
  /** Keeps a photo of so many bytes; tells 'kept' or why not. */
  keepPhoto: (store: string, size: number): Promise<string> => {
    const bytes = new Uint8Array(size);
    for (let i = 0; i < size; i += 65_536) crypto.getRandomValues(bytes.subarray(i, Math.min(size, i + 65_536)));
    return (stores.get(store) as Store)
      .putPhoto({ id: entry('photo').id, type: 'image/png', bytes })
      .then(() => 'kept', why);
  },
  names: async (store: string): Promise<readonly string[]> =>
    names((await (stores.get(store) as Store).all()) as readonly Entry[]),
  photoCount: async (store: string): Promise<number> => (await (stores.get(store) as Store).photoIds()).length,
  keepFact: (store: string, fact: string, value: unknown): Promise<void> =>
    (stores.get(store) as Store).setFact(fact, value),
  fact: (store: string, fact: string): Promise<unknown> => (stores.get(store) as Store).getFact(fact),
  forget: (store: string, plot?: string): Promise<void> => (stores.get(store) as Store).forget(plot),
  /** The browser loses the database of a store, and nothing beside it. */
  lose: (name: string): Promise<void> => {
    stores.get(name)?.close();
    return new Promise((resolve, reject) => {
      const request = indexedDB.deleteDatabase(name);
      request.onsuccess = () => resolve();
      request.onerror = () => reject(request.error);
    });
  },
  /** Keeps an entry as an older program did, which knew of no second place, in a database of its time. */
  keepAsOlder: (name: string, entryName: string): Promise<void> =>
    new Promise((resolve, reject) => {
      const request = indexedDB.open(name, 1);
      request.onerror = () => reject(request.error);
      request.onupgradeneeded = () => {
        const entries = request.result.createObjectStore('entries', { keyPath: 'seq', autoIncrement: true });
        entries.createIndex('id', 'id', { unique: true });
        entries.createIndex('plot', 'plot');
        request.result.createObjectStore('packs', { keyPath: 'last' });
        request.result.createObjectStore('photos', { keyPath: 'id' });
        for (const table of ['packed', 'facts']) request.result.createObjectStore(table);
      };
      request.onsuccess = () => {
        const tx = request.result.transaction(['entries'], 'readwrite');
        const kept = entry(entryName);
        tx.objectStore('entries').add({ id: kept.id, plot: kept.plot, kept });
        tx.oncomplete = () => resolve(request.result.close());
      };
    }),
  /** The first place loses its last entries, and the count of its writes with them. */
  loseLast: (name: string, count: number): Promise<void> => {
    stores.get(name)?.close();
    return new Promise((resolve, reject) => {
      const request = indexedDB.open(name);
      request.onerror = () => reject(request.error);
      request.onsuccess = () => {
        const tx = request.result.transaction(['entries', 'facts'], 'readwrite');
        const entries = tx.objectStore('entries');
        const keys = entries.getAllKeys();
        keys.onsuccess = () => {
          for (const key of keys.result.slice(-count)) entries.delete(key);
          tx.objectStore('facts').put({ count: keys.result.length - count, sum: 1, era: 0 }, '~writes');
        };
        tx.oncomplete = () => resolve(request.result.close());
      };
    });
  },
  /** The next openings of the second place fail, so many of them. */
  failSecond: (times: number): void => {
    const { storageBuckets } = navigator as unknown as { storageBuckets: { open: (...args: unknown[]) => unknown } };
    const { open } = storageBuckets;
    let left = times;
    storageBuckets.open = (...args) => {
      if (left-- > 0) return Promise.reject(new DOMException('not this time', 'UnknownError'));
      return open.apply(storageBuckets, args);
    };
  },
  places: (store: string): 1 | 2 => (stores.get(store) as Store).places(),
  hearsTabs: (store: string): boolean => (stores.get(store) as Store).hearsTabs,
  /** Resolves with what the store holds once it tells of a change. */
  heard: (store: string): Promise<readonly string[]> =>
    new Promise((resolve) => {
      const kept = stores.get(store) as Store;
      const stop = kept.watch(() => {
        stop();
        resolve(storeTest.names(store));
      });
    }),
  /** Fills a store, opens it anew and folds what it holds; tells how long the opening and the folding took. */
  async openingTime(
    count: number,
  ): Promise<{ readonly readMs: number; readonly foldMs: number; readonly lots: number }> {
    const place = `bench-${count}`;
    const filling = await opened(place);
    if ((await filling.since(0)).cursor === 0)
      await filling.append(Array.from({ length: count }, (_, i) => entry(`lot ${i}`)));
    filling.close();
    const begun = performance.now();
    const entries = await (await opened(place)).all();
    const read = performance.now();
    const { lots } = fold(entries);
    return { readMs: read - begun, foldMs: performance.now() - read, lots: lots.size };
  },
  /** Fills a store with photos, makes a file of them and takes it in again. */
  bigFile: async (name: string, photos: number, photoBytes: number): Promise<BigFileTold> =>
    bigFile(await opened(name), photos, photoBytes),
  /** A tab with an older program that does not give way. */
  holdOn: (name: string, version: number): Promise<string> =>
    new Promise((resolve) => {
      const request = indexedDB.open(name, version);
      request.onsuccess = () => resolve('held');
    }),
};

export type StoreTest = typeof storeTest;
Object.assign(globalThis, { storeTest });

/** Tells the site what is there, then keeps entries without end and tells of each append once it is acknowledged. */
async function fillWithoutEnd(): Promise<void> {
  const store = await opened('kill');
  const tell = (what: string, told: readonly string[]) => fetch(`/${what}`, { method: 'POST', body: told.join('\n') });
  await tell('found', names((await store.all()) as readonly Entry[]));
  const run = crypto.randomUUID();
  for (let n = 0; ; n++) {
    const size = 1 + (n % 3);
    const batch = Array.from({ length: size }, (_, i) => entry(`${run} ${n} ${i + 1}/${size}`));
    await store.append(batch);
    void tell('kept', names(batch));
  }
}

if (location.pathname === '/fill') void fillWithoutEnd();
