// Where E. coli stops growing, as Presser, Ross and Ratkowsky 1998 found it: at 11 mM undissociated lactic acid, and
// below pH 3.9 to 4.0 without any. The model's enterobacteria stand in for it and may not stop later than that.

import { describe, expect, it } from 'vitest';
import { dissociatedFraction, MOLAR_MASS_G, PKA } from '#engine/scraps/acid.ts';
import { acidFactor } from '#engine/souring/model/cardinal.ts';
import { course } from '#engine/souring/model/course.ts';
import type { Mixture } from '#engine/souring/model/mixture.ts';
import { likelyParameters, parameterBands } from '#engine/souring/model/parameters.ts';
import { hourlyC } from '#engine/souring/model/temperature.ts';
import { num, worked } from '../published/rows.ts';

const LIMIT_MOL_PER_L = 0.011;

/** A broth that holds its pH: food, next to no plants, and a buffer that no acid moves. */
function broth(startPh: number): Mixture {
  return {
    liquidL: 1,
    dryMatterFraction: 0.01,
    plantKgPerL: 0.1,
    dryMatterKgPerL: 0.01,
    boundSugarGPerL: 0,
    freeSugarGPerL: 10,
    bufferEqPerLPerPh: 5,
    startPh,
    alkalinityEqPerL: 0,
    waterPh: 7,
    nitrogenMolPerL: 0.2,
    saltGPerL: 0,
    starterGPerL: 0,
  };
}

function growthIn(mixture: Mixture): number {
  const batch = { mixture, hourlyC: hourlyC({ warmth: 37, days: 1, vesselL: 1 }), opennessFraction: 0 };
  const run = course(batch, likelyParameters, 1);
  return (run.enteroCellsGPerL[4] as number) / (run.enteroCellsGPerL[0] as number);
}

describe('the growth limit of E. coli', () => {
  it.each(worked('presser-1998.csv').map((row) => [row.case, row] as const))('%s', (_name, row) => {
    const ph = num(row, 'ph');
    const left = (totalG: number) => {
      const undissociated = 1 - dissociatedFraction({ ph, pka: PKA.lactic });
      return acidFactor((totalG / MOLAR_MASS_G.lactic) * undissociated, LIMIT_MOL_PER_L);
    };
    // Growth of the model ends within the tolerance about the total that was published, and goes on below it.
    expect(left(num(row, 'lacticGPerL') + num(row, 'toleranceG'))).toBe(0);
    expect(left(num(row, 'lacticGPerL') - num(row, 'toleranceG'))).toBeGreaterThan(0);
  });

  it('is not passed by the enterobacteria of the model, at any end of their band', () => {
    expect(parameterBands.entero.lacticMostMolPerL.high).toBeLessThanOrEqual(LIMIT_MOL_PER_L);
    expect(parameterBands.entero.minPh.low).toBeGreaterThanOrEqual(3.9);
  });

  it('shows in a run: they grow in a neutral broth, and fall below pH 3.9', () => {
    expect(growthIn(broth(6.8))).toBeGreaterThan(100);
    expect(growthIn(broth(3.85))).toBeLessThan(1);
  });
});
