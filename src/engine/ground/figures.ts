// The ground's own figures (data/crops.csv, data/soil-tests.csv, data/release.csv), looked up by name. Each carries its
// source and mark; what is done with them stands in the files beside this one.

import type { Range } from '../quantity/range.ts';
import { figures } from '../tables/index.ts';
import type { Figure, Figures } from '../tables/types.ts';

const RELEASE = figures('release');
const SOIL_TESTS = figures('soil-tests');

/**
 * One figure of data/release.csv.
 * @throws Error when the table lacks it: our own fault
 * @arithmetic look-up
 */
export function releaseFigure(id: string, quantity: string): Figure {
  return needed(RELEASE, 'release', id, quantity);
}

/**
 * One figure of data/soil-tests.csv.
 * @throws Error when the table lacks it: our own fault
 * @arithmetic look-up
 */
export function soilTestFigure(id: string, quantity: string): Figure {
  return needed(SOIL_TESTS, 'soil-tests', id, quantity);
}

/** All figures of one scale of data/soil-tests.csv; none where the table has no such scale. @arithmetic look-up */
export function soilTestFigures(id: string): Figures {
  return SOIL_TESTS.get(id) ?? {};
}

/** A table's figure as a plain band, without its source. @arithmetic */
export function plain({ low, likely, high }: Figure): Range {
  return { low, likely, high };
}

function needed(table: ReadonlyMap<string, Figures>, file: string, id: string, quantity: string): Figure {
  const found = table.get(id)?.[quantity];
  if (found === undefined) throw new Error(`data/${file}.csv has no ${id} ${quantity}`);
  return found;
}
