// Somebody tries to break the record: with what they send, with how much, and with what refers to what.
import { describe, expect, it } from 'vitest';
import { kg, litres, recorder } from '../../test/scenarios/recorder.ts';
import type { Entry, Kept } from './entry.ts';
import { importLines } from './file-reader.ts';
import { fold } from './fold.ts';
import { exportLines } from './lines.ts';
import { readEntry, readLine } from './read.ts';

const rake = recorder();
const lot = rake.did('scraps.weighed', '2026-06-01', { name: 'leaves', mass: kg(2) });
const MANY = 20_000;
const id = (n: number) => `017f22e2-79b0-7000-8000-${n.toString(16).padStart(12, '0')}`;
const withBody = (change: string) => JSON.stringify(lot).replace('"name":"leaves"', change);

describe('keys that would reach an object by its prototype', () => {
  it.each([
    ['in the body', withBody('"name":"leaves","__proto__":{"material":"x"}')],
    ['deep in the body', JSON.stringify(lot).replace('"massKg":2', '"massKg":2,"__proto__":{"bandKg":1}')],
    ['a constructor', withBody('"name":"leaves","constructor":{"prototype":{"polluted":true}}')],
  ])('are refused %s', (_, line) => {
    expect(readLine(line).state).toBe('damaged');
  });
  it('cannot stand in for a field that is missing', () => {
    expect(readLine(withBody('"__proto__":{"name":"leaves"}')).state).toBe('damaged');
    expect(readLine(JSON.stringify(lot).replace('"body":', '"__proto__":{"body":1},"b":')).state).not.toBe('known');
  });
  it('are kept in a line that is sealed, and reach nothing', () => {
    const line = withBody('"name":"leaves","__proto__":{"polluted":true}').replace('scraps.weighed', '__proto__');
    const read = readLine(line);
    expect(read).toMatchObject({ state: 'sealed', entry: { kind: '__proto__', line } });
    expect(read.state === 'sealed' && fold([read.entry]).sealed).toHaveLength(1);
    expect('polluted' in {}).toBe(false);
  });
  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])(
    'are plain names of plots, lots and keyholders: %s',
    (name) => {
      const odd = recorder({ plot: name, by: name, device: name }).did('scraps.weighed', '2026-06-01', {
        name,
        mass: kg(1),
      });
      expect(fold([odd], name).lots.get(odd.id)?.act.body.name).toBe(name);
    },
  );
  it.each(['constructor', 'toString'])('are no kinds of entry: %s', (kind) => {
    expect(readEntry({ ...lot, kind }).state).toBe('sealed');
  });
});

describe('numbers that would poison a sum', () => {
  it.each(['1e999', '-1e999', '-1', '0', '1e300', '1000.001', '"2"', 'null', '[2]', '{"valueOf":2}', 'true'])(
    'are refused: %s',
    (number) => {
      expect(readLine(JSON.stringify(lot).replace('"massKg":2', `"massKg":${number}`)).state).toBe('damaged');
    },
  );
  it.each([Number.NaN, Number.POSITIVE_INFINITY, -0])('are refused where they come as values: %d', (massKg) => {
    expect(readEntry({ ...lot, body: { name: 'leaves', mass: { typed: 'x', massKg } } }).state).toBe('damaged');
  });
});

describe('too much of something', () => {
  const megabyte = 'x'.repeat(1_000_000);
  it('a megabyte of note is refused at its field, and the problem is not a megabyte long elsewhere', () => {
    const read = readLine(withBody(`"name":"leaves","note":"${megabyte}"`));
    expect(read.state === 'damaged' && read.problems.map(({ field }) => field)).toEqual(['body.note']);
  });
  it('a megabyte of an unknown kind is kept and passed on', () => {
    const line = withBody(`"name":"${megabyte}"`).replace('scraps.weighed', 'moon.watched');
    const file = `${exportLines([]).replace('"count":0', '"count":1')}${line}\n`;
    const read = importLines(file, () => undefined);
    expect(read.ok && exportLines(read.fresh).split('\n')[1]).toBe(line);
  });
  it('a body nested 100,000 deep is kept where the kind is unknown and refused where it is known', () => {
    const deep = '['.repeat(100_000) + ']'.repeat(100_000);
    expect(readLine(withBody(`"name":${deep}`)).state).toBe('damaged');
    const line = withBody(`"name":${deep}`).replace('scraps.weighed', 'moon.watched');
    const file = `${exportLines([]).replace('"count":0', '"count":1')}${line}\n`;
    const read = importLines(file, () => undefined);
    if (!read.ok) throw new Error('refused');
    const again = importLines(file, () => read.fresh[0]);
    expect(again).toMatchObject({ ok: true, alreadyCount: 1 });
  });
});

