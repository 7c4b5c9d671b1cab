// A file taken in as one act, in a database. Photos do not fit into one write with the entries: they are written before them, a
// few at a time, each write with a mark that names them. The write of the entries removes the marks; from then on all of it
// counts. What still has its mark when nobody is taking in was never kept: it is swept away when a store is opened.

import type { Kept } from '#journal/entry.ts';
import { checked, isNewPhoto } from './gate.ts';
import { birthAt } from './packs.ts';
import { addFresh } from './rows.ts';
import { type Photo, StoreFailure, type TakingIn } from './store.ts';
import { type Database, type PhotoRow, RECORD, strictWrite, type TableName, type WriteTx } from './tables.ts';

/** Facts that begin so are marks: the ids of photos that do not count yet. Each place has its own. */
const MARK = '~taking in ';
const marks = () => IDBKeyRange.bound(MARK, `${MARK}\uffff`);
/** Bytes of photos that go into one write. */
const WRITE_BYTES = 8_000_000;

export interface Taking {
  readonly db: Database;
  readonly name: string;
  readonly fresh: () => string;
  readonly write: <T>(tables: readonly TableName[], work: (tx: WriteTx, drawn: number) => Promise<T>) => Promise<T>;
}

/** Begins to take in; waits until no other tab does. */
export async function takingIn({ db, name, fresh, write }: Taking): Promise<TakingIn> {
  const release = await alone(name);
  const mark = `${MARK}${fresh()} `;
  const waiting = new Map<string, Photo>();
  let [size, writes] = [0, 0];
  const flush = async () => {
    if (waiting.size === 0) return;
    await write(['photos'], (tx, drawn) => putMarked(tx, `${mark}${writes}`, born(waiting.values(), drawn)));
    waiting.clear();
    [size, writes] = [0, writes + 1];
  };
  return {
    async putPhoto(photo) {
      const here = waiting.get(photo.id) ?? (await db.get('photos', photo.id));
      if (!isNewPhoto(photo, here)) return;
      waiting.set(photo.id, photo);
      size += photo.bytes.length;
      if (size >= WRITE_BYTES) await flush();
    },
    async keep(entries: readonly Kept[]) {
      const batch = checked(entries);
      await flush();
      const added = await write(RECORD, async (tx, drawn) => {
        await unmark(tx, mark, writes);
        return addFresh(tx, batch, drawn);
      });
      // Where it throws, its marks stand and it is yet to be dropped.
      release();
      return added;
    },
    async drop() {
      waiting.clear();
      await write(['photos'], (tx) => removeMarked(tx, IDBKeyRange.bound(mark, `${mark}\uffff`))).finally(release);
    },
  };
}

/** Ids of photos that do not count yet. */
export async function markedPhotos(db: Database): Promise<ReadonlySet<string>> {
  return new Set(((await db.getAll('facts', marks())) as readonly string[][]).flat());
}

/** Removes from a place what was left of files that were never taken in whole, unless a tab is still at it. */
export async function sweep(db: Database, name: string): Promise<void> {
  if ((await db.getAllKeys('facts', marks(), 1)).length === 0) return;
  const work = () => strictWrite(db, ['photos', 'facts'], (tx) => removeMarked(tx, marks()));
  const locks = browserLocks();
  // Without locks a tab that is still at it finds its marks gone and keeps nothing: together or not at all holds.
  if (locks === undefined) await work();
  else await locks.request(lockOf(name), { ifAvailable: true }, (lock) => (lock === null ? undefined : work()));
}

/** Photos with the births that a write gives them. */
const born = (photos: Iterable<Photo>, drawn: number) =>
  [...photos].map((photo, i) => ({ ...photo, birth: birthAt(drawn, i) }));

async function putMarked(tx: WriteTx, mark: string, photos: readonly PhotoRow[]): Promise<void> {
  const [table, facts] = [tx.objectStore('photos'), tx.objectStore('facts')];
  const known = await Promise.all(photos.map(({ id }) => table.getKey(id)));
  const unknown = photos.filter((_, i) => known[i] === undefined);
  // The mark may have come from the other place already, with its photos.
  const marked = ((await facts.get(mark)) ?? []) as readonly string[];
  const ids = [...marked, ...unknown.map(({ id }) => id)];
  await Promise.all([...unknown.map((photo) => table.put(photo)), facts.put(ids, mark)]);
}

async function unmark(tx: WriteTx, mark: string, writes: number): Promise<void> {
  const facts = tx.objectStore('facts');
  const range = IDBKeyRange.bound(mark, `${mark}\uffff`);
  const there = await facts.count(range);
  if (there !== writes) throw new StoreFailure('broken', 'taking in: photos were removed before the entries were kept');
  await facts.delete(range);
}

async function removeMarked(tx: WriteTx, range: IDBKeyRange): Promise<void> {
  const facts = tx.objectStore('facts');
  const ids = ((await facts.getAll(range)) as readonly string[][]).flat();
  await Promise.all([...ids.map((id) => tx.objectStore('photos').delete(id)), facts.delete(range)]);
}

const browserLocks = () => (globalThis.navigator as Navigator | undefined)?.locks;
const lockOf = (name: string) => `${name}:taking-in`;

/** Waits for the turn of this tab; the result ends it. */
function alone(name: string): Promise<() => void> {
  const locks = browserLocks();
  if (locks === undefined) return Promise.resolve(() => undefined);
  return new Promise((resolve, reject) => {
    const held = () => new Promise<void>((release) => resolve(release));
    locks.request(lockOf(name), held).catch(reject);
  });
}
