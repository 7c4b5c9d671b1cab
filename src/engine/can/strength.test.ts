// Limits that follow from the balance itself; the table of dilutions is test/worked/dilution-ph.
import { describe, expect, it } from 'vitest';
import { addedEc, canEc, canPh, mixturePh } from './strength.ts';

describe('pH of a can', () => {
  it('is the liquor’s own when nothing is added to it', () => {
    for (const liquorPh of [3.3, 3.9, 4.6])
      expect(
        mixturePh({ liquorPh, factor: 1, concentrateFraction: 1, alkalinityMeqPerL: 5, waterPh: 7.6 }),
      ).toBeCloseTo(liquorPh, 5);
  });
  it('has a wider band when the batch was not measured', () => {
    const water = { alkalinityMeqPerL: 2.5, ph: 7.6 };
    const measured = canPh({ liquorPh: 3.9, concentrateFraction: 0.1, water });
    const guessed = canPh({ liquorPh: undefined, concentrateFraction: 0.1, water });
    expect(guessed.high - guessed.low).toBeGreaterThan(measured.high - measured.low);
    expect(guessed.likely).toBe(measured.likely);
  });
});

describe('the band of the pH of a can', () => {
  // A batch that is as alkaline as the water or more is a lost one, and its can is judged all the same.
  it.each([3.9, 6.9, 7, 7.05, 7.5])(
    'holds a liquor of pH %d, 0.1 off and 0.6 to 1.6 as strong, in water of pH 7',
    (liquorPh) => {
      const { low, high } = canPh({ liquorPh, concentrateFraction: 0.1, water: { alkalinityMeqPerL: 2.5, ph: 7 } });
      const fixed = { concentrateFraction: 0.1, alkalinityMeqPerL: 2.5, waterPh: 7 };
      const ends = [-0.1, 0.1].flatMap((off) =>
        [0.6, 1.6].map((factor) => mixturePh({ ...fixed, liquorPh: liquorPh + off, factor })),
      );
      expect([low, high]).toEqual([Math.min(...ends), Math.max(...ends)]);
    },
  );
});

describe('salt of a can', () => {
  it('is the batch’s own where nothing is added, 5 % off by the pen: 5 dS/m reads 4.75 to 5.25', () => {
    const undiluted = { low: expect.closeTo(4.75, 9), likely: 5, high: expect.closeTo(5.25, 9) };
    // the low end of a pen is 0.95 of what is there
    expect(canEc({ batchEcDsPerM: 5, waterEcDsPerM: 0.5, concentrateFraction: 1 })).toEqual(undiluted);
  });
  it('is 13.5 % more at its high end when nine tenths are water: 15 % of nine tenths', () => {
    // without the pen's 5 % the high end is 1.135 times the likely one; both together as √(ln² 1.135 + ln² 1.05) = 0.1357
    const { high } = canEc({ batchEcDsPerM: 5, waterEcDsPerM: 0, concentrateFraction: 0.1 });
    expect(high).toBeCloseTo(0.5 * Math.exp(0.1357), 4);
  });
  it('is not known where an end of the batch’s own is not, though the others are', () => {
    const most = { low: 4, likely: 5, high: Number.NaN };
    for (const batchEcDsPerM of [Number.NaN, Number.POSITIVE_INFINITY, most]) {
      const can = { batchEcDsPerM, concentrateFraction: 0.1 };
      expect(canEc({ ...can, waterEcDsPerM: 0.5 }).likely).toBeNaN();
      expect(addedEc({ ...can, waterEcDsPerM: 0.5 }).high).toBeNaN();
    }
  });
  it('is the mean by volume as likely: a tenth of 5 and nine tenths of 0.5 are 0.95', () => {
    expect(canEc({ batchEcDsPerM: 5, waterEcDsPerM: 0.5, concentrateFraction: 0.1 }).likely).toBeCloseTo(0.95, 12);
  });
  it('allows for salts that conduct better when thinned: potassium chloride 12.85 mS/cm at 0.1 mol/kg, 1.408 at 0.01', () => {
    // OIML R 56 conductivity standards at 25 °C, from memory. A tenth of the stronger is 1.285; the thinner reads 1.408.
    const can = canEc({ batchEcDsPerM: 12.85, waterEcDsPerM: 0, concentrateFraction: 0.1 });
    expect(can.likely).toBeLessThan(1.408);
    expect(can.high).toBeGreaterThan(1.408);
  });
  it('added is what the can has beyond its water: 0.95 − 0.5', () => {
    expect(addedEc({ batchEcDsPerM: 5, waterEcDsPerM: 0.5, concentrateFraction: 0.1 }).likely).toBeCloseTo(0.45, 12);
  });
  it('added by a batch weaker than the water is nothing, not less', () => {
    expect(addedEc({ batchEcDsPerM: 0.2, waterEcDsPerM: 0.9, concentrateFraction: 0.5 }).likely).toBe(0);
  });
});
