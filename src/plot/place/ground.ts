// The ground that a bed or its pots take, as every sheet draws it: metres along and across, from what was entered.

import { usual } from '#engine/scraps/usual.ts';
import type { BedFacts } from '#journal/parts/described.ts';
import { potDiameterM } from './bed-area.ts';

/** Pots in rows, each on a square place of its own. */
export interface PotRows {
  readonly count: number;
  readonly diameterM: number;
  /** Width of a pot as a share of the place it stands on. */
  readonly discFraction: number;
  readonly columns: number;
}

/** The ground of one bed. */
export interface Ground {
  readonly lengthM: number;
  readonly widthM: number;
  /** Whether its length was entered, and not worked out from a usual width. */
  readonly lengthTold: boolean;
  readonly pots: PotRows | undefined;
}

/** Pots stand apart by so many of their widths, from middle to middle. @practice */
const POT_SPACING = 1.8;

/** The ground of a bed; undefined where neither its area nor its pots were entered. @arithmetic area over length */
export function groundOf({ area, lengthM, pots }: Omit<BedFacts, 'id'>): Ground | undefined {
  if (area !== undefined) {
    const long = lengthM ?? area.areaM2 / usual('bed.widthM').likely;
    return { lengthM: long, widthM: area.areaM2 / long, lengthTold: lengthM !== undefined, pots: undefined };
  }
  if (pots === undefined) return undefined;
  const { count } = pots;
  const diameterM = potDiameterM(pots.volumeL);
  const columns = Math.ceil(Math.sqrt(count));
  const placeM = diameterM * POT_SPACING;
  return {
    ...{ lengthM: placeM * columns, widthM: placeM * Math.ceil(count / columns), lengthTold: false },
    pots: { count, diameterM, discFraction: 1 / POT_SPACING, columns },
  };
}
