// How the figures beside a peg's sour line came about, for "why?": the days it is held against and the mean temperature.

import { acidSinceDay } from '#engine/souring/outlook.ts';
import { workSourLine } from '#engine/working/souring.ts';
import type { Working } from '#engine/working/working.ts';
import type { PegView } from './peg.ts';

/** The workings of one peg as it stands. */
export function explainPeg({ temperature, judgement }: PegView): readonly Working[] {
  return workSourLine({
    temperatureC: temperature?.meanC ?? Number.NaN,
    told: temperature?.told ?? [],
    acidSinceDay: acidSinceDay(judgement.reasons),
  });
}
