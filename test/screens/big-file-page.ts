// In a page: a record with so many photos, made into a file, forgotten and taken in again out of it, part by part. Tells what came
// back, how long it took, and what is left of a taking in that was stopped half way.

import type { Entry } from '#journal/entry.ts';
import { takeInFile } from '#store/file-in.ts';
import { recordFile } from '#store/file-out.ts';
import type { Store } from '#store/store.ts';
import { jpegOf } from '../scenarios/pictures.ts';
import { kg, recorder } from '../scenarios/recorder.ts';

/** Photos of one write while the record is made. */
const AT_ONCE = 16;

export interface BigFileTold {
  readonly photos: number;
  readonly fileBytes: number;
  /** Photos and entries that came back as they were. */
  readonly samePhotos: number;
  readonly sameEntries: number;
  /** Entries and photos left of the taking in that was stopped. */
  readonly leftOfStopped: number;
  readonly outMs: number;
  readonly inMs: number;
  /** Longest time the page did not answer while it read or wrote, ms. */
  readonly longestMs: number;
}

/** @param photoBytes of each photo, about */
export async function bigFile(store: Store, photos: number, photoBytes: number): Promise<BigFileTold> {
  const rake = recorder();
  const lots = Array.from({ length: photos }, (_, n) =>
    rake.did('scraps.weighed', '2026-06-01', { name: `lot ${n}`, mass: kg(2) }),
  );
  const taken = lots.map((lot) =>
    rake.did('photo.taken', '2026-06-01', {
      ...{ photo: lot.id, of: lot.id, type: 'image/jpeg' as const, bytes: photoBytes, widthPx: 3, heightPx: 2 },
    }),
  );
  const entries: readonly Entry[] = [...lots, ...taken];
  await store.append(entries);
  for (let n = 0; n < photos; n += AT_ONCE) {
    const some = lots.slice(n, n + AT_ONCE);
    await Promise.all(
      some.map(({ id }, i) =>
        store.putPhoto({ id, type: 'image/jpeg', bytes: jpegOf({ size: photoBytes, seed: n + i + 1 }) }),
      ),
    );
  }
  const before = await digests(store);
  const stops = stopwatch();
  const file = await recordFile(store, entries, {});
  const outMs = stops.lap();
  await store.forget();
  const ask = { file, here: () => undefined };
  const leftOfStopped = await left(store, ask);
  stops.lap();
  const read = await takeInFile(store, ask);
  if (!read.ok) throw new Error(JSON.stringify(read.refused.slice(0, 3)));
  await read.keep();
  const inMs = stops.lap();
  const longestMs = stops.end();
  const after = await digests(store);
  const same = [...before].filter(([id, digest]) => after.get(id) === digest).length;
  const back = new Set((await store.all()).map((kept) => JSON.stringify(kept)));
  const sameEntries = entries.filter((entry) => back.has(JSON.stringify(entry))).length;
  return {
    photos: after.size,
    fileBytes: file.size,
    samePhotos: same,
    sameEntries,
    leftOfStopped,
    outMs,
    inMs,
    longestMs,
  };
}

/** Stops half way; tells what is left of it. */
async function left(store: Store, ask: { readonly file: Blob; readonly here: () => undefined }): Promise<number> {
  const stopper = new AbortController();
  const progress = (fraction: number) => fraction > 0.5 && stopper.abort();
  const stopped = await takeInFile(store, { ...ask, progress, signal: stopper.signal }).then(
    () => false,
    () => stopper.signal.aborted,
  );
  if (!stopped) throw new Error('it was not stopped');
  return (await store.all()).length + (await store.photoIds()).length;
}

async function digests(store: Store): Promise<ReadonlyMap<string, string>> {
  const found = new Map<string, string>();
  for (const id of await store.photoIds()) {
    const photo = await store.getPhoto(id);
    const digest = await crypto.subtle.digest('SHA-256', new Uint8Array(photo?.bytes ?? []));
    found.set(id, [...new Uint8Array(digest)].join(' '));
  }
  return found;
}

/** Laps, and the longest time between two turns of the page. */
function stopwatch() {
  let begun = performance.now();
  let [turn, longestMs] = [begun, 0];
  const timer = setInterval(() => {
    const now = performance.now();
    longestMs = Math.max(longestMs, now - turn);
    turn = now;
  }, 10);
  return {
    lap() {
      const ms = performance.now() - begun;
      begun = performance.now();
      return ms;
    },
    end() {
      clearInterval(timer);
      return longestMs;
    },
  };
}
