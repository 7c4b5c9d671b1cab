// Presses that were not acknowledged when the page ended, kept in the browser until they are: the draft is still there
// then, and pressed again it must not be written twice. Where the browser keeps nothing here, they last as long as the page.

import type { Entry } from '#journal/entry.ts';
import { readEntry } from '#journal/read.ts';
import { lasting } from './device.ts';
import { TRIES } from './places.ts';
import type { Tries, Try } from './presses.ts';

export const keptTries: Tries = {
  read() {
    try {
      const found: unknown = JSON.parse(lasting.read(TRIES) ?? '[]');
      return Array.isArray(found) ? found.flatMap((one) => readTry(one) ?? []) : [];
    } catch {
      return [];
    }
  },
  keep(tries) {
    if (tries.length === 0) lasting.remove(TRIES);
    else lasting.write(TRIES, JSON.stringify(tries));
  },
};

/** A kept try, read by the gate that every entry passes. */
function readTry(kept: unknown): Try | undefined {
  const { entries, pressedAt } = Object(kept) as { readonly entries?: unknown; readonly pressedAt?: unknown };
  if (!Array.isArray(entries) || typeof pressedAt !== 'string') return undefined;
  const read: Entry[] = [];
  for (const one of entries) {
    const found = readEntry(one);
    if (found.state !== 'known') return undefined;
    read.push(found.entry);
  }
  return { entries: read, pressedAt };
}
