// Writes the demo garden's acts down as entries of the record: each keyholder on a phone of their own, ids from the
// day of the act and a running number, so that the garden is the same every time it is opened. What was done stands in
// the files beside this one.

import type { Entry } from '#journal/entry.ts';
import { type Body, type Kind, kinds } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import { newId } from '#journal/new-id.ts';

export const DEMO_PLOT = 'sedge-corner-demo';

export type DemoTag = 'Rake' | 'Fork' | 'Can' | 'Trowel';

const PHONE: Readonly<Record<DemoTag, string>> = {
  Rake: 'demo-phone-rake',
  Fork: 'demo-phone-fork',
  Can: 'demo-phone-can',
  Trowel: 'demo-phone-trowel',
};

/** What every file of the garden writes into. */
export interface Diary {
  /** An act of a keyholder on a local date, or date and time. */
  readonly did: <K extends Kind>(by: DemoTag, on: string, kind: K, body: Body<K>) => Entry;
  readonly entries: readonly Entry[];
}

/** An empty diary. The zone of the demo plot is UTC: a local time is the instant of recording too. */
export function diary(): Diary {
  const entries: Entry[] = [];
  return {
    entries,
    did(by, on, kind, body) {
      const { wallMinute } = momentOf(on);
      const count = entries.length + 1;
      // The number leads: within a minute, ids rise in the order of writing.
      const random = Uint8Array.from({ length: 10 }, (_, i) => (i < 2 ? (count >> (8 * (1 - i))) & 255 : i * 29));
      const id = newId({ nowMs: wallMinute * 60_000, random });
      const at = `${on.slice(0, 10)}T${on.length > 10 ? on.slice(11) : '12:00'}:00.000Z`;
      const entry: Entry = { id, plot: DEMO_PLOT, by, device: PHONE[by], at, on, kind, v: kinds[kind].v, body };
      entries.push(entry);
      return entry;
    },
  };
}

/** A mass typed in kilograms. */
export const kg = (massKg: number) => ({ typed: `${massKg} kg`, massKg });
/** A mass typed in grams. */
export const grams = (massG: number) => ({ typed: `${massG} g`, massKg: massG / 1000 });
/** A volume typed in litres. */
export const litres = (volumeL: number) => ({ typed: `${volumeL} L`, volumeL });
/** A volume typed in millilitres. */
export const millilitres = (volumeMl: number) => ({ typed: `${volumeMl} mL`, volumeL: volumeMl / 1000 });
/** An area typed in square metres. */
export const squareMetres = (areaM2: number) => ({ typed: `${areaM2} m²`, areaM2 });
