// Every working to be held: of the contract's examples, and of inputs drawn within the contract's ranges.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import type { Working } from '#engine/working/working.ts';
import { task, type Word } from '#tasks/index.ts';
import { inputs } from '../contract/inputs.ts';
import { root } from '../house/code.ts';

const SEED = 7_731;

const { cases } = JSON.parse(readFileSync(path.join(root, 'test/contract/examples.json'), 'utf8')) as {
  cases: readonly { readonly word: Word; readonly input: object }[];
};

/** Cans by an aim instead of a ratio. */
const aimed = fc.record({
  batch: fc.record({
    peg: fc.constant(14),
    state: fc.constant('ready'),
    held: fc.constant(true),
    ph: fc.option(fc.double({ min: 3.4, max: 4.2, noNaN: true }), { nil: undefined }),
    ecDsPerM: fc.oneof(fc.double({ min: 0, max: 30, noNaN: true }), fc.constant({ low: 5, likely: 8, high: 12 })),
    nGPerL: fc.constant({ low: 0.5, likely: 0.9, high: 1.4 }),
    kGPerL: fc.double({ min: 0.5, max: 5, noNaN: true }),
  }),
  aim: fc.oneof(
    fc.record({ nGPerM2: fc.double({ min: 0.01, max: 2, noNaN: true }) }),
    fc.record({ kGPerM2: fc.double({ min: 0.01, max: 2, noNaN: true }) }),
    fc.record({ maxEcDsPerM: fc.double({ min: 0.5, max: 3, noNaN: true }) }),
  ),
  canL: fc.double({ min: 1, max: 20, noNaN: true }),
  areaM2: fc.double({ min: 0.1, max: 20, noNaN: true }),
  depthLPerM2: fc.double({ min: 0.1, max: 10, noNaN: true }),
  water: fc.record({
    alkalinityMeqPerL: fc.double({ min: 0, max: 8, noNaN: true }),
    ecDsPerM: fc.double({ min: 0, max: 2, noNaN: true }),
    ph: fc.double({ min: 3, max: 9, noNaN: true }),
  }),
});

/** Water with both kinds of chlorine, and plants to compare its acid with. */
const chlorinated = fc.record({
  volumeL: fc.double({ min: 1, max: 200, noNaN: true }),
  freeChlorineMgPerL: fc.option(fc.double({ min: 0, max: 5, noNaN: true }), { nil: undefined }),
  chloramineMgPerL: fc.option(fc.double({ min: 0, max: 5, noNaN: true }), { nil: undefined }),
  alkalinity: fc.constant({ value: 14, unit: 'dH' }),
  plantsKg: fc.double({ min: 0.5, max: 30, noNaN: true }),
});

/** Strained batches with a bottle whose sugar is known. */
const bottled = inputs.strain.map((batch) => ({
  ...batch,
  bottle: { volumeL: 1.5, filledL: 1.2, sugarLeftGPerL: 4, cap: 'loose', material: 'plastic' },
}));

const MORE: Readonly<Partial<Record<Word, fc.Arbitrary<object>>>> = { can: aimed, water: chlorinated, strain: bottled };

/** The workings of one word: of each example, then of so many drawn inputs. */
export async function workingsOf(word: Word, runs: number): Promise<readonly Working[]> {
  const asked = await task(word);
  const more = MORE[word];
  const drawn = [inputs[word], ...(more ? [more] : [])].flatMap((one) => fc.sample(one, { seed: SEED, numRuns: runs }));
  // Few forecasts of few runs do: their bands are not redone, and what is redone does not hang on them.
  const few = word === 'sour' ? { draws: 20 } : {};
  const examples = cases.filter((one) => one.word === word).slice(0, word === 'sour' ? 3 : cases.length);
  const asIs = examples.map(({ input }) => ({ ...input, ...few }));
  return [...asIs, ...drawn].flatMap((input) => {
    const reply = asked.ask(JSON.parse(JSON.stringify(input)));
    return reply.ok ? reply.workings() : [];
  });
}
