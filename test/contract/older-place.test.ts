// A record that an older program packed, opened by this one: its packs had the ids of their entries in a table of their own.

import { expect, it } from 'vitest';
import type { Kept } from '#journal/entry.ts';
import { openStore, STORE_VERSION } from '#store/browser.ts';
import { LoggedPlace } from '../faults/logged-place.ts';
import { recorder } from '../scenarios/recorder.ts';

const rake = recorder();
const entries = Array.from({ length: 5 }, (_, n) =>
  rake.did('scraps.weighed', '2026-06-01', { name: `lot ${n}`, mass: { typed: '1 kg', massKg: 1 } }),
);

/** The tables and the rows of version 2: four entries in two packs, one of them from before births; one as a row. */
function ofVersionTwo(factory: IDBFactory): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = factory.open('old', 2);
    request.onerror = () => reject(request.error);
    request.onupgradeneeded = () => {
      const db = request.result;
      const rows = db.createObjectStore('entries', { keyPath: 'seq', autoIncrement: true });
      rows.createIndex('id', 'id', { unique: true });
      rows.createIndex('plot', 'plot');
      db.createObjectStore('packs', { keyPath: 'last' });
      db.createObjectStore('photos', { keyPath: 'id' }).createIndex('birth', 'birth');
      for (const table of ['packed', 'facts', 'forgotten', 'differing']) db.createObjectStore(table);
    };
    request.onsuccess = () => {
      const db = request.result;
      const tx = db.transaction(['entries', 'packs', 'packed'], 'readwrite');
      const packed = (from: number, births: object) => {
        const some = entries.slice(from, from + 2);
        const text = some.map((kept) => JSON.stringify(kept)).join('\n');
        tx.objectStore('packs').add({ last: from + 2, seqs: [from + 1, from + 2], text, ...births });
        for (const { id } of some) tx.objectStore('packed').add(from + 2, id);
      };
      packed(0, {});
      packed(2, { births: ['w.0', 'w.1'] });
      const kept = entries[4] as Kept;
      tx.objectStore('entries').add({ seq: 5, id: kept.id, plot: kept.plot, kept, birth: 'w.2' });
      tx.oncomplete = () => resolve(db.close());
    };
  });
}

it('what an older program packed is there, is known again, and can be forgotten', async () => {
  const place = new LoggedPlace();
  await ofVersionTwo(place.factory);
  const opened = await openStore(() => ({
    ...{ name: 'old', version: STORE_VERSION, first: place.factory, second: undefined },
  }));
  if (!opened.ok) throw new Error(`not opened: ${opened.why} ${String(opened.cause)}`);
  const { store } = opened;
  expect(await store.all()).toEqual(entries);
  await store.append(entries);
  expect(await store.all()).toEqual(entries);
  const other = { ...(entries[1] as Kept), on: '2026-06-09' };
  await expect(store.append([other])).rejects.toMatchObject({ why: 'different' });
  await store.append([rake.did('scraps.weighed', '2026-06-02', { name: 'new', mass: { typed: '1 kg', massKg: 1 } })]);
  expect(await store.all()).toHaveLength(6);
  await store.forget();
  expect(await store.all()).toEqual([]);
  await store.append(entries);
  expect(await store.all()).toEqual(entries);
  store.close();
});
