// The cover of a large plot: 120 beds and 15 sources, three stages, beside a native solver on the same programmes when
// one is installed.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { CoverBed, CoverInput, CoverSource } from '#engine/ground/cover/input.ts';
import type { LinearProgram, Solve } from '#engine/ground/cover/program.ts';
import { solveStages } from '#engine/ground/cover/stages.ts';
import { point } from '#engine/quantity/range.ts';
import { loadSolver } from '#tasks/solver/highs.ts';
import { middle } from './rate.ts';

/** Milliseconds of each stage, and a native solver on the same programme. */
export interface CoverTimes {
  readonly loadMs: number;
  readonly columns: number;
  readonly rows: number;
  readonly stages: readonly { readonly stage: string; readonly ms: number; readonly value: number }[];
  readonly native:
    | { readonly name: string; readonly stages: readonly { readonly ms: number; readonly value: number }[] }
    | undefined;
}

const ROUNDS = 5;

/** Loads the solver, plans five times and takes the middle. */
export async function coverTimes(): Promise<CoverTimes> {
  const begun = performance.now();
  const solve = await loadSolver();
  const loadMs = performance.now() - begun;
  const input = plot(120, 15);
  let asked: LinearProgram[] = [];
  const taken: number[][] = [];
  let values: ReadonlyMap<string, number> = new Map();
  for (let round = 0; round <= ROUNDS; round++) {
    asked = [];
    const times: number[] = [];
    const timed: Solve = (program, from) => {
      asked.push(program);
      const start = performance.now();
      const solution = solve(program, from);
      times.push(performance.now() - start);
      return solution;
    };
    const staged = solveStages(input, timed, { outlook: 'likely' });
    if (!staged.ok) throw new Error(`stage ${staged.stage}: ${staged.solution.status}`);
    values = staged.values;
    if (round > 0) taken.push(times); // the first round warms up
  }
  const stages = [...values].map(([stage, value], at) => ({
    stage,
    value,
    ms: middle(taken.map((times) => times[at] ?? Number.NaN)),
  }));
  const [first] = asked;
  return {
    loadMs,
    columns: first?.columns.cost.length ?? 0,
    rows: first?.rows.lower.length ?? 0,
    stages,
    native: native(asked),
  };
}

/** Beds and sources by a seeded row of numbers: the same plot in every run. */
function plot(bedCount: number, sourceCount: number): CoverInput {
  let state = 20260425;
  const between = (low: number, high: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return low + ((high - low) * state) / 2 ** 32;
  };
  const beds = Array.from({ length: bedCount }, (_, at): CoverBed => {
    const areaM2 = between(2, 12);
    return {
      id: `${at}`,
      name: `bed ${at}`,
      areaM2,
      missingG: {
        n: point(areaM2 * between(0, 18)),
        p: point(areaM2 * between(0, 3)),
        k: point(areaM2 * between(0, 15)),
      },
      roomG: { p: areaM2 * between(0, 6), k: areaM2 * between(5, 40) },
      mostSaltG: areaM2 * between(20, 80),
      mostFreshKg: areaM2 * 4,
    };
  });
  const sources = Array.from({ length: sourceCount }, (_, at): CoverSource => {
    const isOwn = at < 6;
    return {
      id: `${at}`,
      name: `source ${at}`,
      kind: 'other',
      perKg: {
        nG: point(isOwn ? between(0.3, 3) : between(0, 90)),
        pG: point(isOwn ? between(0.2, 2) : between(0, 40)),
        kG: point(isOwn ? between(1, 6) : between(0, 200)),
        saltG: between(0, 8),
      },
      ...(isOwn ? { haveKg: between(50, 600) } : { costPerKg: between(0.3, 5) }),
      minutesPerKg: between(0.05, 1),
      ...(isOwn ? { mostKgPerM2: between(2, 10) } : {}),
      fresh: at < 3,
    };
  });
  return { beds, sources, limits: { money: 150, minutes: 4000 }, aim: 'least-cost' };
}

/** The same programmes by glpsol or cbc, whichever is there; nothing where neither is. */
function native(programs: readonly LinearProgram[]): CoverTimes['native'] {
  const name = ['glpsol', 'cbc'].find((one) => spawnSync(one, ['--version']).error === undefined);
  if (name === undefined) return undefined;
  const folder = mkdtempSync(path.join(os.tmpdir(), 'cover-'));
  try {
    const stages = programs.map((program, at) => {
      const [model, answer] = [path.join(folder, `${at}.mps`), path.join(folder, `${at}.txt`)];
      writeFileSync(model, mps(program));
      const args =
        name === 'glpsol' ? ['--freemps', model, '--output', answer] : [model, 'solve', 'solution', answer, 'quit'];
      const begun = performance.now();
      const run = spawnSync(name, args, { encoding: 'utf8' });
      const ms = performance.now() - begun;
      if (run.status !== 0) throw new Error(`${name}: ${run.stderr || run.stdout}`);
      const [, value] =
        /Objective:\s*cost = (\S+)/.exec(readFileSync(answer, 'utf8')) ??
        /objective value (\S+)/.exec(readFileSync(answer, 'utf8')) ??
        [];
      return { ms, value: Number(value) };
    });
    return { name, stages };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A programme as free MPS text, columns from 0 up. */
function mps({ columns, rows, terms }: LinearProgram): string {
  const kind = (r: number) => {
    const [lower = 0, upper = 0] = [rows.lower[r], rows.upper[r]];
    return lower === upper ? 'E' : Number.isFinite(upper) ? 'L' : 'G';
  };
  const byColumn = columns.cost.map((cost) => (cost === 0 ? [] : [` cost ${cost}`]));
  for (let r = 0; r < rows.lower.length; r++) {
    for (let t = terms.starts[r] ?? 0; t < (terms.starts[r + 1] ?? 0); t++) {
      byColumn[terms.columns[t] ?? 0]?.push(` r${r} ${terms.factors[t]}`);
    }
  }
  return [
    'NAME cover',
    'ROWS',
    ' N cost',
    ...rows.lower.map((_, r) => ` ${kind(r)} r${r}`),
    'COLUMNS',
    ...byColumn.flatMap((lines, j) => lines.map((line) => ` x${j}${line}`)),
    'RHS',
    ...rows.lower.map((lower, r) => ` rhs r${r} ${kind(r) === 'L' ? rows.upper[r] : lower}`),
    'BOUNDS',
    ...columns.upper.flatMap((upper, j) => (Number.isFinite(upper) ? [` UP b x${j} ${upper}`] : [])),
    'ENDATA',
    '',
  ].join('\n');
}
