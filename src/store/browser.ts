// The store in the browser: IndexedDB, every write strict, so that an acknowledged entry is on the disk. Entries (new ones as
// rows, old ones in packs), photos and device facts have object stores of their own. A second tab hears of what was kept; a tab with an older program gives way to
// a newer one. What goes wrong gets a name (failure.ts), and leaves nothing half.

import { type DBSchema, type IDBPDatabase, type IDBPTransaction, type OpenDBCallbacks, openDB } from 'idb';
import type { Kept } from '#journal/entry.ts';
import { failureOf } from './failure.ts';
import { checked, isNew } from './gate.ts';
import { addKept, PACK_SIZE, type Pack, packOf, type ReadRow, type Row, rowsOf, stretches } from './packs.ts';
import { photoOf } from './photos.ts';
import { type Photo, type Since, type Store, StoreFailure } from './store.ts';

export const STORE_VERSION = 1;
const NAME = 'tilthwright';
/** Packs asked for together: enough for one way to the disk and back, few enough that opening them need not wait for all. */
const PACKS_AT_ONCE = 5;

interface Tables extends DBSchema {
  entries: { key: number; value: Row; indexes: { id: string; plot: string } };
  packs: { key: number; value: Pack };
  /** The pack an entry is in, by the entry's id. */
  packed: { key: string; value: number };
  photos: { key: string; value: Photo };
  facts: { key: string; value: unknown };
}

export type Opened =
  | { readonly ok: true; readonly store: Store }
  | {
      readonly ok: false;
      readonly why: 'refused' | 'blocked' | 'outdated' | 'full' | 'broken';
      readonly cause?: unknown;
    };

/** Opens the store of this origin, or says why there is none. */
export async function openBrowserStore(name = NAME, version = STORE_VERSION): Promise<Opened> {
  if (typeof indexedDB === 'undefined') return { ok: false, why: 'refused' };
  let stopped: 'outdated' | 'closed' | undefined;
  let giveUp: (opened: Opened) => void = () => {};
  const blocked = new Promise<Opened>((resolve) => {
    giveUp = resolve;
  });
  const openAs: OpenDBCallbacks<Tables> = {
    upgrade,
    blocked: () => giveUp({ ok: false, why: 'blocked' }),
    blocking: (_, __, event) => {
      // A newer program wants to open: what is kept is kept, and this tab must be loaded anew.
      stopped = 'outdated';
      (event.target as IDBDatabase).close();
    },
    terminated: () => {
      stopped ??= 'closed';
    },
  };
  // Inside a promise: where nothing may be kept, some browsers throw before there is a request.
  const opening = Promise.resolve().then(() => openDB<Tables>(name, version, openAs));
  const opened = opening.then(
    (db): Opened => ({
      ok: true,
      store: storeOn(
        db,
        name,
        () => stopped,
        (why) => (stopped ??= why),
      ),
    }),
    (cause): Opened => {
      const { why } = failureOf(cause);
      // Some private windows answer the very first request as if the database were closed.
      if (why === 'closed' || why === 'refused') return { ok: false, why: 'refused', cause };
      return { ok: false, why: why === 'full' || why === 'outdated' ? why : 'broken', cause };
    },
  );
  const first = await Promise.race([opened, blocked]);
  // Blocked and given up: should it open after all, nobody is there to use it.
  if (!first.ok && first.why === 'blocked') void opened.then((late) => late.ok && late.store.close());
  return first;
}

/** From each version to the next; a store of any age takes the same road. */
function upgrade(db: IDBPDatabase<Tables>, from: number): void {
  if (from < 1) {
    const entries = db.createObjectStore('entries', { keyPath: 'seq', autoIncrement: true });
    entries.createIndex('id', 'id', { unique: true });
    entries.createIndex('plot', 'plot');
    db.createObjectStore('packs', { keyPath: 'last' });
    db.createObjectStore('packed');
    db.createObjectStore('photos', { keyPath: 'id' });
    db.createObjectStore('facts');
  }
}

