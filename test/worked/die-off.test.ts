// The wait between a pour on the soil and picking for raw eating is our own caution. Held here against what is said of
// waste water, which is far worse than a sour feed of plants: for crops eaten raw, germs are to fall by 6 to 7 powers of
// ten in all, and between the last irrigation and eating they fall by 0.5 to 2 powers of ten a day, by the warmth. That
// is the abstract of "Quantifying health risks in wastewater irrigation" (core.ac.uk/works/233993), which follows the
// guidelines of the World Health Organization; its author and year are not given there, so it counts as recalled.

import { expect, it } from 'vitest';
import { RAW_SOIL_DAYS } from '#engine/can/limits.ts';

const ASKED_TENFOLDS = 7;
const SLOWEST_TENFOLDS_PER_DAY = 0.5;

it('the days from a pour to raw eating are as long as the most that is asked of waste water takes at the slowest fall', () => {
  expect(RAW_SOIL_DAYS * SLOWEST_TENFOLDS_PER_DAY).toBeGreaterThanOrEqual(ASKED_TENFOLDS);
});
