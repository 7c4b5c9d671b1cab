// The wait between a pour on the soil and picking for raw eating is our own caution. Held here against what is published
// of waste water, which is far worse than a sour feed of plants: "Quantifying health risks in wastewater irrigation"
// (author not given by the copy seen), abstract: for crops eaten raw germs are to fall by 6 to 7 powers of ten in all, and
// between the last irrigation and eating they fall by 0.5 to 2 powers of ten a day, by the warmth.

import { describe, expect, it } from 'vitest';
import { RAW_SOIL_DAYS, SCHOOL_RAW_DAYS } from '#engine/can/limits.ts';

const ASKED_TENFOLDS = 7;
const SLOWEST_TENFOLDS_PER_DAY = 0.5;

describe('the days from a pour to raw eating', () => {
  it('are as long as the most that is asked of waste water takes at the slowest fall', () => {
    expect(RAW_SOIL_DAYS * SLOWEST_TENFOLDS_PER_DAY).toBeGreaterThanOrEqual(ASKED_TENFOLDS);
  });

  it('are longer where a class eats', () => {
    expect(SCHOOL_RAW_DAYS).toBeGreaterThan(RAW_SOIL_DAYS);
  });
});
