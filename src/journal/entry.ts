// One entry of the record: an act, who signed it, where and when. Entries are never changed or removed. A correction
// is an entry that `replaces` another; a withdrawal is one with an empty body. Ids are made in new-id.ts, entries are
// checked in read.ts, and what they add up to is fold.ts.

import type { Body, Kind } from './kinds/index.ts';

/** What stands around the body of every entry. */
export interface Envelope {
  /** Version 7 UUID, made on the device. */
  readonly id: string;
  readonly plot: string;
  /** Tag of the keyholder who signs. */
  readonly by: string;
  readonly device: string;
  /** Instant of recording, UTC: 2026-06-03T17:20:05.120Z. */
  readonly at: string;
  /** Local date or local date and time of the act: 2026-06-03 or 2026-06-03T18:20. */
  readonly on: string;
  readonly kind: string;
  readonly v: number;
  /** Id of the entry that this one corrects or withdraws. */
  readonly replaces?: string;
}

/** An entry of a kind and version that was checked. The body is as written, in the version it was written in. */
export interface Entry extends Envelope {
  readonly kind: Kind;
  readonly body: unknown;
}

/** An entry that this program cannot read yet: unknown kind or newer version. Its line is kept to the letter. */
export interface Sealed extends Envelope {
  readonly sealed: true;
  readonly line: string;
}

/** What a store keeps and a file carries. */
export type Kept = Entry | Sealed;

/** What one writes: an entry whose body is of its kind's newest version. */
export interface NewEntry<K extends Kind> extends Entry {
  readonly kind: K;
  readonly body: Body<K> | Withdrawn;
}

/** The empty body of a withdrawal. */
export type Withdrawn = Readonly<Record<string, never>>;

export function isSealed(kept: Kept): kept is Sealed {
  return 'sealed' in kept;
}

/** An empty body withdraws the entry it replaces. */
export function isWithdrawal(entry: Envelope & { readonly body: unknown }): boolean {
  return (
    entry.replaces !== undefined &&
    typeof entry.body === 'object' &&
    entry.body !== null &&
    Object.keys(entry.body).length === 0
  );
}
