// How finely the plants are cut, and what that does to the model: finer pieces give up their sugar faster, and more of
// it. Where the sugar goes from there is rates.ts.

import { figures } from '../../tables/index.ts';

/** coarse = torn by hand or whole, over 3 cm · chopped = 1-3 cm, what the model's figures stand for · fine = under 5 mm */
export const CHOPS = ['coarse', 'chopped', 'fine'] as const;
export type Chop = (typeof CHOPS)[number];

/** Against chopped tissue: how fast sugar is let out, and how much of it bacteria reach. */
export interface ChopFactors {
  readonly releaseFactor: number;
  readonly accessFactor: number;
}

const TABLE = figures('chop');

/** What a size of pieces does. @memory a guess of data/chop.csv; no measured figure was found */
export function chopFactors(chop: Chop): ChopFactors {
  const row = TABLE.get(chop);
  if (row?.releaseFactor === undefined || row.accessFactor === undefined) {
    throw new Error(`data/chop.csv has no ${chop}`);
  }
  return { releaseFactor: row.releaseFactor.likely, accessFactor: row.accessFactor.likely };
}

/** Share of the tissue's sugar that is reached: the model's own share times the factor, never more than all. @arithmetic */
export function reachedFraction(accessFraction: number, chop: ChopFactors | undefined): number {
  return chop === undefined ? accessFraction : Math.min(1, accessFraction * chop.accessFactor);
}
