// Doses for chlorine and the acid that a water uses up, against printed figures and plain stoichiometry.

import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import {
  ASCORBIC_MG_PER_MG,
  assessWater,
  THIOSULFATE_MG_PER_MG,
  type WaterAnswer,
  type WaterAsked,
} from '#engine/scraps/water.ts';
import { num, worked } from '../published/rows.ts';

describe('chlorine doses and acid', () => {
  for (const row of worked('water.csv')) {
    it(`${row.case}: ${row.expected}`, () => {
      const asked: WaterAsked = {
        volumeL: num(row, 'volumeL'),
        ...(row.freeChlorineMgPerL ? { freeChlorineMgPerL: num(row, 'freeChlorineMgPerL') } : {}),
        ...(row.alkalinityMgPerLCaCo3
          ? { alkalinity: { value: num(row, 'alkalinityMgPerLCaCo3'), unit: 'mg/L CaCO3' as const } }
          : {}),
      };
      const found = assessWater(asked)[row.quantity as keyof WaterAnswer];
      expect(Math.abs(Number(found) - num(row, 'expected'))).toBeLessThanOrEqual(num(row, 'tolerance'));
    });
  }

  // Atomic weights of an independent program (GNU Units); without it these tests fail.
  const asked = (expression: string) =>
    Number(execFileSync('/usr/bin/units', ['-t', '-d', '12', expression], { encoding: 'utf8' }));

  it('two moles of thiosulfate pentahydrate to one of chlorine weigh 7.0 to 1', () => {
    const stoichiometric = asked('2 (2 sodium + 2 sulfur + 3 oxygen + 5 (2 hydrogen + oxygen)) / (2 chlorine)');
    expect(Math.abs(THIOSULFATE_MG_PER_MG - stoichiometric)).toBeLessThanOrEqual(0.005);
  });

  it('one mole of ascorbic acid to one of chlorine weighs 2.48 to 1; the printed 2.5 is a little more', () => {
    const stoichiometric = asked('(6 carbon + 8 hydrogen + 6 oxygen) / (2 chlorine)');
    expect(ASCORBIC_MG_PER_MG - stoichiometric).toBeGreaterThanOrEqual(0);
    expect(ASCORBIC_MG_PER_MG - stoichiometric).toBeLessThanOrEqual(0.05);
  });
});
