// How a shown figure came about: what a reader needs to redo it by hand. One component renders it on
// every screen; nothing here computes, the rooms hand their own numbers over.

import type { Range } from '../quantity/range.ts';
import type { Origin } from '../rules/rule.ts';

/** One number that went into a figure. */
export interface Input {
  readonly label: string;
  readonly value: number | Range | string;
  /** SI unit as shown, '' for a pure number. */
  readonly unit: string;
  readonly source?: Origin;
}

/** The working of one figure: what it is, the formula in words, the inputs, the range, the sources. */
export interface Working {
  /** Dotted path of the figure in the task's result, such as `fill.volumeL`. */
  readonly figure: string;
  readonly label: string;
  readonly unit: string;
  readonly formula: string;
  readonly value: number | Range;
  readonly inputs: readonly Input[];
  readonly sources: readonly Origin[];
  /** What was assumed, what is not known. */
  readonly doubts: readonly string[];
}
