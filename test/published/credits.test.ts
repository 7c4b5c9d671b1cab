// Nitrogen the ground keeps for a crop from what grew there before, against the ordinance's own table in kg/ha.
// Federal Republic of Germany (2017), Düngeverordnung, appendix 4 table 7: least credit of the crop or catch crop of the
// year before; table 6: 20 kg/ha where the soil holds more than 4 % humus. 10 kg/ha is 1 g/m².

import { describe, expect, it } from 'vitest';
import { greenManureNGPerM2, greenManureSupply, yearBeforeNGPerM2 } from '#engine/ground/credits.ts';
import { readCrops } from '#engine/ground/crop-names.ts';
import { organicMatterNGPerM2 } from '#engine/ground/need.ts';

describe('the crop of the year before', () => {
  it.each([
    ['kale', 10],
    ['Brussels sprouts', 10],
    ['broad beans', 10],
    ['peas', 10],
    ['lucerne', 20],
    ['grass and clover', 20],
    ['kale, lucerne', 15],
    // Of two crops on a bed one leaves something on its half.
    ['kale, carrots', 5],
  ])('%s leaves at least %d kg/ha', (typed, kgPerHa) => {
    expect(yearBeforeNGPerM2(readCrops(typed))?.low).toBeCloseTo(kgPerHa / 10, 9);
    expect(yearBeforeNGPerM2(readCrops(typed))?.high).toBeCloseTo(kgPerHa / 5, 9);
  });
  it.each(['carrots', 'oca', ''])('“%s” leaves nothing the table knows of', (typed) => {
    expect(yearBeforeNGPerM2(readCrops(typed))).toBeUndefined();
  });
});

describe('a green manure nobody weighed', () => {
  it('leaves 10 kg/ha killed by frost and 40 kg/ha dug in in spring where it is a legume, 0 and 20 where it is none', () => {
    expect(greenManureNGPerM2('legume')).toMatchObject({ low: 1, likely: 4 });
    expect(greenManureNGPerM2('other')).toEqual({ low: 0, likely: 2, high: 2 });
  });
  it('of a vigorous legume sod: 100 lb/acre (Grubinger, step 2), the pound and acre of NIST SP 811', () => {
    expect(greenManureNGPerM2('legume').high).toBeCloseTo((100 * 453.592) / 4046.86, 1);
    expect(greenManureNGPerM2('untold').high).toBe(greenManureNGPerM2('legume').high);
  });
  it('brings no phosphorus or potassium from elsewhere', () => {
    const { totalG } = greenManureSupply({ what: 'clover', day: 0, areaM2: 5, kind: 'legume' });
    expect([totalG.n?.likely, totalG.p?.high, totalG.k?.high]).toEqual([20, 0, 0]);
  });
});

describe('organic matter', () => {
  it('over 4 % lets go at least the 20 kg/ha that the ordinance counts', () => {
    expect(organicMatterNGPerM2(4).low).toBeGreaterThanOrEqual(2);
  });
});
