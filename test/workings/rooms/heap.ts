// The heap's workings by hand.

import type { Working } from '#engine/working/working.ts';
import { asBand, atMost, type Band, each, likely, one, over, point, type Redo, times } from '../by-hand.ts';

type Field = 'mass' | 'dry matter' | 'carbon' | 'C:N';
type Row = Partial<Record<Field, Band>>;
const FIELDS: readonly Field[] = ['mass', 'dry matter', 'carbon', 'C:N'];

/** The rows in the order listed; each begins with its mass. */
function rows({ inputs }: Working): readonly Row[] {
  const list: Row[] = [];
  for (const { label, value } of inputs) {
    const field = FIELDS.find((one) => label.endsWith(`: ${one}`));
    if (field === undefined || typeof value === 'string') continue;
    if (field === 'mass') list.push({});
    const row = list.at(-1);
    if (row !== undefined) row[field] = asBand(value);
  }
  return list;
}

const at = (row: Row, field: Field) => row[field]?.likely ?? Number.NaN;
const moved = (row: Row, field: Field, value: number): Row => ({ ...row, [field]: point(value) });

function cn(list: readonly Row[]): number {
  const counted = list.filter((row) => row['C:N'] !== undefined);
  const carbon = (row: Row) => (at(row, 'mass') * at(row, 'dry matter') * at(row, 'carbon')) / 100;
  const sum = (of: (row: Row) => number) => counted.reduce((total, row) => total + of(row), 0);
  return sum(carbon) / sum((row) => carbon(row) / at(row, 'C:N'));
}

function moisture(list: readonly Row[]): number {
  const sum = (of: (row: Row) => number) => list.reduce((total, row) => total + of(row), 0);
  return 100 * (1 - sum((row) => at(row, 'mass') * at(row, 'dry matter')) / sum((row) => at(row, 'mass')));
}

/** One input after the other at its ends, changes as squares, and nothing past the rows that are the most and the least. */
function moving(list: readonly Row[], result: (list: readonly Row[]) => number, bounds: readonly Band[]): Band {
  const middle = result(list);
  let [down, up] = [0, 0];
  list.forEach((row, i) => {
    for (const field of ['mass', 'dry matter', 'C:N'] as const) {
      const band = row[field];
      if (band === undefined) continue;
      const results = [band.low, band.high].map((value) =>
        result(list.map((one, j) => (i === j ? moved(one, field, value) : one))),
      );
      const changes = results.filter(Number.isFinite).map((value) => value - middle);
      down += Math.min(0, ...changes) ** 2;
      up += Math.max(0, ...changes) ** 2;
    }
  });
  const least = Math.min(middle, ...bounds.map(({ low }) => low));
  const most = Math.max(middle, ...bounds.map(({ high }) => high));
  return {
    low: Math.max(least, middle - Math.sqrt(down)),
    likely: middle,
    high: Math.min(most, middle + Math.sqrt(up)),
  };
}

const lost = (working: Working) => one(working, 'share lost');
const kept = (working: Working) => each(lost(working), (share) => 1 - share);

function carbonLeft(working: Working): Band {
  const dry = one(working, 'dry matter put in');
  const putIn = likely(working, 'carbon put in');
  const unsure = dry.likely > 0 ? each(dry, (kg) => (putIn * kg) / dry.likely) : { low: 0, likely: putIn, high: putIn };
  return atMost(times(unsure, kept(working)), unsure.high);
}

function nitrogenLeft(working: Working): Band {
  const putIn = one(working, 'nitrogen put in');
  return atMost(times(putIn, kept(working)), putIn.high);
}

function compost(working: Working): Band {
  const dry = one(working, 'dry matter put in');
  const organic = likely(working, 'organic matter over its carbon') * likely(working, 'carbon put in');
  const share = each(lost(working), (part) => (dry.likely > 0 ? Math.max(0, 1 - (organic * part) / dry.likely) : 0));
  return over(atMost(times(dry, share), dry.high), one(working, 'dry matter of finished compost'));
}

export const heapRoom: readonly Redo[] = [
  {
    figure: /^cn$/,
    redo: (w) => {
      const counted = rows(w).filter((row) => row['C:N'] !== undefined && at(row, 'mass') > 0);
      return moving(
        rows(w),
        cn,
        counted.map((row) => row['C:N'] ?? point(Number.NaN)),
      );
    },
  },
  {
    figure: /^moisturePercent$/,
    redo: (w) => {
      const wet = rows(w).filter((row) => at(row, 'mass') > 0);
      return moving(
        rows(w),
        moisture,
        wet.map((row) => each(row['dry matter'] ?? point(Number.NaN), (dry) => 100 * (1 - dry))),
      );
    },
  },
  {
    figure: /^waterL$/,
    redo: (w) => {
      const goal = likely(w, 'goal');
      return (likely(w, 'mass') * (goal - likely(w, 'water in it'))) / (100 - goal);
    },
  },
  { figure: /^left\.carbonKg$/, redo: carbonLeft },
  { figure: /^left\.nitrogenKg$/, redo: nitrogenLeft },
  { figure: /^left\.massKg$/, redo: compost },
];
