// A store in two places, case by case: what each place lost, refused or held otherwise, and what is there afterwards.

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { openStore, STORE_VERSION } from '#store/browser.ts';
import type { Store } from '#store/store.ts';
import { LoggedPlace } from '../faults/logged-place.ts';
import { recorder } from '../scenarios/recorder.ts';
import { storeContract } from './store-contract.ts';

const rake = recorder();
const other = recorder({ plot: 'other', seed: 4 });
const lot = (n: number, who = rake): Entry =>
  who.did('scraps.weighed', '2026-06-01', { name: `lot ${n}`, mass: { typed: '1 kg', massKg: 1 } });
const ids = (entries: readonly { readonly id: string }[]) => entries.map(({ id }) => id).sort();
const ALL = Number.POSITIVE_INFINITY;

let first: LoggedPlace;
let second: LoggedPlace;
let witnessed: boolean;
const open: Store[] = [];

beforeEach(() => {
  [first, second, witnessed] = [new LoggedPlace(), new LoggedPlace(), false];
});
afterEach(() => {
  for (const store of open.splice(0)) store.close();
  first.letGo();
  second.letGo();
});

const tried = () =>
  openStore(() => ({
    ...{ name: 'two', version: STORE_VERSION, first: first.factory },
    second: { open: async () => second.factory, drop: () => second.lose(ALL) },
    witness: {
      saw: () => witnessed,
      note: () => {
        witnessed = true;
      },
    },
  }));
async function opened(): Promise<Store> {
  const one = await tried();
  if (!one.ok) throw new Error(`not opened: ${one.why} ${String(one.cause)}`);
  open.push(one.store);
  return one.store;
}
/** The same places in a new process. */
async function reopened(): Promise<Store> {
  for (const store of open.splice(0)) store.close();
  first.letGo();
  second.letGo();
  return await opened();
}
async function keptOneByOne(count: number): Promise<readonly Entry[]> {
  const store = await opened();
  const entries = Array.from({ length: count }, (_, n) => lot(n));
  for (const entry of entries) await store.append([entry]);
  return entries;
}
/** How many entries each place gives alone. */
async function inEach(): Promise<readonly number[]> {
  const counts = [];
  for (const alone of [first, second]) {
    first.letGo();
    second.letGo();
    const one = await openStore(() => ({
      ...{ name: 'two', version: STORE_VERSION, first: alone.factory, second: undefined },
    }));
    if (!one.ok) throw new Error(one.why);
    counts.push((await one.store.all()).length);
    one.store.close();
  }
  return counts;
}

describe('the contract of a store, in two places', () => {
  const failWrites = (_: Store, from: number) => {
    // Writes of one append are one write of the log.
    first.failWrites = { after: 0, count: from };
    return () => {
      first.failWrites = undefined;
    };
  };
  it.each(storeContract.filter(({ name }) => !name.includes('thousands of entries')))('$name', async ({ run }) => {
    await expect(run({ open: opened, shared: true, failWrites })).resolves.toBeUndefined();
  });
});

describe('a place that lost something', () => {
  it('first place without its last 8 of 20 entries: 20 and 20 at the next opening', async () => {
    const entries = await keptOneByOne(20);
    await first.lose(8);
    const store = await reopened();
    expect(ids(await store.all())).toEqual(ids(entries));
    expect(await inEach()).toEqual([20, 20]);
  });
  it('first place dropped while the second failed to open once: no empty record, then all is there', async () => {
    const entries = await keptOneByOne(20);
    await reopened();
    await first.lose(ALL);
    second.failOpenings = 1;
    expect(await tried()).toMatchObject({ ok: false, why: 'broken' });
    expect(ids(await (await reopened()).all())).toEqual(ids(entries));
    expect(await inEach()).toEqual([20, 20]);
  });
  it('each place lost what the other has: both have all', async () => {
    const entries = await keptOneByOne(10);
    await first.lose(4);
    second.failOpenings = 1;
    const alone = await reopened();
    const later = [lot(11), lot(12)];
    await alone.append(later);
    await second.lose(2);
    const store = await reopened();
    // The two that the second lost had been lost in the first before.
    expect(ids(await store.all())).toEqual(ids([...entries.slice(0, 8), ...later]));
    expect(await inEach()).toEqual([10, 10]);
  });
  it('as many writes in each place are not the same writes', async () => {
    const entries = await keptOneByOne(6);
    await first.lose(2);
    second.failOpenings = 1;
    const alone = await reopened();
    const later = [lot(11), lot(12)];
    for (const entry of later) await alone.append([entry]);
    expect(first.writes).toBe(second.writes);
    expect(ids(await (await reopened()).all())).toEqual(ids([...entries, ...later]));
    expect(await inEach()).toEqual([8, 8]);
  });
  it('what comes out of the other place has higher numbers than what was read', async () => {
    await keptOneByOne(6);
    await first.lose(3);
    second.failOpenings = 1;
    const { cursor } = await (await reopened()).since(0);
    const store = await reopened();
    expect((await store.since(cursor)).entries).toHaveLength(3);
  });
  it('thousands come back in their order, out of a second place that has them in packs', async () => {
    const store = await opened();
    const entries = Array.from({ length: 2300 }, (_, n) => lot(n));
    await store.append(entries.slice(0, 3));
    await store.append(entries.slice(3));
    await first.lose(ALL);
    const back = await reopened();
    expect((await back.all()).map(({ id }) => id)).toEqual(entries.map(({ id }) => id));
    await back.append([lot(2300)]);
    expect(await inEach()).toEqual([2301, 2301]);
  });
  it('photos and facts come back as well', async () => {
    const store = await opened();
    await store.setFact('device', 'd');
    const photo = { id: lot(1).id, type: 'image/png' as const, bytes: Uint8Array.from([1, 2]) };
    await store.putPhoto(photo);
    await first.lose(ALL);
    const back = await reopened();
    expect([await back.getFact('device'), [...((await back.getPhoto(photo.id))?.bytes ?? [])]]).toEqual(['d', [1, 2]]);
  });
  it('facts are taken whole from the place with more writes', async () => {
    const store = await opened();
    await store.setFact('draft', 'old');
    await store.setFact('draft', 'new');
    await first.lose(1);
    expect(await (await reopened()).getFact('draft')).toBe('new');
  });
});

