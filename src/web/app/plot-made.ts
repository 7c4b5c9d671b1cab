// How the plot is made of the record: folded from its entries, then as it counts at a moment. Fetched once there is something
// to fold, so that the first screen of an empty record does not wait for it.

import type { Kept } from '#journal/entry.ts';
import { foldingInSteps, foldWhole } from '#journal/fold.ts';
import { MOST_FRESH } from '#journal/following.ts';
import { turns } from '#store/turns.ts';
import { counted } from '#tasks/plot/counted.ts';

/** Whether so many entries at once are folded anew with all the others: that is then done ahead. */
export const areMany = (count: number) => count > MOST_FRESH;

/** One fold for the life of a record, and what counts of its plot at a moment. */
export function plotMaker() {
  const steps = foldingInSteps();
  return {
    fold: (entries: readonly Kept[], plot: string) => foldWhole(steps(entries, plot)),
    counted,
    /** Folds ahead, so that `fold` of the same entries has it: in turns, between which the page draws and answers. */
    async ahead(entries: readonly Kept[], plot: string): Promise<void> {
      const turn = turns();
      for (const _ of steps(entries, plot)) await turn.next();
    },
  };
}

export type PlotMaker = ReturnType<typeof plotMaker>;
