// The heap's own figures (data/heap.csv), looked up by name: target ranges, losses, the lines of the published rules.
// Each carries its source and mark; what is done with them stands in the files beside this one.

import { figures } from '../tables/index.ts';
import type { Figure } from '../tables/types.ts';

const TABLE = figures('heap');

/**
 * One figure of data/heap.csv.
 * @throws Error when the table lacks it: our own fault
 * @arithmetic look-up
 */
export function heapFigure(id: string, quantity: string): Figure {
  const found = TABLE.get(id)?.[quantity];
  if (found === undefined) throw new Error(`data/heap.csv has no ${id} ${quantity}`);
  return found;
}

/** A lower and an upper limit of one quantity. */
export interface Limits {
  readonly least: number;
  readonly most: number;
}

/** What a start mix and a working heap may be, and what they had better be. */
export interface Targets {
  readonly cn: Limits;
  readonly moisturePercent: Limits;
  readonly temperatureC: Limits;
}

function targets(id: 'acceptable' | 'preferred'): Targets {
  const at = (quantity: string) => heapFigure(id, quantity).likely;
  return {
    cn: { least: at('leastCn'), most: at('mostCn') },
    moisturePercent: { least: at('leastMoisturePercent'), most: at('mostMoisturePercent') },
    temperatureC: { least: at('leastC'), most: at('mostC') },
  };
}

/** The range within which a heap works. @source composting-handbook chapter 4 table 4.2 */
export const ACCEPTABLE: Targets = targets('acceptable');
/** The range it had better be in. @source composting-handbook chapter 4 table 4.2 */
export const PREFERRED: Targets = targets('preferred');

/** Whether a value lies within limits; what is no number lies outside. @arithmetic */
export function within(value: number, { least, most }: Limits): boolean {
  return value >= least && value <= most;
}
