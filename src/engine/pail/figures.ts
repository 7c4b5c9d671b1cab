// The pail's own figures (data/pail.csv), looked up once. Each carries its source; see docs and workings.

import { figures } from '../tables/index.ts';
import type { Figure } from '../tables/types.ts';

const TABLE = figures('pail');

/**
 * One figure of data/pail.csv.
 * @throws Error when the table lacks it: our own fault
 * @arithmetic look-up
 */
export function pailFigure(id: string, quantity: string): Figure {
  const found = TABLE.get(id)?.[quantity];
  if (found === undefined) throw new Error(`data/pail.csv has no ${id} ${quantity}`);
  return found;
}
