import { describe, expect, it } from 'vitest';
import { version } from '#engine/tables/version.ts';
import { kg, litres, recorder } from '../../test/scenarios/recorder.ts';
import type { Kept } from './entry.ts';
import { importLines } from './file-reader.ts';
import { MOST_LINE_SIGNS } from './line-text.ts';
import { exportLines } from './lines.ts';
import { readLine } from './read.ts';

type Import = ReturnType<typeof importLines>;

const rake = recorder();
const lot = rake.did('scraps.weighed', '2026-06-01', { name: 'leaves\n"and" \u2028 <b>', mass: kg(2) });
const filled = rake.did('peg.filled', '2026-06-01', { peg: 14, water: [{ volume: litres(5) }] });
const nothing = () => undefined;
const having = (...kept: readonly Kept[]) => {
  const byId = new Map(kept.map((one) => [one.id, one]));
  return (id: string) => byId.get(id);
};
const taken = (read: Import) => (read.ok ? read : Promise.reject(new Error(JSON.stringify(read.refused))));
const refusedLines = (read: Import) => (read.ok ? [] : read.refused.map(({ line }) => line));

// A line as another program might write it: own spacing, long numbers, fields this program would order otherwise.
const strange = `{"v" : 1, "kind":"moon.watched","on":"2026-06-02","at":"2026-06-02T20:00:00.000Z","device":"d","by":"Fork","plot":"sedge-corner","id":"017f22e2-79b0-7cc3-98c4-dc0c0c07398f","body":{"phase":1.0,"long":12345678901234567890,"e":1E3,"__proto__":{"x":1},"a":"\\u00e9"}}`;

describe('a file of the record', () => {
  it('begins with a header that names format, version, plot and count', () => {
    const [header = ''] = exportLines([lot, filled]).split('\n');
    expect(JSON.parse(header)).toMatchObject({ format: 'tilthwright-journal', v: 1, plot: 'sedge-corner', count: 2 });
  });
  it('names the tables and formulas of the program that made it, and is read whatever it names', async () => {
    const [header = '', ...rest] = exportLines([lot]).split('\n');
    expect(JSON.parse(header)).toMatchObject({ tables: version.tables, model: version.model });
    for (const odd of [
      { tables: undefined, model: undefined },
      { tables: 'none', model: -1 },
    ]) {
      const file = [JSON.stringify({ ...JSON.parse(header), ...odd }), ...rest].join('\n');
      expect((await taken(importLines(file, nothing))).fresh).toEqual([lot]);
    }
  });
  it('comes back whole', async () => {
    const read = await taken(importLines(exportLines([filled, lot]), nothing));
    expect(read.fresh).toEqual([lot, filled]);
    expect(exportLines(read.fresh)).toBe(exportLines([lot, filled]));
  });
  it('changes nothing the second time', async () => {
    const read = await taken(importLines(exportLines([lot, filled]), having(lot, filled)));
    expect([read.fresh, read.alreadyCount]).toEqual([[], 2]);
  });
  it('knows the same entry with its fields in another order', async () => {
    const { id, body, ...rest } = lot;
    const file = exportLines([lot]).replace(JSON.stringify(lot), JSON.stringify({ body, ...rest, id }));
    expect((await taken(importLines(file, having(lot)))).alreadyCount).toBe(1);
  });
  it('passes on what it cannot read, to the letter', async () => {
    const file = exportLines([lot]).replace('"count":1', '"count":2') + strange;
    const read = await taken(importLines(file, nothing));
    expect(read.sealedCount).toBe(1);
    expect(exportLines(read.fresh).split('\n')).toContain(strange);
    const again = await taken(importLines(exportLines(read.fresh), having(...read.fresh)));
    expect([again.fresh, again.alreadyCount]).toEqual([[], 2]);
  });
  it('is read with other line ends, a byte order mark and empty lines', async () => {
    const file = `\uFEFF${exportLines([lot, filled]).replaceAll('\n', '\r\n')}\r\n\r\n`;
    expect((await taken(importLines(file, nothing))).fresh).toEqual([lot, filled]);
  });
  it('carries photos after the entries', async () => {
    const photo = { photo: filled.id, type: 'image/jpeg', base64: '/9j/4A==' } as const;
    const read = await taken(importLines(exportLines([lot], [photo]), nothing));
    expect([read.header.photos, read.photos, read.fresh]).toEqual([1, [photo], [lot]]);
  });
  it('of nothing is read as nothing', async () => {
    expect((await taken(importLines(exportLines([]), nothing))).fresh).toEqual([]);
  });
});

