// What a judgement can say for itself: the reasons behind the word, and what would change it. Codes with
// their values; the sentences stand in words.

import type { Origin, Values } from '../rules/rule.ts';

/** The word for a batch; the order from good to bad is that of `STATES`. */
export const STATES = ['ready', 'souring', 'slow', 'doubtful', 'unknown', 'lost'] as const;
export type State = (typeof STATES)[number];

export type ReasonCode =
  | 'coloured-fuzz'
  | 'white-fuzz-twice'
  | 'larvae-and-foul'
  | 'foul-twice'
  | 'foul-and-not-falling'
  | 'climbed'
  | 'not-readable'
  | 'no-acidity'
  | 'no-look'
  | 'foul-on-old-reading'
  | 'foul-once'
  | 'noses-differ'
  | 'readers-differ'
  | 'climbed-a-little'
  | 'stuck'
  | 'two-low-readings'
  | 'line-passed'
  | 'falling'
  | 'not-falling-yet'
  | 'one-reading'
  | 'acid-since'
  | 'too-cold-to-hold'
  | 'held'
  | 'white-fuzz-once'
  | 'flat-white'
  | 'larvae'
  | 'reading-is-old'
  | 'above-expected'
  | 'below-expected'
  | 'buffer-rises';

export type ChangeCode =
  | 'two-low-readings-make-it-ready'
  | 'line-makes-it-slow'
  | 'foul-word-makes-it-doubtful'
  | 'climb-makes-it-lost'
  | 'time-makes-it-held'
  | 'acid-makes-it-held'
  | 'second-nose-decides'
  | 'second-reading-decides'
  | 'reading-makes-it-known'
  | 'reading-in-band-answers'
  | 'nothing-brings-it-back';

/** One reason, with what its sentence needs. */
export interface Reason<Code extends string> {
  readonly code: Code;
  readonly values: Values;
  readonly source: Origin;
}

/** A reason of our own caution. @practice our caution, no source */
export function because(code: ReasonCode, values: Values = {}): Reason<ReasonCode> {
  return { code, values, source: 'our-caution' };
}

/** A change of our own caution. @practice our caution, no source */
export function change(code: ChangeCode, values: Values = {}): Reason<ChangeCode> {
  return { code, values, source: 'our-caution' };
}
