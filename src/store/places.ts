// The two places that all is kept in, where the browser has a second one apart from the first (storage buckets). Why: such a
// browser keeps a database as a log; killed in the middle of a write it leaves a torn line, writes on behind it at the next
// opening, and at the one after finds its log spoilt and begins anew with nothing. The second place has a log of its own.
// The first is written first and the second after it, so that no kill tears both; opened, they are united.

import { StoreFailure } from './store.ts';
import { type Database, openTables } from './tables.ts';
import { sweep } from './taking-in.ts';
import { unite } from './union.ts';

/** A second place, opened apart from the first. */
export interface SecondPlace {
  readonly open: () => Promise<IDBFactory>;
  /** Removes it unopened. */
  readonly drop: () => Promise<void>;
}

/** Remembers apart from both places that something was kept here. */
export interface Witness {
  /** Whether something was. Asked too often in a row it gives up: a second place that never opens must not lock somebody out. */
  readonly saw: () => boolean;
  readonly note: () => void;
}

/** Where a store keeps what it is given. */
export interface Places {
  readonly name: string;
  readonly version: number;
  readonly first: IDBFactory;
  /** Undefined where the browser has none. */
  readonly second: SecondPlace | undefined;
  readonly witness?: Witness;
}

/** The handles of an opening: who hears that another tab blocks it, takes it over, or that the browser closed it. */
export interface Hearing {
  readonly blocked: () => void;
  readonly givingWay: (to: 'newer' | 'deletion') => void;
  readonly terminated: () => void;
}

export interface OpenPlaces {
  readonly db: Database;
  readonly copy: Database | undefined;
  /** Whether the second place holds all that the first does. */
  readonly equal: boolean;
}

/** What of the standard for storage buckets is used here; not every browser has it. */
interface Buckets {
  open(name: string, more?: { readonly durability: 'strict' }): Promise<{ readonly indexedDB: IDBFactory }>;
  delete(name: string): Promise<void>;
}
const BUCKET = 'second-place';
/** Openings that are refused in a row, until an empty record is believed. @practice */
const ASKED_TIMES = 3;

/** The places of this browser for a store of a name. */
export function browserPlaces(name: string, version: number): Places {
  const { storageBuckets } = (globalThis.navigator ?? {}) as { readonly storageBuckets?: Buckets };
  const second = storageBuckets && {
    open: async () => (await storageBuckets.open(BUCKET, { durability: 'strict' })).indexedDB,
    drop: () => storageBuckets.delete(BUCKET),
  };
  return { name, version, first: indexedDB, second, witness: localWitness(`${name}:kept`) };
}

function localWitness(key: string): Witness {
  // Local storage may be refused where a database is not; then nobody saw anything.
  const tried = <T>(work: () => T): T | undefined => {
    try {
      return work();
    } catch {
      return undefined;
    }
  };
  return {
    saw: () => {
      const left = Number(tried(() => localStorage.getItem(key)) ?? 0);
      if (!(left > 0)) return false;
      tried(() => localStorage.setItem(key, String(left - 1)));
      return true;
    },
    note: () => void tried(() => localStorage.setItem(key, String(ASKED_TIMES))),
  };
}

/**
 * Opens both places and unites them; where that fails neither stays open.
 * @throws what the browser throws where the first place fails; StoreFailure broken, where the first lost all that it had
 * and the second, which may have it still, does not open
 */
export async function openPlaces(places: Places, hearing: Hearing): Promise<OpenPlaces> {
  const { name, version, witness } = places;
  const first = openTables({ ...hearing, factory: places.first, name, version });
  // After the first: an upgrade writes, and no kill may tear both.
  const second = first.then(() => openSecond(places));
  try {
    const [db, copy] = [await first, await second];
    for (const place of [db, copy]) if (place !== undefined) await sweep(place, name);
    const equal = copy !== undefined && (await unite(db, copy));
    if (!(await isBare(db))) witness?.note();
    else if (places.second !== undefined && !equal && witness?.saw()) {
      throw new StoreFailure('broken', 'the first place lost what it had, and the second does not open');
    }
    return { db, copy, equal };
  } catch (cause) {
    for (const place of [first, second]) void place.then((db) => db?.close()).catch(() => undefined);
    throw cause;
  }
}

/** The second place; undefined where there is none, or where it does not open this time. */
export async function openSecond({ second, name, version }: Places): Promise<Database | undefined> {
  try {
    const factory = await second?.open();
    if (factory === undefined) return undefined;
    // Blocked by an older program in another tab: that tab gives way when it hears of the first place.
    return await new Promise<Database | undefined>((resolve, reject) => {
      openTables({ factory, name, version, blocked: () => resolve(undefined) }).then(resolve, reject);
    });
  } catch {
    // The first keeps everything meanwhile; the next opening unites them.
    return undefined;
  }
}

/** Whether no entry and no fact is there. */
async function isBare(db: Database): Promise<boolean> {
  const tx = db.transaction(['entries', 'packs', 'facts'], 'readonly');
  const counts = await Promise.all([
    tx.objectStore('entries').count(),
    tx.objectStore('packs').count(),
    tx.objectStore('facts').count(),
  ]);
  return counts.every((count) => count === 0);
}
