import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isId } from './bounds.ts';
import { newId } from './new-id.ts';

describe('a new id', () => {
  // RFC 9562, appendix A.6: unix_ts_ms 0x017F22E279B0, rand_a 0xCC3, rand_b 0b01 and 0x8C4DC0C0C07398F.
  it('is the test vector of RFC 9562 for its clock and its random bits', () => {
    const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
    expect(newId({ nowMs: 0x017f22e279b0, random })).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f');
  });

  it('carries version 7 and its variant whatever the chance, and sorts by its clock', () => {
    const bytes = fc.uint8Array({ minLength: 10, maxLength: 10 });
    const clock = fc.integer({ min: 0, max: 2 ** 48 - 1 });
    fc.assert(
      fc.property(clock, clock, bytes, bytes, (a, b, one, two) => {
        const [first, second] = [newId({ nowMs: a, random: one }), newId({ nowMs: b, random: two })];
        expect(isId(first)).toBe(true);
        if (a !== b) expect(first < second).toBe(a < b);
      }),
      { seed: 9562 },
    );
  });

  it.each([-1, 1.5, Number.NaN, 2 ** 48])('refuses the clock %d', (nowMs) => {
    expect(() => newId({ nowMs, random: new Uint8Array(10) })).toThrow(RangeError);
  });

  it('refuses too little chance', () => {
    expect(() => newId({ nowMs: 0, random: new Uint8Array(9) })).toThrow(RangeError);
  });
});
