// The weigh-in at work: the draft, what it reads as, and the answer of the word `fit`. Screens take their
// figures from here; the figures themselves come from the task.

import { createMemo, createSignal } from 'solid-js';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import type { FitResult } from '#tasks/fit.ts';
import type { SugarInProduct } from '#words/en/weigh-in.ts';
import { pictureOf } from '../drawings/vessel-picture.ts';
import { readAlkalinity } from './alkalinity.ts';
import { takeUp } from './kept.ts';
import { type Reading, readDraft, type Trouble, troublesOf } from './reading.ts';
import { createSheet } from './sheet-state.ts';

type Answering = typeof import('./answering.ts');

export type WeighIn = ReturnType<typeof createWeighIn>;

/** White sugar stands for the bar until a kind of sugar is chosen; the sheet says so. */
const STANDARD_SUGAR = 'white-sugar';

export function createWeighIn() {
  const sheet = createSheet(takeUp());
  const reading = createMemo<Reading>(() => readDraft(sheet.draft(), readAlkalinity));
  const [parts, setParts] = createSignal<Answering>();
  const [lost, setLost] = createSignal(false);
  import('./answering.ts').then(
    (fetched) => setParts(() => fetched),
    () => setLost(true),
  );
  const answer = createMemo(() => {
    const { question } = reading();
    return question && parts()?.fit(question);
  });
  const result = createMemo<FitResult | undefined>(() => {
    const given = answer();
    return given?.ok ? given.value : undefined;
  });
  const troubles = createMemo<ReadonlyMap<string, Trouble>>(() => {
    const given = answer();
    if (given === undefined || given.ok) return reading().troubles;
    return new Map([...reading().troubles, ...troublesOf(given.problems, reading().weighedLots)]);
  });
  const [asked, setAsked] = createSignal<readonly string[]>();
  const workings = createMemo(() => {
    const figures = asked();
    const { question } = reading();
    return (
      figures &&
      question &&
      parts()
        ?.explainFit(question)
        .filter((one) => figures.includes(one.figure))
    );
  });
  const picture = createMemo(() => {
    const given = result();
    const { vesselL } = reading();
    return given && vesselL !== undefined ? pictureOf(given, vesselL, reading().shape) : undefined;
  });
  const sugarInProduct = createMemo<SugarInProduct | undefined>(() => {
    const given = result();
    return given && inProduct(given, sheet.draft().sugar.product ?? STANDARD_SUGAR, reading().sugarKg ?? 0);
  });
  return {
    sheet,
    parts,
    lost,
    reading,
    result,
    troubles,
    trouble: (field: string) => troubles().get(field),
    picture,
    sugarInProduct,
    workings,
    askWhy: (...figures: readonly string[]) => setAsked(figures),
    closeWhy: () => setAsked(undefined),
  };
}

/** The window in grams of the product asked about. */
function inProduct(given: FitResult, id: string, weighedKg: number): SugarInProduct | undefined {
  const product = sugarProduct(id);
  if (product === undefined) return undefined;
  return {
    productName: product.name,
    leastG: given.sugar.leastProductG,
    mostG: given.sugar.mostProductG,
    weighedG: weighedKg * 1000,
  };
}
