// Tools by the size of a dose: the limits are 2 mL, 20 mL and 60 mL, the tolerance 5 %.
import { describe, expect, it } from 'vitest';
import { measuresFor, twoStepFor } from './measures.ts';

const tools = (volumeMl: number, canL = 10) => measuresFor({ volumeMl, canL, spoon: null }).map((m) => m.tool);

describe('measures for a dose', () => {
  it('are the jug from 20 mL on, the syringe up to three fills, one mix for several cans below 20 mL', () => {
    expect(tools(244)).toEqual(['jug']);
    expect(tools(60)).toEqual(['jug', 'syringe']);
    expect(tools(12.5)).toEqual(['syringe', 'mix']);
    expect(tools(12.5, 0.5)).toEqual(['syringe']);
  });
  it('leave the syringe out where half a millilitre is more than 5 % off: 2.25 mL read as 2.5 or 2.0 is 11 % off', () => {
    expect(tools(2.25)).toEqual(['mix']);
  });
  it('have no spoon while the country is not named', () => {
    expect(tools(45)).not.toContain('tablespoon');
  });
  it('mix 2 × 12.5 mL to 200 mL, of which 100 mL hold one dose', () => {
    const mix = measuresFor({ volumeMl: 12.5, canL: 5, spoon: null }).find((m) => m.tool === 'mix');
    expect(mix).toMatchObject({ count: 2, concentrateMl: 25, mixMl: 200, eachMl: 100 });
    expect((25 / 200) * 100).toBe(12.5);
  });
  it('are none under 2 mL, where two steps are needed', () => {
    expect(tools(1.9)).toEqual([]);
    expect(twoStepFor(2)).toBeUndefined();
    expect(twoStepFor(Number.NaN)).toBeUndefined();
  });
});

describe('two steps', () => {
  it('bring a dose of 1.25 mL as 12.5 mL of 10 in 100', () => {
    expect(twoStepFor(1.25)).toEqual({ firstConcentrateMl: 10, firstWaterMl: 90, thenMl: 12.5 });
  });
  it.each([1.999, 0.5, 0.3, 0.05, 0.01])(
    'bring %d mL exactly, in at least 5 mL of first mix that the first mix holds',
    (doseMl) => {
      const step = twoStepFor(doseMl);
      if (!step) throw new Error('no two steps');
      const firstMl = step.firstConcentrateMl + step.firstWaterMl;
      expect((step.thenMl * step.firstConcentrateMl) / firstMl).toBeCloseTo(doseMl, 12);
      expect(step.thenMl).toBeGreaterThanOrEqual(5);
      expect(step.thenMl).toBeLessThanOrEqual(firstMl);
    },
  );
});
