import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { fields, number } from './bounds.ts';
import { isSealed } from './entry.ts';
import { type KindOf, kinds } from './kinds/index.ts';
import { readEntry, readLine, unsealed } from './read.ts';
import { newestBody } from './upgrade.ts';

const ID = '017f22e2-79b0-7cc3-98c4-dc0c0c07398f';
const OTHER = '017f22e2-79b0-7cc3-98c4-dc0c0c073990';
const around = { id: ID, plot: 'p', by: 'Rake', device: 'd', at: '2026-06-03T17:20:05.120Z', on: '2026-06-03' };
const weighed = {
  ...around,
  kind: 'scraps.weighed',
  v: 1,
  body: { name: 'leaves', mass: { typed: '5 lb 4 oz', massKg: 2.381 } },
};

function problems(value: unknown) {
  const read = readEntry(value);
  return read.state === 'damaged' ? read.problems : [];
}

describe('reading an entry', () => {
  it('gives back a known one as it was written', () => {
    expect(readEntry(weighed)).toEqual({ state: 'known', entry: weighed });
  });
  it('keeps the amount as typed beside what it was read as', () => {
    const read = readEntry(weighed);
    expect(read.state === 'known' && read.entry.body).toMatchObject({ mass: { typed: '5 lb 4 oz', massKg: 2.381 } });
  });
  it('names every problem at its field, with what would do', () => {
    const bad = { ...weighed, body: { name: '', mass: { typed: 'x', massKg: -3 }, extra: 1 } };
    expect(
      problems(bad)
        .map(({ field }) => field)
        .sort(),
    ).toEqual(['body.extra', 'body.mass.massKg', 'body.name']);
    for (const { message, allowed } of problems(bad)) expect(message && allowed).toBeTruthy();
  });
  it.each([
    ['id', 'no-uuid'],
    ['id', '017F22E2-79B0-7CC3-98C4-DC0C0C07398F'],
    ['id', '919108f7-52d1-4320-9bac-f847db4148a8'],
    ['plot', ''],
    ['by', 7],
    ['at', '2026-06-03T17:20:05Z'],
    ['at', '2026-02-30T17:20:05.000Z'],
    ['on', '2026-02-30'],
    ['on', '2026-06-03T25:00'],
    ['v', 0],
    ['v', 1.5],
    ['replaces', 'x'],
  ])('refuses %s = %j at that field', (field, value) => {
    expect(problems({ ...weighed, [field]: value }).map((p) => p.field)).toEqual([field]);
  });
  it.each([undefined, null, 3, 'text', [], {}])('refuses %j', (value) => {
    expect(readEntry(value).state).toBe('damaged');
  });
  it('takes an empty body as a withdrawal only where it replaces an entry', () => {
    expect(readEntry({ ...weighed, body: {}, replaces: OTHER }).state).toBe('known');
    expect(readEntry({ ...weighed, body: {} }).state).toBe('damaged');
  });
  it.each(Object.keys(kinds))('refuses %s with an empty body', (kind) => {
    expect(readEntry({ ...weighed, kind, body: {} }).state).toBe('damaged');
  });
  it.each(Object.keys(kinds))('refuses %s with a field nobody knows', (kind) => {
    expect(problems({ ...weighed, kind, body: { whoKnows: 1 } }).map(({ field }) => field)).toContain('body.whoKnows');
  });
});

describe('what this program cannot read yet', () => {
  it.each([
    ['an unknown kind', { ...weighed, kind: 'moon.watched', body: { phase: 'full' } }],
    ['a newer version', { ...weighed, v: 99, body: 'anything' }],
    ['a new field around the body', { ...weighed, clock: 5 }],
  ])('is sealed: %s', (_, value) => {
    const line = JSON.stringify(value).replace('{', '{ ').replace('"v":', '"v" : ');
    const read = readLine(line);
    expect(read).toMatchObject({ state: 'sealed', entry: { id: ID, sealed: true, line } });
  });
  it('is told as damaged where not even its envelope can be read', () => {
    expect(readEntry({ ...weighed, kind: 'moon.watched', id: 'x' }).state).toBe('damaged');
  });
  it('opens once the program has learnt the kind', () => {
    const value = { ...weighed, kind: 'moon.watched', body: { heightM: 3 } };
    const read = readEntry(value);
    if (read.state !== 'sealed') throw new Error('not sealed');
    const taught = { ...kinds, 'moon.watched': { newest: fields({ heightM: number(0, 9, 'm') }), v: 1 } };
    expect(unsealed(read.entry)).toBe(read.entry);
    expect(unsealed(read.entry, taught)).toEqual(value);
  });
  it('stays sealed where what it holds turns out to be damaged', () => {
    const read = readEntry({ ...weighed, kind: 'moon.watched', body: { heightM: 99 } });
    if (read.state !== 'sealed') throw new Error('not sealed');
    const taught = { ...kinds, 'moon.watched': { newest: fields({ heightM: number(0, 9, 'm') }), v: 1 } };
    expect(isSealed(unsealed(read.entry, taught))).toBe(true);
  });
});

describe('an old version', () => {
  // A kind that once told pounds and now tells kilograms; 1 lb = 0.45359237 kg exactly.
  const pounds = fields({ massLb: number(0, 100, 'lb') });
  const lifted: KindOf = {
    newest: fields({ massKg: number(0, 100, 'kg'), from: z.optional(z.string()) }),
    v: 3,
    older: { 1: pounds, 2: fields({ massKg: number(0, 100, 'kg') }) },
    lift: {
      1: (body) => ({ massKg: (body as { massLb: number }).massLb * 0.45359237 }),
      2: (body) => ({ ...(body as object), from: 'older' }),
    },
  };
  const table = { ...kinds, 'scraps.weighed': lifted };
  const old = { ...weighed, body: { massLb: 2 } };

  it('is read by its own schema and kept as it was written', () => {
    expect(readEntry(old, undefined, table)).toEqual({ state: 'known', entry: old });
    expect(readEntry({ ...weighed, body: { massKg: 2 } }, undefined, table).state).toBe('damaged');
  });
  it('is lifted step by step to the newest', () => {
    const read = readEntry(old, undefined, table);
    if (read.state !== 'known') throw new Error('not known');
    expect(newestBody(read.entry, table)).toEqual({ massKg: 0.90718474, from: 'older' });
    expect(read.entry.body).toEqual({ massLb: 2 });
  });
});
