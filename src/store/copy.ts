// A second place for all that is kept, where the browser has one apart from the first (storage buckets). Why: such a browser
// keeps a database as a log; killed in the middle of a write it leaves a torn line, writes on behind it at the next
// opening, and at the one after finds its log spoilt and begins anew with nothing. The second place has a log of its own.
// The first is written first and the second after it, so that no kill tears both, and a write counts once both have it.

import { type Database, openTables, RECORD, strictWrite, type TableName, type WriteTx } from './tables.ts';

/** Counts the writes of a database: two with the same content have the same number. No fact of a caller's bears this name. */
const WRITES = '~writes';
/** All that goes over in one write; photos go before it, one by one, since many do not fit into memory. */
const WITHOUT_PHOTOS = [...RECORD, 'facts'] as const;

/** What of the standard for storage buckets is used here; not every browser has it. */
interface Buckets {
  open(name: string, more?: { readonly durability: 'strict' }): Promise<{ readonly indexedDB: IDBFactory }>;
  delete(name: string): Promise<void>;
}
const BUCKET = 'second-place';

/** A transaction as far as it is read here. */
interface Reading {
  objectStore(table: (typeof WITHOUT_PHOTOS)[number]): {
    getAllKeys(query: undefined, count: number): Promise<readonly IDBValidKey[]>;
  };
}

function buckets(): Buckets | undefined {
  return (globalThis.navigator as (Navigator & { readonly storageBuckets?: Buckets }) | undefined)?.storageBuckets;
}

/** The second place of a store; undefined where this browser has none or does not open it. */
export async function openCopy(name: string, version: number): Promise<Database | undefined> {
  try {
    const bucket = await buckets()?.open(BUCKET, { durability: 'strict' });
    if (bucket === undefined) return undefined;
    // Blocked by an older program in another tab: that tab gives way when it hears of the first place.
    return await new Promise<Database | undefined>((resolve, reject) => {
      const opening = { factory: bucket.indexedDB, name, version, blocked: () => resolve(undefined) };
      openTables(opening).then(resolve, reject);
    });
  } catch {
    // Without a second place the first keeps everything, as it does in a browser that has no buckets.
    return undefined;
  }
}

/** Removes the second place unopened: what is forgotten must not come back out of it. @throws what the browser throws */
export async function dropCopy(): Promise<void> {
  await buckets()?.delete(BUCKET);
}

/** Counts a write, inside it. */
export async function countWrite(tx: WriteTx): Promise<void> {
  const facts = tx.objectStore('facts');
  await facts.put((Number(await facts.get(WRITES)) || 0) + 1, WRITES);
}

/**
 * Fills the first place from the second, where the first holds nothing and the second something.
 * @throws what the browser throws; the first place still holds nothing then
 */
export async function restore(db: Database, copy: Database): Promise<void> {
  if (!(await isBare(db)) || (await isBare(copy))) return;
  await pourPhotos(copy, db);
  const rows = await readAll(copy);
  await strictWrite(db, WITHOUT_PHOTOS, async (tx) => {
    // Another tab may have filled it meanwhile, and written on.
    if (await isBareIn(tx)) await putRows(tx, rows);
  });
}

/** Makes the second place equal to the first where it is not: after a write that only the first had, or before its time. */
export async function catchUp(db: Database, copy: Database): Promise<void> {
  const [mine, other] = await Promise.all([stateOf(db), stateOf(copy)]);
  if (mine.writes === other.writes && mine.entries === other.entries) return;
  if (mine.writes === undefined) await strictWrite(db, ['facts'], countWrite);
  const kept = await pourPhotos(db, copy);
  const rows = await readAll(db);
  await strictWrite(copy, [...WITHOUT_PHOTOS, 'photos'], async (tx) => {
    const photos = tx.objectStore('photos');
    for (const id of await photos.getAllKeys()) if (!kept.has(id)) await photos.delete(id);
    await Promise.all(WITHOUT_PHOTOS.map((table) => tx.objectStore(table).clear()));
    await putRows(tx, rows);
  });
}

/** What two equal places have in common. */
async function stateOf(db: Database): Promise<{ readonly writes: unknown; readonly entries: number }> {
  const tx = db.transaction(['entries', 'packed', 'facts'], 'readonly');
  const [writes, loose, packed] = await Promise.all([
    tx.objectStore('facts').get(WRITES),
    tx.objectStore('entries').count(),
    tx.objectStore('packed').count(),
  ]);
  return { writes, entries: loose + packed };
}

/** Whether no entry and no fact is there. */
function isBare(db: Database): Promise<boolean> {
  return isBareIn(db.transaction(WITHOUT_PHOTOS, 'readonly'));
}

async function isBareIn(tx: Reading): Promise<boolean> {
  const keys = await Promise.all(WITHOUT_PHOTOS.map((table) => tx.objectStore(table).getAllKeys(undefined, 1)));
  return keys.every((some) => some.length === 0);
}

/** Puts the photos of one place that the other lacks there, and tells all that the one has. */
async function pourPhotos(from: Database, to: Database): Promise<ReadonlySet<string>> {
  const [there, here] = await Promise.all([from.getAllKeys('photos'), to.getAllKeys('photos')]);
  const held = new Set(here);
  for (const id of there) {
    const photo = held.has(id) ? undefined : await from.get('photos', id);
    if (photo !== undefined) await strictWrite(to, ['photos'], (tx) => tx.objectStore('photos').put(photo));
  }
  return new Set(there);
}

interface Rows {
  readonly table: TableName;
  readonly keys: readonly IDBValidKey[];
  readonly values: readonly unknown[];
}

async function readAll(from: Database): Promise<readonly Rows[]> {
  const tx = from.transaction(WITHOUT_PHOTOS, 'readonly');
  return await Promise.all(
    WITHOUT_PHOTOS.map(async (table) => {
      const held = tx.objectStore(table);
      const [keys, values] = await Promise.all([held.getAllKeys(), held.getAll() as Promise<readonly unknown[]>]);
      return { table, keys, values };
    }),
  );
}

/** Under the numbers they had: cursors that were given out go on meaning the same. */
async function putRows(tx: WriteTx, rows: readonly Rows[]): Promise<void> {
  for (const { table, keys, values } of rows) {
    const held = tx.objectStore(table);
    // Rows that carry their number take no key beside it.
    const put = held.put.bind(held) as (value: unknown, key?: IDBValidKey) => Promise<unknown>;
    await Promise.all(values.map((value, i) => (held.keyPath === null ? put(value, keys[i]) : put(value))));
  }
}
