// Reads a published table of cases kept beside its test.

import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

/** Every row as a record of texts. */
export function rows(file: string): readonly Readonly<Record<string, string>>[] {
  return parse(readFileSync(new URL(file, import.meta.url), 'utf8'), { columns: true }) as Record<string, string>[];
}

/** A number of a row; an empty or crooked cell is our own fault. */
export function num(row: Readonly<Record<string, string>>, column: string): number {
  const value = Number(row[column]);
  if (row[column] === undefined || row[column] === '' || !Number.isFinite(value)) {
    throw new Error(`${column} is not a number in "${row.case}"`);
  }
  return value;
}
