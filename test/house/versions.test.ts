// A figure never moves under an old version: the tables' digest is pinned with its number. Who changes a table adds a row
// to data/versions.json in the same commit; a changed formula is found by test/scenarios/answers-are-pinned.test.ts.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { isSameVersion, version } from '#engine/tables/version.ts';
import { isDate } from '#journal/moment.ts';
import { makeTables } from '../../scripts/tables.mjs';
import { digestOfLines, tablesDigest, versionsIn } from '../../scripts/versions.mjs';
import { root } from './code.ts';
import { type Row, rowFaults } from './versions.ts';

const DATA = path.join(root, 'data');
const rows = versionsIn(DATA) as readonly Row[];
const newest = rows.at(-1);
const { digest, versionText } = makeTables(DATA);

describe('data/versions.json', () => {
  it('has a row for the tables as they are: a changed table raises `tables` by one, with its date and digest', () => {
    expect({ digest: newest?.digest }).toEqual({ digest });
  });

  it('raises a number for whatever changed, names each change, and goes forward', () => {
    expect(rowFaults(rows)).toEqual([]);
    expect(rows.filter(({ on }) => !isDate(on))).toEqual([]);
  });

  it('is what the program says of itself', () => {
    const on = rows.find(({ tables }) => tables === newest?.tables)?.on;
    expect(version).toEqual({ tables: { number: newest?.tables, on, digest }, model: newest?.model });
    expect(versionText).toBe(readFileSync(path.join(root, 'src/engine/tables/made-version.ts'), 'utf8'));
  });
});

describe('the rule on versions', () => {
  const first: Row = { tables: 1, on: '2026-11-30', digest: 'aaaaaaaa', model: 1, answers: 'bbbbbbbb', why: 'First.' };
  const later: Row = { ...first, on: '2026-12-03', why: 'Later.' };
  it.each([
    ['a table moved under its old number', { ...later, digest: 'cccccccc', answers: 'dddddddd' }],
    ['a formula moved under its old number', { ...later, answers: 'dddddddd' }],
    ['nothing moved, and the number was raised', { ...later, tables: 2 }],
    ['a number was left out', { ...later, tables: 3, digest: 'cccccccc' }],
    ['the date goes back', { ...later, tables: 2, digest: 'cccccccc', on: '2026-11-29' }],
    ['nobody says why', { ...later, tables: 2, digest: 'cccccccc', why: '' }],
  ])('finds that %s', (_, row) => {
    expect(rowFaults([first, row])).toHaveLength(1);
  });
  it.each([
    ['a table that moved', { ...later, tables: 2, digest: 'cccccccc', answers: 'dddddddd' }],
    ['a table that moved no answer', { ...later, tables: 2, digest: 'cccccccc' }],
    ['a formula that moved', { ...later, model: 2, answers: 'dddddddd' }],
    ['both', { ...later, tables: 2, digest: 'cccccccc', model: 2, answers: 'dddddddd' }],
  ])('is content with %s', (_, row) => {
    expect(rowFaults([first, row])).toEqual([]);
  });
});

describe('the digests', () => {
  const table = {
    figures: [{ table: 'materials', id: 'nettle-tops', quantity: 'nPercentDm', numbers: [3, 4, 5] }],
    materials: [{ id: 'nettle-tops', name: 'nettle tops', group: 'leaves', into: 'liquid', why: '' }],
    sugars: [{ id: 'white-sugar', name: 'white sugar' }],
    excluded: [{ id: 'yew', name: 'yew', latin: 'Taxus', part: 'leaf', group: 'toxic', into: 'out', why: 'Poison.' }],
  };
  it('of the tables move with a figure, a name and a place, and with nothing that only explains', () => {
    const was = tablesDigest(table);
    expect(was).toMatch(/^[0-9a-f]{8}$/);
    const [figure] = table.figures;
    expect(tablesDigest({ ...table, figures: [{ ...figure, numbers: [3, 4, 5.1] }] })).not.toBe(was);
    expect(tablesDigest({ ...table, sugars: [{ id: 'white-sugar', name: 'sugar' }] })).not.toBe(was);
    expect(tablesDigest({ ...table, materials: [{ ...table.materials[0], into: 'out' }] })).not.toBe(was);
    expect(tablesDigest({ ...table, materials: [{ ...table.materials[0], why: 'Because.' }] })).toBe(was);
  });
  it('do not hang on the order of rows', () => {
    expect(digestOfLines(['a', 'b'])).toBe(digestOfLines(['b', 'a']));
  });
  it('tell two versions apart by tables or formulas', () => {
    expect(isSameVersion(version, { ...version })).toBe(true);
    expect(isSameVersion(version, { ...version, model: version.model + 1 })).toBe(false);
    expect(isSameVersion(version, { ...version, tables: { ...version.tables, digest: '00000000' } })).toBe(false);
  });
});
