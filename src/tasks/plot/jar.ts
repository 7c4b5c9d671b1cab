// A jar with no peg: never a dose. What is said of it is what the can card says of any batch without a peg; what can be
// done with it is the heap, and that is an act.

import type { KeptVolume } from '#engine/quantity/kept.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { can } from '../can.ts';
import type { Caution } from '../caution.ts';

/** What stands in the record for such a jar. */
export const JAR_NAME = 'jar without a peg';
const USUAL_HEAP = 'the heap';

export interface JarAnswer {
  /** Never any: kept as a field so that whoever asks for a dose is told that there is none. */
  readonly doseMl: undefined;
  readonly stops: readonly Caution[];
  /** The heap fed last, or 'the heap'. */
  readonly heap: string;
}

/** What there is to know of a jar with no peg on this plot. */
export function unknownJar({ plot }: { readonly plot: Plot }): JarAnswer {
  const asked = can({ batch: {}, ratio: { n: 200, reading: 'in' }, canL: 10 });
  if (!asked.ok) throw new Error('unknownJar: the can card cannot be asked about a jar without a peg');
  // The reason that it has no peg comes before all others, which follow from it.
  const first = (rule: string) => (rule === 'batch-no-peg' ? 0 : 1);
  const stops = asked.value.cautions
    .filter(({ level }) => level === 'stop')
    .sort((a, b) => first(a.rule) - first(b.rule));
  if (stops.length === 0 || asked.value.perCan !== undefined)
    throw new Error('unknownJar: a jar without a peg got a dose');
  return { doseMl: undefined, stops, heap: plot.heapFed.at(-1)?.body.heap ?? USUAL_HEAP };
}

/** The act of putting it on the heap. */
export function jarToHeap(ask: {
  readonly heap: string;
  readonly volume: KeptVolume;
  readonly note?: string | undefined;
}): Body<'heap.fed'> {
  return {
    heap: ask.heap,
    ingredients: [{ name: JAR_NAME, amount: ask.volume }],
    ...(ask.note !== undefined && ask.note !== '' && { note: ask.note }),
  };
}
