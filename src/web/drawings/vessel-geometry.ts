// Lines of the vessel in pixels: one scale per drawing, levels through the vessel's shape. Heights and radii
// come from the pail's room in metres; this file only puts them on paper.

import { levelM, radiusM, type VesselShape } from '#engine/pail/shape.ts';

/** CSS pixels in a metre at 1 : 1 (96 to the inch). */
const PX_PER_M = 96 / 0.0254;
/** Denominators a drawing may use. */
const SCALES = [
  2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 25, 28, 30, 35, 40, 45, 50, 60, 70, 80, 100,
];

/** A vessel set on paper: its axis, its floor, and pixels to the metre. */
export interface Stand {
  readonly shape: VesselShape;
  readonly axisX: number;
  readonly floorY: number;
  readonly pxPerM: number;
  readonly denominator: number;
}

/** The largest scale of the list at which the vessel keeps within a width and a height. */
export function standing(
  shape: VesselShape,
  room: { readonly widthPx: number; readonly heightPx: number; readonly axisX: number; readonly floorY: number },
): Stand {
  const widthM = 2 * widestM(shape);
  const denominator =
    SCALES.find((n) => (widthM * PX_PER_M) / n <= room.widthPx && (shape.heightM * PX_PER_M) / n <= room.heightPx) ??
    Math.ceil(Math.max((widthM * PX_PER_M) / room.widthPx, (shape.heightM * PX_PER_M) / room.heightPx));
  return { shape, axisX: room.axisX, floorY: room.floorY, pxPerM: PX_PER_M / denominator, denominator };
}

function widestM(shape: VesselShape): number {
  return shape.rings.reduce((most, ring) => Math.max(most, ring.radiusM), 0);
}

/** Where so many litres stand, px from the top of the drawing. */
export function levelY(stand: Stand, litres: number): number {
  return stand.floorY - levelM(stand.shape, litres) * stand.pxPerM;
}

/** The same, no higher than the rim: where what runs over is told in words. */
export function levelInY(stand: Stand, litres: number): number {
  return Math.max(rimY(stand), levelY(stand, litres));
}

/** Rim of the vessel, px from the top of the drawing. */
export function rimY(stand: Stand): number {
  return stand.floorY - stand.shape.heightM * stand.pxPerM;
}

/** Paper for a vessel alone: room for the dimension at its left, for the names at its right. */
export interface VesselSheet {
  readonly width: number;
  readonly left: number;
  readonly dimensionX: number;
  readonly names: number;
  readonly letters: number;
  readonly tall: number;
}

/** Room between the widest wall and the names. */
const BESIDE = 22;

export function vesselSheet(width: number): VesselSheet {
  if (width >= 460) return { width, left: 92, dimensionX: 40, names: 156, letters: 14, tall: 330 };
  return { width, left: 80, dimensionX: 32, names: 104, letters: 10, tall: 230 };
}

/** Width for the vessel on its paper, and the axis it stands on. */
export function vesselRoom({ width, left, names }: VesselSheet): { readonly widthPx: number; readonly axisX: number } {
  const widthPx = width - left - names - BESIDE;
  return { widthPx, axisX: left + widthPx / 2 };
}

/** Where each layer stands, from the floor up, as far as a level: what stands above it is drawn once, as too much. */
export function layersUpTo<Layer extends { readonly litres: number }>(
  stand: Stand,
  { layers, mostL }: { readonly layers: readonly Layer[]; readonly mostL: number },
): readonly (Layer & { readonly fromY: number; readonly toY: number; readonly middleL: number })[] {
  const mostY = levelY(stand, mostL);
  let litres = 0;
  return layers.map((layer) => {
    const fromY = Math.max(mostY, levelY(stand, litres));
    const middleL = litres + layer.litres / 2;
    litres += layer.litres;
    return { ...layer, fromY, toY: Math.max(mostY, levelY(stand, litres)), middleL };
  });
}

/** Half the width inside the wall at a height on paper; a barrel's staves are a soft curve through its rings. */
export function halfWidth(stand: Stand, y: number): number {
  const { shape } = stand;
  const heightM = (stand.floorY - y) / stand.pxPerM;
  const [a, b, c] = [shape.rings[0], shape.rings[(shape.rings.length - 1) / 2], shape.rings.at(-1)];
  if (shape.rings.length < 3 || !a || !b || !c || heightM >= c.heightM) return radiusM(shape, heightM) * stand.pxPerM;
  const at = heightM / c.heightM;
  return (
    (a.radiusM * (2 * at - 1) * (at - 1) + 4 * b.radiusM * at * (1 - at) + c.radiusM * at * (2 * at - 1)) * stand.pxPerM
  );
}

