// One run of the mutation tester over a room. Each mutant is one change of one place; it is noticed when a test of the
// room fails or runs on for ever. Emptied strings are left out: most are codes that the types refuse, and the sentences
// have tests of their own.

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Stryker } from '@stryker-mutator/core';
import type { Piece } from './draw.ts';
import { EXCLUDED } from './mutant-lines.ts';
import { filesUnder, type Room, WIDER } from './room.ts';
import { copyForTypes, refusedByTypes } from './types.ts';

/** A change, and what became of it. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly was: string;
  readonly became: string;
  readonly outcome: 'noticed' | 'survived' | 'refused by the types';
  /** Its place as the mutation tester takes it: file, lines from 1 and columns from 0. */
  readonly place: string;
}

/** The files of a room that are changed. */
export function filesOf({ source }: Room): readonly string[] {
  return filesUnder(source, allFiles()).filter((file) => file.endsWith('.ts') && !/\.(test|d)\.ts$/.test(file));
}

/**
 * What becomes of the mutants in these pieces of a room: first asked of its own tests, then what survived them of the wider
 * ones. What an earlier run found is kept for code and tests that are as they were, unless all is to be asked `anew`.
 */
export async function mutantsOf(room: Room, pieces: readonly Piece[], anew: boolean): Promise<readonly Mutant[]> {
  copyForTypes();
  const first = await asked(
    room,
    pieces.map(({ file, from, to }) => `${file}:${from}-${to}`),
    anew,
    room,
  );
  const left = first.filter(({ outcome }) => outcome === 'survived');
  if (left.length === 0) return first;
  const places = left.map(({ place }) => place);
  const again = await asked(room, places, anew, WIDER);
  const key = ({ place, became }: Mutant) => JSON.stringify([place, became]);
  const noticed = new Set(again.filter(({ outcome }) => outcome === 'noticed').map(key));
  return first.map((one) => (noticed.has(key(one)) ? { ...one, outcome: 'noticed' } : one));
}

/** The lines of a change. */
export const pieceOf = ({ file, line, was }: Pick<Mutant, 'file' | 'line' | 'was'>): Piece => ({
  file,
  from: line,
  to: line + was.split('\n').length - 1,
});

/** The changes in these places of a room, asked of some tests. */
async function asked(
  room: Room,
  places: readonly string[],
  anew: boolean,
  { tests, without }: Pick<Room, 'tests' | 'without'>,
): Promise<readonly Mutant[]> {
  const files = filesUnder(tests, allFiles()).filter((file) => file.endsWith('.test.ts') && !without.includes(file));
  process.env.MUTATE_TESTS = JSON.stringify(files);
  const wider = tests !== room.tests;
  const results = await new Stryker({
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'scripts/mutate/vitest.config.ts', related: false },
    mutate: [...places],
    mutator: { excludedMutations: EXCLUDED },
    coverageAnalysis: 'perTest',
    // What is run while a file is read would be asked of every test there is.
    ignoreStatic: wider,
    incremental: true,
    force: anew,
    incrementalFile: `build/mutate/${room.name}${wider ? ', wider' : ''}.json`,
    tempDirName: 'build/mutate/sandbox',
    ignorePatterns: ['docs', 'bench', 'build', 'test/screens', 'test-results'],
    // The compiler of this project has no interface for JavaScript: nothing is to be read by it.
    tsconfigFile: 'build/mutate/no-tsconfig.json',
    concurrency: 2,
    // A machine with other work beside it is not to make a slow test a noticed change.
    timeoutMS: 20_000,
    timeoutFactor: 3,
    reporters: ['progress-append-only'],
    allowConsoleColors: false,
  }).runMutationTest();
  const lost = results.filter(({ status }) => status === 'RuntimeError' || status === 'Pending');
  if (lost.length > 0) throw new Error(`mutate: ${lost.length} mutants of ${room.name} could not be run.`);
  return results.flatMap((one): readonly Mutant[] => {
    const { status, fileName, location, replacement = '' } = one;
    if (status === 'Ignored' || status === 'CompileError') return [];
    const file = path.relative('.', fileName).replaceAll('\\', '/');
    const text = readFileSync(file, 'utf8');
    const [from, to] = [offset(text, location.start), offset(text, location.end)];
    const changed = text.slice(0, from) + replacement + text.slice(to);
    const outcome = ['Killed', 'Timeout'].includes(status)
      ? 'noticed'
      : refusedByTypes(room.types, file, changed)
        ? 'refused by the types'
        : 'survived';
    const at = ({ line, column }: typeof location.start) => `${line}:${column - 1}`;
    const place = `${file}:${at(location.start)}-${at(location.end)}`;
    return [{ file, line: location.start.line, was: text.slice(from, to), became: replacement, outcome, place }];
  });
}

/** Every file of the code and of the tests. */
function allFiles(): readonly string[] {
  return ['src', 'test'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) =>
      path.posix.join(folder, ...file.split(path.sep)),
    ),
  );
}

/** The place in a text of a line and a column, both counted from 1. */
const offset = (text: string, { line, column }: { readonly line: number; readonly column: number }) =>
  [...text.split('\n').slice(0, line - 1), ''].join('\n').length + column - 1;
