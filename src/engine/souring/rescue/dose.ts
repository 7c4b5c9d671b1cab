// How much sugar or live starter a rescue may take: the room that is left under the most, whether sugar is what is
// missing at all, and litres of a good batch for the liquid there is.

import { pailFigure } from '../../pail/figures.ts';
import { sugarProduct } from '../../scraps/sugar.ts';
import type { Batch } from '../model/course.ts';
import type { Ensemble } from '../model/ensemble.ts';
import { type Mixture, STARTER_CELLS_G_PER_L } from '../model/mixture.ts';

/** Live starter, litres per litre of the liquid. @practice 5 %; 2 to 10 % is common */
const STARTER_SHARE = 0.05;
/** Sugar below this is as good as none. */
const USED_UP_G_PER_L = 0.5;
/** Below this room no addition is worth the weighing. */
const LEAST_ADDED_G_PER_L = 1;
/** Additions that are tried, the smallest that does it first. */
const TRIED_G_PER_L = [5, 10, 20] as const;

/** The pH a rescue is after. */
export const AFTER_PH = 4;

/** Most hexose added in all, g per litre of the liquid. @source utar-fermentation-2025 alcohol at day 90 of over-sugared batches */
export function mostHexoseGPerL(): number {
  return pailFigure('souring', 'mostHexoseGPerL').likely;
}

/** Hexose that may still be added, g per litre of the liquid: the most less all that was; 0 when not known. @arithmetic */
export function sugarRoomGPerL({ mixture, changes = [] }: Batch): number {
  const later = changes.reduce((sum, { addHexoseGPerL = 0 }) => sum + addHexoseGPerL, 0);
  const room = mostHexoseGPerL() - mixture.freeSugarGPerL - later;
  return room >= LEAST_ADDED_G_PER_L ? room : 0;
}

/** The amounts to try, never past the room. @arithmetic */
export function sugarSteps(roomGPerL: number): readonly number[] {
  if (!(roomGPerL > 0)) return [];
  return [...TRIED_G_PER_L.filter((step) => step < roomGPerL), roomGPerL];
}

/** Hexose of so many g per litre, weighed as white sugar, g. @arithmetic */
export function whiteSugarG(mixture: Mixture, hexoseGPerL: number): number {
  const perKg = sugarProduct('white-sugar')?.hexoseGPerKg.likely ?? Number.NaN;
  return (hexoseGPerL * mixture.liquidL * 1000) / perKg;
}

/**
 * Share of the draws in which sugar is what is missing: from today on the batch never passes the pH it is after, and
 * by the end its free and bound sugar is used up.
 * @arithmetic over the draws
 */
export function sugarMissingShare(ensemble: Ensemble): number {
  let share = 0;
  ensemble.members.forEach(({ run }, m) => {
    const last = run.points - 1;
    const left = (run.sugarGPerL[last] as number) + (run.boundGPerL[last] as number);
    const sour = run.ph.some((ph) => ph <= AFTER_PH);
    if (!sour && left < USED_UP_G_PER_L) share += ensemble.weights[m] as number;
  });
  return share;
}

/** Litres of a live good batch to add. @practice 5 % of the liquid */
export function starterL(mixture: Mixture): number {
  return STARTER_SHARE * mixture.liquidL;
}

/** Living cells such a starter brings, g per litre of the liquid. @memory cells of a good batch, mixture.ts */
export function starterGPerL(): number {
  return STARTER_SHARE * STARTER_CELLS_G_PER_L;
}
