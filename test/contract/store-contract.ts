// What every store must do, as plain functions: run on the memory store by Vitest, on the browser's by the page tests, inside
// the browser. A case throws where the store breaks its word. A harness opens stores on one place and makes writes fail.

import type { Entry, Kept } from '#journal/entry.ts';
import { readLine } from '#journal/read.ts';
import type { Photo, Store } from '#store/store.ts';
import { recorder } from '../scenarios/recorder.ts';

export interface StoreHarness {
  /** A store on the harness's place: the same one again, or a second tab on it, where the place can have several. */
  readonly open: () => Promise<Store>;
  /** Whether a second store on the place sees what the first kept, as two tabs and a reload need. */
  readonly shared: boolean;
  /** From the n-th write of one append on, counted from 1, the place refuses as a full disk does, until the result is called. */
  readonly failWrites: (store: Store, from: number) => () => void;
}

export interface StoreCase {
  readonly name: string;
  /** Only where a place can be opened twice. */
  readonly needsShared?: boolean;
  readonly run: (harness: StoreHarness) => Promise<void>;
}

const rake = recorder({ plot: 'sedge-corner' });
const demo = recorder({ plot: 'demo', seed: 9 });
const weighed = (n: number, who = rake): Entry =>
  who.did('scraps.weighed', '2026-06-01', {
    name: `lot ${n}`,
    mass: { typed: `${(n % 900) + 1} kg`, massKg: (n % 900) + 1 },
  });
const several = (count: number): readonly Entry[] => Array.from({ length: count }, (_, n) => weighed(n));

/** Line breaks inside, own spacing, a long number: what only the letters themselves keep. */
function sealedEntry(): Kept {
  const { id, ...rest } = weighed(0);
  const line = `{ "id":"${id}", "long":12345678901234567890, ${JSON.stringify({ ...rest, kind: 'moon.watched' }).slice(1)}`;
  const read = readLine(line);
  if (read.state !== 'sealed') throw new Error('the test has no sealed entry');
  return read.entry;
}

/** A photo of so many bytes that say nothing: a store does not look at pictures, their door does. */
const picture = (id: string, byte: number): Photo => ({ id, type: 'image/png', bytes: new Uint8Array(99).fill(byte) });

function same(found: unknown, wanted: unknown, what: string): void {
  const [a, b] = [JSON.stringify(found), JSON.stringify(wanted)];
  if (a !== b) throw new Error(`${what}: found ${a}, wanted ${b}`);
}

const ids = (entries: readonly Kept[]) => entries.map(({ id }) => id);

async function refusal(work: Promise<unknown>): Promise<string> {
  try {
    await work;
  } catch (error) {
    return error instanceof Error && 'why' in error ? String(error.why) : `not named: ${String(error)}`;
  }
  return 'not refused';
}

