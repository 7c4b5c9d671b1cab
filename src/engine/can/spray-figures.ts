// The figures of spraying, of pouring by the hour and of the germination test (data/spray.csv), looked up by name.
// Each carries its source and mark; what is done with them stands in spray-window.ts and germination.ts.

import { figures } from '../tables/index.ts';
import type { Figure } from '../tables/types.ts';

const TABLE = figures('spray');

/**
 * One figure of data/spray.csv.
 * @throws Error when the table lacks it: our own fault
 * @arithmetic look-up
 */
export function sprayFigure(id: string, quantity: string): Figure {
  const found = TABLE.get(id)?.[quantity];
  if (found === undefined) throw new Error(`data/spray.csv has no ${id} ${quantity}`);
  return found;
}
