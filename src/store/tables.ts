// The tables of a database of the browser, and how one is opened: entries (new ones as rows, old ones in packs), photos and
// facts have tables of their own, and so has what was forgotten. Any database with these tables takes the same upgrades and
// the same strict writes.

import { type DBSchema, type IDBPDatabase, type IDBPTransaction, wrap } from 'idb';
import { type Pack, type Row, rowsOf } from './packs.ts';
import type { Photo } from './store.ts';

export interface Tables extends DBSchema {
  entries: { key: number; value: Row; indexes: { id: string; plot: string } };
  /** Found by the id of each entry in it. */
  packs: { key: number; value: Pack; indexes: { ids: string } };
  photos: { key: string; value: PhotoRow; indexes: { birth: string } };
  facts: { key: string; value: unknown };
  /** Forgettings, each under a name drawn by chance. */
  forgotten: { key: string; value: Forgetting };
  /** Entries of the second place whose id stood in the first with another content, by their birth. */
  differing: { key: string; value: Row };
}

/** What one forgetting took, by births: entries, photos, the facts of an era. One that failed is revoked, and never acts again. */
export type Forgetting = { readonly births: readonly string[] } | 'revoked';

export type PhotoRow = Photo & { readonly birth?: string };

export type Database = IDBPDatabase<Tables>;
export type TableName = 'entries' | 'packs' | 'photos' | 'facts' | 'forgotten' | 'differing';
export type WriteTx = IDBPTransaction<Tables, TableName[], 'readwrite'>;
export const RECORD = ['entries', 'packs'] as const;
export const ALL_TABLES = [...RECORD, 'photos', 'facts', 'forgotten', 'differing'] as const;

export interface Opening {
  readonly factory: IDBFactory;
  readonly name: string;
  readonly version: number;
  /** Another tab has the database with an older program and does not give way. */
  readonly blocked?: () => void;
  /** A newer program wants the database, or it is to be deleted; it is closed after this. */
  readonly givingWay?: (to: 'newer' | 'deletion') => void;
  /** The browser closed the database by itself. */
  readonly terminated?: () => void;
}

/**
 * Opens a database, made or upgraded where need be.
 * @throws what the browser throws
 */
export async function openTables(opening: Opening): Promise<Database> {
  const request = opening.factory.open(opening.name, opening.version);
  const opened = wrap(request) as Promise<Database>;
  request.addEventListener('upgradeneeded', ({ oldVersion }) => upgrade(request, oldVersion));
  request.addEventListener('blocked', () => opening.blocked?.());
  const db = await opened;
  db.addEventListener('close', () => opening.terminated?.());
  db.addEventListener('versionchange', ({ newVersion }) => {
    opening.givingWay?.(newVersion === null ? 'deletion' : 'newer');
    db.close();
  });
  return db;
}

/** From each version to the next; a store of any age takes the same road. */
function upgrade({ result, transaction }: IDBOpenDBRequest, from: number): void {
  const db = wrap(result) as unknown as Database;
  if (from < 1) {
    const entries = db.createObjectStore('entries', { keyPath: 'seq', autoIncrement: true });
    entries.createIndex('id', 'id', { unique: true });
    entries.createIndex('plot', 'plot');
    db.createObjectStore('packs', { keyPath: 'last' });
    db.createObjectStore('photos', { keyPath: 'id' });
    db.createObjectStore('facts');
  }
  if (from < 2) {
    transaction?.objectStore('photos').createIndex('birth', 'birth');
    db.createObjectStore('forgotten');
    db.createObjectStore('differing');
  }
  if (from < 3 && transaction !== null) {
    const packs = transaction.objectStore('packs');
    packs.createIndex('ids', 'ids', { multiEntry: true });
    // Ids of packs stood in a table of their own, a row each: fifty thousand took seconds to write.
    if (transaction.objectStoreNames.contains('packed')) result.deleteObjectStore('packed');
    withIds(packs);
  }
}

/** Gives each pack of an older program the ids of its entries, inside the upgrade: all or none. */
function withIds(packs: IDBObjectStore): void {
  const reading = packs.openCursor();
  reading.onsuccess = () => {
    const at = reading.result;
    if (at === null) return;
    const old = at.value as Omit<Pack, 'ids'>;
    at.update({ ...old, ids: rowsOf(old).map(({ id }) => id) } satisfies Pack);
    at.continue();
  };
}

/** Runs one strict write; resolves once it is on the disk, and aborts it whole where anything fails. */
export async function strictWrite<T>(
  db: Database,
  tables: readonly TableName[],
  work: (tx: WriteTx) => Promise<T>,
): Promise<T> {
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
}

/** An abort of what has aborted by itself throws, and that is no news. */
function tryAbort(tx: WriteTx): void {
  try {
    tx.abort();
  } catch {
    // Aborted already: the first cause is told.
  }
}
