// Entries for tests, written as a device writes them: through the journal's own gate, with a clock and a chance that
// run the same every time. Each device has a clock of its own.

import type { Entry } from '#journal/entry.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { correct, type Stamp, type Written, withdraw, write } from '#journal/write.ts';

export interface Recorder {
  readonly did: <K extends Kind>(kind: K, on: string, body: Body<K>) => Entry & { kind: K };
  readonly corrected: <K extends Kind>(entry: Entry & { kind: K }, on: string, body: Body<K>) => Entry & { kind: K };
  readonly withdrew: (entry: Entry) => Entry;
}

const START_MS = Date.UTC(2026, 4, 1);

/** A device of a plot; the seed keeps its ids apart from those of other devices. */
export function recorder({ plot = 'sedge-corner', by = 'Rake', device = 'phone-1', seed = 1 } = {}): Recorder {
  let count = 0;
  const stamp = (): Stamp => {
    count++;
    const random = Uint8Array.from({ length: 10 }, (_, i) => (seed * 31 + count * 7 + i * 13) & 255);
    random[8] = (count >> 8) & 255;
    random[9] = count & 255;
    return { plot, by, device, nowMs: START_MS + count * 60_000, random };
  };
  return {
    did: <K extends Kind>(kind: K, on: string, body: Body<K>) =>
      kept(write({ kind, on, body }, stamp())) as Entry & { kind: K },
    corrected: <K extends Kind>(entry: Entry & { kind: K }, on: string, body: Body<K>) =>
      kept(correct(entry, { on, body }, stamp())) as Entry & { kind: K },
    withdrew: (entry) => kept(withdraw(entry, stamp())),
  };
}

function kept(written: Written): Entry {
  if (written.ok) return written.entry;
  throw new Error(`not an entry: ${JSON.stringify(written.problems)}`);
}

/** A mass typed in kilograms. */
export const kg = (massKg: number) => ({ typed: `${massKg} kg`, massKg });
/** A volume typed in litres. */
export const litres = (volumeL: number) => ({ typed: `${volumeL} L`, volumeL });
/** A meter's reading. */
export const meter = (ph: number) => ({ typed: String(ph), ph, by: 'meter' as const });
