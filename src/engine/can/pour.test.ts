// One pour from order to dose. Each share, volume and gram is reckoned by hand beside its case.
import { describe, expect, it } from 'vitest';
import { type PourOrder, pour } from './pour.ts';

const inTen: PourOrder = {
  strength: { kind: 'ratio', ratio: { n: 10, reading: 'in' } },
  canL: 10,
  spoon: null,
  way: 'soil',
};
const inN = (n: number, more: Partial<PourOrder> = {}): PourOrder => ({
  ...inTen,
  strength: { kind: 'ratio', ratio: { n, reading: 'in' } },
  ...more,
});

describe('the dose of a pour', () => {
  it('fills 15 L for 5 m² at 3 L/m² as a full can and a half, 100 mL of concentrate to the litre', () => {
    expect(pour({ ...inTen, areaM2: 5, depthLPerM2: 3 }).dose).toEqual({
      concentrateFraction: 0.1,
      perCan: { concentrateMl: 1000, waterMl: 9000 },
      bed: {
        totalL: 15,
        concentrateL: 1.5,
        cans: [
          { volumeL: 10, concentrateMl: 1000 },
          { volumeL: 5, concentrateMl: 500 },
        ],
      },
      measures: [{ tool: 'jug', count: 1000, errorPercent: 0 }],
      // 10 to 1 is an eleventh: 10 000 / 11 = 909.09
      otherReading: {
        n: 10,
        reading: 'to',
        concentrateMl: expect.closeTo(909.0909, 4),
        waterMl: expect.closeTo(9090.9091, 4),
      },
    });
  });

  it('reads "1 to 9" the other way as a ninth of the can', () => {
    const found = pour({ ...inTen, strength: { kind: 'ratio', ratio: { n: 9, reading: 'to' } } }).dose;
    expect(found?.perCan.concentrateMl).toBeCloseTo(1000, 9);
    expect(found?.otherReading).toMatchObject({ n: 9, reading: 'in', concentrateMl: expect.closeTo(1111.1111, 4) });
  });

  it('has no other reading where nobody typed a ratio', () => {
    // 0.6 g/m² of 2 g/L at 3 L/m² is a tenth
    const strength = { kind: 'nutrient', element: 'n', aimGPerM2: 0.6, contentGPerL: 2, depthLPerM2: 3 } as const;
    const found = pour({ ...inTen, strength }).dose;
    expect(found?.concentrateFraction).toBeCloseTo(0.1, 12);
    expect(found).not.toHaveProperty('otherReading');
  });

  it.each([{ areaM2: 5 }, { depthLPerM2: 3 }])('has no cans for the bed from %j alone', (half) => {
    expect(pour({ ...inTen, ...half }).dose).not.toHaveProperty('bed');
  });

  it('goes in two steps where a full can takes 1 mL: 10 mL of 10 in 100', () => {
    expect(pour(inN(10_000)).dose?.twoStep).toEqual({
      firstConcentrateMl: 10,
      firstWaterMl: 90,
      thenMl: 10,
      canL: 10,
    });
  });

  it('goes in two steps for a part-can alone: of 11 L the last litre takes 1 mL, the full can 10 mL', () => {
    expect(pour(inN(1000, { areaM2: 11, depthLPerM2: 1 })).dose?.twoStep).toEqual({
      firstConcentrateMl: 10,
      firstWaterMl: 90,
      thenMl: 10,
      canL: 1,
    });
  });

  it('goes in one step where every can takes 2 mL and more: 12 L at 1 in 1000', () => {
    expect(pour(inN(1000, { areaM2: 12, depthLPerM2: 1 })).dose).not.toHaveProperty('twoStep');
  });

  it('is none where the strength cannot be reached, and nothing is said of the can', () => {
    const strength = { kind: 'nutrient', element: 'n', aimGPerM2: 7, contentGPerL: 2, depthLPerM2: 3 } as const;
    expect(pour({ ...inTen, strength, depthLPerM2: 3, batch: { nGPerL: 2, ecDsPerM: 5 } })).toEqual({
      share: { reachable: false, why: 'too-weak', aimGPerM2: 7, mostGPerM2: 6 },
      diluted: {},
      given: {},
    });
  });
});

describe('what a square metre gets', () => {
  const batch = { nGPerL: 2, kGPerL: 4 };

  it('is content × share × depth, 5 % off either way by jug and can: 2 × 0.1 × 3 = 0.6 g of nitrogen', () => {
    expect(pour({ ...inTen, depthLPerM2: 3, batch }).given).toEqual({
      nGPerM2: { low: expect.closeTo(0.57, 9), likely: expect.closeTo(0.6, 9), high: expect.closeTo(0.63, 9) },
      kGPerM2: { low: expect.closeTo(1.14, 9), likely: expect.closeTo(1.2, 9), high: expect.closeTo(1.26, 9) },
    });
  });

  it('says nothing of what nobody measured, nor without a depth', () => {
    expect(Object.keys(pour({ ...inTen, depthLPerM2: 3, batch: { nGPerL: 2 } }).given)).toEqual(['nGPerM2']);
    expect(Object.keys(pour({ ...inTen, depthLPerM2: 3, batch: { kGPerL: 4 } }).given)).toEqual(['kGPerM2']);
    expect(pour({ ...inTen, batch }).given).toEqual({});
  });
});
