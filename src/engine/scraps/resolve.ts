// One lot of scraps with every figure in place: the table's figures, the grower's own analysis on top of
// them, and an open assumption where neither knows. What goes wrong with a material is judged in
// rules/scraps.ts; whether the input makes sense is checked before, in tasks/portion.ts.

import { asRange, point, type Range, range } from '../quantity/range.ts';
import { type Figure, type MaterialRow, material } from '../tables/index.ts';
import type { Assumed, Destination, Part, Portion, Treated } from './part.ts';

/** Assumed where neither the table nor the grower gives the figure; each is listed in the answer. */
export const ASSUMED: Readonly<Record<'bufferEqPerKgDmPerPh' | 'ph' | 'displacementLPerKg', Range>> = {
  /** Spans green leaves, roots and fruit. @memory */
  bufferEqPerKgDmPerPh: range(0.15, 0.28, 0.4),
  /** Fresh leaves and roots; fruit is more acid and has figures of its own. @memory */
  ph: range(5.5, 6.2, 6.5),
  /** Settled and soaked plant matter; on the first day it floats and takes more room. @memory */
  displacementLPerKg: range(0.95, 1, 1.05),
};

const ELEMENTS = ['nPercentDm', 'pPercentDm', 'kPercentDm', 'caPercentDm', 'mgPercentDm'] as const;
const OWN = ['dryMatter', 'sugarsGPerKgDm', 'bufferEqPerKgDmPerPh', 'ph', ...ELEMENTS, 'cn'] as const;
const STRICTNESS: readonly Destination[] = ['liquid', 'compost-only', 'set-aside', 'out'];
const UNNAMED = 'material without a name';

/** Parts of 1 kg straight from the table, one per material: made once, since a fit asks for them all the time. */
const ready = new Map<string, Part>();

/**
 * A lot with every figure in place. The grower's own analysis wins over the table; what neither gives is
 * assumed and listed in `assumed`; sugars that nobody knows count as none, which asks for more sugar and
 * never for less; an element that nobody knows is listed in `unknown` and stays absent.
 * @throws RangeError when the material is not in the table, or neither it nor the lot gives dry matter:
 *   tasks/portion.ts lets neither through
 * @memory the assumed figures; the table's figures name their own sources
 */
export function resolvePart(portion: Portion): Part {
  if (portion.material === undefined) return build(portion, undefined);
  if (hasOwn(portion)) return build(portion, row(portion.material));
  let base = ready.get(portion.material);
  if (base === undefined) {
    base = build({ material: portion.material, massKg: 1 }, row(portion.material));
    ready.set(portion.material, base);
  }
  return {
    ...base,
    name: portion.name || base.name,
    massKg: portion.massKg,
    into: stricter(base.into, portion.treated),
    ammoniaMolPerKgDm: portion.ammoniaMolPerKgDm ?? 0,
  };
}

function row(id: string): MaterialRow {
  const found = material(id);
  if (found === undefined) throw new RangeError(`resolvePart: "${id}" is not an id of data/materials.csv`);
  return found;
}

function hasOwn(portion: Portion): boolean {
  for (const field of OWN) if (portion[field] !== undefined) return true;
  return false;
}

/** Where a lot may go once the answer about weedkiller is known: never a softer place than before. */
function stricter(into: Destination, treated: Treated | undefined): Destination {
  const asked: Destination = treated === 'yes' ? 'out' : treated === 'unknown' ? 'set-aside' : 'liquid';
  return STRICTNESS.indexOf(asked) > STRICTNESS.indexOf(into) ? asked : into;
}

function build(portion: Portion, table: MaterialRow | undefined): Part {
  const name = portion.name || table?.name || UNNAMED;
  const assumed: Assumed[] = [];
  const assume = (field: string, value: Range, source: string): Range => {
    assumed.push({ field, material: name, value, source });
    return value;
  };
  const given = (field: (typeof OWN)[number]): Range | undefined => {
    const own = portion[field];
    return own === undefined ? plain(table?.figures[field]) : asRange(own);
  };
  const dryMatter = given('dryMatter');
  if (dryMatter === undefined) throw new RangeError(`resolvePart: ${name} has no dryMatter`);
  const elements: Partial<Record<(typeof ELEMENTS)[number] | 'cn', Range>> = {};
  const unknown: string[] = [];
  for (const element of ELEMENTS) {
    const known = given(element);
    if (known) elements[element] = known;
    else unknown.push(element);
  }
  const cn = given('cn');
  if (cn) elements.cn = cn;
  return {
    id: portion.material,
    name,
    massKg: portion.massKg,
    into: stricter(table?.into ?? 'liquid', portion.treated),
    dryMatter,
    sugarsGPerKgDm: given('sugarsGPerKgDm') ?? assume('sugarsGPerKgDm', point(0), 'our-caution'),
    bufferEqPerKgDmPerPh:
      given('bufferEqPerKgDmPerPh') ?? assume('bufferEqPerKgDmPerPh', ASSUMED.bufferEqPerKgDmPerPh, 'memory'),
    ph: given('ph') ?? assume('ph', ASSUMED.ph, 'memory'),
    ammoniaMolPerKgDm: portion.ammoniaMolPerKgDm ?? 0,
    displacementLPerKg:
      plain(table?.figures.displacementLPerKg) ?? assume('displacementLPerKg', ASSUMED.displacementLPerKg, 'memory'),
    ...elements,
    assumed,
    unknown,
  };
}

/** A table's figure as a plain band, without its source. */
function plain(figure: Figure | undefined): Range | undefined {
  return figure && { low: figure.low, likely: figure.likely, high: figure.high };
}
