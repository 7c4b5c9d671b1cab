// How much of each element has left the plants for the liquid by a day, as a band. The share that is then
// drained off, and its ceiling, are worked out in liquid.ts.

import type { Element } from '../pail/recipe.ts';
import { product, type Range } from '../quantity/range.ts';
import type { Figure } from '../tables/types.ts';
import { bottleFigure } from './figures.ts';

/** A batch at or below pH 4.6 gives up less nitrogen than one above it. */
export type Ferment = 'acid' | 'foul';

/**
 * Whether the acid or the foul figures hold for this pH at straining.
 * @range a pH that is not known counts as foul: the wider figures
 * @source cfr-21-114 114.3, pH 4.6
 */
export function fermentAt(finalPh: number): Ferment {
  return finalPh <= bottleFigure('sour-limit', 'ph').likely ? 'acid' : 'foul';
}

/** When and how the batch was strained. */
export interface StrainedAt {
  readonly days: number;
  readonly finalPh: number;
}

/** The two figures of one element's release, for this batch. Only nitrogen has a row of its own above pH 4.6. @arithmetic look-up */
export function releaseFigures(
  element: Element,
  ferment: Ferment,
): { readonly finf: Figure; readonly kPerDay: Figure } {
  const id = element === 'n' && ferment === 'foul' ? 'n-foul' : element;
  return { finf: bottleFigure(id, 'finf'), kPerDay: bottleFigure(id, 'kPerDay') };
}

/**
 * Share of an element that the plants have given up by a day.
 *
 *   F(t) = Finf (1 − exp(−k t))
 *
 * The doubts of Finf and of k are taken as independent. Never falls with days, never reaches 1.
 * @range days 0 and up
 * @returns a share, 0-1
 * @source li-2014 potassium; @memory the other elements
 * @checked published/extraction.csv, worked/extraction.csv
 */
export function releasedFraction(element: Element, at: StrainedAt): Range {
  const { finf, kPerDay } = releaseFigures(element, fermentAt(at.finalPh));
  const released = (k: number) => -Math.expm1(-k * at.days);
  return product([
    finf,
    { low: released(kPerDay.low), likely: released(kPerDay.likely), high: released(kPerDay.high) },
  ]);
}

/**
 * Share of the dissolved nitrogen that is ammonium or nitrate: all that counts for conductivity.
 * @memory data/extraction.csv
 * @checked published/extraction.csv
 */
export function ammoniumFraction(finalPh: number): Range {
  const { low, likely, high } = bottleFigure(
    fermentAt(finalPh) === 'acid' ? 'ammonium' : 'ammonium-foul',
    'shareOfDissolvedN',
  );
  return { low, likely, high };
}
