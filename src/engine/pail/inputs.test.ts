// Grams by hand: 2 kg × 0.2 × percent × 10.
import { describe, expect, it } from 'vitest';
import { resolvePart } from '../scraps/resolve.ts';
import { sugarProduct } from '../scraps/sugar.ts';
import { carriedIn } from './inputs.ts';
import { type Element, liquidL, plantsKg } from './recipe.ts';

const white = sugarProduct('white-sugar');
if (!white) throw new Error('sugar table incomplete');
const syrup = { ...white, kGPerKg: { low: 30, likely: 40, high: 50 } };
const known = resolvePart({
  ...{ name: 'known', massKg: 2, dryMatter: 0.2, nPercentDm: 4, pPercentDm: 0.5, kPercentDm: 2 },
  ...{ caPercentDm: 1.5, mgPercentDm: 0.25 },
});
const unknown = resolvePart({ name: 'hedge', massKg: 1, dryMatter: 0.4 });

describe('what is carried in', () => {
  it.each([
    ['n', 16],
    ['p', 2],
    ['k', 8],
    ['ca', 6],
    ['mg', 1],
  ] as const)('of %s is %d g', (element, grams) => {
    expect(carriedIn(element, [known], { product: white, massKg: 0 }).grams.likely).toBeCloseTo(grams, 9);
  });
  it("counts the sugar's potassium, and no other element of it: 0.5 kg at 40 g", () => {
    const sugar = { product: syrup, massKg: 0.5 };
    const { grams } = carriedIn('k', [known], sugar);
    expect([grams.low, grams.likely, grams.high].map((g) => Number(g.toFixed(6)))).toEqual([23, 28, 33]);
    expect(carriedIn('n', [known], sugar).grams.likely).toBeCloseTo(16, 9);
    expect(carriedIn('k', [known], { product: syrup, massKg: 0 }).grams.likely).toBeCloseTo(8, 9);
  });
  it('names the lots whose figure is not known, and counts the others', () => {
    for (const element of ['n', 'p', 'k', 'ca', 'mg'] satisfies Element[]) {
      const { grams, unknownIn } = carriedIn(element, [known, unknown], { product: white, massKg: 0.5 });
      expect(unknownIn).toEqual(['hedge']);
      expect(grams.likely).toBeGreaterThan(0.5);
      expect(carriedIn(element, [known], { product: white, massKg: 0.5 }).unknownIn).toEqual([]);
    }
  });
  it('is nothing, in each end, of no plants and of lots that nobody knows', () => {
    const none = { low: 0, likely: 0, high: 0 };
    expect(carriedIn('n', [], { product: white, massKg: 0 }).grams).toEqual(none);
    expect(carriedIn('n', [unknown], { product: white, massKg: 0.5 }).grams).toEqual(none);
  });
});

describe('a recipe', () => {
  it('weighs all its plants, and sours its water and theirs: 6 L, 2 kg × 0.8 and 1 kg × 0.6', () => {
    expect(plantsKg([known, unknown])).toBe(3);
    expect(liquidL([known, unknown], 6)).toBeCloseTo(8.2, 9);
    expect(liquidL([], 6)).toBe(6);
  });
});
