// What the page and the worker of the cover tell each other.

import type { CoverInput } from '#engine/ground/cover/input.ts';
import type { PlotCoverAnswer } from '#tasks/plot/cover.ts';

export interface CoverQuestion {
  readonly number: number;
  readonly input: CoverInput;
}

/** The answer without the plan itself: its sentences and pieces are all a sheet shows. */
export type CoverShown = Omit<PlotCoverAnswer, 'plan'>;

export type CoverReply =
  | { readonly number: number; readonly answer: CoverShown }
  | { readonly number: number; readonly failed: string };
