// What the size of the pieces does to a run: the order a cook would expect, and nothing where it is left as usual.

import { describe, expect, it } from 'vitest';
import { CHOPS, chopFactors, reachedFraction } from './chop.ts';
import { at, course } from './course.ts';
import type { Mixture } from './mixture.ts';
import { likelyParameters } from './parameters.ts';
import { hourlyC } from './temperature.ts';

const plain: Mixture = {
  liquidL: 12.5,
  dryMatterFraction: 0.042,
  plantKgPerL: 0.24,
  dryMatterKgPerL: 0.043,
  boundSugarGPerL: 10,
  freeSugarGPerL: 0,
  bufferEqPerLPerPh: 0.0115,
  startPh: 6.2,
  alkalinityEqPerL: 0.002,
  waterPh: 7.6,
  nitrogenMolPerL: 0.11,
  saltGPerL: 0,
  starterGPerL: 0,
};
const run = (mixture: Mixture) =>
  course(
    { mixture, hourlyC: hourlyC({ warmth: 18, days: 10, vesselL: 12 }), opennessFraction: 0.1 },
    likelyParameters,
    10,
  );

describe('the size of the pieces', () => {
  it('leaves a run to the last digit as it is where they are chopped', () => {
    expect(run({ ...plain, chop: chopFactors('chopped') }).ph).toEqual(run(plain).ph);
  });

  it('makes it sour sooner the finer they are, where all the sugar is the plants own', () => {
    const onDay2 = CHOPS.map((chop) => at(run({ ...plain, chop: chopFactors(chop) }), 2, 'lacticGPerL'));
    expect(onDay2[0]).toBeLessThan(onDay2[1] as number);
    expect(onDay2[1]).toBeLessThan(onDay2[2] as number);
  });

  it('never lets bacteria reach more sugar than there is', () => {
    // 0.98 × 1.06 = 1.04, held at 1
    expect(reachedFraction(0.98, chopFactors('fine'))).toBe(1);
    expect(reachedFraction(0.9, undefined)).toBe(0.9);
  });
});
