import { describe, expect, it } from 'vitest';
import { heatScale, layerPath, layersOf } from './heap-side-geometry.ts';

const box = { floorY: 200, height: 150, footHalf: 160, topHalf: 70 };

describe('the layers of a heap', () => {
  it('stand on each other from the floor to the top, as thick as their share', () => {
    const [low, high] = layersOf([100, 50], box);
    expect(low).toMatchObject({ bottomY: 200, topY: 100, bottomHalf: 160 });
    expect(high).toMatchObject({ bottomY: 100, topY: 50, topHalf: 70 });
    expect(low?.topHalf).toBeCloseTo(high?.bottomHalf ?? 0, 9);
    expect(layerPath(layersOf([1], box)[0] ?? { bottomY: 0, topY: 0, bottomHalf: 0, topHalf: 0 }, 180)).toMatch(
      /^M20\.0 200\.0/,
    );
  });
  it('are none where nothing has a volume', () => {
    expect(layersOf([], box)).toEqual([]);
    expect(layersOf([0], box)).toEqual([]);
  });
});

describe('the scale of the curve', () => {
  it('runs from 0 to 80 °C and over all its days', () => {
    const { x, y } = heatScale(20, { left: 40, right: 340, top: 10, bottom: 170 });
    expect([x(0), x(20), y(0), y(80), y(95)]).toEqual([40, 340, 170, 10, 10]);
  });
});