/** The wall between two heights on paper, as heights of one side from low to high; a curve in short steps. */
function sideYs(stand: Stand, fromY: number, toY: number): number[] {
  const steps = stand.shape.rings.length < 3 ? 1 : Math.max(1, Math.ceil((fromY - toY) / 8));
  return Array.from({ length: steps + 1 }, (_, i) => fromY + ((toY - fromY) * i) / steps);
}

/** What fills the vessel between two levels. */
export function slicePath(stand: Stand, fromY: number, toY: number): string {
  const ys = sideYs(stand, fromY, toY);
  const right = ys.map((y) => point(stand.axisX + halfWidth(stand, y), y));
  const left = ys.toReversed().map((y) => point(stand.axisX - halfWidth(stand, y), y));
  return `M${[...right, ...left].join('L')}Z`;
}

/** The wall with its rolled rim, open at the top. */
export function wallPath(stand: Stand): string {
  const rim = rimY(stand);
  const down = sideYs(stand, stand.floorY, rim).toReversed();
  const left = down.map((y) => point(stand.axisX - halfWidth(stand, y), y));
  const right = down.toReversed().map((y) => point(stand.axisX + halfWidth(stand, y), y));
  const lip = halfWidth(stand, rim) + 6;
  return `M${point(stand.axisX - lip, rim)}L${left.join('L')}L${right.join('L')}L${point(stand.axisX + lip, rim)}`;
}

/** How thick the run down the side is, at shares of the way from rim to floor. */
const SPILL_PROFILE = [
  [0.02, 1],
  [0.14, 1.25],
  [0.34, 0.8],
  [0.56, 0.55],
  [0.74, 0.75],
  [0.88, 1],
] as const;

/**
 * What runs over the rim and down the outside to a pool on the bench, thicker the more there is of it.
 * It starts from the level inside and ends on the bench line.
 */
export function spillPath(stand: Stand, inside: { readonly levelY: number; readonly overL: number }): string {
  const rim = rimY(stand);
  const share = Math.min(1, inside.overL / stand.shape.volumeL);
  const thick = 10 + 12 * share;
  const wallX = (y: number) => stand.axisX - halfWidth(stand, Math.max(y, rim)) - 1;
  const fall = stand.floorY - rim;
  const edge = SPILL_PROFILE.map(([down, share]) => {
    const y = rim + fall * down;
    return { x: wallX(y) - thick * share, y };
  });
  const pool = { x: wallX(stand.floorY) - thick * 2.1, y: stand.floorY };
  const inner = Math.max(inside.levelY, rim);
  const half = halfWidth(stand, inner);
  const top = Math.min(inside.levelY, rim) - 7;
  const outer = smooth([{ x: wallX(rim) + 2, y: top }, ...edge, pool]);
  return (
    `M${point(wallX(rim) + 2, top)}${outer}L${point(wallX(stand.floorY), stand.floorY)}` +
    `L${point(wallX(rim), rim)}L${point(stand.axisX - half, inner)}L${point(stand.axisX + half * 0.55, inner)}` +
    `C${point(stand.axisX + half * 0.2, inner)} ${point(stand.axisX - half * 0.2, top - 2)} ${point(wallX(rim) + 2, top)}Z`
  );
}

/** A soft line through points (Catmull-Rom as cubic pieces); starts at the first without moving to it. */
function smooth(points: readonly { readonly x: number; readonly y: number }[]): string {
  let path = '';
  points.forEach((from, i) => {
    const to = points[i + 1];
    if (to === undefined) return;
    const before = points[i - 1] ?? from;
    const after = points[i + 2] ?? to;
    path +=
      `C${point(from.x + (to.x - before.x) / 6, from.y + (to.y - before.y) / 6)} ` +
      `${point(to.x - (after.x - from.x) / 6, to.y - (after.y - from.y) / 6)} ${point(to.x, to.y)}`;
  });
  return path;
}

function point(x: number, y: number): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}
