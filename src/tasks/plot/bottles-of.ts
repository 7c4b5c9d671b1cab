// The bottles of each batch, put together once for a plot: a sheet may ask for every batch of many years.

import type { Plot } from '#journal/fold.ts';
import type { Bottle } from '#journal/parts/bottles.ts';

const known = new WeakMap<Plot['bottles'], ReadonlyMap<string, readonly Bottle[]>>();
const NONE: readonly Bottle[] = [];

/** Every bottle of a batch, emptied ones too, in the order of the plot. */
export function bottlesOfBatch(plot: Plot, batch: string): readonly Bottle[] {
  const groups = known.get(plot.bottles) ?? groupsOf(plot.bottles);
  known.set(plot.bottles, groups);
  return groups.get(batch) ?? NONE;
}

function groupsOf(bottles: Plot['bottles']): ReadonlyMap<string, readonly Bottle[]> {
  const found = new Map<string, Bottle[]>();
  for (const bottle of bottles.values()) {
    const others = found.get(bottle.batch);
    if (others === undefined) found.set(bottle.batch, [bottle]);
    else others.push(bottle);
  }
  return found;
}
