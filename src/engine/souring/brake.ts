// What holds a batch back, as far as the forecast shows: one thing, the first that applies. Ranked options against
// it are the rescue's business.

import { HELD_PH } from './lines.ts';
import type { Forecast } from './model/forecast.ts';

/** cold, warm: the place · sugar: it runs out · dry: too little water · acid: its own acid ends it, as it ought to. */
export type Brake = 'cold' | 'warm' | 'sugar' | 'dry' | 'acid';

/** Lactic bacteria of such batches slow down above this. @memory */
const WARM_C = 38;
const COLD_C = 15;
/** Less sugar than this is none to speak of, g/L. */
const GONE_G_PER_L = 1;
const DRY_FRACTION = 0.35;

/** What to weigh: the forecast, the mean warmth of its days, how dry the mixture is. */
export interface Braked {
  readonly expected: Forecast;
  readonly meanC: number;
  readonly dryMatterFraction: number;
}

/** What holds the batch back. A warmth that is not known counts as cold. @practice our caution, no source */
export function brakeOf({ expected, meanC, dryMatterFraction }: Braked): Brake {
  const last = expected.days.at(-1);
  const short = !(expected.plateauPh.likely <= HELD_PH);
  if (meanC > WARM_C) return 'warm';
  if (dryMatterFraction > DRY_FRACTION && short) return 'dry';
  if (short && last !== undefined && last.sugarGPerL.likely < GONE_G_PER_L) return 'sugar';
  if (!(meanC >= COLD_C)) return 'cold';
  return 'acid';
}
