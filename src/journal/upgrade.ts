// Old versions of a kind, lifted to the newest on reading. The stored entry stays as it was written; only what the
// fold works with is new. Each step goes from one version to the next, so that a body of any age takes the same road.

import type { Entry } from './entry.ts';
import { type KindTable, kinds } from './kinds/index.ts';

/**
 * The body of a checked entry in its kind's newest version.
 * @throws RangeError when a step is missing: the table of kinds is then at fault, not the entry
 */
export function newestBody({ kind, v, body }: Entry, table: KindTable = kinds): unknown {
  return lifted(kind, v, body, table);
}

/** A body of some version in its kind's newest. */
export function lifted(kind: string, from: number, body: unknown, table: KindTable = kinds): unknown {
  const known = table[kind];
  if (known === undefined) throw new RangeError(`newestBody: ${kind} is not in the table of kinds`);
  let here = body;
  for (let v = from; v < known.v; v++) {
    const lift = known.lift?.[v];
    if (lift === undefined) throw new RangeError(`newestBody: ${kind} has no step from version ${v}`);
    here = lift(here);
  }
  return here;
}
