import { describe, expect, it } from 'vitest';
import { sayFit } from '#words/en/fit.ts';
import { answer, overfull } from './weigh-in.ts';

describe('a 12 L pail, gas room 25 %, given more than it holds', () => {
  const said = answer({ vessel: { volumeL: 12, gasRoom: 0.25 }, ...overfull });

  it('says about 10.6 L against 9.0 usable and that it does not fit', () => {
    expect(said.fill.volumeL.likely).toBeGreaterThanOrEqual(10.4);
    expect(said.fill.volumeL.likely).toBeLessThanOrEqual(10.8);
    expect(said.fill.usableL).toBeCloseTo(9, 9);
    expect(said.fill.fits).toBe(false);
    expect(sayFit(said)[0]).toContain('9.0');
    expect(said.cautions.some((c) => c.rule === 'past-the-fill-line' && c.level === 'hold')).toBe(true);
  });

  it('offers the scaled recipe, a larger vessel with its least size, and what to leave out', () => {
    expect(said.cures.map((cure) => cure.kind)).toEqual(['scale', 'vessel', 'leave-out']);
    const [scale, vessel, less] = said.cures;
    expect(scale?.factor).toBeCloseTo(9 / said.fill.volumeL.likely, 1);
    expect(vessel?.volumeL).toBeCloseTo(said.fill.volumeL.likely / 0.75, 0);
    expect(less?.leftOut).toBeDefined();
  });

  it('fits after each cure is taken', () => {
    for (const cure of said.cures) {
      const vessel = { volumeL: cure.volumeL ?? 12, gasRoom: 0.25 };
      const plants = cure.plants?.map(({ material, massKg }) => ({ material, massKg })) ?? overfull.plants;
      const water = { ...overfull.water, volumeL: cure.waterL ?? overfull.water.volumeL };
      const sugar = { ...overfull.sugar, massKg: cure.sugarKg ?? overfull.sugar.massKg };
      expect(answer({ vessel, plants, water, sugar }).fill.fits).toBe(true);
    }
  });
});
