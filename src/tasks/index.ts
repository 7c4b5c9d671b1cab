// Every word of the contract in one table: its schema, its call, its sentences, its workings. A word is loaded
// when it is first asked for, so that no face waits for words it does not use. A new word is one line here.

import type * as z from 'zod/mini';
import type { Working } from '#engine/working/working.ts';
import type { Caution } from './caution.ts';
import type { Problem } from './problem.ts';

/** The words that can be asked today. */
export const words = ['fit', 'can', 'water', 'strain', 'sour', 'heap', 'beds'] as const;
export type Word = (typeof words)[number];

/** The answer of any word: the contract's object, and what a face may ask about it. */
export interface Answer {
  readonly ok: true;
  readonly value: { readonly cautions: readonly Caution[] };
  /** The answer in plain sentences, cautions apart. */
  readonly sentences: () => readonly string[];
  /** How each shown figure came about. */
  readonly workings: () => readonly Working[];
}

export type Reply = Answer | { readonly ok: false; readonly problems: readonly Problem[] };

/** One word: what it takes and how it answers. */
export interface Task {
  readonly schema: z.ZodMiniType;
  readonly ask: (input: unknown) => Reply;
}

/** Words that were called otherwise before: still taken, and told nowhere. */
const BEFORE: Readonly<Record<string, Word>> = { ledger: 'beds' };

/** The word that a text names, if it names one. */
export function wordNamed(text: string): Word | undefined {
  if (Object.hasOwn(BEFORE, text)) return BEFORE[text];
  return words.find((word) => word === text);
}

/** Loads one word. */
export function task(word: Word): Promise<Task> {
  return loaders[word]();
}

const loaders: Readonly<Record<Word, () => Promise<Task>>> = {
  async fit() {
    const [{ fit, fitSchema, explainFit }, { sayFit }] = await Promise.all([
      import('./fit.ts'),
      import('#words/en/fit.ts'),
    ]);
    return whole({ schema: fitSchema, run: fit, say: sayFit, explain: explainFit });
  },
  async can() {
    const [{ can, canSchema, explainCan }, { sayCan }] = await Promise.all([
      import('./can.ts'),
      import('#words/en/can.ts'),
    ]);
    return whole({ schema: canSchema, run: can, say: sayCan, explain: explainCan });
  },
  async water() {
    const [{ water, waterSchema, explainWater }, { sayWater }] = await Promise.all([
      import('./water.ts'),
      import('#words/en/water.ts'),
    ]);
    return whole({ schema: waterSchema, run: water, say: sayWater, explain: explainWater });
  },
  async strain() {
    const [{ strain, strainSchema, explainStrain }, { sayStrain }] = await Promise.all([
      import('./strain.ts'),
      import('#words/en/strain.ts'),
    ]);
    return whole({ schema: strainSchema, run: strain, say: sayStrain, explain: explainStrain });
  },
  async sour() {
    const [{ sour, sourSchema, explainSour }, { saySour }] = await Promise.all([
      import('./sour.ts'),
      import('#words/en/sour.ts'),
    ]);
    return whole({ schema: sourSchema, run: sour, say: saySour, explain: explainSour });
  },
  async heap() {
    const [{ heap, heapSchema, explainHeap }, { sayHeap }] = await Promise.all([
      import('./heap.ts'),
      import('#words/en/heap.ts'),
    ]);
    return whole({ schema: heapSchema, run: heap, say: sayHeap, explain: explainHeap });
  },
  async beds() {
    const [{ ledger, ledgerSchema, explainLedger }, { sayLedger }, { loadSolver }] = await Promise.all([
      import('./ledger.ts'),
      import('#words/en/ledger.ts'),
      import('./solver/highs.ts'),
    ]);
    const solve = await loadSolver();
    const run = (input: unknown) => ledger(input, solve);
    return whole({ schema: ledgerSchema, run, say: sayLedger, explain: explainLedger });
  },
};

type Ran<Result> =
  | { readonly ok: true; readonly value: Result }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Ties the four parts of a word together, so that a face need not know the word's own result type. */
function whole<Result extends Answer['value']>(parts: {
  readonly schema: z.ZodMiniType;
  readonly run: (input: unknown) => Ran<Result>;
  readonly say: (result: Result) => readonly string[];
  readonly explain: (input: unknown) => readonly Working[];
}): Task {
  return {
    schema: parts.schema,
    ask(input) {
      const ran = parts.run(input);
      if (!ran.ok) return ran;
      return {
        ok: true,
        value: ran.value,
        sentences: () => parts.say(ran.value),
        workings: () => parts.explain(input),
      };
    },
  };
}
