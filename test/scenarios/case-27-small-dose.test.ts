import { describe, expect, it } from 'vitest';
import { card } from './can-card.ts';

describe('1 in 400 in a 5 L sprayer', () => {
  const said = card({ ratio: { n: 400, reading: 'in' }, canL: 5 });

  it('is 12.5 mL', () => {
    expect(said.perCan).toEqual({ concentrateMl: 12.5, waterMl: 4987.5 });
  });
  it('suggests the syringe, and one mix for several cans in a larger volume', () => {
    expect(said.measures?.map(({ tool }) => tool)).toEqual(['syringe', 'mix']);
    expect(said.measures?.[0]?.text).toMatch(/12\.5/);
    expect(said.measures?.[1]?.text).toMatch(/25\.0\smL of concentrate, water to 200\smL, then 100\smL/);
  });
  it('needs no second step', () => {
    expect(said.twoStep).toBeUndefined();
  });
});

describe('1 in 400 in half a litre', () => {
  const said = card({ ratio: { n: 400, reading: 'in' }, canL: 0.5 });

  it('is 1.25 mL, in two steps: 10 mL in 90 mL, then 12.5 mL of that', () => {
    expect(said.perCan?.concentrateMl).toBe(1.25);
    expect(said.twoStep).toEqual({ firstConcentrateMl: 10, firstWaterMl: 90, thenMl: 12.5, canL: 0.5 });
  });
  it('offers no tool for the dose itself', () => {
    expect(said.measures).toEqual([]);
  });
});
