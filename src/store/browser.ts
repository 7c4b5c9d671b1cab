// The store in the browser: IndexedDB, every write strict, so that an acknowledged entry is on the disk, and in a second place
// beside it where there is one (copy.ts). A second tab hears of what was kept; a tab with an older program gives way to a
// newer one. What goes wrong gets a name (failure.ts), and leaves nothing half.

import type { Kept } from '#journal/entry.ts';
import { catchUp, countWrite, dropCopy, openCopy, restore } from './copy.ts';
import { failureOf } from './failure.ts';
import { isNewPhoto } from './gate.ts';
import { addKept, PACK_SIZE, type ReadRow } from './packs.ts';
import { addFresh, forgetPlot, pack } from './rows.ts';
import { type Since, type Store, StoreFailure } from './store.ts';
import { type Database, openTables, RECORD, strictWrite, type TableName, type WriteTx } from './tables.ts';
import { markedPhotos, sweep, takingIn } from './taking-in.ts';

export const STORE_VERSION = 1;
const NAME = 'tilthwright';
/** Packs asked for together: enough for one way to the disk and back, few enough that opening them need not wait for all. */
const PACKS_AT_ONCE = 5;

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
  const openAs = {
    name,
    version,
    blocked: () => giveUp({ ok: false, why: 'blocked' }),
    givingWay: () => {
      // What is kept is kept, and this tab must be loaded anew.
      stopped = 'outdated';
    },
    terminated: () => {
      stopped ??= 'closed';
    },
  };
  // Inside a promise: where nothing may be kept, some browsers throw before there is a request.
  const opening = Promise.resolve().then(() =>
    bothPlaces(name, openTables({ ...openAs, factory: indexedDB }), openCopy(name, version)),
  );
  const opened = opening.then(
    ({ db, copy }): Opened => ({
      ok: true,
      store: storeOn({
        db,
        copy,
        name,
        stopped: () => stopped,
        stop: (why) => (stopped ??= why),
      }),
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

/** Both places, the first filled from the second where it had lost all; where that fails neither stays open. */
async function bothPlaces(
  name: string,
  first: Promise<Database>,
  second: Promise<Database | undefined>,
): Promise<{ readonly db: Database; readonly copy: Database | undefined }> {
  try {
    const [db, copy] = [await first, await second];
    for (const place of [db, copy]) if (place !== undefined) await sweep(place, name);
    if (copy !== undefined) await restore(db, copy);
    return { db, copy };
  } catch (cause) {
    for (const place of [first, second]) void place.then((db) => db?.close()).catch(() => undefined);
    throw cause;
  }
}

type Stopped = 'outdated' | 'closed' | undefined;

interface Places {
  readonly db: Database;
  readonly copy: Database | undefined;
  readonly name: string;
  readonly stopped: () => Stopped;
  readonly stop: (why: 'closed') => void;
}

function storeOn({ db, copy, name, stopped, stop }: Places): Store {
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
  /** Whether the second place takes what the first takes; once it lacks a write, it is made anew at the next opening. */
  let copies = copy !== undefined;
  const behind = () => {
    copies = false;
  };
  let catching: Promise<void> | undefined;
  /** Settled once the second place is equal to the first; begun after the first reading, which need not wait for it. */
  const caughtUp = (): Promise<void> => {
    catching ??= copy === undefined ? Promise.resolve() : catchUp(db, copy).catch(behind);
    return catching;
  };
  /** Writes in the first place, then in the second. */
  const write = <T>(tables: readonly TableName[], work: (tx: WriteTx) => Promise<T>): Promise<T> =>
    guarded(async () => {
      const counted = async (tx: WriteTx) => {
        const result = await work(tx);
        await countWrite(tx);
        return result;
      };
      const all = [...new Set<TableName>([...tables, 'facts'])];
      const result = await strictWrite(db, all, counted);
      await caughtUp();
      if (copies && copy !== undefined) await strictWrite(copy, all, counted).catch(behind);
      return result;
    });
  /** Removes in the second place, then in the first: nothing forgotten may come back. */
  const remove = (tables: readonly TableName[], work: (tx: WriteTx) => Promise<void>): Promise<void> =>
    guarded(async () => {
      await caughtUp();
      if (copies && copy !== undefined) await strictWrite(copy, tables, work);
      else {
        copy?.close();
        await dropCopy();
      }
      await strictWrite(db, tables, work);
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
    if (loose.length >= PACK_SIZE) void guarded(() => strictWrite(db, RECORD, pack)).catch(() => undefined);
    void caughtUp();
    return { entries, cursor: (loose as ReadRow[]).at(-1)?.seq ?? lasts.at(-1) ?? cursor };
  };
  const heard = () => {
    tell();
    channel.postMessage('kept');
  };
  return {
    async append(entries) {
      const added = await write(RECORD, (tx) => addFresh(tx, entries));
      if (added > 0) heard();
    },
    all: async () => (await guarded(() => readAfter(0))).entries,
    since: (cursor) => guarded(() => readAfter(cursor)),
    async forget(plot) {
      const tables = [...RECORD, 'photos', 'facts'] as const;
      await remove(tables, async (tx) => {
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
        const table = tx.objectStore('photos');
        if (isNewPhoto(photo, await table.get(photo.id))) await table.put(photo);
      }),
    getPhoto: (id) => guarded(() => db.get('photos', id)),
    photoIds: () =>
      guarded(async () => {
        const [ids, marked] = await Promise.all([db.getAllKeys('photos'), markedPhotos(db)]);
        return ids.filter((id) => !marked.has(id));
      }),
    async takeIn() {
      const taking = await guarded(() => takingIn({ db, name, fresh: () => crypto.randomUUID(), write }));
      return {
        ...taking,
        async keep(entries) {
          const added = await taking.keep(entries);
          if (added > 0) heard();
          return added;
        },
      };
    },
    watch(changed) {
      watchers.add(changed);
      return () => watchers.delete(changed);
    },
    close() {
      stop('closed');
      watchers.clear();
      channel.close();
      db.close();
      copy?.close();
    },
  };
}
