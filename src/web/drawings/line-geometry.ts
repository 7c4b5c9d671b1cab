// Sizes on the line from scraps to beds: one scale for heap, sack, vessels, bottles and can, another for beds. Litres
// are put through each thing's shape in metres; here they are set on paper.

import type { VesselShape } from '#engine/pail/shape.ts';

/** CSS pixels in a metre at 1 : 1 (96 to the inch). */
const PX_PER_M = 96 / 0.0254;
const SCALES = [12, 14, 15, 16, 18, 20, 22, 25, 28, 30, 35, 40, 45, 50, 60, 80] as const;
/** A heap that would make everything else smaller than this is broken off instead. */
const SMALLEST_FOR_HEAP = 30;

/** A thing's outline in metres. */
export interface SizeM {
  readonly widthM: number;
  readonly heightM: number;
}

/** A loose heap as a cone as high as half its width. @arithmetic V = π r³ / 3 */
export function heapM(volumeL: number): SizeM {
  const radiusM = Math.cbrt((3 * volumeL) / 1000 / Math.PI);
  return { widthM: 2 * radiusM, heightM: radiusM };
}

/** A sack as an upright cylinder a third higher than wide, and its neck. @arithmetic V = π w² h / 4 */
export function sackM(volumeL: number): SizeM {
  const widthM = Math.cbrt((4 * volumeL) / 1000 / (Math.PI * 1.33));
  return { widthM, heightM: 1.33 * widthM * 1.2 };
}

/** The part of a bottle that holds its litres: a cylinder 2.3 times as high as wide. @arithmetic V = π w² h / 4 */
export function bottleM(sizeL: number): SizeM {
  const widthM = Math.cbrt((4 * sizeL) / 1000 / (Math.PI * 2.3));
  return { widthM, heightM: 2.3 * widthM };
}

/** A watering can's body: a cylinder a tenth higher than wide. @arithmetic V = π w² h / 4 */
export function canM(volumeL: number): SizeM {
  const widthM = Math.cbrt((4 * volumeL) / 1000 / (Math.PI * 1.1));
  return { widthM, heightM: 1.1 * widthM };
}

/** Widest width and height of a vessel. */
export function vesselM(shape: VesselShape): SizeM {
  const radiusM = shape.rings.reduce((most, ring) => Math.max(most, ring.radiusM), 0);
  return { widthM: 2 * radiusM, heightM: shape.heightM };
}

/** One line of things that stand side by side in a width, with gaps that do not shrink. */
export interface Row {
  readonly things: readonly SizeM[];
  readonly widthPx: number;
  readonly gapPx: number;
}

export interface Scale {
  readonly denominator: number;
  readonly pxPerM: number;
}

/** The largest scale at which every row keeps within its width and height; the heap may be broken off. */
export function scaleFor(rows: readonly Row[], heap: Row, highPx: number): Scale & { readonly heapFits: boolean } {
  const fits = (n: number) => (row: Row) => {
    const pxPerM = PX_PER_M / n;
    const wide = row.things.reduce((total, { widthM }) => total + widthM * pxPerM + row.gapPx, -row.gapPx);
    return wide <= row.widthPx && row.things.every(({ heightM }) => heightM * pxPerM <= highPx);
  };
  const with_ = SCALES.find((n) => n <= SMALLEST_FOR_HEAP && [...rows, heap].every(fits(n)));
  const denominator = with_ ?? SCALES.find((n) => rows.every(fits(n))) ?? 100;
  return { denominator, pxPerM: PX_PER_M / denominator, heapFits: with_ !== undefined };
}

/** Where a strip stands, px. */
export interface StripAt {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const STRIP_GAP = 12;

/** Strips one after the other in walking order, a new row where one is full. */
export function walked(
  strips: readonly { readonly lengthM: number; readonly widthM: number }[],
  room: { readonly x: number; readonly y: number; readonly widthPx: number },
): { readonly at: readonly StripAt[]; readonly pxPerM: number; readonly bottom: number } {
  const longestM = strips.reduce((most, { lengthM }) => Math.max(most, lengthM), 0.1);
  const pxPerM = Math.min(40, (room.widthPx * 0.46) / longestM);
  const at: StripAt[] = [];
  let [x, y, high] = [room.x, room.y, 0];
  for (const strip of strips) {
    const width = Math.max(10, strip.lengthM * pxPerM);
    const height = Math.max(10, strip.widthM * pxPerM);
    if (x > room.x && x + width > room.x + room.widthPx) {
      x = room.x;
      y += high + STRIP_GAP;
      high = 0;
    }
    at.push({ x, y, width, height });
    x += width + STRIP_GAP;
    high = Math.max(high, height);
  }
  return { at, pxPerM, bottom: y + high };
}

/** A text in lines of at most so many letters; a longer word stands alone. */
export function wrapped(text: string, letters: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** A line through corners with a soft bend at each, as the flow is drawn. */
export function flowPath(corners: readonly (readonly [x: number, y: number])[]): string {
  return corners
    .map(([x, y], i) => {
      const [before, after] = [corners[i - 1], corners[i + 1]];
      if (before === undefined) return `M${n(x)} ${n(y)}`;
      if (after === undefined) return `L${n(x)} ${n(y)}`;
      const [a, b] = [towards([x, y], before), towards([x, y], after)];
      return `L${n(a[0])} ${n(a[1])}Q${n(x)} ${n(y)} ${n(b[0])} ${n(b[1])}`;
    })
    .join('');
}

const BEND = 9;

function towards([x, y]: readonly [number, number], [toX, toY]: readonly [number, number]): readonly [number, number] {
  const far = Math.hypot(toX - x, toY - y);
  const share = far === 0 ? 0 : Math.min(BEND, far / 2) / far;
  return [x + (toX - x) * share, y + (toY - y) * share];
}

function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}
