import { describe, expect, it } from 'vitest';
import { sayCan } from '#words/en/can.ts';
import { card } from './can-card.ts';

describe('9.60 m² at 2.5 L/m² with a 10 L can at 1 in 200', () => {
  const said = card({ ratio: { n: 200, reading: 'in' }, canL: 10, areaM2: 9.6, depthLPerM2: 2.5 });

  it('is 24.0 L: two full cans and one of 4.0 L, with 50, 50 and 20 mL', () => {
    expect(said.totalL).toBe(24);
    expect(said.cans).toEqual([
      { volumeL: 10, concentrateMl: 50 },
      { volumeL: 10, concentrateMl: 50 },
      { volumeL: 4, concentrateMl: 20 },
    ]);
    expect(said.concentrateL).toBe(0.12);
  });
  it('is said in one line', () => {
    expect(sayCan(said).join('\n')).toMatch(
      /24\.0\sL in all, with 120\smL of concentrate: 2\sfull cans of 10\sL, and one of 4\.0\sL with 20\.0\smL/,
    );
  });
});
