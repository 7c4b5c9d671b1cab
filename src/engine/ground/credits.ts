// Nitrogen that is in the ground for a crop because of what grew there before: a crop of the year before, or a green
// manure nobody weighed. Figures of data/release.csv; residues of the same year stand with each crop in data/crops.csv.

import { point, type Range, scale } from '../quantity/range.ts';
import type { NamedCrop } from './crop-names.ts';
import { releaseFigure } from './figures.ts';
import type { Supply } from './supply.ts';

/** Which row of the table a crop of the year before falls under, by its id, or by its name where the table has none. */
const KINDS: Readonly<Record<string, readonly string[]>> = {
  'before-cabbage-kind': ['broccoli', 'brussels-sprouts', 'cabbage', 'cauliflower', 'kale', 'kohlrabi'],
  'before-grain-legume': ['pea', 'snap-bean', 'broad-bean'],
  'before-grass-clover': ['clover', 'red clover', 'white clover', 'lucerne', 'alfalfa', 'grass and clover', 'grass'],
};

/**
 * Least nitrogen that the crops of the year before leave, g/m², each on its share of the bed; undefined where none of
 * them falls under a row of the table.
 * @range the table gives the least that counts: the true figure may be higher, so the high end is twice that
 * @source duev-2017 appendix 4 table 7; @practice the high end
 */
export function yearBeforeNGPerM2(crops: readonly NamedCrop[]): Range | undefined {
  const least = crops.flatMap(({ id, names }) => {
    const row = Object.keys(KINDS).find((kind) => [id ?? '', ...names].some((name) => KINDS[kind]?.includes(name)));
    return row === undefined ? [] : [releaseFigure(row, 'nGPerM2').likely];
  });
  if (least.length === 0) return undefined;
  const sum = least.reduce((total, one) => total + one, 0) / crops.length;
  return { low: sum, likely: sum, high: 2 * sum };
}

/**
 * Nitrogen of a green manure dug in, g/m², where nobody weighed it.
 *
 * Killed by frost it leaves the low end; lived through the winter and dug in in spring, the likely value. A vigorous
 * legume sod is the high end of legumes, and of a crop nobody named.
 * @source duev-2017 appendix 4 table 7; uvm-nitrogen step 2 the high end of legumes
 */
export function greenManureNGPerM2(kind: 'legume' | 'other' | 'untold'): Range {
  const of = (row: string) => releaseFigure(row, 'nGPerM2').likely;
  if (kind === 'legume') {
    const low = Math.min(of('cover-legume-frosted'), of('cover-legume-autumn'));
    return { low, likely: of('cover-legume-spring'), high: of('legume-sod') };
  }
  const [low, likely] = [of('cover-other-frosted'), of('cover-other-spring')];
  return { low, likely, high: kind === 'untold' ? of('legume-sod') : likely };
}

/**
 * A green manure nobody weighed as a supply: it grew where it lies, so it brings no phosphorus or potassium from
 * elsewhere.
 * @arithmetic grams a square metre times area
 */
export function greenManureSupply(given: {
  readonly what: string;
  readonly day: number;
  readonly areaM2: number;
  readonly kind: 'legume' | 'other' | 'untold';
}): Supply {
  const n = scale(greenManureNGPerM2(given.kind), given.areaM2);
  return {
    kind: 'cover-crop',
    what: given.what,
    day: given.day,
    totalG: { n, p: point(0), k: point(0) },
    sharePercent: point(100),
    pace: 'fresh',
  };
}
