// The likely line of a batch alone: one run with likely values, for a screen that answers each touch at once. It has
// no band; the whole answer follows it.

import { at, course, dayBelow, KEPT_EVERY_H } from '#engine/souring/model/course.ts';
import { likelyParameters } from '#engine/souring/model/parameters.ts';
import type { OpenedSour } from './sour-open.ts';

/** One run read off: every six hours, and the day it passes each line; null where it does not. */
export interface LikelySour {
  readonly days: readonly { readonly day: number; readonly ph: number; readonly sugarGPerL: number }[];
  readonly reach: Readonly<Record<'4.6' | '4.2' | '4.0', number | null>>;
  readonly plateauPh: number;
}

/** The likely line of an opened batch. */
export function likelySour(opened: OpenedSour): LikelySour {
  const { days } = opened.input;
  const run = course(opened.known.batch, likelyParameters, days);
  const points = Math.round((days * 24) / KEPT_EVERY_H) + 1;
  return {
    days: Array.from({ length: points }, (_, point) => {
      const day = (point * KEPT_EVERY_H) / 24;
      return { day, ph: at(run, day, 'ph'), sugarGPerL: at(run, day, 'sugarGPerL') };
    }),
    reach: {
      '4.6': dayBelow(run, 4.6) ?? null,
      '4.2': dayBelow(run, 4.2) ?? null,
      '4.0': dayBelow(run, 4) ?? null,
    },
    plateauPh: run.ph.reduce((a, b) => Math.min(a, b), 14),
  };
}
