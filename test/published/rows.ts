// Reads a table of cases by its name. Two shelves hold them: test/published what was seen in a publication, test/worked
// what we worked out by hand, with another program, or recall. A test asks for a table and gets the rows of both.

import { existsSync, readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

type Row = Readonly<Record<string, string>>;

const SHELVES = ['../published/', '../worked/'];

/** Every row as a record of texts, those that were seen first; a table on neither shelf is our own fault. */
export function rows(file: string): readonly Row[] {
  const found = SHELVES.map((shelf) => new URL(shelf + file, import.meta.url)).filter((at) => existsSync(at));
  if (found.length === 0) throw new Error(`neither shelf holds ${file}`);
  return found.flatMap((at) => parse(readFileSync(at, 'utf8'), { columns: true }) as Row[]);
}

/** A number of a row; an empty or crooked cell is our own fault. */
export function num(row: Row, column: string): number {
  const value = Number(row[column]);
  if (row[column] === undefined || row[column] === '' || !Number.isFinite(value)) {
    throw new Error(`${column} is not a number in "${row.case}"`);
  }
  return value;
}
