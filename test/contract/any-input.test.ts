// Whatever may be asked within the contract's ranges is answered whole: every number finite, every band in order,
// every sentence without a hole, every working at a figure that the answer has. Inputs at the ends of the ranges
// are as likely as those in the middle. And whatever else comes in is refused in the one wording, never a crash.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Reply, type Task, task, type Word, words } from '#tasks/index.ts';
import { problemLine } from '#tasks/problem.ts';
import { sayCaution, sayWorking } from '#words/en/command.ts';
import { figureFaults } from './figures.ts';
import { inputs } from './inputs.ts';

const SEED = 4_180;
const RUNS = 400;
/** A forecast is many runs of a model: fewer inputs are tried of it. */
const RUNS_OF: Readonly<Partial<Record<Word, number>>> = { sour: 10 };
const runsOf = (word: Word) => RUNS_OF[word] ?? RUNS;

describe.each(words)('%s', (word) => {
  it('answers whatever may be asked, whole', async () => {
    const asked = await task(word);
    let answered = 0;
    fc.assert(
      fc.property(inputs[word], (input) => {
        const reply = asked.ask(JSON.parse(JSON.stringify(input)));
        if (!reply.ok) return inOneWording(reply);
        answered += 1;
        const workings = reply.workings();
        expect(figureFaults(reply, workings)).toEqual([]);
        const lines = [
          ...reply.sentences(),
          ...reply.value.cautions.map(sayCaution),
          ...workings.flatMap((one) => sayWorking(one, (origin) => origin)),
        ];
        for (const line of lines) expect(line).not.toMatch(/undefined|NaN|Infinity|\[object|\bnull\b/);
      }),
      { seed: SEED, numRuns: runsOf(word) },
    );
    expect(answered).toBeGreaterThan(runsOf(word) / 4);
  });

  it('refuses whatever is not an input in the one wording', async () => {
    const asked = await task(word);
    fc.assert(
      fc.property(fc.oneof(fc.anything(), spoilt(inputs[word])), (input) => neverCrashes(asked, input)),
      { seed: SEED, numRuns: runsOf(word) },
    );
  });
});

/** An input with one of its first fields put to anything. */
function spoilt(good: fc.Arbitrary<object>): fc.Arbitrary<object> {
  return fc.tuple(good, fc.nat(), fc.anything()).map(([input, place, value]) => {
    const fields = Object.keys(input);
    return { ...input, [fields[place % fields.length] ?? '']: value };
  });
}

function neverCrashes(asked: Task, input: unknown): void {
  const reply = asked.ask(input);
  if (!reply.ok) inOneWording(reply);
}

function inOneWording(reply: Reply & { readonly ok: false }): void {
  expect(reply.problems.length).toBeGreaterThan(0);
  for (const one of reply.problems) expect(problemLine(one)).toMatch(/^.+: .+; allowed: .+/s);
}
