// A vessel of the plot as every sheet draws it: its litres, and its shape from what the grower entered of it. Its name is
// never asked: a name is in any language.

import { type ShapeKind, shapeOfSizes, usualKind, type VesselShape, vesselShape } from '#engine/pail/shape.ts';
import { upToFillLineL } from '#engine/pail/volume.ts';
import type { VesselFacts } from '#journal/parts/described.ts';

/** A vessel as it is drawn. */
export interface Basin {
  readonly volumeL: number;
  readonly shape: VesselShape;
}

/** A vessel that nobody described is drawn as large as one that is filled up to its line. @practice */
const FILLED_FRACTION = upToFillLineL({ volumeL: 1, gasRoomFraction: undefined });
const LEAST_VESSEL_L = 1;

/** The kind that was chosen, else the usual one for its litres. @practice */
export function kindOf(volumeL: number, chosen: ShapeKind | undefined): ShapeKind {
  return chosen ?? usualKind(volumeL);
}

/** The shape of a vessel: from its own three sizes where they were entered, else of its kind. @practice */
export function basinOf(vessel: Omit<VesselFacts, 'id'> | undefined, presentL: number): Basin {
  const volumeL = vessel?.volume?.volumeL ?? Math.max(LEAST_VESSEL_L, presentL / FILLED_FRACTION);
  if (vessel?.shape !== undefined) return { volumeL, shape: shapeOfSizes(vessel.shape, volumeL) };
  return { volumeL, shape: vesselShape({ volumeL, shape: kindOf(volumeL, vessel?.drawnAs) }) };
}
