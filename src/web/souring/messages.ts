// What the page and its souring worker say to each other. Plain data both ways.

import type { Working } from '#engine/working/working.ts';
import type { Taught } from '#tasks/plot/lessons.ts';
import type { SourResult } from '#tasks/sour.ts';

/** A question as the word `sour` takes it, checked where it is worked out, and the finished batches it may learn from. */
export interface SourJob {
  readonly ask: unknown;
  readonly lessons: readonly unknown[];
}

export type ToWorker =
  /** A newer job of a place stops the older one of that place; without a job the place is given up. */
  | { readonly kind: 'work'; readonly place: string; readonly job: SourJob | undefined; readonly number: number }
  | { readonly kind: 'explain'; readonly place: string; readonly number: number };

/** How long each part took in the worker, ms. */
export interface Spent {
  readonly drawnMs: number;
  readonly weighedMs: number;
}

export type FromWorker =
  | {
      readonly kind: 'answer';
      readonly place: string;
      readonly number: number;
      readonly draws: number;
      readonly isWhole: boolean;
      readonly result: SourResult;
      readonly taught: readonly Taught[] | undefined;
      readonly spent: Spent;
    }
  | {
      readonly kind: 'workings';
      readonly place: string;
      readonly number: number;
      readonly workings: readonly Working[];
    }
  | { readonly kind: 'failed'; readonly place: string; readonly number: number; readonly why: string };
