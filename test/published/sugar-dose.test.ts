// The sugar dose against a charge balance worked by hand term by term (plants, carbonate, free acid), and
// the safety factor against the minimum-sugar table of silage science.

import { describe, expect, it } from 'vitest';
import { protonsPerMol } from '#engine/pail/acid-demand.ts';
import { pailFigure } from '#engine/pail/figures.ts';
import type { Recipe } from '#engine/pail/recipe.ts';
import { sugarWindow } from '#engine/pail/sugar.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { num, rows } from './rows.ts';

function recipe(lots: string, water: { volumeL: number; alkalinityMeqPerL: number }, targetPh: number): Recipe {
  const product = sugarProduct('white-sugar');
  if (!product) throw new Error('white sugar is missing from the table');
  const plants = lots.split(' ').map((lot) => {
    const [massKg, dryMatter, sugarsGPerKgDm, bufferEqPerKgDmPerPh, ph] = lot.split('/').map(Number);
    return resolvePart({ name: 'lot', massKg: massKg ?? 0, dryMatter, sugarsGPerKgDm, bufferEqPerKgDmPerPh, ph });
  });
  return {
    vessel: { volumeL: 30, gasRoom: 0.25 },
    plants,
    water: { ...water, ph: 7.6 },
    sugar: { product, massKg: 0 },
    targetPh,
  };
}

describe('the sugar dose worked by hand', () => {
  for (const row of rows('sugar-dose.csv')) {
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

describe('the safety factor against the minimum sugar of Leibensperger and Pitt 1988', () => {
  const safety = pailFigure('souring', 'safetyFactor');
  for (const row of rows('leibensperger-pitt-1988.csv')) {
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
