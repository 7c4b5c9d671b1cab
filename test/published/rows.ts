// Reads a table of cases from one of two shelves: test/published holds what was seen in a publication, test/worked what
// we worked out by hand, with another program, or recall. A test of test/published asks that shelf alone.

import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

export type Row = Readonly<Record<string, string>>;

function rowsOf(shelf: 'published' | 'worked', file: string): readonly Row[] {
  return parse(readFileSync(new URL(`../${shelf}/${file}`, import.meta.url), 'utf8'), { columns: true });
}

/** Rows seen in a publication, as records of texts. */
export const published = (file: string): readonly Row[] => rowsOf('published', file);

/** Rows worked out or recalled, as records of texts. */
export const worked = (file: string): readonly Row[] => rowsOf('worked', file);

/** The row with this name in a column; a name that is not there is our own fault. */
export function rowBy(rows: readonly Row[], column: string): (name: string) => Row {
  const named = new Map(rows.map((row) => [row[column], row]));
  return (name) => {
    const row = named.get(name);
    if (row === undefined) throw new Error(`no row has "${name}" as its ${column}`);
    return row;
  };
}

/** A number of a row; an empty or crooked cell is our own fault. */
export function num(row: Row, column: string): number {
  const value = Number(row[column]);
  if (row[column] === undefined || row[column] === '' || !Number.isFinite(value)) {
    throw new Error(`${column} is not a number in "${row.case}"`);
  }
  return value;
}
