// Sizes of what the line draws: a vessel's shape from what was told of it, the room that loose scraps take, and beds as
// strips in walking order. Where a size was not told, a usual one stands in and the strip says so.

import { type ShapeKind, type VesselShape, vesselShape } from '#engine/pail/shape.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Bed } from '#journal/parts/beds.ts';
import type { VesselFacts } from '#journal/parts/described.ts';
import type { Lot } from '#journal/parts/stock.ts';
import { potDiameterM } from '#plot/place/bed-area.ts';
import { fedShare, isTrial } from './line-round.ts';

/** A vessel as it is drawn. */
export interface Basin {
  readonly volumeL: number;
  readonly shape: VesselShape;
}

/** Up to this it is drawn as a pail, up to the next as a drum, above as a barrel. @practice */
const PAIL_UP_TO_L = 20;
const DRUM_UP_TO_L = 45;
/** A vessel that nobody described is drawn a third larger than what is in it. @practice */
const ROOM_OVER_CONTENTS = 4 / 3;
const LEAST_VESSEL_L = 1;

/** The shape of a vessel: from its own three sizes where they were told, else the usual one for its volume. */
export function basinOf(vessel: VesselFacts | undefined, presentL: number): Basin {
  const volumeL = vessel?.volume?.volumeL ?? Math.max(LEAST_VESSEL_L, presentL * ROOM_OVER_CONTENTS);
  const kind: ShapeKind = volumeL <= PAIL_UP_TO_L ? 'pail' : volumeL <= DRUM_UP_TO_L ? 'drum' : 'barrel';
  const told = vessel?.shape;
  if (told === undefined) return { volumeL, shape: vesselShape({ volumeL, shape: kind }) };
  const rings = [
    { heightM: 0, radiusM: told.bottomDiameterM / 2 },
    { heightM: told.heightM, radiusM: told.topDiameterM / 2 },
  ];
  return { volumeL, shape: { kind: 'pail', volumeL, heightM: told.heightM, rings } };
}

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

/** Width of a bed whose length was not told: what an arm reaches from both sides. @practice */
const USUAL_WIDTH_M = 1.2;
/** Pots stand apart by so many of their widths, from middle to middle. @practice */
const POT_SPACING = 1.8;

/** Beds in walking order; those without a place in it come last, in the order they were told. */
export function stripsOf(plot: Plot): readonly Strip[] {
  return standingBeds(plot).map((bed) => {
    const { facts } = bed;
    const pots = facts.pots?.count ?? 0;
    const areaM2 = facts.area?.areaM2;
    const shared = {
      id: bed.id,
      tag: facts.tag ?? facts.name?.slice(0, 1) ?? '',
      fedFraction: fedShare(bed),
      pots,
      discFraction: 1 / POT_SPACING,
      trial: isTrial(plot, bed.id),
    };
    if (areaM2 === undefined && facts.pots !== undefined) {
      const sideM = potDiameterM(facts.pots.volumeL);
      const columns = Math.ceil(Math.sqrt(pots));
      const placeM = sideM * POT_SPACING;
      return { ...shared, lengthM: placeM * columns, widthM: placeM * Math.ceil(pots / columns), lengthTold: false };
    }
    const lengthM = facts.lengthM ?? (areaM2 ?? 0) / USUAL_WIDTH_M;
    const widthM = facts.lengthM === undefined ? USUAL_WIDTH_M : (areaM2 ?? 0) / facts.lengthM;
    return { ...shared, lengthM, widthM, lengthTold: facts.lengthM !== undefined };
  });
}

/** The beds that are still there, in walking order. */
export function standingBeds(plot: Plot): readonly Bed[] {
  const last = Number.MAX_SAFE_INTEGER;
  return [...plot.beds.values()]
    .filter(({ facts }) => facts.gone !== true)
    .sort((a, b) => (a.facts.walkingOrder ?? last) - (b.facts.walkingOrder ?? last));
}