describe('one id with two contents', () => {
  it('the first place counts, and the other content stays readable', async () => {
    const [a, b] = [lot(1), lot(2)];
    const store = await opened();
    await store.append([a, b]);
    await first.lose(1);
    second.failOpenings = 1;
    witnessed = false;
    const alone = await reopened();
    const changed = { ...b, on: '2026-06-09' };
    await alone.append([changed]);
    for (let i = 0; i < 2; i++) {
      const both = await reopened();
      expect(ids(await both.all())).toEqual(ids([a, b]));
      expect((await both.all()).find(({ id }) => id === b.id)?.on).toBe('2026-06-09');
      expect(await both.differing()).toEqual([b]);
      // The second time out of the second place alone.
      await first.lose(ALL);
    }
  });
});

describe('forgetting', () => {
  const both = async () => {
    const store = await opened();
    const [mine, theirs] = [
      [lot(1), lot(2)],
      [lot(3, other), lot(4, other)],
    ];
    for (const entry of [...mine, ...theirs]) await store.append([entry]);
    return { store, mine, theirs };
  };
  it('a place that missed it brings nothing back, and keeps what came after', async () => {
    const { store, mine, theirs } = await both();
    const before = first.writes;
    await store.forget('other');
    await first.lose(first.writes - before);
    second.failOpenings = 1;
    const later = lot(5, other);
    const alone = await reopened();
    expect(ids(await alone.all())).toEqual(ids([...mine, ...theirs]));
    await alone.append([later]);
    expect(ids(await (await reopened()).all())).toEqual(ids([...mine, later]));
    expect(await inEach()).toEqual([3, 3]);
  });
  it('entries that are taken in again stay, whichever place missed what', async () => {
    const { store, mine, theirs } = await both();
    await store.forget('other');
    await store.append(theirs);
    await second.lose(1);
    expect(ids(await (await reopened()).all())).toEqual(ids([...mine, ...theirs]));
    await first.lose(ALL);
    expect(ids(await (await reopened()).all())).toEqual(ids([...mine, ...theirs]));
  });
  it.each([0, 1, 2, 3])('of everything, broken off after %i writes, is whole or nothing', async (writes) => {
    const { store } = await both();
    await store.setFact('device', 'd');
    // The second writes down, the first forgets, the second forgets.
    first.failWrites = { after: writes >= 2 ? 1 : 0, count: ALL };
    second.failWrites = { after: writes >= 3 ? 2 : Math.min(writes, 1), count: ALL };
    const done = await store.forget().then(
      () => true,
      () => false,
    );
    first.failWrites = undefined;
    second.failWrites = undefined;
    const back = await reopened();
    const left = [(await back.all()).length, await back.getFact('device')];
    expect([
      [4, 'd'],
      [0, undefined],
    ]).toContainEqual(left);
    if (done) expect(left).toEqual([0, undefined]);
    expect(await inEach()).toEqual([left[0], left[0]]);
  });
  it('that failed stays failed, also where the second place loses that it did', async () => {
    const { store, mine, theirs } = await both();
    first.failWrites = { after: 0, count: 1 };
    const before = second.writes;
    await expect(store.forget('other')).rejects.toMatchObject({ why: 'full' });
    expect(ids(await (await reopened()).all())).toEqual(ids([...mine, ...theirs]));
    // What is left of it in the second is its beginning.
    await second.lose(second.writes - before - 1);
    expect(ids(await (await reopened()).all())).toEqual(ids([...mine, ...theirs]));
  });
  it('of one plot waits where the second place does not open, and says so', async () => {
    const { mine, theirs } = await both();
    second.failOpenings = 2;
    const alone = await reopened();
    await expect(alone.forget('other')).rejects.toMatchObject({ why: 'broken' });
    expect(ids(await alone.all())).toEqual(ids([...mine, ...theirs]));
    await (await reopened()).forget('other');
    expect(ids(await (await reopened()).all())).toEqual(ids(mine));
  });
  it('of everything takes a second place that does not open away whole', async () => {
    await both();
    second.failOpenings = 2;
    const alone = await reopened();
    await alone.setFact('device', 'old');
    await alone.forget();
    await alone.setFact('device', 'new');
    const back = await reopened();
    expect([await back.all(), await back.getFact('device')]).toEqual([[], 'new']);
    expect(await inEach()).toEqual([0, 0]);
  });
  it('of everything works where the second place has no room to write it down', async () => {
    const { store } = await both();
    second.failWrites = { after: 0, count: ALL };
    await store.forget();
    expect(await (await reopened()).all()).toEqual([]);
  });
});
