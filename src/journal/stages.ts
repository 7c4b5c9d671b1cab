// A fold in stages: a stage is done again only when something it is made of is another object than the last time. So one
// more entry costs what it touches, and there is still one fold; between two stages others may have a turn. A stage changes
// nothing that it was given or has given.

import type { Question } from './question.ts';
import type { Waiting } from './standing.ts';

/** What a stage tells beside what it makes. */
export interface Told {
  readonly waiting: Waiting[];
  readonly questions: Question[];
}

/** What a stage made, what it was made of, and what it told. */
interface Done extends Told {
  readonly of: readonly unknown[];
  readonly made: unknown;
}

/** What a stage makes, or its way there in steps. */
type Made<T> = T | Generator<void, T>;

/** Acts that a long stage takes before it ends a step. */
export const STEP_ACTS = 2000;

export interface Stages {
  /**
   * What a stage makes: as it was made before, where all it is made of is the same. Made anew, it ends a step; a long one
   * has steps of its own.
   * @param of everything that `make` reads; what is left out here must never change
   * @param make may take over parts of what it made before, where they would come out the same
   */
  readonly stage: <T>(
    name: string,
    of: readonly unknown[],
    make: (told: Told, before: T | undefined) => Made<T>,
  ) => Generator<void, T>;
  /** What the stages told since this was asked last, in the order in which they were asked. */
  readonly told: () => Told;
}

export function createStages(): Stages {
  const done = new Map<string, Done>();
  let told: Told = { waiting: [], questions: [] };
  return {
    *stage<T>(
      name: string,
      of: readonly unknown[],
      make: (told: Told, before: T | undefined) => Made<T>,
    ): Generator<void, T> {
      const before = done.get(name);
      const isSame = before?.of.length === of.length && of.every((one, i) => one === before.of[i]);
      const now =
        before !== undefined && isSame
          ? before
          : yield* doneAnew(of, (told) => make(told, before?.made as T | undefined));
      for (const one of now.waiting) told.waiting.push(one);
      for (const one of now.questions) told.questions.push(one);
      if (now !== before) {
        done.set(name, now);
        yield;
      }
      return now.made as T;
    },
    told() {
      const all = told;
      told = { waiting: [], questions: [] };
      return all;
    },
  };
}

function* doneAnew(of: readonly unknown[], make: (told: Told) => Made<unknown>): Generator<void, Done> {
  const told: Told = { waiting: [], questions: [] };
  const made = make(told);
  return { of, made: isSteps(made) ? yield* made : made, ...told };
}

function isSteps(made: unknown): made is Generator<void, unknown> {
  return typeof made === 'object' && made !== null && 'next' in made;
}
