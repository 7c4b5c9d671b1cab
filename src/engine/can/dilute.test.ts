// Arithmetic shown in each test.
import { describe, expect, it } from 'vitest';
import { shareFor, twoVolumes } from './dilute.ts';

describe('the share of concentrate', () => {
  it('is one part in n of the mixture, or one part to n of water', () => {
    expect(shareFor({ kind: 'ratio', ratio: { n: 4, reading: 'in' } })).toEqual({
      reachable: true,
      concentrateFraction: 1 / 4,
    });
    expect(shareFor({ kind: 'ratio', ratio: { n: 4, reading: 'to' } })).toEqual({
      reachable: true,
      concentrateFraction: 1 / 5,
    });
  });
  it('brings the grams aimed at: 1 g/m² from 2 g/L at 3 L/m² is a sixth', () => {
    expect(shareFor({ kind: 'nutrient', element: 'n', aimGPerM2: 1, contentGPerL: 2, depthLPerM2: 3 })).toEqual({
      reachable: true,
      concentrateFraction: 1 / 6,
    });
  });
  it.each([0, Number.NaN])('is not reachable from a batch of %d g/L', (contentGPerL) => {
    expect(shareFor({ kind: 'nutrient', element: 'n', aimGPerM2: 1, contentGPerL, depthLPerM2: 3 })).toMatchObject({
      reachable: false,
      why: 'too-weak',
    });
  });
  it('is reachable up to all that the undiluted batch holds: 6 g/m² from 2 g/L at 3 L/m², and not 6.01', () => {
    const aim = { kind: 'nutrient', element: 'n', contentGPerL: 2, depthLPerM2: 3 } as const;
    expect(shareFor({ ...aim, aimGPerM2: 6 })).toEqual({ reachable: true, concentrateFraction: 1 });
    expect(shareFor({ ...aim, aimGPerM2: 6.01 })).toMatchObject({ reachable: false, mostGPerM2: 6 });
  });
  it('brings the can to the salt limit: (2 − 0.5) / (5 − 0.5) is a third', () => {
    const found = shareFor({ kind: 'conductivity', maxEcDsPerM: 2, batchEcDsPerM: 5, waterEcDsPerM: 0.5 });
    expect(found).toEqual({ reachable: true, concentrateFraction: expect.closeTo(1 / 3, 12) });
    // a third of 5 and two thirds of 0.5
    expect(5 / 3 + (2 * 0.5) / 3).toBeCloseTo(2, 12);
  });
  it('is the whole can when the undiluted batch stays under the salt limit', () => {
    expect(shareFor({ kind: 'conductivity', maxEcDsPerM: 2, batchEcDsPerM: 1.5, waterEcDsPerM: 0.5 })).toEqual({
      reachable: true,
      concentrateFraction: 1,
    });
  });
  it('is not reachable with water at the limit, or with water that was not measured', () => {
    for (const waterEcDsPerM of [2, 3, Number.NaN])
      expect(shareFor({ kind: 'conductivity', maxEcDsPerM: 2, batchEcDsPerM: 5, waterEcDsPerM })).toMatchObject({
        reachable: false,
      });
  });
});

describe('two volumes', () => {
  it('fill the can', () => {
    expect(twoVolumes({ mixtureL: 9, concentrateFraction: 1 / 3 })).toEqual({ concentrateMl: 3000, waterMl: 6000 });
  });
});
