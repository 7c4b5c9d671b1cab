// The things of the line at one scale, and rows they are set in: what both layouts share.

import { bottleM, canM, heapM, type Row, type Scale, type SizeM, sackM, scaleFor, vesselM } from './line-geometry.ts';
import type { BottlePlace, LinePicture, PicturePeg } from './line-picture.ts';
import type { Stand } from './vessel-geometry.ts';

/** Spout and rose of a can reach out to so many times its body's width, its handle to so many times its height. */
export const CAN_REACH = { wide: 1.96, high: 1.5 } as const;
/** A sack stands this share of its width behind the heap. */
const SACK_BEHIND = 0.35;
const BOTTLE_GAP = 5;
/** Both ticks of a very short dimension are still told apart. */
export const LEAST_SPAN_PX = 8;
const USUAL_CAN_L = 10;
const MOST_BOTTLES_IN_A_ROW = 8;
const MOST_BOTTLE_ROWS = 2;

export interface Sizes {
  readonly scale: Scale;
  readonly heap: { readonly width: number; readonly height: number } | undefined;
  readonly brokenOff: boolean;
  readonly sack: { readonly width: number; readonly height: number } | undefined;
  readonly can: { readonly width: number; readonly height: number };
}

/** Rows of two pegs, the last with one where they are odd. */
export function pairs<T>(list: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(list.length / 2) }, (_, i) => list.slice(2 * i, 2 * i + 2));
}

/** The scale at which everything keeps within its stretch, and what does not depend on where it stands. */
export function sizesFor(
  picture: LinePicture,
  room: {
    readonly scrapsPx: number;
    readonly pegsPx: number;
    readonly bottlesPx: number;
    readonly canPx: number;
    readonly highPx: number;
  },
): Sizes {
  const { inL, asideL } = picture.scraps;
  const [heap, sack] = [heapM(inL), sackM(asideL)];
  const each = picture.bottles.each.slice(0, MOST_BOTTLES_IN_A_ROW).map(({ sizeL }) => bottleM(sizeL));
  const body = canM(picture.can.canL || USUAL_CAN_L);
  const rows: readonly Row[] = [
    ...pairs(picture.pegs).map((pair) => ({
      things: pair.map(({ shape }) => vesselM(shape)),
      widthPx: room.pegsPx,
      gapPx: 22,
    })),
    { things: each, widthPx: room.bottlesPx, gapPx: BOTTLE_GAP },
    {
      things: [{ widthM: body.widthM * CAN_REACH.wide, heightM: body.heightM * CAN_REACH.high }],
      widthPx: room.canPx,
      gapPx: 0,
    },
  ];
  const behind = inL > 0 ? 1 - SACK_BEHIND : 1;
  const heapRow: Row = {
    things: [heap, { widthM: sack.widthM * behind, heightM: sack.heightM }],
    widthPx: room.scrapsPx,
    gapPx: 0,
  };
  const { heapFits, ...scale } = scaleFor(rows, heapRow, room.highPx);
  const px = ({ widthM, heightM }: SizeM) => ({ width: widthM * scale.pxPerM, height: heightM * scale.pxPerM });
  const least = (size: SizeM, shrink: number) => ({ width: px(size).width * shrink, height: px(size).height * shrink });
  const wide = (heap.widthM + sack.widthM * behind) * scale.pxPerM;
  const tall = Math.max(heap.heightM, sack.heightM) * scale.pxPerM;
  const shrink = heapFits ? 1 : Math.min(1, room.scrapsPx / wide, room.highPx / tall);
  return {
    scale,
    heap: inL > 0 ? least(heap, shrink) : undefined,
    brokenOff: shrink < 1,
    sack: asideL > 0 ? least(sack, shrink) : undefined,
    can: px(body),
  };
}

/** Heap with the sack behind it, from a left edge. */
export function scrapsAt({ heap, sack }: Sizes, x: number, floorY: number) {
  const sackX = x;
  const heapX = x + (sack === undefined ? 0 : sack.width * (heap === undefined ? 1 : 1 - SACK_BEHIND));
  return {
    sack: sack && { x: sackX, y: floorY, ...sack },
    heap: heap && { x: heapX, y: floorY, ...heap },
    middleX: heap === undefined ? x + (sack?.width ?? 40) / 2 : heapX + heap.width / 2,
  };
}

/** A vessel on its bench, its axis at x. */
export function standAt(peg: PicturePeg, scale: Scale, at: { readonly axisX: number; readonly floorY: number }): Stand {
  return { shape: peg.shape, axisX: at.axisX, floorY: at.floorY, pxPerM: scale.pxPerM, denominator: scale.denominator };
}

/** Widths of a row of vessels spread evenly in a room: their axes. */
export function axesIn(
  pegs: readonly PicturePeg[],
  scale: Scale,
  room: { readonly x: number; readonly width: number },
): readonly number[] {
  const widths = pegs.map(({ shape }) => vesselM(shape).widthM * scale.pxPerM);
  const free = (room.width - widths.reduce((total, width) => total + width, 0)) / (widths.length + 1);
  let x = room.x;
  return widths.map((width) => {
    const axis = x + free + width / 2;
    x += free + width;
    return axis;
  });
}

/** Bottles in at most two rows on a bench; what does not fit is counted. */
export function bottlesAt(
  picture: LinePicture,
  scale: Scale,
  room: { readonly x: number; readonly width: number },
): { readonly rows: readonly (readonly BottlePlace[])[]; readonly rowHeight: number; readonly more: number } {
  const rows: BottlePlace[][] = [[]];
  let x = room.x;
  let rowHeight = 0;
  let placed = 0;
  for (const { litres, sizeL } of picture.bottles.each) {
    const size = bottleM(sizeL);
    const [width, height] = [size.widthM * scale.pxPerM, size.heightM * scale.pxPerM];
    if (x > room.x && x + width > room.x + room.width) {
      if (rows.length === MOST_BOTTLE_ROWS) break;
      rows.push([]);
      x = room.x;
    }
    rows.at(-1)?.push({ x, y: 0, width, height, fraction: Math.min(1, litres / sizeL) });
    rowHeight = Math.max(rowHeight, height * 1.3);
    x += width + BOTTLE_GAP;
    placed++;
  }
  return { rows, rowHeight, more: picture.bottles.each.length - placed };
}

/** Width under the first row of bottles that so many litres take, from the left. */
export function takesWidth(
  row: readonly BottlePlace[],
  each: readonly { readonly litres: number }[],
  wantedL: number,
): number {
  let left = wantedL;
  let width = 0;
  row.forEach((bottle, i) => {
    const litres = each[i]?.litres ?? 0;
    const share = litres > 0 ? Math.max(0, Math.min(1, left / litres)) : 0;
    width += share * bottle.width + (share > 0 && i > 0 ? BOTTLE_GAP : 0);
    left -= litres;
  });
  return width;
}
