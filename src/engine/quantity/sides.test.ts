import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptArea, readAgain } from './kept.ts';
import { parseAmount } from './parse.ts';

const FT_M = 0.3048;
const area = (typed: string, style?: 'point' | 'comma') => parseAmount(typed, { dimension: 'area', style });

describe('an area by its two sides', () => {
  it.each([
    ['1.2 × 2.5 m', 3],
    ['1,2 x 2,5 m', 3],
    ['1.2m x 2.5m', 3],
    ['120 cm × 2.5 m', 3],
    ['1 ½ m × 2 m', 3],
    ['1½ × 2 m', 3],
    ['10 ft x 4 ft', 40 * FT_M ** 2],
    ["10' x 4'", 40 * FT_M ** 2],
    ['10 by 4 feet', 40 * FT_M ** 2],
    ['2 yd * 18 in', 9 * FT_M ** 2],
    ['1,2 m mal 2,5 m', 3],
  ])('%s', (typed, areaM2) => {
    const read = area(typed);
    expect(read).toMatchObject({ ok: true, asTyped: typed });
    expect(read.ok && read.value).toBeCloseTo(areaM2, 9);
  });
  it('is a problem without a unit, with a third side, with nothing on a side, or where no area is asked', () => {
    for (const typed of ['1.2 x 2.5', '1 x 2 x 3 m', 'x 2 m', '2 m x', '2 m x 3 kg', '2 m² x 3 m', '0 x 3 m'])
      expect(area(typed).ok).toBe(false);
    expect(parseAmount('2 x 3 m', { dimension: 'volume' }).ok).toBe(false);
  });
  it('asks where two styles read a side differently, and believes no field of a farm', () => {
    expect(area('1,250 x 2 m')).toMatchObject({ ok: false, ask: { kind: 'style', written: '1,250', behind: 'm' } });
    expect(area('1,250 x 2 m', 'comma')).toMatchObject({ ok: true, value: 2.5 });
    expect(area('100 x 100 m')).toMatchObject({ ok: false, problem: { message: 'too-large' } });
  });
  it('is kept with the edition that reads it, and read again as the same', () => {
    const side = fc.integer({ min: 2, max: 6000 }).map((cm) => cm / 100);
    fc.assert(
      fc.property(side, side, fc.constantFrom('m', 'ft', 'yd'), (a, b, unit) => {
        const read = area(`${a} × ${b} ${unit}`);
        if (!read.ok) return;
        expect(read.readWith.reader).toBe(2);
        expect(readAgain(keptArea(read))).toBeUndefined();
      }),
    );
    const plain = area('3 m2');
    expect(plain.ok && plain.readWith.reader).toBe(1);
  });
  it('leaves a volume with a fraction as it was: 1 ½ l', () => {
    expect(parseAmount('1 ½ l', { dimension: 'volume' })).toMatchObject({ ok: true, value: 1.5 });
  });
});
