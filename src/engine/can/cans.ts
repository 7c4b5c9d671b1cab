// How many cans: the litres for an area at a depth, as full cans and one part-can, each with its concentrate.

/** One can as it is filled. */
export interface Can {
  readonly volumeL: number;
  readonly concentrateMl: number;
}

/** All cans for one bed. */
export interface Cans {
  readonly totalL: number;
  readonly concentrateL: number;
  readonly cans: readonly Can[];
}

/** A part-can of no more than this share of a can is rounding, not a can. */
const LEAST_PART_FRACTION = 1e-6;

/**
 * Litres for the whole area: area × depth, freed of the last digits of binary arithmetic.
 * @arithmetic
 */
export function litresFor(bed: { readonly areaM2: number; readonly depthLPerM2: number }): number {
  return Number((bed.areaM2 * bed.depthLPerM2).toPrecision(12));
}

/**
 * Full cans and the part-can that together hold area × depth.
 * @arithmetic whole division and remainder
 * @checked scenarios/case-30
 */
export function cansFor(bed: {
  readonly areaM2: number;
  readonly depthLPerM2: number;
  readonly canL: number;
  readonly concentrateFraction: number;
}): Cans {
  const totalL = litresFor(bed);
  const full = Math.floor(totalL / bed.canL + LEAST_PART_FRACTION);
  const restL = Number((totalL - full * bed.canL).toPrecision(12));
  const volumes = Array.from({ length: full }, () => bed.canL);
  if (restL > bed.canL * LEAST_PART_FRACTION) volumes.push(restL);
  return {
    totalL,
    concentrateL: totalL * bed.concentrateFraction,
    cans: volumes.map((volumeL) => ({ volumeL, concentrateMl: volumeL * 1000 * bed.concentrateFraction })),
  };
}
