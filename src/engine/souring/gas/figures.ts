// The figures of gas (data/gas.csv), looked up by name: solubilities, limits for the air people breathe, what a
// lid lets in, what a foul batch may turn to gas. What is done with them stands in the files beside this one.

import { figures } from '../../tables/index.ts';
import type { Figure } from '../../tables/types.ts';

const TABLE = figures('gas');

/**
 * One figure of data/gas.csv.
 * @throws Error when the table lacks it: our own fault
 * @arithmetic look-up
 */
export function gasFigure(id: string, quantity: string): Figure {
  const found = TABLE.get(id)?.[quantity];
  if (found === undefined) throw new Error(`data/gas.csv has no ${id} ${quantity}`);
  return found;
}
