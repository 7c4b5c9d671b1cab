import { describe, expect, it } from 'vitest';
import { levelM } from '#engine/pail/shape.ts';
import { bottleFill, bottleScale, bottleShape, bottleWidth } from './bottle-geometry.ts';

describe('a bottle on paper', () => {
  it('is full at its brim and holds what it says', () => {
    const shape = bottleShape(1);
    expect(levelM(shape, 1)).toBeCloseTo(shape.heightM, 6);
  });
  it('stands higher by the last tenth than by the first: the neck is narrow', () => {
    const shape = bottleShape(1);
    expect(levelM(shape, 1) - levelM(shape, 0.9)).toBeGreaterThan(levelM(shape, 0.1));
  });
  it('is twice as wide when it holds eight times as much', () => {
    expect(bottleWidth(bottleShape(8), 100)).toBeCloseTo(2 * bottleWidth(bottleShape(1), 100), 9);
  });
  it('keeps the tallest within the height, at one scale for all', () => {
    const { pxPerM } = bottleScale([0.5, 1, 2], 120);
    expect(bottleShape(2).heightM * pxPerM).toBeLessThanOrEqual(120);
  });
  it('draws half a litre below the shoulder of a litre bottle', () => {
    const stand = { shape: bottleShape(1), axisX: 50, floorY: 100, pxPerM: 300 };
    const ys = [...bottleFill(stand, 0.5).matchAll(/ (-?\d+\.\d)/g)].map(([, y]) => Number(y));
    expect(Math.min(...ys)).toBeGreaterThan(100 - 4.2 * (stand.shape.rings[0]?.radiusM ?? 0) * 300);
    expect(Math.max(...ys)).toBe(100);
  });
});
