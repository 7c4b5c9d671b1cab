// A place to keep things in that can lose and refuse: IndexedDB in memory with a log of every committed write, so that its
// last writes can be cut off as a torn log loses them. The classes of IndexedDB are set for the whole process; the databases
// of each place are its own.

import 'fake-indexeddb/auto';
import { IDBFactory as Factory } from 'fake-indexeddb';

interface Change {
  readonly table: string;
  readonly method: 'add' | 'put' | 'delete' | 'clear';
  readonly args: readonly unknown[];
}
type Write = readonly Change[];

const WRITING = ['add', 'put', 'delete', 'clear'] as const;
const place = new WeakMap<IDBDatabase, LoggedPlace>();
const pending = new WeakMap<IDBTransaction, Change[]>();

for (const method of WRITING) {
  const plain = IDBObjectStore.prototype[method] as (...args: unknown[]) => IDBRequest;
  (IDBObjectStore.prototype as unknown as Record<string, unknown>)[method] = function (
    this: IDBObjectStore,
    ...args: unknown[]
  ) {
    place.get(this.transaction.db)?.changes(this.transaction, { table: this.name, method, args: args.map(copied) });
    return plain.apply(this, args);
  };
}

/** A range cannot be copied, and cannot change. */
const copied = (arg: unknown) => (arg instanceof IDBKeyRange ? arg : structuredClone(arg));

export class LoggedPlace {
  /** The next so many openings fail. */
  failOpenings = 0;
  /** From the n-th write from now on, counted from 0, so many are refused as by a full disk. */
  failWrites: { after: number; count: number } | undefined;
  #factory = new Factory();
  #log: Write[] = [];
  readonly #open = new Set<IDBDatabase>();

  /** What opens its databases. */
  readonly factory: IDBFactory = {
    open: (name: string, version?: number) => this.#openDatabase(name, version),
    deleteDatabase: (name: string) => this.#factory.deleteDatabase(name),
  } as IDBFactory;

  /** So many writes are on its disk. */
  get writes(): number {
    return this.#log.length;
  }

  changes(tx: IDBTransaction, change: Change): void {
    const known = pending.get(tx);
    if (known !== undefined) {
      known.push(change);
      return;
    }
    const fail = this.failWrites;
    if (fail !== undefined && fail.after-- <= 0) {
      if (--fail.count <= 0) this.failWrites = undefined;
      throw new DOMException('no room', 'QuotaExceededError');
    }
    const changes = [change];
    pending.set(tx, changes);
    tx.addEventListener('complete', () => this.#log.push(changes));
  }

  /** The process dies: what was open writes nothing more. */
  letGo(): void {
    for (const db of this.#open) {
      place.delete(db);
      db.close();
    }
    this.#open.clear();
  }

  /** Loses its last writes, or all of them and its databases too. Nothing may have it open. */
  async lose(count: number): Promise<void> {
    this.letGo();
    this.#log = this.#log.slice(0, Math.max(0, this.#log.length - count));
    const name = this.#name;
    this.#factory = new Factory();
    if (name === undefined || this.#log.length === 0) return;
    const db = await this.#opened(name.name, name.version, this.#upgrade);
    const tx = db.transaction([...db.objectStoreNames], 'readwrite');
    for (const { table, method, args } of this.#log.flat()) {
      (tx.objectStore(table)[method] as (...args: readonly unknown[]) => IDBRequest)(...args);
    }
    await new Promise<void>((resolve, reject) => {
      tx.oncomplete = () => resolve();
      tx.onabort = () => reject(tx.error);
    });
    db.close();
  }

  #name: { name: string; version: number | undefined } | undefined;
  #upgrade: readonly TableShape[] = [];

  #opened(name: string, version: number | undefined, shapes: readonly TableShape[]): Promise<IDBDatabase> {
    return new Promise((resolve, reject) => {
      const request = this.#factory.open(name, version);
      request.onupgradeneeded = () => {
        for (const { table, keyPath, autoIncrement, indexes } of shapes) {
          const made = request.result.createObjectStore(table, { keyPath, autoIncrement });
          for (const { index, on, unique, multiEntry } of indexes) made.createIndex(index, on, { unique, multiEntry });
        }
      };
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  }

  #openDatabase(name: string, version?: number): IDBOpenDBRequest {
    if (this.failOpenings > 0) {
      this.failOpenings--;
      throw new DOMException('this place does not open', 'UnknownError');
    }
    const request = this.#factory.open(name, version);
    request.addEventListener('success', () => {
      this.#name = { name, version };
      this.#upgrade = shapesOf(request.result);
      this.#open.add(request.result);
      place.set(request.result, this);
    });
    return request;
  }
}

interface TableShape {
  readonly table: string;
  readonly keyPath: string | string[] | null;
  readonly autoIncrement: boolean;
  readonly indexes: readonly {
    readonly index: string;
    readonly on: string | string[];
    readonly unique: boolean;
    readonly multiEntry: boolean;
  }[];
}

function shapesOf(db: IDBDatabase): readonly TableShape[] {
  const tables = [...db.objectStoreNames];
  if (tables.length === 0) return [];
  const tx = db.transaction(tables, 'readonly');
  return tables.map((table) => {
    const { keyPath, autoIncrement, indexNames } = tx.objectStore(table);
    const indexes = [...indexNames].map((index) => {
      const { keyPath: on, unique, multiEntry } = tx.objectStore(table).index(index);
      return { index, on: on as string | string[], unique, multiEntry };
    });
    return { table, keyPath: keyPath as string | string[] | null, autoIncrement, indexes };
  });
}
