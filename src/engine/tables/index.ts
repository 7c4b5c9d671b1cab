// Typed access to the tables of data/: materials, sugars, sources, and any other long-form table by name.
// The generated module holds flat lists of numbers; this file is the only one that knows their order.
// What a material's figures become inside a batch stands in scraps/resolve.ts.

import * as made from './generated.ts';
import type { ExcludedRow, Figure, Figures, MaterialRow, SourceRow, SugarRow } from './types.ts';

export type { ExcludedRow, Figure, Figures, MaterialRow, SourceRow, SugarRow } from './types.ts';

function figuresOf(flat: readonly number[]): Figures {
  const figures: Partial<Record<string, Figure>> = {};
  for (let i = 0; i + 4 < flat.length; i += 5) {
    const [quantity = -1, low = NaN, likely = NaN, high = NaN, origin = -1] = flat.slice(i, i + 5);
    const [source = 'memory', mark = 'memory'] = (made.origins[origin] ?? '').split(' ');
    figures[made.quantities[quantity] ?? ''] = { low, likely, high, source, mark: mark as Figure['mark'] };
  }
  return figures;
}

/** Every material, in the order of data/materials.csv. */
export const materials: readonly MaterialRow[] = made.materials.map(
  ([id, name, group, into, why, whySource, flat]) => ({
    id,
    name,
    group,
    into: into as MaterialRow['into'],
    why,
    whySource,
    figures: figuresOf(flat),
  }),
);

/** Every sugar source, in the order of data/sugars.csv. */
export const sugars: readonly SugarRow[] = made.sugars.map(([id, name, flat]) => ({
  id,
  name,
  figures: figuresOf(flat),
}));

/** Every plant and plant disease that stays out of the pail, in the order of data/excluded.csv. */
export const excluded: readonly ExcludedRow[] = made.excluded.map(
  ([id = '', name = '', latin = '', part = '', group, into, why = '', source = '', mark]) => ({
    id,
    names: name.split(' / '),
    latin,
    part,
    group: group as ExcludedRow['group'],
    into: into as ExcludedRow['into'],
    why,
    source,
    mark: mark as ExcludedRow['mark'],
  }),
);

/** Every publication that a figure or a rule rests on. */
export const sources: readonly SourceRow[] = made.sources.map(([id, cite, mark]) => ({ id, cite, mark }));

const materialById = new Map(materials.map((row) => [row.id, row]));
const sugarById = new Map(sugars.map((row) => [row.id, row]));
const excludedById = new Map(excluded.map((row) => [row.id, row]));
const sourceById = new Map(sources.map((row) => [row.id, row]));

/** The material of this id, or undefined where the table has none. @arithmetic look-up */
export function material(id: string): MaterialRow | undefined {
  return materialById.get(id);
}

/** The plant or disease of this id that stays out, or undefined where the table has none. @arithmetic look-up */
export function excludedRow(id: string): ExcludedRow | undefined {
  return excludedById.get(id);
}

/** The sugar source of this id, or undefined where the table has none. @arithmetic look-up */
export function sugarRow(id: string): SugarRow | undefined {
  return sugarById.get(id);
}

const NO_SOURCE: Readonly<Record<string, string>> = {
  practice: 'common practice, no source',
  'our-caution': 'our caution, no source',
  memory: 'from memory, unverified',
};

/**
 * An origin as cited on a screen: author, year and title of a publication, or one of three honest marks.
 * @throws RangeError for an id that stands in no table: a fault of ours, never of the grower
 * @arithmetic look-up
 */
export function citation(origin: string): string {
  const plain = NO_SOURCE[origin];
  if (plain !== undefined) return plain;
  const row = sourceById.get(origin);
  if (row === undefined) throw new RangeError(`citation: "${origin}" is not an id of data/sources.csv`);
  return row.cite;
}

const otherTables = new Map(
  Object.entries(made.others).map(([name, rows]) => [name, new Map(rows.map(([id, flat]) => [id, figuresOf(flat)]))]),
);

/**
 * A long-form table by the name of its file, such as `salt-tolerance`: the figures of each id.
 * @throws RangeError for a table that data/ does not hold: a fault of ours
 * @arithmetic look-up
 */
export function figures(table: string): ReadonlyMap<string, Figures> {
  const found = otherTables.get(table);
  if (found === undefined) throw new RangeError(`figures: data/${table}.csv is not a table of figures`);
  return found;
}