describe('a file that is refused', () => {
  const good = exportLines([lot, filled]);
  it('names every refused line and takes in none of the others', () => {
    const lines = good.split('\n');
    const bad = JSON.stringify({ ...lot, on: '2026-02-30' });
    const file = [lines[0], lines[1], bad, '{"cut', lines[2]].join('\n');
    const read = importLines(file, nothing);
    expect(refusedLines(read)).toEqual([3, 4]);
    expect(read.ok || read.refused[0]?.problems).toMatchObject([{ field: 'on', value: '2026-02-30' }]);
    expect('fresh' in read).toBe(false);
  });
  it('has another content under a known id', () => {
    const other = { ...lot, on: '2026-06-05' };
    expect(refusedLines(importLines(good, having(other)))).toEqual([2]);
    const twice = good.replace('"count":2', '"count":3') + JSON.stringify(other);
    expect(refusedLines(importLines(twice, nothing))).toEqual([4]);
  });
  it.each([
    ['nothing at all', '', 1],
    ['no header', JSON.stringify(lot), 1],
    ['a header of another format', '{"format":"other","v":1,"plot":null,"count":0}', 1],
    ['a header of a newer version', '{"format":"tilthwright-journal","v":2,"plot":null,"count":0}', 1],
    ['a binary', '\u0000\u0001PNG', 1],
  ])('holds %s', (_, file, line) => {
    expect(refusedLines(importLines(file, nothing))).toEqual([line]);
  });
  it('was cut after a line, or in the middle of one', () => {
    const lines = good.trimEnd().split('\n');
    expect(refusedLines(importLines(lines.slice(0, 2).join('\n'), nothing))).toEqual([1]);
    expect(refusedLines(importLines(good.slice(0, good.length - 20), nothing))).toEqual([3]);
  });
  const withLine = (line: string) => `${exportLines([]).replace('"count":0', '"count":1')}${line}\n`;
  const json = JSON.stringify(lot);
  it.each([
    ['around the body', json.replace('"kind":', '"on":"2026-06-02","kind":'), 'on'],
    ['in the body', json.replace('"massKg":2', '"massKg":3,"massKg":2'), 'massKg'],
    ['written in another way', json.replace('"massKg":2', '"massKg":3, "mass\\u004bg" :2'), 'massKg'],
    ['in a line to be sealed', strange.replace('"phase":1.0', '"phase":1.0,"phase":1.0'), 'phase'],
    ['in an object inside a list', strange.replace('"phase":1.0', '"a":[1,{"b":"}\\"","c":0,"b":2}]'), 'b'],
  ])('has a field twice %s', (_, line, field) => {
    const read = importLines(withLine(line), nothing);
    expect(read).toMatchObject({ ok: false, refused: [{ line: 2, problems: [{ field, message: 'stands twice' }] }] });
  });
  it('has a field of its header twice', () => {
    const read = importLines(good.replace('"count":2', '"count":5,"count":2'), nothing);
    expect(read).toMatchObject({ ok: false, refused: [{ line: 1, problems: [{ field: 'count' }] }] });
  });
  it.each([
    ['known', json.replace('leaves', 'x'.repeat(MOST_LINE_SIGNS))],
    ['to be sealed', strange.replace('"phase":1.0', `"phase":"${'x'.repeat(MOST_LINE_SIGNS)}"`)],
  ])('has an entry longer than any line may be: %s', (_, line) => {
    const read = importLines(withLine(line), nothing);
    const allowed = 'a line of at most 4 million characters';
    expect(read).toMatchObject({ ok: false, refused: [{ line: 2, problems: [{ message: 'is too long', allowed }] }] });
    expect(JSON.stringify(read).length).toBeLessThan(1000);
    expect(readLine(line).state).toBe('damaged');
  });
  it('is refused for each of many lines, and tells the first of them', () => {
    const read = importLines(`${exportLines([])}${'{}\n'.repeat(5000)}`, nothing);
    expect(read.ok || [read.refusedCount, read.refused.length, read.refused[0]?.line]).toEqual([5000, 200, 2]);
  });
  it('holds a photo that is no picture or not whole', () => {
    const photo = (line: object) => `${exportLines([]).replace('"photos":0', '"photos":1')}${JSON.stringify(line)}`;
    const whole = { photo: filled.id, type: 'image/png', base64: 'AAAA' };
    expect(refusedLines(importLines(photo(whole), nothing))).toEqual([]);
    expect(refusedLines(importLines(photo({ ...whole, type: 'text/html' }), nothing))).toEqual([2]);
    expect(refusedLines(importLines(photo({ ...whole, base64: 'AAA' }), nothing))).toEqual([2]);
  });
});
