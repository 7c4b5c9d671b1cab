// A batch of the record as the balance of straining takes it: what went in, how long it stood, what was drained. What a
// pour of it or its solids bring is worked out from here.

import type { StrainedBatch } from '#engine/bottle/liquid.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarOrWhite } from '#engine/scraps/sugar.ts';
import type { Plot } from '#journal/fold.ts';
import { daysIn } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { type BatchEntered, DROP_L, enteredOf } from './recipe.ts';

/** What was entered of a strained batch, before any table has spoken: out of the record, or of a question that was typed. */
export interface StrainedEntered extends Omit<BatchEntered, 'sugar'> {
  readonly sugar?: BatchEntered['sugar'] | undefined;
  readonly days: number;
  readonly finalPh: number;
  readonly drainedL: number;
  readonly solidsKg?: number | undefined;
}

/** A batch as it was strained; one that was not is taken as it stood when something was last poured of it. */
export function strainedFrom(plot: Plot, batch: Batch): StrainedBatch {
  return strainedOf(strainedEntered(plot, batch));
}

/** What was entered, as the bottle's rooms take it; white sugar stands in where no product is named: 0 kg of it. */
export function strainedOf({ plants, water, sugar, solidsKg = 0, ...rest }: StrainedEntered): StrainedBatch {
  const { starterL, days, finalPh, drainedL } = rest;
  return {
    plants: plants.map(resolvePart),
    waterL: water.volumeL,
    sugar: { product: sugarOrWhite(sugar?.product), massKg: sugar?.massKg ?? 0 },
    starterL,
    days,
    finalPh,
    drainedL,
    solidsKg,
  };
}

/** What was entered of a batch up to its straining. */
export function strainedEntered(plot: Plot, batch: Batch) {
  const { strainings, looks } = batch;
  const last = strainings.at(-1);
  const seen = looks.findLast(({ body }) => body.acidity !== undefined);
  const at = last?.when ?? lastPoured(plot, batch)?.act.when ?? seen?.when ?? batch.made;
  const entered = enteredOf(plot, batch);
  return {
    ...entered,
    water: { ...entered.water, volumeL: Math.max(entered.water.volumeL, DROP_L) },
    days: Math.max(0, daysIn(plot.facts.timeZone)(batch.filled, at)),
    // Nothing read: the wider figures of a batch that did not turn sour.
    finalPh: last?.body.acidity?.ph ?? seen?.body.acidity?.ph ?? Number.NaN,
    drainedL: batch.liquid.drainedL,
    solidsKg: strainings.reduce((total, { solidsKg }) => total + solidsKg, 0),
  } satisfies StrainedEntered;
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
