// The solver's door: each way a programme can end is told apart, and none that failed reads as a value.

import { describe, expect, it } from 'vitest';
import type { LinearProgram } from '#engine/ground/cover/program.ts';
import { loadSolver, solverOn } from './highs.ts';

const solve = await loadSolver();
const end = Number.POSITIVE_INFINITY;

/** One column from 0 up, one row: 4 <= x. */
const one: LinearProgram = {
  columns: { cost: [2], lower: [0], upper: [end] },
  rows: { lower: [4], upper: [end] },
  terms: { starts: [0, 1], columns: [0], factors: [1] },
};

describe('the solver', () => {
  it('gives the least value, the columns and the price of a tight row', () => {
    expect(solve(one)).toMatchObject({ status: 'best', value: 8, columns: [4], rows: [4], rowPrices: [2] });
  });

  it('solves a small blend of two materials by hand: 1.0 kg at 10/5/10 g and 0.1 kg at 50 g K for 1.20', () => {
    // N 10 to 12.5, P 5 to 10, K 15 to 24 g; A brings 10/5/10 g a kilogram at 1, B 0/0/50 at 2. N alone asks for 1 kg
    // of A, which leaves 5 g K, 0.1 kg of B.
    const blend = solve({
      columns: { cost: [1, 2], lower: [0, 0], upper: [end, end] },
      rows: { lower: [10, 5, 15], upper: [12.5, 10, 24] },
      terms: { starts: [0, 1, 2, 4], columns: [0, 0, 0, 1], factors: [10, 5, 10, 50] },
    });
    expect(blend.status).toBe('best');
    if (blend.status !== 'best') return;
    expect(blend.value).toBeCloseTo(1.2, 9);
    expect(blend.columns[0]).toBeCloseTo(1, 9);
    expect(blend.columns[1]).toBeCloseTo(0.1, 9);
  });

  it('says that no answer keeps all limits', () => {
    expect(solve({ ...one, columns: { ...one.columns, upper: [3] } })).toEqual({ status: 'none' });
  });

  it('never gives a value where the value falls without end', () => {
    const { status } = solve({ ...one, columns: { ...one.columns, cost: [-1] } });
    expect(['endless', 'stopped']).toContain(status);
  });

  it.each([
    ['is empty', { ...one, columns: { cost: [], lower: [], upper: [] } }],
    ['has a cost that is no number', { ...one, columns: { ...one.columns, cost: [Number.NaN] } }],
    ['has a limit that is no number', { ...one, rows: { lower: [Number.NaN], upper: [end] } }],
    ['names a column that is not there', { ...one, terms: { ...one.terms, columns: [7] } }],
    ['has torn terms', { ...one, terms: { starts: [0, 1], columns: [0], factors: [] } }],
    ['has the same term twice', { ...one, terms: { starts: [0, 2], columns: [0, 0], factors: [1, 1] } }],
  ])('calls a programme broken that %s', (_, program) => {
    expect(solve(program)).toMatchObject({ status: 'broken' });
  });

  it('gives every model back: where models are kept the memory grows, and here it does not', async () => {
    const { default: load } = await import('highs');
    const highs = await load();
    const own = solverOn(highs);
    expect(own(one)).toMatchObject({ status: 'best', value: 8 });
    const beforeBytes = highs.memoryBytes;
    for (let turn = 0; turn < 200; turn++) own(one);
    expect(highs.memoryBytes).toBe(beforeBytes);
    const kept = Array.from({ length: 200 }, () => {
      const model = highs.createModel({ format: 'lp', data: 'min\n x\nst\n x >= 4\nend' });
      model.options.set({ output_flag: false });
      model.run();
      return model;
    });
    expect(highs.memoryBytes).toBeGreaterThan(beforeBytes);
    for (const model of kept) model.dispose();
  });

  it('stops without an answer where the steps do not suffice, and says so', async () => {
    const { default: load } = await import('highs');
    const highs = await load();
    // No row leaves the start without a step of its own.
    const size = 30;
    const program: LinearProgram = {
      columns: { cost: new Array(size).fill(1), lower: new Array(size).fill(0), upper: new Array(size).fill(end) },
      rows: { lower: new Array(size).fill(1), upper: new Array(size).fill(end) },
      terms: {
        starts: Array.from({ length: size + 1 }, (_, i) => 2 * i),
        columns: Array.from({ length: 2 * size }, (_, i) => (i % 2 === 0 ? i / 2 : ((i + 1) / 2) % size)),
        factors: Array.from({ length: 2 * size }, (_, i) => 1 + i / 7),
      },
    };
    expect(solverOn(highs)(program).status).toBe('best');
    expect(solverOn(highs, () => 2)(program)).toMatchObject({ status: 'stopped' });
  });

  it('starts where an earlier answer was found, and finds the same with a row added as from nothing', () => {
    // Least x + 2y with x + y >= 4, then also x <= 1: 4 and 0, then 1 and 3.
    const first: LinearProgram = {
      columns: { cost: [1, 2], lower: [0, 0], upper: [end, end] },
      rows: { lower: [4], upper: [end] },
      terms: { starts: [0, 2], columns: [0, 1], factors: [1, 1] },
    };
    const then: LinearProgram = {
      ...first,
      rows: { lower: [4, -end], upper: [end, 1] },
      terms: { starts: [0, 2, 3], columns: [0, 1, 0], factors: [1, 1, 1] },
    };
    const found = solve(first);
    if (found.status !== 'best') throw new Error(found.status);
    expect(found.start?.rows).toHaveLength(1);
    const next = solve(then, found.start);
    expect(next).toMatchObject({ status: 'best', value: 7, columns: [1, 3] });
    expect(solve(then)).toMatchObject({ status: 'best', value: 7, columns: [1, 3] });
  });

  it('finds the answer all the same when the start is of another programme', () => {
    expect(solve(one, { columns: [0, 1], rows: [1] })).toMatchObject({ status: 'best', value: 8 });
  });

  it('is fetched once', async () => {
    expect(await loadSolver()).toBe(solve);
  });
});
