// Where entries and photos are kept. One interface for every place that can keep them; one suite of checks runs on each
// (test/contract/store-contract.ts). A store keeps what it is given and adds nothing: what entries mean is the journal's.

import type { Kept } from '#journal/entry.ts';

/** A photo: a whole picture of its type, without the place it was taken at. */
export interface Photo {
  readonly id: string;
  readonly type: 'image/jpeg' | 'image/webp' | 'image/png';
  readonly bytes: Uint8Array;
}

/** Where a reader has read to; 0 is the beginning. Later entries only ever get higher ones, as long as the store is open. */
export type Cursor = number;

export interface Since {
  readonly entries: readonly Kept[];
  readonly cursor: Cursor;
}

export interface Store {
  /** Whether a tab hears of what another tab keeps. */
  readonly hearsTabs: boolean;
  /**
   * Keeps entries, all or none. Resolves only once they would outlive a crash. The same entry again is nothing new.
   * @throws StoreFailure; nothing was kept then
   */
  append(entries: readonly Kept[]): Promise<void>;
  /** Every entry of every plot, in the order of arrival. */
  all(): Promise<readonly Kept[]>;
  /** What arrived after a cursor, and the cursor to ask with next. */
  since(cursor: Cursor): Promise<Since>;
  /**
   * Removes what a plot holds, or with no plot named everything: entries, photos and device facts. Nothing else removes, and
   * what was removed comes back only where somebody takes it in again.
   * @throws StoreFailure; nothing was forgotten then, or, broken off in the middle, the next opening finishes it
   */
  forget(plot?: string): Promise<void>;
  /** A small fact of this device: its id, the last file's date, a draft. Plain data. */
  getFact(name: string): Promise<unknown>;
  /** Keeps a fact; `undefined` removes it. */
  setFact(name: string, value: unknown): Promise<void>;
  /**
   * Keeps a photo. The same picture again is nothing new.
   * @throws StoreFailure different, where its id is here with another picture
   */
  putPhoto(photo: Photo): Promise<void>;
  getPhoto(id: string): Promise<Photo | undefined>;
  /** Ids of all photos kept, in order. They are read one by one: together they may not fit into memory. */
  photoIds(): Promise<readonly string[]>;
  /** Begins to take in a file: its photos and entries are kept together or not at all. */
  takeIn(): Promise<TakingIn>;
  /** Entries that one of two places held with another content under an id that is kept: they count for nothing and are shown. */
  differing(): Promise<readonly Kept[]>;
  /** In how many places each write is kept now. */
  places(): 1 | 2;
  /** Calls back after entries were kept or forgotten, here or in another tab. Returns what ends it. */
  watch(changed: () => void): () => void;
  close(): void;
}

/** A file being taken in. Until it is kept nothing of it counts; what is left of one that broke off is removed. */
export interface TakingIn {
  /** Puts a photo of the file. @throws StoreFailure different, where its id is here with another picture */
  putPhoto(photo: Photo): Promise<void>;
  /** Keeps the entries and every photo put, or nothing; tells how many entries are new. Ends the taking in. */
  keep(entries: readonly Kept[]): Promise<number>;
  /** Leaves nothing of the file. Ends the taking in. */
  drop(): Promise<void>;
}

/**
 * Why a store could not do something.
 * full: no room left · refused: this browser keeps nothing here (a private window, storage switched off) · blocked: another
 * tab with an older program holds the store · outdated: another tab has a newer program, reload · different: an id is kept
 * with another content · unreadable: not an entry · closed: the store was closed · deleted: the database was deleted while it was
 * open · broken: anything else; see `cause`
 */
export type Why =
  | 'full'
  | 'refused'
  | 'blocked'
  | 'outdated'
  | 'different'
  | 'unreadable'
  | 'closed'
  | 'deleted'
  | 'broken';

/** A store's failure; what had been acknowledged before stays kept. */
export class StoreFailure extends Error {
  readonly why: Why;
  /** Id of the entry that was at fault, where it was one. */
  readonly entry: string | undefined;

  constructor(why: Why, message: string, more: { readonly cause?: unknown; readonly entry?: string } = {}) {
    super(message, { cause: more.cause });
    this.name = 'StoreFailure';
    this.why = why;
    this.entry = more.entry;
  }
}
