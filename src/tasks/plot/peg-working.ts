// How the figures beside a peg's sour line came about, for "why?": the days it is held against and the mean temperature.

import { workSourLine } from '#engine/working/souring.ts';
import type { Working } from '#engine/working/working.ts';
import type { PegView } from './peg.ts';

/** The workings of one peg as it stands. */
export function explainPeg({ temperature, judgement }: PegView): readonly Working[] {
  const since = judgement.reasons.find(({ code }) => code === 'acid-since' || code === 'held')?.values.sinceDay;
  return workSourLine({
    temperatureC: temperature?.meanC ?? Number.NaN,
    told: temperature?.told ?? [],
    acidSinceDay: typeof since === 'number' ? since : undefined,
  });
}
