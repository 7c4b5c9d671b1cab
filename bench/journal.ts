// The record's speed: folding up to 100,000 entries, and opening a plot of 50,000. The entries are those of many seasons:
// batches filled, looked at, strained, bottled and poured, some corrected. Made once, outside the time.

import type { Entry } from '#journal/entry.ts';
import { importLines } from '#journal/file-reader.ts';
import { fold, folding, foldingInSteps } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { exportLines } from '#journal/lines.ts';
import { newId } from '#journal/new-id.ts';
import { middle } from './rate.ts';

const FOLDED = [5000, 50_000, 100_000];
const OPENED = 50_000;
const ROUNDS = 5;
const START_MS = Date.UTC(2016, 2, 1);

export interface JournalTimes {
  readonly folds: readonly FoldTime[];
  readonly openedEntries: number;
  /** Reading a file of as many entries, every one checked. */
  readonly importMs: number;
  /** One more entry of a kind, where as many stand. */
  readonly further: readonly FurtherTime[];
}

export interface FoldTime {
  readonly entries: number;
  readonly ms: number;
  /** The longest step of it: so long a page that folds step by step does not answer. */
  readonly longestStepMs: number;
}

export interface FurtherTime {
  readonly entries: number;
  readonly kind: Kind;
  readonly ms: number;
}

/** Middle of five rounds each. */
export function journalTimes(): JournalTimes {
  const some = seasons(OPENED);
  const file = exportLines(some);
  return {
    folds: FOLDED.map(foldTime),
    openedEntries: some.length,
    importMs: timed(() => {
      const read = importLines(file, () => undefined);
      return read.ok ? read.fresh.length : 0;
    }),
    further: [5000, OPENED].flatMap((count) =>
      FURTHER.map((kind) => ({ entries: count, kind, ms: furtherMs(count, kind) })),
    ),
  };
}

function foldTime(count: number): FoldTime {
  const entries = seasons(count);
  const ms = timed(() => fold(entries).batches.size);
  const longest = Array.from({ length: ROUNDS }, () => {
    let [mostMs, begun] = [0, performance.now()];
    for (const _ of foldingInSteps()(entries, 'bench')) {
      mostMs = Math.max(mostMs, performance.now() - begun);
      begun = performance.now();
    }
    return Math.max(mostMs, performance.now() - begun);
  });
  return { entries: count, ms, longestStepMs: middle(longest) };
}

/** A kind that touches a batch, a bed with its bottle, a bottle, the stock. */
const FURTHER: readonly Kind[] = ['peg.looked', 'bed.fed', 'bottle.filled', 'scraps.weighed'];

/** What the last entry of a kind costs, where all before it are folded. */
function furtherMs(count: number, kind: Kind): number {
  const entries = seasons(count);
  const last = entries.findLast((entry) => entry.kind === kind && entry.replaces === undefined);
  const before = entries.filter((entry) => entry !== last && entry.replaces !== last?.id);
  if (last === undefined) throw new Error(`the record measured has no ${kind}`);
  return middle(
    Array.from({ length: ROUNDS }, () => {
      const further = folding();
      // Twice: which ids stand is made when the first entry comes, once for the life of a page.
      further(before.slice(0, -1));
      further(before);
      const begun = performance.now();
      further([...before, last]);
      return performance.now() - begun;
    }),
  );
}

function timed(work: () => number): number {
  const times = Array.from({ length: ROUNDS }, () => {
    const begun = performance.now();
    if (!(work() > 0)) throw new Error('the work measured gave nothing');
    return performance.now() - begun;
  });
  return middle(times);
}

/** A record of so many entries, the same every time. */
export function seasons(count: number): readonly Entry[] {
  const entries: Entry[] = [];
  const add = <K extends Kind>(kind: K, day: number, body: Body<K>, replaces?: string): string => {
    const n = entries.length;
    const nowMs = START_MS + day * 86_400_000 + (n % 1000);
    const random = Uint8Array.from({ length: 10 }, (_, i) => (n >> (i % 4 ? 8 : 0)) & 255);
    random.set([(n >> 16) & 255, (n >> 8) & 255, n & 255], 7);
    const at = new Date(nowMs).toISOString();
    const on = `${at.slice(0, 10)}${n % 3 ? `T${String(6 + (n % 12)).padStart(2, '0')}:30` : ''}`;
    const id = newId({ nowMs, random });
    const around = {
      id,
      plot: 'bench',
      by: `K${n % 4}`,
      device: `phone-${n % 97 === 0 ? 1 : 0}`,
      at,
      on,
      kind,
      v: 1,
      body,
    };
    entries.push(replaces === undefined ? around : { ...around, replaces });
    return id;
  };
  const kg = (massKg: number) => ({ typed: `${massKg} kg`, massKg });
  const litres = (volumeL: number) => ({ typed: `${volumeL} L`, volumeL });
  add('plot.described', 0, { name: 'Bench', timeZone: 'Europe/Berlin', hemisphere: 'north' });
  const beds = Array.from({ length: 12 }, (_, i) => add('bed.described', 0, { name: `bed ${i}` }));
  for (let round = 0; entries.length < count; round++) {
    const day = Math.floor(round / 4);
    const lot = add('scraps.weighed', day, { material: 'grass-clippings-fresh', mass: kg(4 + (round % 5)) });
    const batch = add('peg.filled', day, {
      peg: round + 1,
      parts: [{ lot, mass: kg(2.1) }],
      water: [{ volume: litres(5.2) }],
      sugar: [{ product: 'white-sugar', mass: kg(0.15) }],
    });
    for (let look = 0; look < 6; look++) {
      add('peg.looked', day + look * 2, {
        batch,
        acidity: { typed: '4.5', ph: 6.3 - look / 2, by: 'meter' },
        smell: 'sour',
      });
    }
    add('peg.strained', day + 12, { batch, drained: litres(6), solids: kg(2), rest: 'nothing' });
    const bottle = add('bottle.filled', day + 12, {
      batch,
      filled: litres(1),
      count: 6,
      cap: 'vent',
      material: 'plastic',
    });
    for (let pour = 0; pour < 6; pour++) {
      const bed = beds[(round + pour) % beds.length] ?? '';
      add('bed.fed', day + 14 + pour, {
        bed,
        from: [{ bottle, volume: litres(0.25) }],
        poured: litres(10),
        way: 'soil',
      });
    }
    if (round % 10 === 0) add('scraps.weighed', day, { material: 'grass-clippings-fresh', mass: kg(4) }, lot);
  }
  return entries.slice(0, count);
}
