// The line of the demo garden laid out upright and lying, read back by its own scale: litres in vessels and bottles, what a
// round takes of them, the size of the can, metres of the beds.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { DEMO_PLOT, gardenEntries } from '#tasks/demo/garden.ts';
import { lineView } from '#tasks/plot/line.ts';
import { lyingLine } from '#web/drawings/line-lying.ts';
import type { LinePicture } from '#web/drawings/line-picture.ts';
import { uprightLine } from '#web/drawings/line-upright.ts';
import { levelInY, rimY, slicePath } from '#web/drawings/vessel-geometry.ts';
import { pictureOf } from '#web/line/picture.ts';
import { turnedL } from './read-back.ts';

const ON = '2026-06-20';
const demo = pictureOf(lineView({ plot: fold(gardenEntries(ON), DEMO_PLOT), now: `${ON}T18:00` }), 'metric');
const bottles = (each: LinePicture['bottles']['each'], takesL?: number): LinePicture => ({
  ...demo,
  bottles: { ...demo.bottles, each, takes: takesL === undefined ? undefined : { litres: takesL, text: '' } },
});
const cylinderL = (box: { readonly width: number; readonly height: number }, pxPerM: number, share = 1) =>
  1000 * Math.PI * (box.width / 2 / pxPerM) ** 2 * ((box.height * share) / pxPerM);

describe.each([
  ['upright', (picture: LinePicture) => uprightLine(picture, 366)],
  ['lying', (picture: LinePicture) => lyingLine(picture, 1200)],
] as const)('the line, %s', (_, layout) => {
  it('has the litres of each peg in its vessel, never above the rim', () => {
    const { pegs, scale } = layout(demo);
    expect(pegs.length).toBeGreaterThan(0);
    for (const { peg, stand } of pegs) {
      const topY = levelInY(stand, peg.presentL);
      const drawnL = turnedL(slicePath(stand, stand.floorY, topY), stand.axisX, scale.pxPerM);
      expect(Math.abs(drawnL / peg.presentL - 1)).toBeLessThan(0.02);
      expect(topY).toBeGreaterThanOrEqual(rimY(stand));
    }
  });
  it('has the litres of each bottle up to its shoulder: none, half, full, and no more than that', () => {
    const each = [1, 0.9, 0.5, 0, 1.4].map((litres) => ({ litres, sizeL: 1 }));
    const { bottles: drawn, scale } = layout(bottles(each));
    expect(drawn.each).toHaveLength(5);
    drawn.each.forEach((bottle, i) => {
      expect(cylinderL(bottle, scale.pxPerM, bottle.fraction)).toBeCloseTo(Math.min(1, each[i]?.litres ?? 0), 6);
    });
  });
  it.each([0.5, 0.9, 1.3, 1.68])('runs what a round takes, %d L, under as many litres of the bottles', (takesL) => {
    const each = Array.from({ length: 3 }, () => ({ litres: 0.9, sizeL: 1 }));
    const { bottles: drawn } = layout(bottles(each, takesL));
    const right = (drawn.takes?.x ?? 0) + (drawn.takes?.width ?? 0);
    const overL = drawn.each.reduce(
      (sum, { x, width }, i) => sum + (each[i]?.litres ?? 0) * Math.max(0, Math.min(1, (right - x) / width)),
      0,
    );
    expect(overL).toBeCloseTo(takesL, 6);
  });
  it('has a can of its litres and beds of their metres', () => {
    const { can, beds, scale } = layout(demo);
    expect(cylinderL(can.body, scale.pxPerM)).toBeCloseTo(demo.can.canL, 6);
    expect(beds.strips.length).toBe(demo.beds.strips.length);
    beds.strips.forEach(({ width }, i) => {
      expect(width / beds.pxPerM).toBeCloseTo(demo.beds.strips[i]?.lengthM ?? 0, 6);
    });
  });
});