export const storeContract: readonly StoreCase[] = [
  {
    name: 'is empty at first',
    run: async ({ open }) => {
      const store = await open();
      same(await store.all(), [], 'all');
      same(await store.since(0), { entries: [], cursor: 0 }, 'since');
    },
  },
  {
    name: 'gives back entries in the order of arrival, to the letter',
    run: async ({ open }) => {
      const store = await open();
      const entries = [...several(3), sealedEntry()].toReversed();
      await store.append(entries.slice(0, 2));
      await store.append(entries.slice(2));
      same(await store.all(), entries, 'all');
    },
  },
  {
    name: 'takes the same entry again as nothing new',
    run: async ({ open }) => {
      const store = await open();
      const [a, b, c] = several(3) as [Entry, Entry, Entry];
      await store.append([a, b, a]);
      const { cursor } = await store.since(0);
      await store.append([b, c, a]);
      await store.append([]);
      same(ids(await store.all()), ids([a, b, c]), 'all');
      same(ids((await store.since(cursor)).entries), ids([c]), 'since');
    },
  },
  {
    name: 'refuses another content under a known id, and keeps nothing of that append',
    run: async ({ open }) => {
      const store = await open();
      const [a, b] = several(2) as [Entry, Entry];
      await store.append([a]);
      same(await refusal(store.append([b, { ...a, on: '2026-06-09' }])), 'different', 'against what is kept');
      same(await refusal(store.append([b, { ...b, on: '2026-06-09' }])), 'different', 'within one append');
      same(await store.all(), [a], 'all');
    },
  },
  {
    name: 'refuses what could not be read again, and keeps nothing of that append',
    run: async ({ open }) => {
      const store = await open();
      const [a, b] = several(2) as [Entry, Entry];
      for (const bad of [
        { ...a, body: { name: 'x', mass: { typed: 'x', massKg: Number.NaN } } },
        { ...a, on: 'soon' },
        { ...sealedEntry(), line: '{' },
      ]) {
        same(await refusal(store.append([b, bad as Kept])), 'unreadable', JSON.stringify(bad));
      }
      same(await store.all(), [], 'all');
    },
  },
  {
    name: 'keeps all of an append or, where a write fails, nothing, and goes on afterwards',
    run: async ({ open, failWrites }) => {
      const store = await open();
      const first = several(2);
      const more = several(5);
      await store.append(first);
      for (const from of [1, 3, 5]) {
        const mend = failWrites(store, from);
        same(await refusal(store.append(more)), 'full', `from write ${from}`);
        mend();
        same(await store.all(), first, `after a failure from write ${from}`);
      }
      await store.append(more);
      same(await store.all(), [...first, ...more], 'all');
    },
  },
  {
    name: 'tells what came after a cursor, also of appends at one time',
    run: async ({ open }) => {
      const store = await open();
      const batches = [several(2), several(3), several(1)];
      await Promise.all(batches.map((batch) => store.append(batch)));
      const whole = await store.since(0);
      same(ids(whole.entries).sort(), ids(batches.flat()).sort(), 'since 0');
      same(await store.since(whole.cursor), { entries: [], cursor: whole.cursor }, 'since the end');
      const later = several(2);
      await store.append(later);
      same(ids((await store.since(whole.cursor)).entries), ids(later), 'since the end, later');
    },
  },
  {
    name: 'is not changed by what is done to entries outside',
    run: async ({ open }) => {
      const store = await open();
      const mine = structuredClone(weighed(1)) as Entry & { by: string };
      await store.append([mine]);
      mine.by = 'someone else';
      ((await store.all())[0] as { by: string }).by = 'someone else';
      same((await store.all())[0]?.by, 'Rake', 'by');
    },
  },
  {
    name: 'keeps facts of the device and photos',
    run: async ({ open }) => {
      const store = await open();
      same(await store.getFact('draft'), undefined, 'no fact');
      await store.setFact('draft', { massKg: 2, on: '2026-06-01' });
      same(await store.getFact('draft'), { massKg: 2, on: '2026-06-01' }, 'fact');
      await store.setFact('draft', undefined);
      same(await store.getFact('draft'), undefined, 'fact removed');
      const photo: Photo = { id: weighed(0).id, type: 'image/jpeg', bytes: Uint8Array.from([255, 216, 0, 128]) };
      await store.putPhoto(photo);
      const back = await store.getPhoto(photo.id);
      same([back?.type, [...(back?.bytes ?? [])]], [photo.type, [...photo.bytes]], 'photo');
      same(await store.photoIds(), [photo.id], 'photos');
      same(await store.getPhoto('none'), undefined, 'no photo');
    },
  },
  {
    name: 'refuses another picture under the id of a photo, and takes the same one again as nothing new',
    run: async ({ open }) => {
      const store = await open();
      const photo = picture(weighed(0).id, 1);
      await store.putPhoto(photo);
      await store.putPhoto(photo);
      same(await refusal(store.putPhoto(picture(photo.id, 2))), 'different', 'another picture');
      const taking = await store.takeIn();
      await taking.putPhoto(photo);
      same(await refusal(taking.putPhoto(picture(photo.id, 2))), 'different', 'another picture of a file');
      await taking.drop();
      same([...((await store.getPhoto(photo.id))?.bytes ?? [])], [...photo.bytes], 'the first');
    },
  },
  {
    name: 'takes in a file with all its photos, or leaves nothing of it',
    run: async ({ open, failWrites }) => {
      const store = await open();
      const [here, ...fresh] = several(4) as [Entry, ...Entry[]];
      const [old, one, other] = [1, 2, 3].map((n) => picture(weighed(n).id, n)) as [Photo, Photo, Photo];
      await store.append([here]);
      await store.putPhoto(old);
      const stands = async (what: string) =>
        same([ids(await store.all()), await store.photoIds()], [[here.id], [old.id]], what);
      const dropped = await store.takeIn();
      for (const photo of [old, one, other]) await dropped.putPhoto(photo);
      await stands('before it was kept');
      await dropped.drop();
      await stands('dropped');
      const full = await store.takeIn();
      await full.putPhoto(one);
      const mend = failWrites(store, 2);
      same(await refusal(full.keep(fresh)), 'full', 'no room');
      mend();
      await full.drop();
      await stands('no room');
      const bad = await store.takeIn();
      await bad.putPhoto(one);
      same(await refusal(bad.keep([...fresh, { ...here, on: '2026-06-09' }])), 'different', 'another content');
      await bad.drop();
      await stands('another content');
      const taking = await store.takeIn();
      for (const photo of [old, one, other, one]) await taking.putPhoto(photo);
      same(await taking.keep([here, ...fresh]), 3, 'new entries');
      same(ids(await store.all()), ids([here, ...fresh]), 'entries');
      same(await store.photoIds(), [old.id, one.id, other.id].sort(), 'photos');
    },
  },
  {
    name: 'forgets one plot and leaves the others, or everything',
    run: async ({ open }) => {
      const store = await open();
      const [own, shown] = [weighed(1), weighed(2, demo)];
      const photo: Photo = { id: weighed(3).id, type: 'image/png', bytes: Uint8Array.from([1]) };
      const told = demo.did('photo.taken', '2026-06-01', {
        ...{ photo: photo.id, of: shown.id, type: photo.type, bytes: 1, widthPx: 1, heightPx: 1 },
      });
      await store.append([shown, own, told]);
      await store.putPhoto(photo);
      await store.setFact('device', 'd');
      const { cursor } = await store.since(0);
      await store.forget('demo');
      same([await store.all(), await store.photoIds(), await store.getFact('device')], [[own], [], 'd'], 'one plot');
      await store.append([shown]);
      same(ids((await store.since(cursor)).entries), [shown.id], 'since, after forgetting');
      await store.forget();
      same([await store.all(), await store.getFact('device')], [[], undefined], 'everything');
    },
  },
  {
    name: 'keeps its word for thousands of entries, before and after it was read whole',
    run: async ({ open }) => {
      const store = await open();
      const [own, shown] = [several(1700), Array.from({ length: 900 }, (_, n) => weighed(n, demo))];
      const mixed = own.flatMap((entry, n) => [entry, ...shown.slice(n, n + 1)]);
      await store.append(mixed.slice(0, 1234));
      const { cursor } = await store.since(0);
      await store.append([...mixed.slice(1234), sealedEntry()]);
      const whole = await store.all();
      for (const round of [1, 2]) {
        same(await store.all(), whole, `all, round ${round}`);
        same(ids(whole.slice(0, -1)), ids(mixed), `order, round ${round}`);
        same((await store.since(cursor)).entries, whole.slice(1234), `since, round ${round}`);
        await store.append(mixed);
        same((await store.all()).length, whole.length, `the same again, round ${round}`);
        const other = { ...(mixed[7] as Entry), on: '2026-06-09' };
        same(await refusal(store.append([weighed(0), other])), 'different', `another content, round ${round}`);
        const among = await refusal(store.append([weighed(0), ...mixed.with(7, other)]));
        same(among, 'different', `another content among thousands, round ${round}`);
      }
      await store.forget('demo');
      same(ids((await store.all()).slice(0, -1)), ids(own), 'all, one plot forgotten');
      await store.append(shown);
      same((await store.all()).length, whole.length, 'the forgotten plot again');
      same(ids((await store.since(cursor)).entries).includes(shown[0]?.id ?? ''), true, 'since, after that');
      await store.forget();
      same(await store.all(), [], 'all, everything forgotten');
    },
  },
  {
    name: 'puts thousands behind what was kept before, and goes on behind them',
    run: async ({ open, failWrites }) => {
      const store = await open();
      const [few, many, more, last] = [several(3), several(2001), several(1500), several(2)];
      await store.append(few);
      const { cursor } = await store.since(0);
      await store.append(many);
      const between = (await store.since(0)).cursor;
      const again = failWrites(store, 1);
      same((await refusal(store.append(more))) === 'not refused', false, 'a full disk');
      again();
      same(ids(await store.all()), ids([...few, ...many]), 'all, after a refusal');
      await store.append([...more, ...many.slice(0, 5)]);
      for (const entry of last) await store.append([entry]);
      const whole = ids([...few, ...many, ...more, ...last]);
      same(ids(await store.all()), whole, 'all, in order');
      same(ids((await store.since(cursor)).entries), whole.slice(few.length), 'since the few');
      const behind = await store.since(between);
      same(ids(behind.entries), ids([...more, ...last]), 'since the many');
      same((await store.since(behind.cursor)).entries, [], 'nothing more');
      same(await refusal(store.append([{ ...(many[9] as Entry), on: '2026-06-09' }])), 'different', 'other content');
    },
  },
  {
    name: 'tells whoever watches, until they stop',
    run: async ({ open }) => {
      const store = await open();
      let heard = 0;
      const stop = store.watch(() => heard++);
      await store.append(several(2));
      same(heard, 1, 'heard');
      stop();
      await store.append(several(1));
      same(heard, 1, 'heard after stopping');
    },
  },
  {
    name: 'refuses everything once it is closed',
    run: async ({ open }) => {
      const store = await open();
      store.close();
      same(await refusal(store.append(several(1))), 'closed', 'append');
      same(await refusal(store.all()), 'closed', 'all');
      same(await refusal(store.setFact('a', 1)), 'closed', 'fact');
    },
  },
  {
    name: 'keeps entries past its closing',
    needsShared: true,
    run: async ({ open }) => {
      const first = await open();
      const entries = [...several(3), sealedEntry()];
      await first.append(entries);
      first.close();
      same(await (await open()).all(), entries, 'all, opened again');
    },
  },
  {
    name: 'lets a second tab see and hear what the first kept, and never loses either of two that write at once',
    needsShared: true,
    run: async ({ open }) => {
      const [one, other] = [await open(), await open()];
      const heard = new Promise<void>((resolve) => {
        other.watch(resolve);
      });
      const first = several(2);
      await one.append(first);
      await heard;
      same(ids(await other.all()), ids(first), 'the other tab');
      const [a, b] = [several(20), several(20)];
      await Promise.all([...a.map((entry) => one.append([entry])), ...b.map((entry) => other.append([entry]))]);
      same(ids(await one.all()).sort(), ids([...first, ...a, ...b]).sort(), 'both');
      await Promise.all([one.append(a), other.append(a)]);
      same((await other.all()).length, 42, 'the same again from both');
    },
  },
];
