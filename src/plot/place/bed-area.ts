// The square metres of a bed: as told, or for pots the ground inside their rims, from how many they are and what one
// holds. A bed of which neither is told has none.

import type { BedFacts } from '#journal/parts/described.ts';

/** Square metres of a bed and how they came about. */
export interface BedArea {
  readonly areaM2: number;
  /** Set where the area was reckoned from pots. */
  readonly pots: { readonly count: number; readonly volumeL: number; readonly diameterM: number } | undefined;
}

/**
 * Width of a round pot from its litres, as tall as it is wide.
 *
 *   d = (4 V / π)^(1/3)
 *
 * @practice a common pot is about as tall as it is wide
 */
export function potDiameterM(volumeL: number): number {
  return Math.cbrt((4 * volumeL) / 1000 / Math.PI);
}

/**
 * The area of a bed: as told, else of its pots, count · π d² / 4.
 * @returns undefined where neither is told, and for a bed that is gone
 * @arithmetic potDiameterM
 */
export function areaOf({ area, pots, gone }: BedFacts): BedArea | undefined {
  if (gone === true) return undefined;
  if (area !== undefined) return { areaM2: area.areaM2, pots: undefined };
  if (pots === undefined) return undefined;
  const diameterM = potDiameterM(pots.volumeL);
  return { areaM2: (pots.count * Math.PI * diameterM ** 2) / 4, pots: { ...pots, diameterM } };
}
