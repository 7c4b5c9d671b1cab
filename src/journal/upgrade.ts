// Old versions of a kind, lifted to the newest on reading. The stored entry stays as it was written; only what the
// fold works with is new. Each step goes from one version to the next, so that a body of any age takes the same road.

import type { Entry } from './entry.ts';
import { type KindTable, kinds } from './kinds/index.ts';

/**
 * The body of a checked entry in its kind's newest version.
 * @throws RangeError when a step is missing: the table of kinds is then at fault, not the entry
 */
export function newestBody(entry: Entry, table: KindTable = kinds): unknown {
  const kind = table[entry.kind];
  if (kind === undefined) throw new RangeError(`newestBody: ${entry.kind} is not in the table of kinds`);
  let body = entry.body;
  for (let v = entry.v; v < kind.v; v++) {
    const lift = kind.lift?.[v];
    if (lift === undefined) throw new RangeError(`newestBody: ${entry.kind} has no step from version ${v}`);
    body = lift(body);
  }
  return body;
}
