// How the plot is made of the record: folded from its entries, then as it counts at a moment. Fetched once there is something
// to fold, so that the first screen of an empty record does not wait for it.

import { folding } from '#journal/fold.ts';
import { counted } from '#tasks/plot/counted.ts';

/** One fold for the life of a record, and what counts of its plot at a moment. */
export function plotMaker() {
  return { fold: folding(), counted };
}

export type PlotMaker = ReturnType<typeof plotMaker>;
