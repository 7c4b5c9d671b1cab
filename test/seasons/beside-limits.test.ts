// Figures that round to the limit they are said beside, from the record to the sentence.

import { beforeAll, describe, expect, it } from 'vitest';
import { plotCover } from '#tasks/plot/cover.ts';
import { heapView } from '#tasks/plot/heap.ts';
import { loadSolver } from '#tasks/solver/highs.ts';
import { Grower } from './grower.ts';
import { pail, typedL } from './pail.ts';

describe('a figure that rounds to its limit', () => {
  const heapOf = (rows: readonly (readonly [material: string, massKg: number])[], waterL?: number) => {
    const { grower } = pail();
    grower.did('heap.fed', {
      heap: 'the heap',
      ingredients: rows.map(([material, massKg]) => ({ material, amount: { typed: `${massKg} kg`, massKg } })),
      ...(waterL === undefined ? {} : { water: typedL(waterL) }),
    });
    const view = heapView({ plot: grower.plot, heap: 'the heap', today: grower.today });
    if (view === undefined) throw new Error('no heap');
    return { view, text: view.cautions.map((one) => one.text).join(' ') };
  };
  const green = heapOf([
    ['grass-clippings-fresh', 10],
    ['dry-leaves', 1.7],
  ]);
  const wet = heapOf([['dry-leaves', 4]], 3.1);
  let short: string;
  let more: string;
  beforeAll(async () => {
    const solve = await loadSolver();
    const coverOf = (grower: Grower) => {
      grower.did('bed.described', { name: 'Pot', pots: { count: 1, volumeL: 1 }, crop: 'lettuce', eaten: 'cooked' });
      return plotCover({ plot: grower.plot, from: '2026-01-01', to: '2026-06-01', solve }).says;
    };
    const withScraps = pail().grower;
    more = coverOf(withScraps).excess.join(' ');
    short = coverOf(new Grower(withScraps.hand, '2026-06-01')).short.join(' ');
  });

  it('is met where C:N is 19.8 of at least 20, and water 65.1 % of at most 65 %', () => {
    expect(green.view.cn?.likely).toBeCloseTo(19.8, 1);
    expect(wet.view.moisturePercent?.likely).toBeCloseTo(65.1, 1);
  });
  it('a C:N under its limit is not said as the limit', () => {
    expect(green.text).not.toMatch(/C:N (\d+) is under \1\b/);
  });
  it('water over its limit is not said as the limit', () => {
    expect(wet.text).not.toMatch(/At (\d+)\s%.*up to \1\s%/);
  });
  it('a gap of milligrams is not said beside gaps of tenths of a gram', () => {
    expect(short).toMatch(/^Pot stays .* of nitrogen/);
    expect(short).not.toMatch(/phosphorus/);
    expect(short).not.toMatch(/\b0\.0\s?g/);
  });
  it('nothing is said of "0.0 g more than it misses"', () => {
    expect(more).not.toMatch(/\b0\.0\s?g/);
  });
});
