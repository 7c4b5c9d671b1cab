// How far our safety factor carries in the table it was taken from: data/pail.csv has it from the row of grass at 20 %
// dry matter, and its band from the rows beside it. These rows hold the factor to that table; they do not prove it, and
// no other publication of such a factor is known to us.

import { describe, expect, it } from 'vitest';
import { pailFigure } from '#engine/pail/figures.ts';
import { sugarWindow } from '#engine/pail/sugar.ts';
import { recipe } from '../worked/sugar-recipe.ts';
import { num, published } from './rows.ts';

describe('the safety factor taken from the minimum sugar of Leibensperger and Pitt 1988', () => {
  const safety = pailFigure('souring', 'safetyFactor');
  for (const row of published('leibensperger-pitt-1988.csv')) {
    const within = row.agrees === 'yes';
    it(`${row.case}: ${row.sugarPercentDm} % of dry matter ${within ? 'lies within' : 'lies above'} our factor of ${safety.low} to ${safety.high}`, () => {
      const bufferLot = `1/${row.dryMatter}/0/${row.bufferEqPerKgDmPerPh}/${row.startPh}`;
      const window = sugarWindow(recipe(bufferLot, { volumeL: 0, alkalinityMeqPerL: 0 }, num(row, 'targetPh')));
      const neededPercentDm = window.neededHexoseG / (10 * num(row, 'dryMatter'));
      const factor = num(row, 'sugarPercentDm') / neededPercentDm;
      if (within) {
        expect(factor).toBeGreaterThanOrEqual(safety.low);
        expect(factor).toBeLessThanOrEqual(safety.high);
      } else {
        expect(factor).toBeGreaterThan(safety.high);
      }
    });
  }
});