type TableName = 'entries' | 'packs' | 'packed' | 'photos' | 'facts';
const RECORD = ['entries', 'packs', 'packed'] as const;
type Stopped = 'outdated' | 'closed' | undefined;

function storeOn(db: IDBPDatabase<Tables>, name: string, stopped: () => Stopped, stop: (why: 'closed') => void): Store {
  const channel = new BroadcastChannel(`${name}:kept`);
  const watchers = new Set<() => void>();
  const tell = () => {
    for (const changed of watchers) changed();
  };
  channel.onmessage = tell;
  const guarded = async <T>(work: () => Promise<T>): Promise<T> => {
    const why = stopped();
    if (why !== undefined)
      throw new StoreFailure(why, why === 'closed' ? 'the store was closed' : 'a newer program has the store');
    try {
      return await work();
    } catch (cause) {
      const now = stopped();
      throw now === undefined
        ? failureOf(cause)
        : new StoreFailure(now, 'the store was closed while at work', { cause });
    }
  };
  /** Runs one strict write; resolves once it is on the disk, and aborts it whole where anything fails. */
  const write = <T>(tables: readonly TableName[], work: (tx: WriteTx) => Promise<T>): Promise<T> =>
    guarded(async () => {
      const tx = db.transaction([...tables], 'readwrite', { durability: 'strict' });
      // Heard at once: an abort must not count as unheard while the work is still awaited.
      const done = tx.done.then(
        () => undefined,
        (cause: unknown) => ({ cause }),
      );
      let result: T;
      try {
        result = await work(tx);
      } catch (cause) {
        if (tx.error === null) tryAbort(tx);
        await done;
        throw tx.error ?? cause;
      }
      const failed = await done;
      if (failed !== undefined) throw failed.cause;
      return result;
    });
  /** What arrived after a number, and the number to ask with next. Packs are opened as they come, while the next are read. */
  const readAfter = async (cursor: number): Promise<Since> => {
    const tx = db.transaction(RECORD, 'readonly');
    const after = IDBKeyRange.lowerBound(cursor, true);
    const packs = tx.objectStore('packs');
    const [lasts, loose] = await Promise.all([packs.getAllKeys(after), tx.objectStore('entries').getAll(after)]);
    const entries: Kept[] = [];
    const reading = Array.from({ length: Math.ceil(lasts.length / PACKS_AT_ONCE) }, async (_, i) => {
      const some = lasts.slice(i * PACKS_AT_ONCE, (i + 1) * PACKS_AT_ONCE);
      // Requests of one transaction are answered in their order, and so are the packs.
      for (const one of await packs.getAll(IDBKeyRange.bound(some[0], some.at(-1)))) addKept(entries, one, cursor);
    });
    await Promise.all(reading);
    for (const { kept } of loose) entries.push(kept);
    // Asked for but not waited for: every later call waits its turn behind it, and where it fails the rows stay.
    if (loose.length >= PACK_SIZE) void write(RECORD, pack).catch(() => undefined);
    return { entries, cursor: (loose as ReadRow[]).at(-1)?.seq ?? lasts.at(-1) ?? cursor };
  };
  const heard = () => {
    tell();
    channel.postMessage('kept');
  };
  return {
    async append(entries) {
      const batch = [...checked(entries).values()];
      const added = await write(RECORD, async (tx) => {
        const here = await keptUnder(
          tx,
          batch.map(({ id }) => id),
        );
        const fresh = batch.filter((kept) => isNew(kept, here.get(kept.id)));
        const table = tx.objectStore('entries');
        await Promise.all(fresh.map((kept) => table.add({ id: kept.id, plot: kept.plot, kept })));
        return fresh.length;
      });
      if (added > 0) heard();
    },
    all: async () => (await guarded(() => readAfter(0))).entries,
    since: (cursor) => guarded(() => readAfter(cursor)),
    async forget(plot) {
      const tables = [...RECORD, 'photos', 'facts'] as const;
      await write(tables, async (tx) => {
        if (plot === undefined) await Promise.all(tables.map((table) => tx.objectStore(table).clear()));
        else await forgetPlot(tx, plot);
      });
      heard();
    },
    getFact: (fact) => guarded(() => db.get('facts', fact)),
    setFact: (fact, value) =>
      write(['facts'], async (tx) => {
        const table = tx.objectStore('facts');
        await (value === undefined ? table.delete(fact) : table.put(value, fact));
      }),
    putPhoto: (photo) =>
      write(['photos'], async (tx) => {
        await tx.objectStore('photos').put(photo);
      }),
    getPhoto: (id) => guarded(() => db.get('photos', id)),
    photoIds: () => guarded(() => db.getAllKeys('photos')),
    allPhotos: () => guarded(() => db.getAll('photos')),
    watch(changed) {
      watchers.add(changed);
      return () => watchers.delete(changed);
    },
    close() {
      stop('closed');
      watchers.clear();
      channel.close();
      db.close();
    },
  };
}

