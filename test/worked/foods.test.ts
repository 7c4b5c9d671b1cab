// Our figures of foods against arithmetic done here a second time, from the extract that test/published holds to the
// food table (longvah-2017, Indian Food Composition Tables).

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { material } from '#engine/tables/index.ts';

type Row = Readonly<Record<string, string>>;
const DATA = join(import.meta.dirname, '../../data');
const read = (path: string): readonly Row[] => parse(readFileSync(path, 'utf8'), { columns: true, bom: true });
const extract = read(join(DATA, 'foods.csv'));
const figures = read(join(DATA, 'food-figures.csv'));

describe('data/food-figures.csv', () => {
  const likely = (id: string, quantity: string) => {
    const row = figures.find((figure) => figure.id === id && figure.quantity === quantity);
    return row === undefined ? undefined : Number(row.likely);
  };
  const near = (id: string, quantity: string, expected: number) =>
    expect(Math.abs((likely(id, quantity) ?? NaN) / expected - 1), `${id} ${quantity}`).toBeLessThan(0.006);

  it.each(extract.map((row) => [row.material ?? '', row]))('%s follows from its row of the extract', (id, row) => {
    // Half of the third digit is at most 0.5 %: the figures are written with three digits.
    const per100 = (name: string) => Number(row[`${name}GPer100G`]);
    const dm = 100 - per100('water');
    const n = per100('protein') / 6.25;
    near(id, 'dryMatter', dm / 100);
    near(id, 'nPercentDm', (100 * n) / dm);
    near(id, 'cn', (dm - per100('ash')) / 1.8 / n);
    for (const [name, quantity, scale] of [
      ['freeSugars', 'sugarsGPerKgDm', 1000],
      ['p', 'pPercentDm', 100],
      ['k', 'kPercentDm', 100],
      ['ca', 'caPercentDm', 100],
      ['mg', 'mgPercentDm', 100],
    ] as const) {
      if (row[`${name}GPer100G`] === '') expect(likely(id, quantity)).toBeUndefined();
      else near(id, quantity, (scale * per100(name)) / dm);
    }
  });

  // A band reaches from the 10th to the 90th percentile of the table's own spread between regions (1.2816 standard
  // deviations), and at least as far as our allowance for other soils and trims; where the table gives no spread, further.
  const ALLOWED: Readonly<Record<string, readonly [spread: string, least: number, without: number]>> = {
    dryMatter: ['water', 0.08, 0.15],
    nPercentDm: ['protein', 0.15, 0.25],
    cn: ['protein', 0.15, 0.25],
    sugarsGPerKgDm: ['freeSugars', 0.4, 0.4],
    pPercentDm: ['p', 0.2, 0.3],
    kPercentDm: ['k', 0.2, 0.3],
    caPercentDm: ['ca', 0.2, 0.3],
    mgPercentDm: ['mg', 0.2, 0.3],
  };

  it.each(extract.map((row) => [row.material ?? '', row]))(
    '%s: bands follow from the spread in the food table',
    (id, row) => {
      for (const { quantity = '', low, likely: middle, high } of figures.filter((figure) => figure.id === id)) {
        const [name = '', least = Number.NaN, without = Number.NaN] = ALLOWED[quantity] ?? [];
        const spread = row[`${name}SdGPer100G`] ?? '';
        const over = name === 'water' ? 100 - Number(row.waterGPer100G) : Number(row[`${name}GPer100G`]);
        const width = spread === '' ? without : Math.max((1.2816 * Number(spread)) / over, least);
        const within = (end: string | undefined, wanted: number) =>
          expect(Math.abs(Number(end) / wanted - 1), `${id} ${quantity} ${end}`).toBeLessThan(0.012);
        within(low, Number(middle) / (1 + width));
        within(
          high,
          quantity === 'dryMatter' ? Math.min(1, Number(middle) * (1 + width)) : Number(middle) * (1 + width),
        );
      }
    },
  );

  it('holds no figure of a food that the extract does not have', () => {
    const known = new Set(extract.map((row) => row.material));
    expect(figures.filter((row) => !known.has(row.id)).map((row) => row.id)).toEqual([]);
  });

  it.each([
    // longvah-2017, C015 cabbage: water 91.85, protein 1.36, ash 0.67, free sugars 1.00 g per 100 g:
    // dry matter 8.15 %; N 1.36/6.25/8.15 = 2.67 %; C:N (8.15 - 0.67)/1.8/0.2176 = 19.1; sugars 123 g/kg.
    ['cabbage-leaves', { dryMatter: 0.0815, nPercentDm: 2.67, cn: 19.1, sugarsGPerKgDm: 123 }],
    // F002 carrot: water 87.69, protein 0.95, ash 1.16, free sugars 3.23: 12.31 %; 1.23 %; 40.8; 262 g/kg.
    ['carrot', { dryMatter: 0.1231, nPercentDm: 1.23, cn: 40.8, sugarsGPerKgDm: 262 }],
  ])('gives %s as worked by hand', (id, expected) => {
    for (const [quantity, value] of Object.entries(expected)) {
      expect(material(id)?.figures[quantity]?.likely ?? NaN, quantity).toBeCloseTo(
        value,
        value < 1 ? 3 : value < 10 ? 2 : 0,
      );
    }
  });
});
