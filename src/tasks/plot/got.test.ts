// The bars of a sheet hold what the ledger says: fractions of one scale, the liquid first, nothing made up.

import { describe, expect, it } from 'vitest';
import { emptyPlot } from '#journal/empty-plot.ts';
import { fold } from '#journal/fold.ts';
import { gardenEntries } from '../demo/garden.ts';
import { gotSums, gotView } from './got.ts';

const today = '2026-08-20';
const sums = gotSums({ plot: fold(gardenEntries(today)), today });

describe('what the beds of the demo garden got', () => {
  it.each(['n', 'p', 'k'] as const)('is drawn on one scale that nothing passes: %s', (nutrient) => {
    const { beds, widestG } = gotView(sums, nutrient);
    expect(widestG).toBeGreaterThan(0);
    for (const { need, pieces, needG, byKind } of beds) {
      expect(need?.high ?? 0).toBeLessThanOrEqual(1);
      if (need && needG) expect(need.likely * widestG).toBeCloseTo(needG.likely, 9);
      for (const { kind, fromFraction, toFraction } of pieces) {
        expect(toFraction).toBeLessThanOrEqual(1 + 1e-12);
        const givenG = byKind.find((one) => one.kind === kind)?.givenG.likely;
        expect((toFraction - fromFraction) * widestG).toBeCloseTo(givenG ?? Number.NaN, 9);
      }
    }
  });
  it('puts the liquid first, and counts the year so far', () => {
    const view = gotView(sums, 'n');
    expect(view.kinds[0]).toBe('pour');
    expect([view.from, view.to]).toEqual(['2026-01-01', today]);
  });
  it('is nothing on an empty plot', () => {
    const view = gotView(gotSums({ plot: emptyPlot('019eb63b-4c40-703f-ba57-7491aecbe805'), today }), 'n');
    expect([view.beds, view.widestG]).toEqual([[], 0]);
  });
});
