// The bottle's own figures (data/extraction.csv), looked up by name. Each carries its source and mark;
// what is done with them stands in the files beside this one.

import { figures } from '../tables/index.ts';
import type { Figure } from '../tables/types.ts';

const TABLE = figures('extraction');

/**
 * One figure of data/extraction.csv.
 * @throws Error when the table lacks it: our own fault
 * @arithmetic look-up
 */
export function bottleFigure(id: string, quantity: string): Figure {
  const found = TABLE.get(id)?.[quantity];
  if (found === undefined) throw new Error(`data/extraction.csv has no ${id} ${quantity}`);
  return found;
}
