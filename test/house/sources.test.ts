// The page of sources is current, and the tables the ground is summed by rest on what was seen published.

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { sourcesPage, tableCounts } from '../../scripts/sources.ts';
import { root } from './code.ts';

const LEAST_SHARE = 0.7;

describe('docs/sources.md', () => {
  it('is what the tables say; if not, run node --import tsx scripts/sources.ts', () => {
    expect(readFileSync(path.join(root, 'docs/sources.md'), 'utf8')).toBe(sourcesPage());
  });

  it('counts every figure under one mark', () => {
    for (const { table, figures, seen, derived, memory, practice } of tableCounts()) {
      expect(seen + derived + memory + practice, table).toBe(figures);
    }
  });
});

type Row = Readonly<Record<string, string>>;
const read = (file: string): readonly Row[] => parse(readFileSync(path.join(root, file), 'utf8'), { columns: true });
const sources = read('data/sources.csv');

/** What keeps a reader from finding a source that is said to be seen. */
function lacking({ id, author = '', title, publisher, locator, address, mark }: Row): readonly string[] {
  if (mark !== 'seen') return [];
  const nobody = author === '' || author.startsWith('Author not given');
  return [
    ...(title === '' ? [`${id}: no title`] : []),
    ...(nobody && address === '' ? [`${id}: no author, and no address of the copy seen`] : []),
    ...(address === '' && (publisher === '' || locator === '') ? [`${id}: neither address nor place`] : []),
  ];
}

describe('a source', () => {
  it('said to be seen has an author and a place, or the address of the copy that was seen', () => {
    expect(sources.flatMap(lacking)).toEqual([]);
    const bare = { id: 'x', author: '', title: 'X', publisher: 'Y', locator: 'abstract', address: '', mark: 'seen' };
    expect(lacking(bare)).toHaveLength(1);
    expect(lacking({ ...bare, author: 'Z', locator: '' })).toHaveLength(1);
    expect(lacking({ ...bare, author: 'Z' })).toEqual([]);
  });

  it('bears one mark everywhere: seen in every table, or from memory in every table', () => {
    const marks = new Map(sources.map(({ id, mark }) => [id, mark]));
    const tables = ['data', 'test/validation'].flatMap((folder) =>
      readdirSync(path.join(root, folder)).flatMap((name) => (name.endsWith('.csv') ? [`${folder}/${name}`] : [])),
    );
    let compared = 0;
    const split = tables.flatMap((table) =>
      read(table).flatMap(({ id, batch, source = '', mark = '' }) => {
        if (!marks.has(source) || (mark !== 'seen' && mark !== 'memory')) return [];
        compared += 1;
        return marks.get(source) === mark
          ? []
          : [`${table} ${id ?? batch}: ${source} is ${marks.get(source)}, not ${mark}`];
      }),
    );
    expect(split).toEqual([]);
    expect(compared).toBeGreaterThan(500);
  });
});

describe('the tables of crops, materials, soil tests and release', () => {
  it.each([
    [['crops.csv']],
    [['food-figures.csv', 'group-figures.csv', 'material-figures.csv']],
    [['soil-tests.csv']],
    [['release.csv']],
  ])('%j rest for at least 70 % of their figures on a source seen published', (tables) => {
    const found = tableCounts().filter(({ table }) => tables.includes(table));
    expect(found.length).toBe(tables.length);
    const sum = (of: 'figures' | 'onSeenSource') => found.reduce((total, one) => total + one[of], 0);
    expect(sum('onSeenSource') / sum('figures')).toBeGreaterThanOrEqual(LEAST_SHARE);
  });
});
