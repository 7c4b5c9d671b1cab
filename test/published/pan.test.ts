// Nitrogen that comes free: the published line and table, and worked numbers of compost, clippings and straw.

import { describe, expect, it } from 'vitest';
import { compostPanPercent, panPercent, releasedFraction, tiedUpG } from '#engine/ground/available.ts';
import { matterSupply } from '#engine/ground/supply.ts';
import { point } from '#engine/quantity/range.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { rows } from './rows.ts';

describe('the share of nitrogen free over a season', () => {
  it.each(rows('pan.csv'))('$case', (row) => {
    const found = panPercent(Number(row.nPercentDm));
    expect(found.low).toBeLessThanOrEqual(Number(row.expectedHigh));
    expect(found.high).toBeGreaterThanOrEqual(Number(row.expectedLow));
  });

  it('is 0 at 1.5 % and 35 lb a US ton at 3.5 %, linear in pounds between, as published', () => {
    const lbPerTon = (nPercentDm: number) => (2000 * (nPercentDm / 100) * panPercent(nPercentDm).likely) / 100;
    expect(lbPerTon(1.5)).toBeCloseTo(0, 9);
    expect(lbPerTon(2)).toBeCloseTo(8.75, 1);
    expect(lbPerTon(2.5)).toBeCloseTo(17.5, 1);
    expect(lbPerTon(3)).toBeCloseTo(26.25, 1);
    expect(lbPerTon(3.5)).toBeCloseTo(35, 9);
  });

  it('covers the fit 15 (N − 1), give or take 15 points, from 1.5 to 4 %', () => {
    for (let n = 1.5; n <= 4; n += 0.1) {
      const { low, high } = panPercent(n);
      const fit = 15 * (n - 1);
      expect(low).toBeLessThanOrEqual(fit + 15);
      expect(high).toBeGreaterThanOrEqual(fit - 15);
    }
  });

  it('is mostly out after 4 to 6 weeks at 15 to 20 °C', () => {
    expect(releasedFraction('fresh', point(35 * 17.5)).likely).toBeCloseTo(0.8, 3);
    expect(releasedFraction('fresh', point(14 * 17.5)).likely).toBeLessThan(0.5);
  });
});

describe('an inch of compost on 100 square feet', () => {
  // 0.236 m³ · 600 kg/m³ = 142 kg, half of it water, 1.5 % nitrogen, 0.35 % phosphorus
  const part = resolvePart({
    material: 'finished-compost',
    massKg: 0.0254 * 9.2903 * 600,
    dryMatter: 0.5,
    nPercentDm: 1.5,
    pPercentDm: 0.35,
  });
  const supply = matterSupply({ kind: 'compost', day: 0, part, dugIn: true });

  it('holds about 1,062 g of nitrogen and 248 g of phosphorus', () => {
    expect(supply.totalG.n?.likely).toBeCloseTo(1062, 0);
    expect(supply.totalG.p?.likely).toBeCloseTo(248, 0);
  });

  it('sets 0 to 106 g of it free in the first year, 53 as likely', () => {
    const share = compostPanPercent(15);
    expect([share.low, share.likely, share.high]).toEqual([0, 5, 10]);
    expect(((supply.totalG.n?.likely ?? 0) * share.likely) / 100).toBeCloseTo(53.1, 1);
    expect(((supply.totalG.n?.likely ?? 0) * share.high) / 100).toBeCloseTo(106.2, 1);
  });

  it('gives nothing to speak of between C:N 20 and 30 and ties up above 30', () => {
    expect(compostPanPercent(25).likely).toBe(0);
    expect(compostPanPercent(35).likely).toBeLessThan(0);
  });
});

describe('an inch of loose clippings on 100 square feet', () => {
  it('holds 260 to 306 g of nitrogen at 3.4 to 4 %', () => {
    // 0.236 m³ · 180 kg/m³ = 42.5 kg fresh, 18 % dry = 7.65 kg
    for (const [nPercentDm, grams] of [
      [3.4, 260],
      [4, 306],
    ] as const) {
      const part = resolvePart({
        material: 'grass-clippings-fresh',
        massKg: 0.0254 * 9.2903 * 180,
        dryMatter: 0.18,
        nPercentDm,
      });
      expect(matterSupply({ kind: 'mulch', day: 0, part, dugIn: false }).totalG.n?.likely).toBeCloseTo(grams, 0);
    }
  });
});

describe('straw', () => {
  it('ties up 55 g for 10 kg of dry straw at 0.7 % dug in, and next to nothing left on top', () => {
    expect(tiedUpG({ dryKg: 10, nPercentDm: 0.7 }).likely).toBeCloseTo(55, 9); // 10 (0.0125 − 0.007) 1000
    const part = resolvePart({ material: 'straw', massKg: 10 });
    expect(matterSupply({ kind: 'mulch', day: 0, part, dugIn: false }).tiedUpG).toBeUndefined();
    expect(matterSupply({ kind: 'mulch', day: 0, part, dugIn: true }).tiedUpG?.likely).toBeGreaterThan(0);
  });
});
