// Every limit, wait, hold, line and threshold stands in the table of docs/rules.md and is held by a test of its name.

import { describe, expect, it } from 'vitest';
import { figures } from '#engine/tables/index.ts';
import { figureOf, valuesPart } from '../values/report.ts';
import { values } from '../values/values.ts';
import { codeUnder } from './code.ts';
import { literalsOf } from './literals.ts';
import { NO_VALUES, unheldIn, VALUE_FILES, VALUE_TABLES } from './values.ts';

const held = new Set(values.map(({ at }) => at));
const inRooms = (file: string) => file.replace('src/engine/', '');
const files = codeUnder('src/engine').filter(({ file }) => VALUE_FILES.some((one) => one.test(inRooms(file))));

describe('the safety values', () => {
  it('are looked for in every file that was named', () => {
    for (const pattern of VALUE_FILES) expect(files.some(({ file }) => pattern.test(inRooms(file)))).toBe(true);
  });

  it('are all held: no number of those files is without a test or a reason', () => {
    expect(files.flatMap((source) => unheldIn(source, held))).toEqual([]);
  });

  it('are all held in the tables too', () => {
    const rows = VALUE_TABLES.flatMap(([table, pattern]) =>
      [...figures(table)].flatMap(([id, row]) =>
        pattern.test(id) ? Object.keys(row).map((quantity) => `data/${table}.csv ${id}.${quantity}`) : [],
      ),
    );
    const known = [...held].map((at) => at.replace(/ (low|likely|high)$/, ''));
    expect(rows.filter((row) => !known.includes(row))).toEqual([]);
  });

  it('give as source what the table gives', () => {
    const others = values.flatMap(({ at, source }) => {
      const told = figureOf(at)?.source;
      return told === undefined || told === source ? [] : [`${at}: ${told}, not ${source}`];
    });
    expect(others).toEqual([]);
  });

  it('have a name each', () => {
    expect(new Set(values.map(({ name }) => name)).size).toBe(values.length);
  });

  it('stand in the page with the test of their name', () => {
    const page = valuesPart();
    for (const { name } of values) expect(page.filter((line) => line.startsWith(`| ${name} |`))).toHaveLength(1);
  });

  it('are not excused where there is nothing to excuse', () => {
    const there = files.flatMap((source) => literalsOf(source).map(({ name }) => `${inRooms(source.file)} ${name}`));
    expect(Object.keys(NO_VALUES).filter((at) => !there.includes(at) || held.has(at))).toEqual([]);
  });
});

describe('the search for values', () => {
  const planted = (text: string) => ({ file: 'src/engine/rules/planted.ts', text });
  const HELD = new Set(['rules/planted.ts LIMIT.low']);

  it('finds a limit that nobody holds, in a constant and in a condition', () => {
    expect(unheldIn(planted('const LIMIT = { low: 1, high: 3 };'), HELD)).toEqual(['rules/planted.ts LIMIT.high']);
    expect(unheldIn(planted('const r = { when: (x) => x > 2.5 };'), HELD)).toEqual(['rules/planted.ts r.when']);
    expect(unheldIn(planted("const rules = [{ id: 'salt', when: (x) => x > 7 }];"), HELD)).toEqual([
      'rules/planted.ts rules.salt.when',
    ]);
  });

  it('is content with what is held, and with what only counts', () => {
    expect(unheldIn(planted('const LIMIT = { low: 1 };'), HELD)).toEqual([]);
    expect(unheldIn(planted('function last(a) { return a[a.length - 1] ?? 0; }'), HELD)).toEqual([]);
  });

  it('tells two numbers of one function apart', () => {
    const found = literalsOf(planted('function line(t) { return t > 20 ? 3 : [4, 5]; }'));
    expect(found.map(({ name }) => name)).toEqual(['line#1', 'line#2', 'line.0', 'line.1']);
  });
});
