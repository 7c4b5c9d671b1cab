// The sugar dose against a charge balance worked by hand term by term: plants, carbonate, free acid.

import { describe, expect, it } from 'vitest';
import { protonsPerMol } from '#engine/pail/acid-demand.ts';
import { sugarWindow } from '#engine/pail/sugar.ts';
import { num, worked } from '../published/rows.ts';
import { recipe } from './sugar-recipe.ts';

describe('the sugar dose worked by hand', () => {
  for (const row of worked('sugar-dose.csv')) {
    it(`${row.case}: needs ${row.neededHexoseG} g, own ${row.ownHexoseG} g, adds ${row.leastHexoseG} g`, () => {
      const water = { volumeL: num(row, 'waterL'), alkalinityMeqPerL: num(row, 'alkalinityMeqPerL') };
      const window = sugarWindow(recipe(row.lots ?? '', water, num(row, 'targetPh')));
      const tolerance = num(row, 'toleranceG');
      expect(Math.abs(window.neededHexoseG - num(row, 'neededHexoseG'))).toBeLessThanOrEqual(tolerance);
      expect(Math.abs(window.ownHexoseG - num(row, 'ownHexoseG'))).toBeLessThanOrEqual(tolerance);
      expect(Math.abs(window.leastHexoseG.likely - num(row, 'leastHexoseG'))).toBeLessThanOrEqual(2 * tolerance);
    });
  }

  it('gives the protons per mole of an 80:20 lactic and acetic mix that pKa 3.86 and 4.76 demand', () => {
    // 0.8/(1+10^(3.86-pH)) + 0.2/(1+10^(4.76-pH)), by hand calculator.
    const byHand: [number, number][] = [
      [4.6, 0.759],
      [4.2, 0.592],
      [4.0, 0.494],
      [3.9, 0.443],
      [3.8, 0.392],
    ];
    for (const [ph, expected] of byHand) expect(protonsPerMol(ph, 0.8)).toBeCloseTo(expected, 2);
  });
});
