// What is taken where nobody told (data/usual.csv): one figure each, with its source, for every room and sheet. An answer that used one
// lists it as assumed. What a lot of scraps lacks is resolve.ts.

import type { Range } from '../quantity/range.ts';
import { figures } from '../tables/index.ts';
import type { Figure } from '../tables/types.ts';
import type { Assumed } from './part.ts';

const TABLE = figures('usual');

/** What may be left untold, as `id.quantity` of the table. */
export type Untold =
  | 'vessel.gasRoomFraction'
  | 'water.alkalinityMeqPerL'
  | 'water.ph'
  | 'part.dryMatter'
  | 'dressing.dryMatter'
  | 'dressing.bulkKgPerM3'
  | 'bottle.temperatureC'
  | 'batch.days'
  | 'batch.finalPh'
  | 'batch.drainedFraction'
  | 'bed.widthM'
  | 'soil.temperatureC'
  | 'crop.seasonDays';

/**
 * The figure taken where nobody told it.
 * @throws Error when the table lacks it: our own fault
 * @arithmetic look-up; each figure names its own source
 */
export function usual(untold: Untold): Figure {
  const [id = '', quantity = ''] = untold.split('.');
  const found = TABLE.get(id)?.[quantity];
  if (found === undefined) throw new Error(`data/usual.csv has no ${untold}`);
  return found;
}

/** Its band alone. @arithmetic look-up */
export function usualBand(untold: Untold): Range {
  const { low, likely, high } = usual(untold);
  return { low, likely, high };
}

/** The same as an answer lists it: under the name of its field, and of what it belongs to. @arithmetic look-up */
export function assumedUsual(untold: Untold, named: Pick<Assumed, 'field' | 'material'>): Assumed {
  return { ...named, value: usualBand(untold), source: usual(untold).source };
}

/** What is counted of a water of which its alkalinity or its pH was not told. @arithmetic look-up */
export function assumedOfWater(water: {
  readonly alkalinityMeqPerL?: number | undefined;
  readonly ph?: number | undefined;
}): readonly Assumed[] {
  return [
    ...assumedOfAlkalinity(water.alkalinityMeqPerL),
    ...(water.ph === undefined ? [assumedUsual('water.ph', { field: 'ph', material: 'water' })] : []),
  ];
}

/** The same of the acid that it takes up. @arithmetic look-up */
export function assumedOfAlkalinity(alkalinityMeqPerL: number | undefined): readonly Assumed[] {
  if (alkalinityMeqPerL !== undefined) return [];
  return [assumedUsual('water.alkalinityMeqPerL', { field: 'alkalinityMeqPerL', material: 'water' })];
}
