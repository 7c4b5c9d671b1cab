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

/** What keeps a reader from finding a source that is said to be seen. A body or a journal that published it may stand for the author. */
function lacking({ id, author = '', title = '', publisher, locator, address, mark }: Row): readonly string[] {
  if (mark !== 'seen') return [];
  const nobody = author === '' || /^(author|article)s? not /i.test(author);
  const untitled = title === '' || /^article\b|title not in the copy seen/i.test(title);
  return [
    ...(nobody ? [`${id}: no author, nor a body or journal that published it`] : []),
    ...(untitled ? [`${id}: no title`] : []),
    ...(address === '' && (publisher === '' || locator === '') ? [`${id}: neither address nor place`] : []),
  ];
}

describe('a source', () => {
  it('said to be seen has an author or a body that published it, a title, and an address or a place', () => {
    expect(sources.flatMap(lacking)).toEqual([]);
    const whole = { id: 'x', author: 'Z', title: 'X', publisher: 'Y', locator: 'abstract', address: '', mark: 'seen' };
    expect(lacking(whole)).toEqual([]);
    expect(lacking({ ...whole, author: '', address: 'x.org' })).toHaveLength(1);
    expect(lacking({ ...whole, author: 'Author not given by the copy seen', address: 'x.org' })).toHaveLength(1);
    expect(lacking({ ...whole, title: 'Article 17 of volume 3' })).toHaveLength(1);
    expect(lacking({ ...whole, locator: '' })).toHaveLength(1);
    expect(lacking({ ...whole, locator: '', address: 'x.org' })).toEqual([]);
    expect(lacking({ ...whole, author: '', mark: 'memory' })).toEqual([]);
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
