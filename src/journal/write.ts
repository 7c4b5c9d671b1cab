// Making an entry on the device: who, where and when come in from outside, the version is the oldest that can say it. What is
// made is read back by the same gate as a file, so that nothing gets into the record that could not be read again.

import type { Entry } from './entry.ts';
import { type Body, type Kind, type KindOf, kinds } from './kinds/index.ts';
import { newId } from './new-id.ts';
import type { Problem } from './problem.ts';
import { readEntry } from './read.ts';
import { canonical } from './same.ts';
import { lifted } from './upgrade.ts';

/** Who writes, where and when; clock and chance are handed in. */
export interface Stamp {
  readonly plot: string;
  readonly by: string;
  readonly device: string;
  readonly nowMs: number;
  /** Ten random bytes. */
  readonly random: Uint8Array;
}

/** What is written: an act with its local date or time. */
export interface Draft<K extends Kind> {
  readonly kind: K;
  readonly on: string;
  readonly body: Body<K>;
}

export type Written =
  | { readonly ok: true; readonly entry: Entry }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A new act. */
export function write<K extends Kind>({ kind, on, body }: Draft<K>, stamp: Stamp): Written {
  return stamped(kind, on, body, stamp);
}

/** A correction of an entry: the same kind of act, told anew. */
export function correct<K extends Kind>(
  entry: Entry & { kind: K },
  told: Omit<Draft<K>, 'kind'>,
  stamp: Stamp,
): Written {
  return stamped(entry.kind, told.on, told.body, stamp, entry.id);
}

/** A withdrawal of an entry: it stays readable and counts no more. */
export function withdraw(entry: Entry, stamp: Stamp): Written {
  return stamped(entry.kind, entry.on, {}, stamp, entry.id);
}

function stamped(kind: Kind, on: string, body: unknown, stamp: Stamp, replaces?: string): Written {
  const { plot, by, device, nowMs, random } = stamp;
  const at = new Date(nowMs).toISOString();
  const around = { id: newId({ nowMs, random }), plot, by, device, at, on, kind, v: oldestFor(kind, body) };
  const read = readEntry({ ...around, body, ...(replaces !== undefined && { replaces }) });
  if (read.state === 'known') return { ok: true, entry: read.entry };
  return { ok: false, problems: read.state === 'damaged' ? read.problems : [] };
}

/** The oldest version in which a body says the same: a program that was not renewed yet then reads all that it can. */
function oldestFor(kind: Kind, body: unknown): number {
  const { v: newest, older } = kinds[kind] as KindOf;
  for (let v = 1; v < newest; v++) {
    if (older?.[v]?.safeParse(body).success && canonical(lifted(kind, v, body)) === canonical(body)) return v;
  }
  return newest;
}
