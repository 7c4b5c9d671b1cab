// Mixes of a heap worked by hand: by the equations of Richard and Trautmann, Getting the right mix, from figures of the
// table of Rynk 1992 as recalled, and from our own.

import { describe, expect, it } from 'vitest';
import { resolveIngredient, weighed } from '#engine/heap/ingredient.ts';
import { mixOf, perKg } from '#engine/heap/mix.ts';
import { solveMasses } from '#engine/heap/solve.ts';
import { num, worked } from '../published/rows.ts';
import { ingredient } from './heap-ingredient.ts';

const leaves = ingredient('50/0.75/35');
const clippings = ingredient('45/2.4/77');

describe('a mix of two', () => {
  it.each(worked('heap.csv').map((row) => [row.case, row] as const))('%s', (_, row) => {
    const mix = mixOf([
      weighed(ingredient(row.first), num(row, 'firstKg')),
      weighed(ingredient(row.second), num(row, 'secondKg')),
    ]);
    expect(Math.abs((mix.cn?.likely ?? 0) - num(row, 'cn'))).toBeLessThanOrEqual(num(row, 'cnTolerance'));
    expect(Math.abs(mix.moisturePercent.likely - num(row, 'moisturePercent'))).toBeLessThanOrEqual(
      num(row, 'moistureTolerance'),
    );
  });

  it('comes from the table as it does from figures typed', () => {
    // Grass 18 % dry, 3.31 % N, C:N 15; leaves (Heckman and Kluchinski 1996, medians) 0.94 % N, C:N 48.5, 62 % dry:
    // (15·3.31·18 + 48.5·0.94·62)/(3.31·18 + 0.94·62) = 31.6
    const mix = mixOf(
      ['grass-clippings-fresh', 'dry-leaves'].map((material) => weighed(resolveIngredient({ material }), 1)),
    );
    expect(mix.cn?.likely).toBeCloseTo((15 * 3.31 * 18 + 48.5 * 0.94 * 62) / (3.31 * 18 + 0.94 * 62), 6);
  });
});

describe('averaging ratios', () => {
  // Two of coffee grounds or clippings at 20 and one of leaves at 60, averaged: (20 + 20 + 60)/3 = 33. By dry mass the
  // table's clippings and leaves come to 28.6 for 2:1 wet mass and 24.6 for 2:1 loose volume (350 and 200 lb/yd³).
  const grass = ingredient('57.8/3.4/82');
  const tableLeaves = ingredient('48.6/0.9/38');
  const byMass = mixOf([weighed(grass, 2), weighed(tableLeaves, 1)]).cn?.likely ?? Number.NaN;
  const byVolume = mixOf([weighed(grass, 2 * 350), weighed(tableLeaves, 200)]).cn?.likely ?? Number.NaN;

  it('is not what is done', () => {
    expect(byMass).toBeCloseTo(28.6, 1);
    expect(byVolume).toBeCloseTo(24.6, 1);
    expect(Math.abs(byMass - (2 * 17 + 54) / 3)).toBeGreaterThan(0.5);
    expect(Math.abs(byVolume - (20 + 20 + 60) / 3)).toBeGreaterThan(5);
  });
});

describe('a mass to be found', () => {
  const known = [{ massKg: 10, contents: perKg(clippings) }];
  const sought = [{ contents: perKg(leaves), leastKg: 0, mostKg: 200 }];

  it('follows the published formula for C:N', () => {
    // Q2 = Q1 N1 (R − C1/N1)(100 − M1) / (N2 (C2/N2 − R)(100 − M2)), R = 30
    const second = (10 * 2.4 * (30 - 45 / 2.4) * 23) / (0.75 * (50 / 0.75 - 30) * 65);
    expect(solveMasses({ known, sought, goals: { cn: 30 } }).massesKg[0]).toBeCloseTo(second, 6);
  });

  it('is none where the second is as wet as the goal, or wetter', () => {
    const wet = [{ contents: perKg(ingredient('50/0.75/60')), leastKg: 0, mostKg: 200 }];
    expect(solveMasses({ known, sought: wet, goals: { moisturePercent: 60 } }).met).toBe(false);
  });
});
