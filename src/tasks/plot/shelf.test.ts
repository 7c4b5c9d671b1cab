// The shelf of the demo garden: litres left, dates with their range, vents, and what a round wants.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { gardenEntries } from '../demo/garden.ts';
import { shelf } from './shelf.ts';

const on = (day: string) => shelf({ plot: fold(gardenEntries(day)), now: `${day}T12:00` });

describe('the shelf on the day peg 14 was bottled', () => {
  const view = on('2026-06-20');
  const [first] = view.bottles;

  it('has seven bottles with 6.3 L, each at 0.9 of 1 L', () => {
    expect(view.leftL.likely).toBeCloseTo(6.3, 9);
    expect(first).toMatchObject({ peg: 14, count: 7, sizeL: 1 });
    for (const litres of first?.eachL ?? []) expect(litres).toBeCloseTo(0.9, 9);
  });
  it('says use first by, between 22 days and the next summer', () => {
    // tenfold fall at 18 °C: 30 × (10/30)^((18 − 4)/16) = 11.47 d, twice 22.9 d; 365 d; root of the product 91.5 d
    expect(first?.useFirst).toMatchObject({
      keeping: 'keeps',
      low: '2026-07-12',
      likely: '2026-09-19',
      high: '2027-06-20',
      daysLeft: 91,
      age: 'in-date',
    });
  });
  it('knows what the next round wants while it is not held: 25.5 L on what is cooked', () => {
    // 2 L/m² on 5.76 + 3.4 + 3.6 m²
    expect(view.round?.dilutedL).toBeCloseTo(25.52, 9);
  });
});

describe('the shelf after a first round at 1 to 40', () => {
  const view = on('2026-07-07');

  it('wants 0.90 L of concentrate for the next, and has litres for five', () => {
    // 37.04 L / 41 = 0.903 L; 21 July, 4 and 18 August, 1 and 15 September, all before the 19th
    expect(view.round?.concentrateL).toBeCloseTo(37.04 / 41, 9);
    expect(view.round?.rounds).toBe(5);
    expect(view.inDateL).toBeLessThan(6.3);
  });
  it('empties one bottle before the next: at most one is neither full nor empty', () => {
    const each = view.bottles[0]?.eachL ?? [];
    expect(each.filter((litres) => litres > 1e-9 && litres < 0.9 - 1e-9).length).toBeLessThanOrEqual(1);
    expect(each.reduce((sum, litres) => sum + litres, 0)).toBeCloseTo(view.bottles[0]?.leftL.likely ?? 0, 9);
  });
  it('has the vent of the 23rd in its diary', () => {
    const [bottle] = on('2026-06-27').bottles;
    expect(bottle?.vents).toEqual([{ on: '2026-06-23T10:00', by: 'Can', found: 'hiss' }]);
    expect(bottle?.ventDue).toBe(false);
  });
});

describe('the shelf late in the season', () => {
  it('says that the bottles are past their date once it is over', () => {
    expect(on('2026-09-19').bottles[0]?.useFirst.age).toBe('soon');
    expect(on('2026-09-20').bottles[0]?.useFirst.age).toBe('past');
    expect(on('2026-09-20').inDateL).toBe(0);
  });
  it('wants a vent after a week without one', () => {
    // vented last on 7 July
    expect(on('2026-07-13').bottles[0]?.ventDue).toBe(false);
    expect(on('2026-07-14').bottles[0]?.ventDue).toBe(true);
  });
  it('covers no round that falls past its date: twenty days are two rounds, nine are one', () => {
    // Poured once in July and not again: litres for two more rounds.
    const plot = fold(gardenEntries('2026-07-07'));
    const round = (day: string) => shelf({ plot, now: `${day}T12:00` }).round?.rounds;
    expect([round('2026-08-30'), round('2026-09-05'), round('2026-09-06'), round('2026-09-19')]).toEqual([2, 2, 1, 1]);
    expect(round('2026-09-20')).toBe(0);
  });
  it('keeps a pour that two phones told as a range of litres', () => {
    const { leftL } = on('2026-07-15');
    expect(leftL.high).toBeGreaterThan(leftL.low);
  });
});

describe('an empty shelf', () => {
  it('has nothing, and no round without beds', () => {
    const view = shelf({ plot: fold([], 'new'), now: '2026-06-01T12:00' });
    expect(view).toMatchObject({ bottles: [], inDateL: 0, emptied: [], round: undefined });
  });
});
