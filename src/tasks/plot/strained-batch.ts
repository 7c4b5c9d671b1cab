// A batch of the record as the balance of straining takes it: what went in, how long it stood, what was drained. What a
// pour of it or its solids bring is worked out from here.

import type { StrainedBatch } from '#engine/bottle/liquid.ts';
import type { Plot } from '#journal/fold.ts';
import { daysIn } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { DROP_L, portionOf, sugarOf } from '#plot/batch/recipe.ts';
import type { BatchIn } from '../ledger-input.ts';
import { strainedOf } from '../ledger-supply.ts';

/** A batch as it was strained; one that was not is taken as it stood when something was last poured of it. */
export function strainedFrom(plot: Plot, batch: Batch): StrainedBatch {
  return strainedOf(batchAsked(plot, batch));
}

/** The same as a question: what was entered, before any table has spoken. */
export function batchAsked(plot: Plot, batch: Batch): Omit<BatchIn, 'name'> {
  const { contents, strainings, looks } = batch;
  const last = strainings.at(-1);
  const seen = looks.findLast(({ body }) => body.acidity !== undefined);
  const at = last?.when ?? lastPoured(plot, batch)?.act.when ?? seen?.when ?? batch.made;
  return {
    plants: contents.parts.map(portionOf),
    water: { volumeL: Math.max(contents.waterL, DROP_L), alkalinityMeqPerL: 0, ph: 7 },
    sugar: sugarOf(batch),
    starterL: contents.starterL,
    days: Math.max(0, daysIn(plot.facts.timeZone)(batch.filled, at)),
    // Nothing read: the wider figures of a batch that did not turn sour.
    finalPh: last?.body.acidity?.ph ?? seen?.body.acidity?.ph ?? Number.NaN,
    drainedL: batch.liquid.drainedL,
    solidsKg: strainings.reduce((total, { solidsKg }) => total + solidsKg, 0),
  };
}

type Pour = Bed['feeds'][number];
const known = new WeakMap<Plot['beds'], ReadonlyMap<string, Pour>>();

/** The last pour straight from a batch, bed by bed. */
function lastPoured({ beds }: Plot, { id }: Batch): Pour | undefined {
  const pours = known.get(beds) ?? lastPours(beds);
  known.set(beds, pours);
  return pours.get(id);
}

function lastPours(beds: Plot['beds']): ReadonlyMap<string, Pour> {
  const found = new Map<string, Pour>();
  for (const { feeds } of beds.values())
    for (const feed of feeds)
      for (const { batch } of feed.act.body.from) if (batch !== undefined) found.set(batch, feed);
  return found;
}
