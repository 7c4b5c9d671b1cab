// A bottle as lines: a straight body, a shoulder, a neck. Its level goes through its shape, as a vessel's does; heights
// and widths in metres become pixels at one scale for a whole row.

import { levelM, radiusM, type VesselShape } from '#engine/pail/shape.ts';

/** CSS pixels in a metre at 1 : 1 (96 to the inch). */
const PX_PER_M = 96 / 0.0254;
const SCALES = [2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30, 40];

/** Height and half width of a plain bottle's rings, as multiples of its body's radius, floor to mouth. */
const PROFILE = [
  [0, 1],
  [4.2, 1],
  [5.1, 0.36],
  [6, 0.36],
] as const;

/** A plain bottle that holds just this to the brim. @practice */
export function bottleShape(volumeL: number): VesselShape {
  let unitL = 0;
  for (let i = 1; i < PROFILE.length; i++) {
    const [low, a] = PROFILE[i - 1] ?? [0, 0];
    const [high, b] = PROFILE[i] ?? [0, 0];
    unitL += (1000 * Math.PI * (high - low) * (a * a + a * b + b * b)) / 3;
  }
  const radius = Math.cbrt(volumeL / unitL);
  return {
    kind: 'drum',
    volumeL,
    heightM: 6 * radius,
    rings: PROFILE.map(([height, width]) => ({ heightM: height * radius, radiusM: width * radius })),
  };
}

/** One bottle put on paper. */
export interface BottleStand {
  readonly shape: VesselShape;
  readonly axisX: number;
  readonly floorY: number;
  readonly pxPerM: number;
}

/** The largest scale of the list at which the tallest bottle keeps within a height. */
export function bottleScale(
  sizesL: readonly number[],
  tallPx: number,
): { readonly pxPerM: number; readonly denominator: number } {
  const tallestM = Math.max(...sizesL.map((sizeL) => bottleShape(sizeL).heightM));
  const denominator =
    SCALES.find((n) => (tallestM * PX_PER_M) / n <= tallPx) ?? Math.ceil((tallestM * PX_PER_M) / tallPx);
  return { pxPerM: PX_PER_M / denominator, denominator };
}

/** Width of a bottle on paper, px. */
export function bottleWidth(shape: VesselShape, pxPerM: number): number {
  return 2 * (shape.rings[0]?.radiusM ?? 0) * pxPerM;
}

/** The outline, floor to mouth and back. */
export function bottlePath(stand: BottleStand): string {
  const side = stand.shape.rings.map((ring) => ({
    y: stand.floorY - ring.heightM * stand.pxPerM,
    half: ring.radiusM * stand.pxPerM,
  }));
  const right = side.map(({ y, half }) => point(stand.axisX + half, y));
  const left = side.toReversed().map(({ y, half }) => point(stand.axisX - half, y));
  return `M${[...left, ...right].join('L')}`;
}

/** What stands in it, as an area up to its level. */
export function bottleFill(stand: BottleStand, litres: number): string {
  const { shape, axisX, floorY, pxPerM } = stand;
  const topM = levelM(shape, Math.min(litres, shape.volumeL));
  const heights = [...shape.rings.map(({ heightM }) => heightM).filter((heightM) => heightM < topM), topM];
  const side = heights.map((heightM) => ({ y: floorY - heightM * pxPerM, half: radiusM(shape, heightM) * pxPerM }));
  const right = side.map(({ y, half }) => point(axisX + half, y));
  const left = side.toReversed().map(({ y, half }) => point(axisX - half, y));
  return `M${[...right, ...left].join('L')}Z`;
}

/**
 * What so many litres take of bottles in a row, each `wide` px: from the one opened last back through the full ones. In a
 * bottle that holds less than its neighbours it is a share of what that one holds.
 */
export function takesSpan(
  eachL: readonly number[],
  row: { readonly takesL: number; readonly left: number; readonly wide: number },
): { readonly left: number; readonly right: number } | undefined {
  const last = eachL.findLastIndex((litres) => litres > 0);
  if (last < 0 || !(row.takesL > 0)) return undefined;
  let leftL = row.takesL;
  let bottles = 0;
  for (let i = last; i >= 0 && leftL > 0; i--) {
    const litres = eachL[i] ?? 0;
    bottles += Math.min(1, leftL / litres);
    leftL -= litres;
  }
  const right = row.left + (last + 1) * row.wide;
  return { left: right - bottles * row.wide, right };
}

function point(x: number, y: number): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}
