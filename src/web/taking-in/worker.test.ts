// The worker's answer to a file is that of the direct reading, and what it leaves in the store is the same: for a good file,
// for odd ones, for what cannot be copied between threads, and for one that is stopped.

import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { exportLines } from '#journal/lines.ts';
import { openBrowserStore } from '#store/browser.ts';
import { memoryStore } from '#store/memory.ts';
import type { Store } from '#store/store.ts';
import { goodFile, here, type OddFile, oddFiles } from '../../../test/faults/odd-files.ts';
import { kg, recorder } from '../../../test/scenarios/recorder.ts';
import type { FromTaker, ToTaker } from './messages.ts';
import { type TakeAsk, takeIn } from './take-in.ts';

const scope = globalThis as unknown as {
  postMessage: unknown;
  onmessage: ((event: { readonly data: ToTaker }) => void) | null;
};

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  vi.resetModules();
});
afterEach(() => {
  scope.onmessage = null;
});

async function opened(): Promise<Store> {
  const open = await openBrowserStore();
  if (!open.ok) throw new Error(`not opened: ${open.why}`);
  return open.store;
}

/** The worker's last word on a file; `heard` sees each message before, and may answer it. */
async function told(ask: TakeAsk, heard: (message: FromTaker, tell: (answer: ToTaker) => void) => void = () => {}) {
  await import('./worker.ts');
  const tell = (message: ToTaker) => scope.onmessage?.({ data: structuredClone(message) });
  return await new Promise<FromTaker>((resolve) => {
    scope.postMessage = (message: FromTaker) => {
      const copied = structuredClone(message);
      if (copied.kind !== 'progress') resolve(copied);
      else heard(copied, tell);
    };
    // A file is handed over as it is.
    scope.onmessage?.({ data: { kind: 'take', ask } });
  });
}

const asked = (file: OddFile['file']): TakeAsk => ({
  file: file instanceof Blob ? file : new Blob([file]),
  ...{ plotId: here.entry.plot, device: 'd', nowMs: Date.UTC(2026, 5, 1) },
});
const unheard = { progress: () => undefined, signal: new AbortController().signal };
const held = async (store: Store) => [await store.all(), await store.photoIds()];

describe('the worker that takes a file in', () => {
  it.each([{ name: 'the good one', file: goodFile }, ...oddFiles])(
    'answers as the direct reading does: $name',
    async ({ file }) => {
      const [direct, store] = [memoryStore(), await opened()];
      for (const one of [direct, store]) {
        await one.append([here.entry]);
        await one.putPhoto(here.photo);
      }
      const taken = await takeIn(direct, asked(file), unheard);
      expect(await told(asked(file))).toEqual({ kind: 'done', taken });
      expect(await held(store)).toEqual(await held(direct));
      store.close();
    },
  );

  it('leaves a file of another plot, and takes over the plot of a file where nothing was kept', async () => {
    const strange = recorder({ plot: 'strange', seed: 5 });
    const file = exportLines([strange.did('scraps.weighed', '2026-06-01', { name: 'a', mass: kg(1) })]);
    const empty = await opened();
    expect(await told(asked(file))).toMatchObject({ taken: { what: 'taken', freshCount: 1 } });
    expect(await empty.all()).toHaveLength(1);
    await empty.forget();
    await empty.append([here.entry]);
    expect(await told(asked(file))).toEqual({ kind: 'done', taken: { what: 'other-plot' } });
    expect(await empty.all()).toEqual([here.entry]);
    empty.close();
  });

  it('leaves nothing of a file that is stopped in the middle', async () => {
    const rake = recorder({ plot: here.entry.plot, seed: 3 });
    const many = Array.from({ length: 4000 }, (_, n) =>
      rake.did('scraps.weighed', '2026-06-01', { name: `lot ${n}`, mass: kg(2) }),
    );
    const store = await opened();
    await store.append([here.entry]);
    const fractions: number[] = [];
    const last = await told(asked(exportLines(many)), (message, tell) => {
      if (message.kind === 'progress') fractions.push(message.fraction);
      if (fractions.length === 2) tell({ kind: 'stop' });
    });
    expect(last).toEqual({ kind: 'stopped' });
    expect(fractions.at(-1)).toBeLessThan(0.4);
    expect(await held(store)).toEqual([[here.entry], []]);
    store.close();
  });

  it('says why where the store does not open', async () => {
    const young = await openBrowserStore('tilthwright', 99);
    expect(await told(asked(goodFile))).toMatchObject({ kind: 'failed', why: 'outdated' });
    if (young.ok) young.store.close();
  });
});
