// Bars to one scale: the sum of a straining, what closes a bed's gap, and a nutrient under its ceiling. Pixels only; the
// figures are the tasks'.

/** A stretch along a bar. */
export interface BarPiece {
  readonly x: number;
  readonly width: number;
}

/** Room at both ends of a bar of sums. */
const SUM_EDGE = 2;

/** Parts one behind the other on a bar on which all of it takes the whole width. @arithmetic */
export function sumPieces<Part extends { readonly massKg: number }>(
  parts: readonly Part[],
  bar: { readonly totalKg: number; readonly width: number },
): readonly (BarPiece & { readonly part: Part })[] {
  const pxPerKg = (bar.width - 2 * SUM_EDGE) / bar.totalKg;
  let x = SUM_EDGE;
  return parts.map((part) => {
    const from = x;
    x += part.massKg * pxPerKg;
    return { part, x: from, width: x - from };
  });
}

/** Room at both ends of a strip of gaps. */
const GAP_EDGE = 1;

/** A bed's gap as a strip, the widest gap of all beds over the whole width, and what closes it, up to the strip's end. */
export function gapStrip<Piece extends { readonly grams: number }>(
  gap: { readonly missingG: number; readonly pieces: readonly Piece[] },
  paper: { readonly widestG: number; readonly width: number },
): { readonly whole: BarPiece; readonly pieces: readonly (BarPiece & { readonly piece: Piece })[] } {
  const px = (grams: number) => (paper.widestG > 0 ? ((paper.width - 2 * GAP_EDGE) * grams) / paper.widestG : 0);
  let atG = 0;
  const pieces = gap.pieces.flatMap((piece) => {
    const fromG = atG;
    atG = Math.min(gap.missingG, atG + Math.max(0, piece.grams));
    return atG > fromG ? [{ piece, x: GAP_EDGE + px(fromG), width: px(atG - fromG) }] : [];
  });
  return { whole: { x: GAP_EDGE, width: px(gap.missingG) }, pieces };
}

/** Room left of nothing, and right of the ceiling's stroke. */
const CEILING_LEFT = 2;
const CEILING_RIGHT = 4;

/** Where a strength stands between nothing and its ceiling. @arithmetic */
export function underCeilingX(gPerL: number, paper: { readonly ceilingGPerL: number; readonly width: number }): number {
  return CEILING_LEFT + ((paper.width - CEILING_LEFT - CEILING_RIGHT) * gPerL) / paper.ceilingGPerL;
}
