// Compost of a heap of the record by what went into that heap: its nitrogen, potassium and C:N come before those of usual
// compost. Phosphorus is not followed through a heap, so that of usual compost stands.

import { contentPercentDm } from '#engine/heap/left.ts';
import type { Plot } from '#journal/fold.ts';
import type { DressingGiven } from '../ledger-supply.ts';
import { type HeapView, heapView } from './heap.ts';

/** What a dressing of it is; nothing where the heap is not known, or a row of it could not be counted. */
export function heapCompost(ask: {
  readonly plot: Plot;
  readonly heap: string;
  readonly today: string;
}): Partial<DressingGiven> {
  const view = heapView(ask);
  return view === undefined ? {} : compostOf(view);
}

/** The same of a heap as it stands; nothing where a row of it could not be counted. */
export function compostOf({ heap, left, notCounted }: HeapView): Partial<DressingGiven> {
  if (left?.cn === undefined || notCounted.length > 0) return {};
  const content = contentPercentDm(left);
  if (content === undefined) return {};
  return {
    material: 'finished-compost',
    name: heap,
    nPercentDm: content.n,
    cn: left.cn,
    ...(content.k && { kPercentDm: content.k }),
  };
}
