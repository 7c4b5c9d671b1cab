// What the tables know by name, for help and for pick lists: materials and where each may go, sugars, and the
// full text of a source. The figures themselves stay with the engine.

import { citation, materials, sugars } from '#engine/tables/index.ts';
import type { MaterialRow } from '#engine/tables/types.ts';

/** One material: its id, its name, where it may go and, where that is not everywhere, why. */
export interface MaterialEntry {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  readonly into: MaterialRow['into'];
  readonly why: string;
  /** Source of the why, as cited; '' where there is none to give. */
  readonly source: string;
}

/** Every material, in the order of its table. */
export function materialList(): readonly MaterialEntry[] {
  return materials.map(({ id, name, group, into, why, whySource }) => ({
    id,
    name,
    group,
    into,
    why,
    source: why === '' ? '' : citation(whySource),
  }));
}

/** Every sugar source, in the order of its table. */
export function sugarList(): readonly { readonly id: string; readonly name: string }[] {
  return sugars.map(({ id, name }) => ({ id, name }));
}

/** A source as cited on a screen. */
export function cite(origin: string): string {
  return citation(origin);
}
