// The speed of the ledger: a plot of 120 beds with ten years of entries, 50,000 of them, folded beforehand, and the
// answer for one season and for all the years.

import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { newId } from '#journal/new-id.ts';
import { plotLedger } from '#tasks/plot/ledger.ts';
import { middle } from './rate.ts';

const BEDS = 120;
const ENTRIES = 50_000;
const ROUNDS = 7;
const FIRST_YEAR = 2016;
const YEARS = 10;
const CROPS = ['kale, chard', '8 tomatoes', 'carrots, beetroot', 'lettuce', 'cucumber, peppers', 'squash, beans'];

export interface LedgerTimes {
  readonly entries: number;
  readonly beds: number;
  /** The last season, its weeks with it. */
  readonly seasonMs: number;
  readonly allYearsMs: number;
}

/** Middle of seven rounds each. */
export function ledgerTimes(): LedgerTimes {
  const entries = tenYears();
  const plot = fold(entries);
  const last = FIRST_YEAR + YEARS - 1;
  const timed = (from: string, to: string) =>
    middle(
      Array.from({ length: ROUNDS }, () => {
        const begun = performance.now();
        const { value } = plotLedger({ plot, from, to });
        const ms = performance.now() - begun;
        if (!((value.plot.liquidG.n?.likely ?? 0) > 0)) throw new Error('the work measured gave nothing');
        return ms;
      }),
    );
  return {
    entries: entries.length,
    beds: plot.beds.size,
    seasonMs: timed(`${last}-03-01`, `${last}-10-31`),
    allYearsMs: timed(`${FIRST_YEAR}-01-01`, `${last}-12-31`),
  };
}

/** Batches, pours on every bed, compost and mulch, each year the same. */
function tenYears(): readonly Entry[] {
  const entries: Entry[] = [];
  const add = <K extends Kind>(kind: K, nowMs: number, body: Body<K>): string => {
    const n = entries.length;
    const random = Uint8Array.from([0, 0, 0, 0, 0, 0, 0, (n >> 16) & 255, (n >> 8) & 255, n & 255]);
    const at = new Date(nowMs + (n % 1000)).toISOString();
    const id = newId({ nowMs: nowMs + (n % 1000), random });
    entries.push({ id, plot: 'bench', by: 'K', device: 'phone', at, on: at.slice(0, 10), kind, v: 1, body });
    return id;
  };
  const kg = (massKg: number) => ({ typed: `${massKg} kg`, massKg });
  const litres = (volumeL: number) => ({ typed: `${volumeL} L`, volumeL });
  const start = Date.UTC(FIRST_YEAR, 0, 1);
  const beds = Array.from({ length: BEDS }, (_, i) =>
    add('bed.described', start, {
      name: `bed ${i}`,
      area: { typed: '6 m²', areaM2: 6 },
      crop: CROPS[i % CROPS.length] ?? 'kale',
    }),
  );
  const aYear = Math.floor((ENTRIES - BEDS) / YEARS);
  for (let year = 0; year < YEARS; year++) {
    const spring = Date.UTC(FIRST_YEAR + year, 3, 1);
    const day = (n: number) => spring + n * 86_400_000;
    const begun = entries.length;
    for (const week of [1, 2, 3, 4]) {
      const ingredients = [
        { material: 'grass-clippings-fresh', amount: kg(40) },
        { material: 'dry-leaves', amount: kg(25) },
      ];
      add('heap.fed', day(-7 * week), { heap: 'the bay', ingredients });
    }
    for (const bed of beds) add('bed.dressed', day(1), { bed, what: 'compost', heap: 'the bay', amount: litres(40) });
    for (let peg = 1; entries.length - begun < aYear; peg++) {
      const on = peg % 150;
      const batch = add('peg.filled', day(on), {
        peg: year * 1000 + peg,
        parts: [{ material: 'grass-clippings-fresh', mass: kg(2.1) }],
        water: [{ volume: litres(5.2) }],
      });
      add('peg.strained', day(on + 10), {
        batch,
        drained: litres(6),
        solids: kg(2),
        rest: 'nothing',
        acidity: { typed: '3.8', ph: 3.8, by: 'meter' },
      });
      for (const [i, bed] of beds.entries()) {
        if (entries.length - begun >= aYear) break;
        add('bed.fed', day(on + 12 + (i % 14)), {
          bed,
          from: [{ batch, volume: litres(0.04) }],
          poured: litres(2),
          way: 'soil',
        });
      }
    }
  }
  return entries;
}
