// Nitrogen the ground keeps for a crop from what grew there before: what follows by our own sums from the credits that
// are held to the ordinance in test/published.

import { describe, expect, it } from 'vitest';
import { greenManureNGPerM2, greenManureSupply, yearBeforeNGPerM2 } from '#engine/ground/credits.ts';
import { readCrops } from '#engine/ground/crop-names.ts';

describe('the crop of the year before', () => {
  // Of two crops on a bed each leaves its credit on its half.
  it.each([
    ['kale, lucerne', 1.5],
    ['kale, carrots', 0.5],
  ])('%s leave at least %d g/m²', (typed, gPerM2) => {
    expect(yearBeforeNGPerM2(readCrops(typed))?.low).toBeCloseTo(gPerM2, 9);
  });

  it.each(['kale', 'peas', 'lucerne', 'kale, lucerne'])('%s leaves at most twice what is sure', (typed) => {
    const { low, high } = yearBeforeNGPerM2(readCrops(typed)) ?? {};
    expect(high).toBeCloseTo(2 * (low ?? Number.NaN), 9);
  });

  it.each(['carrots', 'oca', ''])('“%s” leaves nothing the table knows of', (typed) => {
    expect(yearBeforeNGPerM2(readCrops(typed))).toBeUndefined();
  });
});

describe('a green manure nobody weighed', () => {
  it('leaves at most what is likely where it is no legume', () => {
    expect(greenManureNGPerM2('other').high).toBe(greenManureNGPerM2('other').likely);
  });

  it('of a vigorous legume sod leaves 100 lb/acre (Grubinger, step 2), by the pound and the acre of NIST SP 811', () => {
    expect(greenManureNGPerM2('legume').high).toBeCloseTo((100 * 453.592) / 4046.86, 1);
    expect(greenManureNGPerM2('untold').high).toBe(greenManureNGPerM2('legume').high);
  });

  it('brings 20 g of nitrogen on 5 m², and no phosphorus or potassium from elsewhere', () => {
    const { totalG } = greenManureSupply({ what: 'clover', day: 0, areaM2: 5, kind: 'legume' });
    expect([totalG.n?.likely, totalG.p?.high, totalG.k?.high]).toEqual([20, 0, 0]);
  });
});
