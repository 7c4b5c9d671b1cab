// Vessels read back: litres of each layer out of the drawn wall and the stated scale, over its fill line, over its rim.

import { describe, expect, it } from 'vitest';
import { vesselShape } from '#engine/pail/shape.ts';
import {
  layersUpTo,
  levelInY,
  levelY,
  rimY,
  slicePath,
  standing,
  vesselRoom,
  vesselSheet,
  wallPath,
} from '#web/drawings/vessel-geometry.ts';
import { cornersOf, footOf, topOf, turnedL } from './read-back.ts';

const room = { widthPx: 4000, heightPx: 6000, axisX: 5000, floorY: 9000 };
const stand = (volumeL: number, shape: 'pail' | 'drum' | 'barrel' = 'pail') =>
  standing(vesselShape({ volumeL, shape }), room);
/** Litres drawn between two heights, by the wall and the scale that is written beside the drawing. */
const litresDrawn = (on: ReturnType<typeof stand>, fromY: number, toY: number) =>
  turnedL(slicePath(on, fromY, toY), on.axisX, 96 / 0.0254 / on.denominator);

describe('a level in a vessel', () => {
  // A barrel's staves are drawn as a curve through the engine's rings: to 1.5 %.
  it.each([
    ['pail', 0.002],
    ['drum', 0.002],
    ['barrel', 0.015],
  ] as const)('reads its litres back in a %s: a tenth, half, to the fill line, to the rim', (shape, off) => {
    const on = stand(12, shape);
    for (const litres of [1.2, 6, 9, 12])
      expect(Math.abs(litresDrawn(on, on.floorY, levelY(on, litres)) / litres - 1)).toBeLessThan(off);
  });
  it('is the floor for nothing, the rim for all it holds, and higher for more', () => {
    const on = stand(12);
    expect(levelY(on, 0)).toBe(on.floorY);
    expect(levelY(on, 12)).toBeCloseTo(rimY(on), 6);
    const ys = [0, 0.1, 3, 6, 9, 12, 13].map((litres) => levelY(on, litres));
    for (const [i, y] of ys.entries()) expect(y).toBeLessThan(ys[i - 1] ?? Number.POSITIVE_INFINITY);
  });
  it('stands no higher than the rim where what runs over is only told', () => {
    const on = stand(12);
    for (const litres of [0, 5, 12]) expect(levelInY(on, litres)).toBeCloseTo(levelY(on, litres), 9);
    expect(levelInY(on, 19)).toBe(rimY(on));
  });
  it('above the rim reads the litres that are too much, straight up from it', () => {
    const on = stand(12);
    expect(litresDrawn(on, rimY(on), levelY(on, 15))).toBeCloseTo(3, 2);
  });
  it('keeps within the drawn wall from floor to rim', () => {
    const on = stand(12);
    const [wall, inside] = [wallPath(on), slicePath(on, on.floorY, rimY(on))];
    expect([topOf(inside), footOf(inside)]).toEqual([topOf(wall), footOf(wall)]);
    expect(Math.max(...cornersOf(inside).map(({ x }) => x))).toBeLessThanOrEqual(
      Math.max(...cornersOf(wall).map(({ x }) => x)),
    );
  });
});

describe('the layers of a vessel', () => {
  const layers = [{ litres: 3.2 }, { litres: 5.2 }, { litres: 0.1 }, { litres: 1.5 }];
  it('read back their litres one by one, the first on the floor, each on the one before', () => {
    const on = stand(12);
    const drawn = layersUpTo(on, { layers, mostL: 12 });
    expect(drawn[0]?.fromY).toBe(on.floorY);
    for (const [i, { fromY, toY, litres }] of drawn.entries()) {
      expect(litresDrawn(on, fromY, toY)).toBeCloseTo(litres, 2);
      expect(fromY).toBe(drawn[i - 1]?.toY ?? on.floorY);
    }
  });
  it('end at the fill line: what is drawn is what it holds up to there', () => {
    const on = stand(12);
    const drawn = layersUpTo(on, { layers, mostL: 9 });
    expect(drawn.at(-1)?.toY).toBe(levelY(on, 9));
    const sumL = drawn.reduce((sum, { fromY, toY }) => sum + (fromY > toY ? litresDrawn(on, fromY, toY) : 0), 0);
    expect(sumL).toBeCloseTo(9, 2);
  });
});

describe('the paper of a vessel', () => {
  it.each([350, 459, 460, 900])('has its axis in the middle of the room for it, %d px wide', (width) => {
    const sheet = vesselSheet(width);
    const { axisX, widthPx } = vesselRoom(sheet);
    expect(axisX - widthPx / 2).toBe(sheet.left);
    expect(axisX + widthPx / 2).toBeLessThan(width - sheet.names);
  });
});
