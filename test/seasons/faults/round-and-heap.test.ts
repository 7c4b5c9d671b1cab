// Faults of the overview's round and of figures said beside their limits that are known and stand until their floor is rebuilt; how
// the cases are built is said in weighed-and-filled.test.ts.

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { plotCover } from '#tasks/plot/cover.ts';
import { heapView } from '#tasks/plot/heap.ts';
import { lineView } from '#tasks/plot/line.ts';
import { liquidsOf, usualLiquid } from '#tasks/plot/liquid.ts';
import { roundOver } from '#tasks/plot/round.ts';
import { shelf } from '#tasks/plot/shelf.ts';
import { loadSolver } from '#tasks/solver/highs.ts';
import { Grower } from '../grower.ts';
import { type Day, seasons } from '../season.ts';
import { Differences } from '../shown/difference.ts';
import { pail, typedL } from './pail.ts';

describe('F6, an overview that orders what the can card forbids', () => {
  const days = fc.sample(seasons, { seed: 6, numRuns: 12 }).flatMap((season) => season.days);
  const differing = (compare: (day: Day, differ: Differences) => void): readonly string[] =>
    days.flatMap((day) => {
      const differ = new Differences();
      compare(day, differ);
      return differ.found;
    });
  /** The can's own round; undefined where there is nothing to pour. */
  const roundOf = ({ plot, now }: Day) => {
    const liquid = usualLiquid(liquidsOf(plot, now))?.id;
    return liquid === undefined ? undefined : roundOver({ plot, now, liquid });
  };
  const litres = differing((day, differ) => {
    const round = roundOf(day);
    if (round) differ.same('litres of a round', lineView(day).round.wantedL, round.totalL);
  });
  const tooSoon = differing((day, differ) => {
    const { on } = lineView(day).round;
    if (on === undefined || on <= day.now.slice(0, 10)) return;
    for (const { name, verdict, fedDays } of roundOf(day)?.beds ?? [])
      if (fedDays !== undefined) differ.same(`${name}, fed ${fedDays} days ago, yes`, verdict === 'yes', false);
  });
  const tooMany = differing(({ plot, now }, differ) => {
    const { bottles, round } = shelf({ plot, now });
    if (round?.rounds === undefined) return;
    const mostDays = Math.max(0, ...bottles.map(({ useFirst }) => useFirst.daysLeft));
    const fitting = Math.floor(mostDays / round.everyDays) + 1;
    differ.same(`${round.rounds} rounds within ${mostDays} days`, round.rounds <= fitting, true);
  });

  // It counts the beds that say hold and never.
  it.fails('F6: the overview counts the litres of the beds that the can feeds', () => {
    expect(litres).toEqual([]);
  });
  // The can card says yes two days after a full dose.
  it.fails('F6: a bed is not fed before the day of the round that the overview names', () => {
    expect(tooSoon).toEqual([]);
  });
  // A few litres cover rounds for years, far past the date by which they are to be used first.
  it.fails('F6: the shelf covers no more rounds than fall before its last date', () => {
    expect(tooMany).toEqual([]);
  });
});

describe('F8, a figure that rounds to its limit', () => {
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

  it('is met where C:N is 19.8 of at least 20, water 65.1 % of at most 65 %, and a pot lacks a few milligrams', () => {
    expect(green.view.cn?.likely).toBeCloseTo(19.8, 1);
    expect(wet.view.moisturePercent?.likely).toBeCloseTo(65.1, 1);
    expect(short).toMatch(/^Pot stays .* of phosphorus/);
    expect(more).toMatch(/^Pot gets .* of potassium more than it misses/);
  });
  // Both are said without a decimal.
  it.fails('F8: a C:N under its limit is not said as the limit', () => {
    expect(green.text).not.toMatch(/C:N (\d+) is under \1\b/);
  });
  it.fails('F8: water over its limit is not said as the limit', () => {
    expect(wet.text).not.toMatch(/At (\d+)\s%.*up to \1\s%/);
  });
  // Grams are said with one decimal, however few they are.
  it.fails('F8: a gap is never "0.0 g short"', () => {
    expect(short).not.toMatch(/\b0\.0\s?g/);
  });
  it.fails('F8: nothing is said of "0.0 g more than it misses"', () => {
    expect(more).not.toMatch(/\b0\.0\s?g/);
  });
});
