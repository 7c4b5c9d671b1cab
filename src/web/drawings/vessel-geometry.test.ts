import { describe, expect, it } from 'vitest';
import { vesselShape } from '#engine/pail/shape.ts';
import { halfWidth, levelY, rimY, standing } from './vessel-geometry.ts';

const PX_PER_M = 96 / 0.0254;

/** Litres between floor and a level, by adding thin discs of the drawn width: a second way to the same volume. */
function drawnLitres(stand: ReturnType<typeof standing>, topY: number): number {
  const slices = 4000;
  const thick = (stand.floorY - topY) / slices;
  let litres = 0;
  for (let i = 0; i < slices; i++) {
    const radiusM = halfWidth(stand, stand.floorY - (i + 0.5) * thick) / stand.pxPerM;
    litres += Math.PI * radiusM ** 2 * (thick / stand.pxPerM) * 1000;
  }
  return litres;
}

describe('a vessel on paper', () => {
  const room = { widthPx: 144, heightPx: 230, axisX: 0, floorY: 300 };

  it('is drawn at its stated scale: height on paper times the denominator is the height in metres', () => {
    const shape = vesselShape({ volumeL: 12, shape: 'pail' });
    const stand = standing(shape, room);
    expect(((stand.floorY - rimY(stand)) * stand.denominator) / PX_PER_M).toBeCloseTo(shape.heightM, 9);
  });

  it.each([0.4, 12, 60, 200, 1500])('keeps within its room at %d L', (volumeL) => {
    for (const shape of ['pail', 'drum', 'barrel'] as const) {
      const stand = standing(vesselShape({ volumeL, shape }), room);
      expect(stand.floorY - rimY(stand)).toBeLessThanOrEqual(room.heightPx + 1e-9);
      for (let y = rimY(stand); y <= stand.floorY; y += 5) {
        expect(2 * halfWidth(stand, y)).toBeLessThanOrEqual(room.widthPx + 1e-9);
      }
    }
  });

  // The level is no straight percentage: the drawn wall, summed in thin discs, holds the litres it stands for.
  // Pail and drum to 0.1 %; a barrel's curve runs between straight pieces of the engine's shape, to 1.5 %.
  it.each([
    ['pail', 0.001],
    ['drum', 0.001],
    ['barrel', 0.015],
  ] as const)('stands as high in a %s as its litres ask', (shape, off) => {
    const stand = standing(vesselShape({ volumeL: 30, shape }), room);
    for (const litres of [3, 9, 22.5, 30]) {
      expect(Math.abs(drawnLitres(stand, levelY(stand, litres)) / litres - 1)).toBeLessThan(off);
    }
  });
});
