// One batch against the beds, by hand: 2 kg of plants in 9 L once settled.
import { describe, expect, it } from 'vitest';
import { point } from '../quantity/range.ts';
import { resolvePart } from '../scraps/resolve.ts';
import { sugarProduct } from '../scraps/sugar.ts';
import { type BedToFeed, batchUse } from './use.ts';

const white = sugarProduct('white-sugar');
if (!white) throw new Error('sugar table incomplete');
const sugar = { product: white, massKg: 0 };

function use(plantsKg: number, volumeL: number, beds: readonly BedToFeed[]) {
  const plants = [resolvePart({ name: 'lot', massKg: plantsKg, dryMatter: 0.2 })];
  const water = { volumeL: volumeL - plantsKg, alkalinityMeqPerL: 0, ph: 7 };
  const settled = {
    ...{ volumeL: point(volumeL), usableL: 100, overL: 0, fits: true },
    ...{ massKg: volumeL, usedPercent: 50 },
  };
  return batchUse({ vessel: { volumeL: 200, gasRoom: 0.25 }, plants, water, sugar, targetPh: 3.9 }, settled, beds);
}
const bed = (areaM2: number, everyDays = 14, depthLPerM2 = 2) => ({ areaM2, depthLPerM2, everyDays });

describe('what a batch gives', () => {
  it('is its volume less 0.5 to 1.2 L, likely 0.8, of solids to the kilogram of plants', () => {
    const { drainedL } = use(2, 9, []);
    expect(drainedL.low).toBeCloseTo(6.6, 9);
    expect(drainedL.likely).toBeCloseTo(7.4, 9);
    expect(drainedL.high).toBeCloseTo(8, 9);
  });
  it('is never below nothing: 8 kg in 9 L may leave none', () => {
    const { drainedL } = use(8, 9, []);
    expect(drainedL.low).toBe(0);
    expect(drainedL.likely).toBeCloseTo(2.6, 9);
    expect(drainedL.high).toBeCloseTo(5, 9);
  });
  it('is as strong as the plants in it: 2 kg in 8 L are 250 g/L', () => {
    expect(use(2, 8, []).leafStrengthGPerL).toBe(250);
    expect(use(2, 8, []).shelfDays).toBe(90);
  });
});

describe('what beds take of it', () => {
  it('is area × litres per m² × 9.1 g/L over the strength, round by round until it is too old', () => {
    // 20 and 12 L poured, 9.1/250 of it concentrate; 90 days are six rounds of 14 days and three of 30.
    const { perRoundL, usableL, rounds, timesTooMuch } = use(2, 8, [bed(10), bed(4, 30, 3)]);
    expect(perRoundL).toBeCloseTo(0.728 + 0.4368, 9);
    expect(usableL).toBeCloseTo(0.728 * 6 + 0.4368 * 3, 9);
    expect(rounds).toBe(6);
    // 8 − 2 × 0.8 = 6.4 L drained.
    expect(timesTooMuch).toBeCloseTo(6.4 / 5.6784, 9);
  });
  it('is one round at least, for a bed that is fed less often than the liquid keeps', () => {
    expect(use(2, 8, [bed(10, 120)]).rounds).toBe(1);
  });
  it('is no more than is poured where the batch is thinner than what is poured: 0.05 kg in 10 L', () => {
    expect(use(0.05, 10, [bed(10)]).perRoundL).toBeCloseTo(20, 9);
    // As strong as what is poured, and twice that.
    expect(use(0.091, 10, [bed(10)]).perRoundL).toBeCloseTo(20, 9);
    expect(use(0.182, 10, [bed(10)]).perRoundL).toBeCloseTo(10, 9);
  });
  it('is too much without end where no bed takes any, even where none drains', () => {
    expect(use(2, 8, []).timesTooMuch).toBe(Number.POSITIVE_INFINITY);
    expect(use(2, 8, [bed(0)]).timesTooMuch).toBe(Number.POSITIVE_INFINITY);
    expect(use(12, 9, [bed(0)]).timesTooMuch).toBe(Number.POSITIVE_INFINITY);
  });
});