describe('references that lead astray', () => {
  const correcting = (own: number, of: number): Entry => ({ ...lot, id: id(own), replaces: id(of) });
  it('corrections in a circle, and one of itself, have no effect and are told', () => {
    const plot = fold([correcting(1, 2), correcting(2, 3), correcting(3, 1), correcting(4, 4), lot]);
    expect(plot.lots.size).toBe(1);
    expect(plot.waiting.map(({ why }) => why)).toEqual(Array.from({ length: 4 }, () => 'corrects-in-a-circle'));
  });
  it(`a chain of ${MANY} corrections ends in its last, whichever way it arrives, and waits without its first`, () => {
    const chain = Array.from({ length: MANY }, (_, n) => correcting(n + 1, n));
    const first: Entry = { ...lot, id: id(0) };
    expect(fold([...chain.toReversed(), first]).lots.get(id(0))?.act.entry.id).toBe(id(MANY));
    expect(fold(chain).waiting).toHaveLength(MANY);
  });
  it(`${MANY} corrections of one entry are one question`, () => {
    const crowd = Array.from({ length: MANY }, (_, n) => ({
      ...correcting(n + 1, 0),
      on: n % 2 ? '2026-06-01' : '2026-06-02',
    }));
    const plot = fold([...crowd, { ...lot, id: id(0) }]);
    expect(plot.questions.map(({ kind, about }) => [kind, about.length])).toEqual([['two-corrections', MANY + 1]]);
  });
  it('a batch joined with one that was made of it still balances', () => {
    const filled = rake.did('peg.filled', '2026-06-01', { peg: 1, water: [{ volume: litres(8) }] });
    const split = rake.did('peg.split', '2026-06-02', { batch: filled.id, peg: 2, taken: kg(3) });
    const back = rake.did('peg.joined', '2026-06-03', { batch: split.id, from: filled.id });
    const plot = fold([back, split, filled]);
    expect(plot.batches.get(split.id)?.mass.leftKg).toBeCloseTo(8, 9);
    expect(plot.batches.get(filled.id)?.mass.leftKg).toBeCloseTo(0, 9);
  });
  it('a split that names itself, and acts on what is no batch, wait', () => {
    const split = rake.did('peg.split', '2026-06-02', { batch: lot.id, peg: 2, taken: kg(3) });
    const own: Entry = { ...split, body: { ...(split.body as object), batch: split.id } };
    expect(fold([own]).waiting).toEqual([{ id: split.id, why: 'batch-not-here', of: split.id }]);
    expect(fold([lot, split]).waiting).toEqual([{ id: split.id, why: 'batch-not-here', of: lot.id }]);
  });
  it(`a line of ${MANY} splits, dated backwards, is followed`, () => {
    const filled: Entry = {
      ...rake.did('peg.filled', '2026-06-30', { peg: 1, water: [{ volume: litres(8) }] }),
      id: id(0),
    };
    const splits = Array.from(
      { length: MANY },
      (_, n): Entry => ({
        ...filled,
        id: id(n + 1),
        kind: 'peg.split',
        on: '2026-06-01',
        body: { batch: id(n), peg: n + 2, taken: kg(8 - (n + 1) * 1e-4) },
      }),
    );
    const plot = fold([...splits, filled]);
    expect([plot.batches.size, plot.waiting.length]).toEqual([MANY + 1, 0]);
  });
  it('two contents under one id are told, and the choice does not hang on which came first', () => {
    const other: Kept = { ...lot, on: '2026-06-09' };
    expect(fold([lot, other])).toEqual(fold([other, lot]));
    expect(fold([lot, other]).waiting).toEqual([{ id: lot.id, why: 'same-id-other-content', of: lot.id }]);
  });
  it(`${MANY} pours by as many devices on one bed in a day end in time`, () => {
    const bed = rake.did('bed.described', '2026-05-01', { name: 'T' });
    const pour = rake.did('bed.fed', '2026-06-01', { bed: bed.id, from: [], poured: litres(1), way: 'soil' });
    const crowd = Array.from({ length: MANY }, (_, n): Entry => ({ ...pour, id: id(n), device: `d${n}` }));
    expect(fold([bed, ...crowd]).beds.get(bed.id)?.feeds).toHaveLength(MANY);
  });
});

describe('two plots in one store', () => {
  it('never mix: the plot to fold must be named', () => {
    const demo = recorder({ plot: 'demo' }).did('scraps.weighed', '2026-06-01', { name: 'leaves', mass: kg(9) });
    expect(() => fold([lot, demo])).toThrow(RangeError);
    expect([...fold([lot, demo], lot.plot).lots.keys()]).toEqual([lot.id]);
  });
});
