// The answer of the word `sour`, field by field. The contract's names keep the contract's meaning: in `days` the plain
// figures are the likely ones, and the ranges stand beside them.

import type { Range } from '#engine/quantity/range.ts';
import type { Assumed } from '#engine/scraps/part.ts';
import type { Brake } from '#engine/souring/brake.ts';
import type { LidKind } from '#engine/souring/gas/lid.ts';
import type { Look } from '#engine/souring/look.ts';
import type { DayBand } from '#engine/souring/model/ensemble.ts';
import type { Belief } from '#engine/souring/model/learn.ts';
import type { BeliefMoved, ReadingBeside } from '#engine/souring/read-off.ts';
import type { State } from '#engine/souring/reason.ts';
import type { Rescue } from '#engine/souring/rescue.ts';
import type { DayOfWarmth } from '#engine/souring/warmth-by-day.ts';
import type { Caution } from './caution.ts';

/** What to expect on one day. Gas is what is made from this day to the next. */
export interface DayOfSour {
  readonly day: number;
  readonly ph: Range;
  readonly sugarGPerL: number;
  readonly sugarRangeGPerL: Range;
  readonly lacticGPerL: number;
  readonly lacticRangeGPerL: Range;
  readonly aceticRangeGPerL: Range;
  readonly ethanolRangeGPerL: Range;
  readonly ammoniaNRangeMgPerL: Range;
  readonly gasLPerDay: number;
  readonly gasRangeLPerDay: Range;
}

/** Days within which something comes. */
export interface DayRange extends Range {
  /** Fewer than nine in ten get there within the days that were run: `high` is the last of those, and may be later. */
  readonly openEnded: boolean;
}

/** One entry to ask about; it was kept as it was typed. */
export interface Question {
  readonly about: string;
  readonly value: unknown;
  readonly text: string;
}

export const MARKS = ['4.6', '4.2', '4.0', 'ready', 'held'] as const;
/** What a batch may come to: three lines of acidity, ready, held. */
export type Mark = (typeof MARKS)[number];

export interface SourResult {
  readonly days: readonly DayOfSour[];
  /** When it passes each pH; null where fewer than half of the draws do. */
  readonly reach: Readonly<Record<'4.6' | '4.2' | '4.0', DayRange | null>>;
  readonly plateauPh: Range;
  readonly readyDay: DayRange | null;
  readonly heldDay: DayRange | null;
  /** Share of the draws that come to each within `runDays`. */
  readonly reachedFraction: Readonly<Record<Mark, number>>;
  readonly runDays: number;

  readonly state: State;
  readonly held: boolean;
  /** The day from which it counts as held by its readings; absent while that clock does not run. */
  readonly heldFromDay?: number;
  readonly nextLookDay?: number;
  readonly reasons: readonly string[];
  readonly wouldChange: readonly string[];
  /** Those of the reasons that only the model gives. */
  readonly beside: readonly string[];
  /** Ways to save it, least effort first; none unless it is slow, doubtful or lost. */
  readonly rescues: readonly (Rescue & { readonly text: string })[];
  readonly questions: readonly Question[];
  readonly today: number;
  readonly looks: readonly Look[];

  /** The acidity every six hours, for drawing. */
  readonly band: readonly { readonly day: number; readonly ph: Range }[];
  readonly temperatureC: readonly DayOfWarmth[];
  /** Mean of the liquid up to today, which the judgement runs with, and over the days asked. */
  readonly meanC: { readonly soFar: number; readonly allDays: number };
  readonly readings: readonly (ReadingBeside & { readonly inBand: boolean | null })[];
  readonly beliefs: readonly BeliefMoved[];
  /** What the next batch of the like may start from; carriedOver of engine/souring/model/learn.ts. */
  readonly belief: Belief;
  readonly draws: number;
  /** Evenly weighted draws that would say as much. */
  readonly effective: number;

  readonly brake: Brake;
  readonly lid: LidKind;
  readonly liquidL: number;
  readonly assumed: readonly Assumed[];
  readonly cautions: readonly Caution[];
}

/** A band of days as the contract gives it: null where fewer than half of the draws get there. */
export function dayRange({ low, likely, high, reachedFraction }: DayBand, runDays: number): DayRange | null {
  if (!(reachedFraction >= 0.5) || low === undefined || likely === undefined) return null;
  return { low, likely, high: high ?? runDays, openEnded: high === undefined };
}
