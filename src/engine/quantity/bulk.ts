// From a jug or spoon to a scale: the mass of a product measured by volume. Only a named product has a mass
// per litre (its bulk), and packed and loose brown sugar differ by a quarter, so the answer is a band.

import { type Range, scale } from './range.ts';

/**
 * Mass of a product measured by jug or spoon.
 *
 *   m = V · bulk
 *
 * @returns kg
 * @arithmetic volume times mass per litre
 */
export function massFromVolume(measured: { readonly volumeL: number; readonly bulkKgPerL: Range }): Range {
  return scale(measured.bulkKgPerL, measured.volumeL);
}
