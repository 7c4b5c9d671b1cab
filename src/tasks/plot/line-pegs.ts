// The pegs that stand, as the line shows them: number, word, next look, vessel. The word is peg.ts's.

import { upToFillLineL } from '#engine/pail/volume.ts';
import type { Plot } from '#journal/fold.ts';
import { basinOf } from '#plot/place/basin.ts';
import type { PegOnLine } from './line.ts';
import { standingPegs } from './peg.ts';

/** Every batch with something in its vessel, by peg number. */
export function pegsOnLine(plot: Plot, now: string): readonly PegOnLine[] {
  return standingPegs(plot, now)
    .toSorted((a, b) => a.batch.peg - b.batch.peg)
    .map(({ id, peg, day, state, held, nextLookOn, lookDue, hand, vessel, batch }) => {
      const told = batch.vessel === undefined ? undefined : plot.vessels.get(batch.vessel);
      const basin = basinOf(told, batch.presentL);
      return {
        batch: id,
        peg,
        number: batch.peg,
        day,
        state,
        held,
        nextLookOn,
        lookDue,
        hand,
        vesselName: vessel.name,
        basin,
        presentL: batch.presentL,
        usableL: vessel.usableL ?? upToFillLineL({ volumeL: basin.volumeL, gasRoomFraction: undefined }),
      };
    });
}
