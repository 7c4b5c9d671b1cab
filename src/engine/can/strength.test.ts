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

describe('salt of a can', () => {
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
