// What to say when a batch is weighed in: overfilling, lifting, too little or too much sugar, more than the
// beds can use. What may go in at all is scraps.ts; lids are vessel.ts; water is water.ts.

import type { Fit } from '../pail/fit.ts';
import type { Vessel } from '../pail/recipe.ts';
import type { Rule } from './rule.ts';
import { MOST_LIFT_KG } from './vessel.ts';

export interface FitSituation {
  readonly fit: Fit;
  readonly vessel: Vessel;
  readonly sugarProduct: string;
  /** Mass of the product weighed in. */
  readonly addedKg: number;
}

/** Sugar is only judged when there is a plant to sour; a window that needs none is met by none. */
export const fitRules: readonly Rule<FitSituation>[] = [
  {
    id: 'past-the-fill-line',
    level: 'hold',
    source: 'practice',
    looksAt: 'volume of the recipe against the fill line',
    speaksFor: 'general',
    when: ({ fit }) => (fit.fill.fits ? false : { overL: fit.fill.overL, usableL: fit.fill.usableL }),
  },
  {
    id: 'mat-rises-over-the-rim',
    level: 'caution',
    source: 'memory',
    looksAt: 'how high the mat rises while it gasses, against the rim',
    speaksFor: 'general',
    when: ({ fit, vessel }) =>
      fit.lift.passesRim && fit.fill.fits
        ? { lowL: fit.lift.lowL, highL: fit.lift.highL, rimL: vessel.volumeL }
        : false,
  },
  {
    id: 'fill-it-where-it-stands',
    level: 'caution',
    source: 'practice',
    looksAt: 'mass of the filled vessel against what one person lifts',
    speaksFor: 'general',
    when: ({ fit }) => (fit.fill.massKg <= MOST_LIFT_KG ? false : { massKg: fit.fill.massKg, mostKg: MOST_LIFT_KG }),
  },
  {
    id: 'sugar-window-closed',
    level: 'caution',
    source: 'leibensperger-pitt-1988',
    locator: 'minimum sugar table',
    looksAt: 'whether any amount of the sugar is both enough and not too much',
    speaksFor: 'general',
    when: ({ fit: { sugar }, sugarProduct }) => {
      if (sugar.reach === 'margin') return false;
      const { low, high } = sugar.withoutMarginProductG;
      return {
        ...{ leastG: sugar.asProductG, mostG: sugar.mostProductG, product: sugarProduct },
        ...(sugar.reach === 'no margin' && { lowG: low, highG: high }),
      };
    },
  },
  {
    id: 'may-not-turn-sour',
    level: 'caution',
    source: 'leibensperger-pitt-1988',
    locator: 'minimum sugar table',
    looksAt: 'sugar weighed in against the least that sours the batch',
    speaksFor: 'general',
    when: ({ fit, sugarProduct }) =>
      fit.sugar.enough || fit.sugar.window === 'closed'
        ? false
        : { addedG: fit.sugar.addedHexoseG, leastProductG: fit.sugar.asProductG, product: sugarProduct },
  },
  {
    id: 'more-sugar-than-the-acid-uses',
    level: 'caution',
    source: 'utar-fermentation-2025',
    locator: 'alcohol at day 90',
    looksAt: 'sugar weighed in against the most that the acid uses',
    speaksFor: 'general',
    when: ({ fit, sugarProduct, addedKg }) =>
      fit.sugar.tooMuch
        ? { overG: addedKg * 1000 - fit.sugar.mostProductG, mostG: fit.sugar.mostProductG, product: sugarProduct }
        : false,
  },
  {
    id: 'more-than-the-beds-use',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'litres to be drained against what the beds named can take while it keeps',
    speaksFor: 'general',
    when: ({ fit }) => {
      const use = fit.use;
      if (!use || use.timesTooMuch <= TIMES_TOO_MUCH) return false;
      return { drainedL: use.drainedL.likely, usableL: use.usableL, times: use.timesTooMuch, shelfDays: use.shelfDays };
    },
  },
];

/** A batch twice what the beds can take is flagged; less may still be wanted as a reserve. */
const TIMES_TOO_MUCH = 2;
