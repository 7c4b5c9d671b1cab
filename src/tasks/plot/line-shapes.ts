// Sizes of what the line draws: the room that loose scraps take, and beds as strips in walking order. Where a size was not
// told, a usual one stands in and the strip says so.

import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Bed } from '#journal/parts/beds.ts';
import type { Lot } from '#journal/parts/stock.ts';
import { groundOf } from '#plot/place/ground.ts';
import { fedShare, isTrial } from './fed-area.ts';

/** Litres that loose scraps take as they lie. @memory bulk figures of the materials table; the assumed one where it has none */
export function volumeOfScrapsL(lots: readonly Lot[]): number {
  let volumeL = 0;
  for (const { act, leftKg } of lots) {
    const row = act.body.material === undefined ? undefined : material(act.body.material);
    const bulkKgPerM3 = row?.figures.bulkKgPerM3?.likely ?? LOOSE_KG_PER_M3;
    if (leftKg > 0) volumeL += (1000 * leftKg) / bulkKgPerM3;
  }
  return volumeL;
}

/** Bulk of scraps that the table does not have: that of fresh clippings. @memory */
const LOOSE_KG_PER_M3 = material('grass-clippings-fresh')?.figures.bulkKgPerM3?.likely ?? Number.NaN;

/** One bed as a strip, or a row of pots. */
export interface Strip {
  readonly id: string;
  readonly tag: string;
  readonly lengthM: number;
  readonly widthM: number;
  /** Whether its length was told, and not worked out from a usual width. */
  readonly lengthTold: boolean;
  /** Share of it that is fed, 0 to 1. */
  readonly fedFraction: number;
  readonly pots: number;
  /** Width of a pot as a share of the place it stands on. */
  readonly discFraction: number;
  readonly trial: boolean;
}

/** A bed of which neither area nor pots were entered. */
const NO_GROUND = { lengthM: 0, widthM: 0, lengthTold: false };

/** Beds in walking order; those without a place in it come last, in the order they were told. */
export function stripsOf(plot: Plot): readonly Strip[] {
  return standingBeds(plot).map((bed) => {
    const { facts } = bed;
    const { lengthM, widthM, lengthTold, pots } = groundOf(facts) ?? { ...NO_GROUND, pots: undefined };
    return {
      id: bed.id,
      tag: facts.tag ?? facts.name?.slice(0, 1) ?? '',
      ...{ lengthM, widthM, lengthTold },
      fedFraction: fedShare(bed),
      pots: pots?.count ?? 0,
      discFraction: pots?.discFraction ?? 1,
      trial: isTrial(plot, bed.id),
    };
  });
}

/** The beds that are still there, in walking order. */
export function standingBeds(plot: Plot): readonly Bed[] {
  const last = Number.MAX_SAFE_INTEGER;
  return [...plot.beds.values()]
    .filter(({ facts }) => facts.gone !== true)
    .sort((a, b) => (a.facts.walkingOrder ?? last) - (b.facts.walkingOrder ?? last));
}
