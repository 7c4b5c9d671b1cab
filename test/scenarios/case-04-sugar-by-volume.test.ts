import { describe, expect, it } from 'vitest';
import { massFromVolume } from '#engine/quantity/bulk.ts';
import { parseAmount } from '#engine/quantity/parse.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { sayAmountProblem } from '#words/quantity.ts';

/** g of sugars in 100 mL of a product. */
function sugarsG(id: string): number {
  const product = sugarProduct(id);
  if (product === undefined) throw new Error(`no such sugar: ${id}`);
  return massFromVolume({ volumeL: 0.1, bulkKgPerL: product.bulkKgPerL }).likely * product.sugarsGPerKg.likely;
}

describe('100 mL of sugar', () => {
  it('without a product gives no mass and asks for the product', () => {
    const read = parseAmount('100 mL', { dimension: 'mass', bulkKgPerL: 'ask' });
    if (read.ok) throw new Error('a product was assumed');
    expect(read.ask).toEqual({ kind: 'product', choices: [] });
    expect(sayAmountProblem(read)).toEqual({
      message: 'is a volume, and its mass differs from product to product',
      allowed: 'name the product, or give a mass',
    });
  });

  it('differs by up to half as much again in sugars between syrup, packed, loose and white', () => {
    const all = ['white-sugar', 'brown-sugar-packed', 'brown-sugar-loose', 'honey'].map(sugarsG);
    const apart = Math.max(...all) / Math.min(...all);
    expect(apart).toBeGreaterThan(1.2);
    expect(apart).toBeLessThan(1.8);
  });

  it('of a named product is a mass with its band', () => {
    const product = sugarProduct('white-sugar');
    const read = parseAmount('100 mL', { dimension: 'mass', bulkKgPerL: product?.bulkKgPerL });
    if (!read.ok || read.band === undefined) throw new Error('no band');
    // White sugar pours at 0.80 to 0.88 kg/L.
    expect(read.band.low).toBeCloseTo(0.08, 9);
    expect(read.band.high).toBeCloseTo(0.088, 9);
  });

  it('given as clippings is sent to the scale', () => {
    const read = parseAmount('3 L', { dimension: 'mass' });
    if (read.ok) throw new Error('litres were read as a mass');
    expect(sayAmountProblem(read).message).toBe('is a volume, and a mass is wanted');
  });
});
