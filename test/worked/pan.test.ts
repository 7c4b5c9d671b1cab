// Nitrogen that comes free, against averages as they are recalled; and that of compost, clippings and straw, worked by
// hand from volume, density and dry matter.

import { describe, expect, it } from 'vitest';
import { compostPanPercent, panPercent, releasedFraction, tiedUpG } from '#engine/ground/available.ts';
import { matterSupply } from '#engine/ground/supply.ts';
import { point } from '#engine/quantity/range.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { num, worked } from '../published/rows.ts';

describe('the share of nitrogen free over a season', () => {
  it.each(worked('pan.csv'))('of $case: $verdict', (row) => {
    const { likely } = panPercent(num(row, 'nPercentDm'));
    const off = Math.max(num(row, 'expectedLow') - likely, likely - num(row, 'expectedHigh'));
    expect(off > 0 ? 'differs' : 'agrees').toBe(row.verdict);
    expect(off).toBeLessThanOrEqual(5);
  });

  it('is straight in pounds a US ton between its two published ends', () => {
    const lbPerUsTon = (nPercentDm: number) => (2000 * (nPercentDm / 100) * panPercent(nPercentDm).likely) / 100;
    // 17.5 lb for each percent over 1.5
    expect(lbPerUsTon(2)).toBeCloseTo(8.75, 1);
    expect(lbPerUsTon(2.5)).toBeCloseTo(17.5, 1);
    expect(lbPerUsTon(3)).toBeCloseTo(26.25, 1);
  });

  it('has come free to four fifths after 5 weeks at 17.5 °C', () => {
    expect(releasedFraction('fresh', point(35 * 17.5)).likely).toBeCloseTo(0.8, 3);
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
