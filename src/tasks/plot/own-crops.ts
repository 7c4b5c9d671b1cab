// What the grower told of crops: figures of their own with their source, and what they hope to pick. The sums take both
// before anything of the tables.

import { readCrops } from '#engine/ground/crop-names.ts';
import { type Crop, ownCropsByName } from '#engine/ground/crops.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { Plot } from '#journal/fold.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { cropNamed } from '../ledger-answer.ts';

/** Crops the grower described in the record; of one name the newest counts. */
export function ownCropsOf(plot: Plot): ReadonlyMap<string, Crop> {
  return ownCropsByName(
    plot.ownCrops.map(({ body: { name, source, harvest, nNeed, nContent, pContent, kContent } }) => ({
      name,
      source,
      yieldKgPerM2: plain(harvest),
      nNeedGPerM2: plain(nNeed),
      nGPerKg: plain(nContent),
      pGPerKg: plain(pContent),
      kGPerKg: plain(kContent),
    })),
  );
}

function plain(told: Range | undefined): Range | undefined {
  return told && { low: told.low, likely: told.likely, high: told.high };
}

/** The newest goal for each crop that stands on the bed, by the crop's id; one for another crop is for another season. */
export function goalsOf({
  bed,
  crop,
  own,
  beforeDay,
}: {
  readonly bed: Bed;
  readonly crop: string | undefined;
  readonly own: ReadonlyMap<string, Crop>;
  readonly beforeDay: number;
}): Readonly<Record<string, number>> {
  const goals: Record<string, number> = {};
  for (const named of readCrops(crop ?? '')) {
    const known = cropNamed(named, own);
    const goal = bed.goals.findLast(
      ({ body, when }) =>
        when.dateDay < beforeDay && readCrops(body.crop ?? '').some(({ names }) => names[0] === named.names[0]),
    );
    if (known !== undefined && goal !== undefined) goals[known.id] = goal.body.goal.yieldKgPerM2;
  }
  return goals;
}
