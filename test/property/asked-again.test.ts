// What a sheet asks of a plot is the same whenever it is asked: the first time or again, at this moment after another one, on
// a plot that grew entry by entry or on one folded at once. What is put together once for a plot or a batch changes no answer.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Kept } from '#journal/entry.ts';
import { fold, folding, type Plot } from '#journal/fold.ts';
import { fillOffers } from '#tasks/plot/fill.ts';
import { heapOffers } from '#tasks/plot/heap-offers.ts';
import { lineView } from '#tasks/plot/line.ts';
import { liquidsOf } from '#tasks/plot/liquid.ts';
import { movedBy } from '#tasks/plot/moved-figures.ts';
import { standingPegs } from '#tasks/plot/peg.ts';
import { pickList } from '#tasks/plot/pick.ts';
import { shedSheet, tagsOf } from '#tasks/plot/prints.ts';
import { openQuestions } from '#tasks/plot/questions.ts';
import { recordIndex } from '#tasks/plot/record-search.ts';
import { stockView } from '#tasks/plot/scraps.ts';
import { shelf } from '#tasks/plot/shelf.ts';
import { histories } from './histories.ts';

const SEED = 20261130;
const PLOT = 'sedge-corner';
const MOMENTS = ['2026-06-03T07:00', '2026-06-09', '2026-06-10T20:15', '2026-07-30T12:00', '2027-03-01'];

/** What the sheets ask, by what asks it. */
const ASKS: readonly ((plot: Plot, entries: readonly Kept[], now: string) => unknown)[] = [
  (plot, _, now) => liquidsOf(plot, now),
  (plot, _, now) => shelf({ plot, now }),
  (plot, _, now) => fillOffers({ plot, now }),
  (plot, _, now) => stockView({ plot, today: now.slice(0, 10) }),
  (plot, _, now) => heapOffers({ plot, today: now.slice(0, 10) }),
  (plot, _, now) => lineView({ plot, now }),
  (plot, _, now) => pickList({ plot, now }),
  (plot, _, now) => [tagsOf({ plot, now }), shedSheet({ plot, now })],
  (plot, _, now) => standingPegs(plot, now),
  (plot, entries, now) => openQuestions(plot, entries, { now, device: 'phone-1' }),
  (plot, entries) => recordIndex({ plot, entries, plotId: PLOT }).search({}),
  (plot) => movedBy(plot),
];

describe('what a sheet asks of a plot', () => {
  it('is the same asked again, after another moment, and after each entry, as asked once of the whole', () => {
    fc.assert(
      fc.property(histories, fc.infiniteStream(fc.nat()), (entries, chance) => {
        const take = () => chance.next().value;
        const further = folding();
        for (let count = 1; count <= entries.length; count += 1 + (take() % 4)) {
          const sofar = entries.slice(0, count);
          const grown = further(sofar, PLOT);
          for (let again = 0; again < 6; again++) {
            const ask = ASKS[take() % ASKS.length];
            const now = MOMENTS[take() % MOMENTS.length] ?? '';
            // Copies share nothing that was kept for the first.
            const apart = structuredClone(sofar);
            expect(ask?.(grown, sofar, now)).toEqual(ask?.(fold(apart, PLOT), apart, now));
          }
        }
      }),
      { seed: SEED, numRuns: 60, endOnFailure: true },
    );
  });
});
