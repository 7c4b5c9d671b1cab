// Where the mutation tester would change a file, asked of its own instrumenter, so that a draw knows how many mutants a
// statement holds before any is run.

import { readFileSync } from 'node:fs';
import { createInstrumenter } from '@stryker-mutator/instrumenter';
import { createInjector } from 'typed-inject';

/** Kinds of mutants that are left out. */
export const EXCLUDED = ['StringLiteral'];

const silent = () => undefined;
const off = () => false;
const LOGGER = {
  ...{ isTraceEnabled: off, isDebugEnabled: off, isInfoEnabled: off },
  ...{ isWarnEnabled: off, isErrorEnabled: off, isFatalEnabled: off },
  ...{ trace: silent, debug: silent, info: silent, warn: silent, error: silent, fatal: silent },
};

/** For each file the lines on which a mutant begins, one for each mutant, counted from 1. */
export async function mutantLines(files: readonly string[]): Promise<ReadonlyMap<string, readonly number[]>> {
  const instrumenter = createInstrumenter(createInjector().provideValue('logger', LOGGER));
  const sources = files.map((name) => ({ name, content: readFileSync(name, 'utf8'), mutate: true }));
  const { mutants } = await instrumenter.instrument(sources, {
    ignorers: [],
    excludedMutations: EXCLUDED,
    plugins: null,
  });
  const counted = mutants.filter(({ status }) => status !== 'Ignored');
  const linesOf = (name: string) =>
    counted.filter(({ fileName }) => fileName === name).map(({ location }) => location.start.line + 1);
  return new Map(files.map((name) => [name, linesOf(name)]));
}