type WriteTx = IDBPTransaction<Tables, TableName[], 'readwrite'>;

/** What is kept under some ids, loose or packed; each pack is opened once. */
async function keptUnder(tx: WriteTx, ids: readonly string[]): Promise<ReadonlyMap<string, Kept>> {
  const index = tx.objectStore('entries').index('id');
  const packed = tx.objectStore('packed');
  const found = new Map<string, Kept>();
  const inPacks = new Set<number>();
  await Promise.all(
    ids.map(async (id) => {
      const [row, last] = await Promise.all([index.get(id), packed.get(id)]);
      if (row !== undefined) found.set(id, row.kept);
      if (last !== undefined) inPacks.add(last);
    }),
  );
  const wanted = new Set(ids);
  for (const last of inPacks) {
    const pack = await tx.objectStore('packs').get(last);
    for (const { id, kept } of pack === undefined ? [] : rowsOf(pack)) if (wanted.has(id)) found.set(id, kept);
  }
  return found;
}

/** Moves the oldest loose rows into packs. */
async function pack(tx: WriteTx): Promise<void> {
  const table = tx.objectStore('entries');
  for (const rows of stretches((await table.getAll()) as ReadRow[])) {
    const made = packOf(rows);
    await Promise.all([
      tx.objectStore('packs').add(made),
      ...rows.map(({ id }) => tx.objectStore('packed').add(made.last, id)),
      table.delete(IDBKeyRange.bound(rows[0]?.seq, made.last)),
    ]);
  }
}

/** Removes the entries of one plot and their photos, from loose rows and packs. */
async function forgetPlot(tx: WriteTx, plot: string): Promise<void> {
  const [table, packs, packed] = [tx.objectStore('entries'), tx.objectStore('packs'), tx.objectStore('packed')];
  const loose = (await table.index('plot').getAll(plot)) as ReadRow[];
  const gone = [...loose];
  await Promise.all(loose.map(({ seq }) => table.delete(seq)));
  for (const one of await packs.getAll()) {
    const rows = rowsOf(one);
    const out = rows.filter((row) => row.plot === plot);
    if (out.length === 0) continue;
    gone.push(...out);
    const stay = rows.filter((row) => row.plot !== plot);
    // Under the number it had: cursors that were given out must go on meaning the same.
    await (stay.length > 0 ? packs.put({ ...packOf(stay), last: one.last }) : packs.delete(one.last));
    await Promise.all(out.map(({ id }) => packed.delete(id)));
  }
  await Promise.all(gone.flatMap(({ kept }) => photoOf(kept) ?? []).map((id) => tx.objectStore('photos').delete(id)));
}

/** An abort of what has aborted by itself throws, and that is no news. */
function tryAbort(tx: WriteTx): void {
  try {
    tx.abort();
  } catch {
    // Aborted already: the first cause is told.
  }
}
