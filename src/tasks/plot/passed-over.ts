// Stops that somebody passed over with a reason, bed by bed: at the can, or when the batch was filled that went on the
// bed. The mark stays while the planting stands. Holds that were only shown leave no mark.

import type { Plot } from '#journal/fold.ts';
import type { Bed } from '#journal/parts/beds.ts';

/** Kept with a hold that the card showed and that was poured over: no stop, and no reason asked. */
export const HOLD_SHOWN = 'the hold stood on the can card, and it was poured';

/** One stop that was passed over for a bed. */
export interface PassedMark {
  readonly rule: string;
  readonly reason: string;
  readonly on: string;
}

/** What was passed over for a bed since it was last planted or cleared, oldest first. */
export function passedOverOn(plot: Plot, bed: Bed): readonly PassedMark[] {
  const since = bed.plantings.at(-1)?.when.dateDay ?? Number.NEGATIVE_INFINITY;
  const marks = bed.feeds
    .filter(({ counts, act }) => counts !== 'no' && act.when.dateDay >= since)
    .flatMap(({ act }) => {
      const { on } = act.when;
      const atTheCan = (act.body.overrode ?? []).filter(({ reason }) => reason !== HOLD_SHOWN);
      const atTheFill = act.body.from.flatMap(({ batch, bottle }) => {
        const from = batch ?? plot.bottles.get(bottle ?? '')?.batch;
        return plot.batches.get(from ?? '')?.overrode ?? [];
      });
      return [...atTheCan, ...atTheFill].map(({ rule, reason }) => ({ rule, reason, on }));
    });
  const firsts = new Map<string, PassedMark>();
  for (const mark of marks) {
    const key = `${mark.rule} ${mark.reason}`;
    if (!firsts.has(key)) firsts.set(key, mark);
  }
  return [...firsts.values()];
}
