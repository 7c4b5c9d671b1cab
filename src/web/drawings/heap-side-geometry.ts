// Where the layers of a heap stand in its side view, and the points of its temperature curve. Pixels only.

/** One layer from the floor up: its height and the half widths at its foot and its top. */
export interface Layer {
  readonly bottomY: number;
  readonly topY: number;
  readonly bottomHalf: number;
  readonly topHalf: number;
}

/**
 * Layers of a heap with straight flanks, as thick as their share of the volume, the first put in lowest. A share is of
 * the drawn height: the picture tells rows from each other and is no survey.
 */
export function layersOf(
  litres: readonly number[],
  box: { readonly floorY: number; readonly height: number; readonly footHalf: number; readonly topHalf: number },
): readonly Layer[] {
  const total = litres.reduce((sum, one) => sum + one, 0);
  if (!(total > 0)) return [];
  const half = (share: number) => box.footHalf + (box.topHalf - box.footHalf) * share;
  let below = 0;
  return litres.map((one) => {
    const from = below / total;
    below += one;
    const to = below / total;
    return {
      bottomY: box.floorY - box.height * from,
      topY: box.floorY - box.height * to,
      bottomHalf: half(from),
      topHalf: half(to),
    };
  });
}

/** A layer as a closed path around a middle line. */
export function layerPath({ bottomY, topY, bottomHalf, topHalf }: Layer, middleX: number): string {
  const x = (value: number) => (middleX + value).toFixed(1);
  return `M${x(-bottomHalf)} ${bottomY.toFixed(1)}L${x(-topHalf)} ${topY.toFixed(1)}L${x(topHalf)} ${topY.toFixed(1)}L${x(bottomHalf)} ${bottomY.toFixed(1)}Z`;
}

/** Days across and degrees up, for a curve of so many days. */
export function heatScale(
  lastDay: number,
  box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
) {
  const MOST_C = 80;
  return {
    x: (day: number) => box.left + ((box.right - box.left) * day) / Math.max(1, lastDay),
    y: (temperatureC: number) =>
      box.bottom - ((box.bottom - box.top) * Math.min(MOST_C, Math.max(0, temperatureC))) / MOST_C,
  };
}
