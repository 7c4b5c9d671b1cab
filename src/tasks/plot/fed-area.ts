// What of a bed is fed, as it is drawn: its share and its square metres; and whether it stands in a trial. What it gets in
// litres is round.ts.

import type { Plot } from '#journal/fold.ts';
import type { Bed } from '#journal/parts/beds.ts';

/** Square metres of a bed that are fed; pots have none. @arithmetic */
export function fedM2(bed: Bed): number {
  return (bed.facts.area?.areaM2 ?? 0) * fedShare(bed);
}

/**
 * Share of a bed that is fed: none where its telling says none, or while leaf is eaten raw from it and nothing was told;
 * the fed part where one was told; else all of it.
 */
export function fedShare({ facts, eaten }: Bed): number {
  if (facts.feed === 'none' || (facts.feed === undefined && eaten === 'raw-leaf')) return 0;
  const areaM2 = facts.area?.areaM2;
  if (areaM2 === undefined || facts.fedArea === undefined) return 1;
  return Math.min(1, facts.fedArea.areaM2 / areaM2);
}

/** Whether a bed stands in a trial. */
export function isTrial(plot: Plot, bed: string): boolean {
  return plot.trialsLaid.some(({ body }) => body.plots.some((one) => one.bed === bed));
}
