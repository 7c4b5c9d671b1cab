// Nitrogen the ground keeps for a crop from what grew there before, against the ordinance's own table in kg/ha.
// Federal Republic of Germany (2017), Düngeverordnung, appendix 4 table 7: least credit of the crop or catch crop of the
// year before; table 6: 20 kg/ha where the soil holds more than 4 % humus. 10 kg/ha is 1 g/m².

import { describe, expect, it } from 'vitest';
import { greenManureNGPerM2, yearBeforeNGPerM2 } from '#engine/ground/credits.ts';
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
  ])('%s leaves at least %d kg/ha', (typed, kgPerHa) => {
    expect(yearBeforeNGPerM2(readCrops(typed))?.low).toBeCloseTo(kgPerHa / 10, 9);
  });
});

describe('a green manure nobody weighed', () => {
  it('leaves 10 kg/ha killed by frost and 40 kg/ha dug in in spring where it is a legume, 0 and 20 where it is none', () => {
    expect(greenManureNGPerM2('legume')).toMatchObject({ low: 1, likely: 4 });
    expect(greenManureNGPerM2('other')).toMatchObject({ low: 0, likely: 2 });
  });
});

describe('organic matter', () => {
  it('over 4 % lets go at least the 20 kg/ha that the ordinance counts', () => {
    expect(organicMatterNGPerM2(4).low).toBeGreaterThanOrEqual(2);
  });
});
