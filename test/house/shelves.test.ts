// Two shelves of expected numbers, kept apart: what was seen in a publication, and what we worked out or recall.

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { root } from './code.ts';

type Row = Readonly<Record<string, string>>;

/** Every row of the tables of a folder that bear marks, with its table. */
function marked(folder: string): readonly { readonly at: string; readonly mark: string; readonly locator: string }[] {
  const tables = readdirSync(path.join(root, folder)).filter((name) => name.endsWith('.csv'));
  return tables.flatMap((table) => {
    const rows: Row[] = parse(readFileSync(path.join(root, folder, table), 'utf8'), { columns: true });
    return rows.flatMap(({ case: name = '', mark, locator = '' }) =>
      mark === undefined ? [] : [{ at: `${table}: ${name}`, mark, locator }],
    );
  });
}

describe('the shelves of expected numbers', () => {
  it('hold in test/published what was seen in a publication, and nothing else', () => {
    const rows = marked('test/published');
    expect(rows.length).toBeGreaterThan(100);
    expect(rows.filter(({ mark }) => mark !== 'seen')).toEqual([]);
  });

  it('hold no row in test/published whose source is not one that was seen, nor one without a place', () => {
    const sources: Row[] = parse(readFileSync(path.join(root, 'data/sources.csv'), 'utf8'), { columns: true });
    const recalled = new Set(sources.flatMap(({ id = '', mark }) => (mark === 'seen' ? [] : [id])));
    const rows = marked('test/published');
    expect(rows.filter(({ locator }) => locator === '')).toEqual([]);
    const ids = (locator: string) => locator.match(/[a-z0-9]+(-[a-z0-9]+)+/g) ?? [];
    expect(rows.filter(({ locator }) => ids(locator).some((id) => recalled.has(id)))).toEqual([]);
  });

  it('are not mixed: a test of test/published asks for no row of test/worked', () => {
    const tests = readdirSync(path.join(root, 'test/published')).filter((name) => name.endsWith('.test.ts'));
    expect(tests.length).toBeGreaterThan(10);
    const mixed = tests.filter((name) =>
      /\bworked\(/.test(readFileSync(path.join(root, 'test/published', name), 'utf8')),
    );
    expect(mixed).toEqual([]);
  });

  it('are read whole: no table lies there unread', () => {
    const texts = ['published', 'worked'].flatMap((at) =>
      readdirSync(path.join(root, 'test', at))
        .filter((name) => name.endsWith('.test.ts'))
        .map((name) => readFileSync(path.join(root, 'test', at, name), 'utf8')),
    );
    const all = texts.join('\n');
    const unread = ['published', 'worked'].flatMap((at) =>
      readdirSync(path.join(root, 'test', at))
        .filter((name) => name.endsWith('.csv'))
        .filter((name) => !all.includes(`${at}('${name}')`) && !all.includes(`new URL('${name}'`))
        .map((name) => `${at}/${name}`),
    );
    expect(unread).toEqual([]);
  });

  it('hold in test/worked what was worked out or is recalled, and nothing that was seen', () => {
    const rows = marked('test/worked');
    expect(rows.length).toBeGreaterThan(60);
    expect(rows.filter(({ mark }) => mark !== 'derived' && mark !== 'memory')).toEqual([]);
  });

  it('stand where a docstring says that its function was checked', () => {
    const tags = readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .flatMap((name) => {
        const text = readFileSync(path.join(root, 'src', name), 'utf8');
        return [...text.matchAll(/@checked ([^@\n*]+)/g)].flatMap(([, list = '']) =>
          [...list.matchAll(/(?:published|worked)\/[\w.-]+/g)].map(([file]) => file),
        );
      });
    expect(tags.length).toBeGreaterThan(20);
    const there = new Set(
      ['published', 'worked'].flatMap((at) => readdirSync(path.join(root, 'test', at)).map((name) => `${at}/${name}`)),
    );
    expect(tags.filter((file) => !there.has(file))).toEqual([]);
  });
});
