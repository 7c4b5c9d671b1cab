// The word `sour`: what to expect of a batch, and what the looks say. Schema, call and result; the same for form and
// command line. The steps stand beside this file: sour-input, sour-open, sour-answer, sour-cautions, sour-likely.

import { holdDays } from '#engine/souring/lines.ts';
import { warmthUntil } from '#engine/souring/warmth-by-day.ts';
import { workForecast } from '#engine/working/forecast.ts';
import { workSourLine } from '#engine/working/souring.ts';
import type { Working } from '#engine/working/working.ts';
import type { Problem } from './problem.ts';
import { answerSour } from './sour-answer.ts';
import { type OpenedSour, openSour, runSour } from './sour-open.ts';
import type { SourResult } from './sour-result.ts';

export { answerSour } from './sour-answer.ts';
export { sourSchema } from './sour-input.ts';
export { type LikelySour, likelySour } from './sour-likely.ts';
export { DRAWS, type OpenedSour, openSour, runSour } from './sour-open.ts';
export type { DayOfSour, DayRange, Mark, Question, SourResult } from './sour-result.ts';

type Answer =
  | { readonly ok: true; readonly value: SourResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Fewer draws are quicker and coarser; `quick` makes no new draws for the looks and tries no rescue. */
export interface SourOptions {
  readonly draws?: number;
  readonly quick?: boolean;
}

function whole(opened: OpenedSour, { draws, quick }: SourOptions): SourResult {
  const members = runSour(opened, 0, draws ?? opened.draws);
  return answerSour(opened, members, opened.input.looks, undefined, { quick: quick === true });
}

/** What to expect, and what the looks say: any input in, the contract's answer or all its problems out. */
export function sour(input: unknown, options: SourOptions = {}): Answer {
  const asked = openSour(input);
  return asked.ok ? { ok: true, value: whole(asked.opened, options) } : asked;
}

/** The workings of every figure of the answer; none when the input has problems. */
export function explainSour(input: unknown, options: SourOptions = {}): readonly Working[] {
  const asked = openSour(input);
  if (!asked.ok) return [];
  return explainAnswer(asked.opened, whole(asked.opened, options));
}

/** The workings of an answer that is there already. */
export function explainAnswer(opened: OpenedSour, answer: SourResult): readonly Working[] {
  return [
    ...workForecast({
      ...answer,
      mixture: opened.known.batch.mixture,
      opennessFraction: opened.known.batch.opennessFraction,
      drawsCount: answer.draws,
      effectiveDrawsCount: answer.effective,
    }),
    ...workSourLine({
      temperatureC: answer.meanC.soFar,
      told: warmthUntil(opened.known.batch.hourlyC, answer.today),
      acidSinceDay: answer.heldFromDay === undefined ? undefined : answer.heldFromDay - holdDays(answer.meanC.soFar),
    }),
  ];
}
