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
  it.each([
    [1.5, 10, []],
    [2, 10, ['syringe', 'mix']],
    [19.5, 10, ['syringe', 'mix']],
    [20, 10, ['jug', 'syringe']],
    [60.5, 10, ['jug']],
    [12.5, 1, ['syringe', 'mix']],
    [12.5, 0.999, ['syringe']],
    [Number.NaN, 10, []],
  ])('for %d mL in a can of %d L are %j', (volumeMl, canL, expected) => {
    expect(tools(volumeMl, canL)).toEqual(expected);
  });
  it('say by how much the mark is off: 20.4 mL read as 20 is 0.4 of 20.4 under, 1.96 %', () => {
    const [jug] = measuresFor({ volumeMl: 20.4, canL: 10, spoon: null });
    expect(jug).toEqual({ tool: 'jug', count: 20, errorPercent: expect.closeTo(-1.9608, 4) });
  });
  it('keep a mark that is 5 % off and no more: 5 mL for 4.762 mL is 4.998 % over, for 4.761 mL 5.02 %', () => {
    expect(tools(4.762)).toContain('syringe');
    expect(tools(4.761)).not.toContain('syringe');
  });
  it('have no spoon while the country is not named', () => {
    expect(tools(45)).not.toContain('tablespoon');
  });
  it('have spoons of a named country, as a cook writes them: 45 mL are 3 metric tablespoons of 15 mL, 9 teaspoons of 5', () => {
    const spoons = measuresFor({ volumeMl: 45, canL: 10, spoon: 'metric' }).filter(({ tool }) =>
      tool.endsWith('spoon'),
    );
    expect(spoons).toEqual([
      { tool: 'tablespoon', count: 3, countText: '3', spoon: 'metric', errorPercent: 0 },
      { tool: 'teaspoon', count: 9, countText: '9', spoon: 'metric', errorPercent: 0 },
    ]);
  });
  it('mix 2 × 12.5 mL to 200 mL, of which 100 mL hold one dose', () => {
    const mix = measuresFor({ volumeMl: 12.5, canL: 5, spoon: null }).find((m) => m.tool === 'mix');
    expect(mix).toMatchObject({ count: 2, concentrateMl: 25, mixMl: 200, eachMl: 100 });
    expect((25 / 200) * 100).toBe(12.5);
  });
  it.each([
    [10, 2],
    [9.9, 4],
    [5, 4],
    [4.9, 5],
    [4, 5],
    [3.9, 10],
  ])('mix %d mL for the fewest cans that reach 20 mL on the jug: %d', (volumeMl, count) => {
    const mix = measuresFor({ volumeMl, canL: 5, spoon: null }).find((m) => m.tool === 'mix');
    expect(mix).toMatchObject({ count, concentrateMl: count * volumeMl, mixMl: count * 100 });
  });
  it('are none under 2 mL, where two steps are needed', () => {
    expect(tools(1.9)).toEqual([]);
    expect(twoStepFor(2)).toBeUndefined();
    expect(twoStepFor(Number.NaN)).toBeUndefined();
  });
});

describe('two steps', () => {
  it('are none for no dose, and none for less than none', () => {
    expect(twoStepFor(0)).toBeUndefined();
    expect(twoStepFor(-1)).toBeUndefined();
  });
  it('are content with 5 mL of the first mix: 0.5 mL as 5 mL of 10 in 100, 0.49 mL as 49 mL of 10 in 1000', () => {
    expect(twoStepFor(0.5)).toEqual({ firstConcentrateMl: 10, firstWaterMl: 90, thenMl: 5 });
    expect(twoStepFor(0.49)).toEqual({ firstConcentrateMl: 10, firstWaterMl: 990, thenMl: 49 });
  });
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
