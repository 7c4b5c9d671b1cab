// The area of a bed: as told, of its pots, or not at all.

import { describe, expect, it } from 'vitest';
import { areaOf, potDiameterM } from './bed-area.ts';

const id = '019eb63b-4c40-703f-ba57-7491aecbe805';

describe('the area of a bed', () => {
  it('is the one that was told, even beside pots', () => {
    const area = { typed: '5 m²', areaM2: 5 };
    expect(areaOf({ id, area, pots: { count: 3, volumeL: 15 } })).toEqual({ areaM2: 5, pots: undefined });
  });
  it('is the ground inside the rims of its pots: two of 785.4 L, a metre wide and high, are half π', () => {
    // a cylinder 1 m wide and 1 m high holds π/4 m³
    const volumeL = (1000 * Math.PI) / 4;
    expect(potDiameterM(volumeL)).toBeCloseTo(1, 12);
    expect(areaOf({ id, pots: { count: 2, volumeL } })?.areaM2).toBeCloseTo(Math.PI / 2, 12);
  });
  it('is none where nothing was told, and of a bed that is gone', () => {
    expect(areaOf({ id })).toBeUndefined();
    expect(areaOf({ id, area: { typed: '5 m²', areaM2: 5 }, gone: true })).toBeUndefined();
  });
});
