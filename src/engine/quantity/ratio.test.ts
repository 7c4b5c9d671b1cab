import { describe, expect, it } from 'vitest';
import { concentrateFraction, parseRatio, ratioVolumes } from './ratio.ts';

describe('a dilution as typed', () => {
  const clear: readonly (readonly [string, number, 'in' | 'to'])[] = [
    ['1 in 200', 200, 'in'],
    ['1in200', 200, 'in'],
    ['1 to 40', 40, 'to'],
    ['2 to 100', 50, 'to'],
    ['1/200', 200, 'in'],
    ['0.5 %', 200, 'in'],
    ['0,5%', 200, 'in'],
    ['2.5 per cent', 40, 'in'],
  ];
  for (const [typed, n, reading] of clear) {
    it(`"${typed}" is 1 ${reading} ${n}`, () => {
      expect(parseRatio(typed)).toEqual({ ok: true, clear: true, ratio: { n, reading }, asTyped: typed });
    });
  }

  it('a bare colon has two readings and none is taken', () => {
    const read = parseRatio('1:200');
    expect(read).toMatchObject({ ok: true, clear: false });
    if (read.ok && !read.clear)
      expect(read.readings).toEqual([
        { n: 200, reading: 'in' },
        { n: 200, reading: 'to' },
      ]);
  });

  it('a printed 1:200 is one part in 200 of mixture', () => {
    expect(parseRatio('1:200', { printed: true })).toMatchObject({ clear: true, ratio: { n: 200, reading: 'in' } });
  });

  const bad: readonly (readonly [string, string])[] = [
    ['', 'empty'],
    ['a splash', 'not-a-ratio'],
    ['1:200:3', 'not-a-ratio'],
    ['1:1,500', 'ambiguous-mark'],
    ['1 in 1.250', 'ambiguous-mark'],
    ['1,250 %', 'ambiguous-mark'],
    ['-1:200', 'not-positive'],
    ['1:0', 'not-positive'],
    ['0:200', 'not-positive'],
    ['0 %', 'not-positive'],
    ['200:1', 'reversed'],
    ['150 %', 'reversed'],
    ['1 in 50000', 'too-large'],
  ];
  for (const [typed, message] of bad) {
    it(`"${typed}": ${message}`, () => {
      expect(parseRatio(typed)).toMatchObject({ ok: false, problem: { value: typed, message } });
    });
  }
});

describe('a dilution as volumes', () => {
  it('1 in 200 of 9 L is 45 mL and 8,955 mL; 1 to 200 is 44.78 and 8,955.22', () => {
    const taken = ratioVolumes({ ratio: { n: 200, reading: 'in' }, mixtureL: 9 });
    expect(taken.concentrateMl).toBeCloseTo(45, 9);
    expect(taken.waterMl).toBeCloseTo(8955, 9);
    const added = ratioVolumes({ ratio: { n: 200, reading: 'to' }, mixtureL: 9 });
    // 9000 / 201 = 44.776…
    expect(added.concentrateMl).toBeCloseTo(9000 / 201, 9);
    expect(added.waterMl).toBeCloseTo(9000 - 9000 / 201, 9);
  });

  it('in and to stand as (n + 1) to n', () => {
    for (const n of [1, 10, 200]) {
      const ratio = concentrateFraction({ n, reading: 'in' }) / concentrateFraction({ n, reading: 'to' });
      expect(ratio).toBeCloseTo((n + 1) / n, 12);
    }
  });
});
