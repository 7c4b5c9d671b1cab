// The store in the browser: IndexedDB, every write strict, so that an acknowledged entry is on the disk, and in a second place
// beside it where there is one (places.ts). A second tab hears of what was kept; a tab with an older program gives way to a
// newer one. What goes wrong gets a name (failure.ts), and leaves nothing half.

import type { Kept } from '#journal/entry.ts';
import { failureOf } from './failure.ts';
import { CannotNote, forgetInBoth, forgetInOne, forgetWithPlace, listForgotten } from './forgetting.ts';
import { checked, isNewPhoto } from './gate.ts';
import { addKept, birthAt, PACK_SIZE, type ReadRow } from './packs.ts';
import { browserPlaces, type OpenPlaces, openPlaces, openSecond, type Places } from './places.ts';
import { addFresh, pack } from './rows.ts';
import { countWrite, drawWrite } from './state.ts';
import { type Photo, type Since, type Store, StoreFailure } from './store.ts';
import { type PhotoRow, RECORD, strictWrite, type TableName, type WriteTx } from './tables.ts';
import { markedPhotos, takingIn } from './taking-in.ts';

export const STORE_VERSION = 3;
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
  return openStore(() => browserPlaces(name, version));
}

/** Opens the store of some places, or says why there is none. */
export async function openStore(given: () => Places): Promise<Opened> {
  let stopped: Stopped;
  let whenStopped: () => void = () => {};
  let giveUp: (opened: Opened) => void = () => {};
  const blocked = new Promise<Opened>((resolve) => {
    giveUp = resolve;
  });
  const hearing = {
    blocked: () => giveUp({ ok: false, why: 'blocked' }),
    givingWay: (to: 'newer' | 'deletion') => {
      // To a newer program: what is kept is kept, and this tab must be loaded anew.
      stopped = to === 'newer' ? 'outdated' : 'deleted';
      whenStopped();
    },
    terminated: () => {
      stopped ??= 'closed';
      whenStopped();
    },
  };
  // Inside a promise: where nothing may be kept, some browsers throw before there is a request.
  const opening = Promise.resolve().then(async () => {
    const places = given();
    return { places, open: await openPlaces(places, hearing) };
  });
  const opened = opening.then(
    ({ places, open }): Opened => ({
      ok: true,
      store: storeOn(places, {
        ...open,
        stopped: () => stopped,
        stop: (why) => (stopped ??= why),
        whenStopped: (then) => {
          whenStopped = then;
        },
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

type Stopped = 'outdated' | 'closed' | 'deleted' | undefined;
const STOPPED: Readonly<Record<NonNullable<Stopped>, string>> = {
  outdated: 'a newer program has the store',
  closed: 'the store was closed',
  deleted: 'the store was deleted while it was open',
};

interface Handles extends OpenPlaces {
  readonly stopped: () => Stopped;
  readonly stop: (why: 'closed') => void;
  /** Called once the store can do nothing more, whoever stopped it. */
  readonly whenStopped: (then: () => void) => void;
}

function storeOn(places: Places, { db, copy: second, equal, stopped, stop, whenStopped }: Handles): Store {
  let copy = second;
  const channel = channelOf(`${places.name}:kept`);
  const watchers = new Set<() => void>();
  const tell = () => {
    for (const changed of watchers) changed();
  };
  if (channel !== undefined) channel.onmessage = tell;
  // Whoever asks what is new is answered with the reason.
  whenStopped(tell);
  const guarded = async <T>(work: () => Promise<T>): Promise<T> => {
    const why = stopped();
    if (why !== undefined) throw new StoreFailure(why, STOPPED[why]);
    try {
      return await work();
    } catch (cause) {
      const now = stopped();
      throw now === undefined
        ? failureOf(cause)
        : new StoreFailure(now, 'the store was closed while at work', { cause });
    }
  };
  /** Whether the second place takes what the first takes; once it lacks a write, the next opening unites them. */
  let copies = equal;
  const behind = () => {
    copies = false;
  };
  /** Writes in the first place, then in the second; `drawn` is the write's number in both. */
  const write = <T>(tables: readonly TableName[], work: (tx: WriteTx, drawn: number) => Promise<T>): Promise<T> =>
    guarded(async () => {
      const drawn = drawWrite();
      const counted = async (tx: WriteTx) => {
        const result = await work(tx, drawn);
        await countWrite(tx, drawn);
        return result;
      };
      const all = [...new Set<TableName>([...tables, 'facts'])];
      const result = await strictWrite(db, all, counted);
      if (copies && copy !== undefined) await strictWrite(copy, all, counted).catch(behind);
      return result;
    });
  const forget = async (plot: string | undefined): Promise<void> => {
    if (places.second === undefined) return await forgetInOne(db, await listForgotten([db], plot));
    const other = copy ?? (await openSecond(places));
    try {
      if (!(await forgetInBoth(db, other, plot))) behind();
    } catch (cause) {
      // One plot waits until both places can write it down. Everything: the second place goes unopened, with all in it.
      if (!(cause instanceof CannotNote) || plot !== undefined) throw cause;
      behind();
      copy?.close();
      copy = undefined;
      await forgetWithPlace(db, places.second);
    } finally {
      if (other !== copy) other?.close();
    }
  };
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
    return { entries, cursor: (loose as ReadRow[]).at(-1)?.seq ?? lasts.at(-1) ?? cursor };
  };
  const heard = () => {
    tell();
    channel?.postMessage('kept');
  };
  return {
    hearsTabs: channel !== undefined,
    async append(entries) {
      const batch = checked(entries);
      const added = await write(RECORD, (tx, drawn) => addFresh(tx, batch, drawn));
      if (added > 0) heard();
    },
    all: async () => (await guarded(() => readAfter(0))).entries,
    since: (cursor) => guarded(() => readAfter(cursor)),
    async forget(plot) {
      await guarded(() => forget(plot));
      heard();
    },
    getFact: (fact) => guarded(() => db.get('facts', fact)),
    setFact: (fact, value) =>
      write(['facts'], async (tx) => {
        const table = tx.objectStore('facts');
        await (value === undefined ? table.delete(fact) : table.put(value, fact));
      }),
    putPhoto: (photo) =>
      write(['photos'], async (tx, drawn) => {
        const table = tx.objectStore('photos');
        const here = await table.get(photo.id);
        if (isNewPhoto(photo, here)) await table.put({ ...photo, birth: birthAt(drawn) });
      }),
    getPhoto: (id) => guarded(() => db.get('photos', id).then((row) => row && plain(row))),
    photoIds: () =>
      guarded(async () => {
        const [ids, marked] = await Promise.all([db.getAllKeys('photos'), markedPhotos(db)]);
        return ids.filter((id) => !marked.has(id));
      }),
    async takeIn() {
      const taking = await guarded(() => takingIn({ db, name: places.name, fresh: () => crypto.randomUUID(), write }));
      return {
        ...taking,
        async keep(entries) {
          const added = await taking.keep(entries);
          if (added > 0) heard();
          return added;
        },
      };
    },
    differing: () => guarded(async () => (await db.getAll('differing')).map(({ kept }) => kept)),
    places: () => (copies ? 2 : 1),
    watch(changed) {
      watchers.add(changed);
      return () => watchers.delete(changed);
    },
    close() {
      stop('closed');
      watchers.clear();
      channel?.close();
      db.close();
      copy?.close();
    },
  };
}

const plain = ({ id, type, bytes }: PhotoRow): Photo => ({ id, type, bytes });

/** The way on which tabs hear of each other; undefined where this browser has none or refuses it. */
function channelOf(name: string): BroadcastChannel | undefined {
  try {
    return new BroadcastChannel(name);
  } catch {
    // Without it the store keeps everything; `hearsTabs` says what is missing.
    return undefined;
  }
}
