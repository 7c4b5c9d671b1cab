// How often the air of a shed or cupboard is renewed, guessed from a word. Who can measure it tells the number instead;
// what it means for the air people breathe is room.ts.

import { gasFigure } from './figures.ts';

/** shut = no draught to be felt · draughty = gaps all round · open = a door or window stands open */
export const AIRINGS = ['shut', 'draughty', 'open'] as const;
export type Airing = (typeof AIRINGS)[number];

/** Changes of air an hour to count with: the low end, so that gas is rather over- than under-counted. @memory a guess of data/gas.csv */
export function airChangesPerH(airing: Airing): number {
  return gasFigure(`air-${airing}`, 'airChangesPerH').low;
}
