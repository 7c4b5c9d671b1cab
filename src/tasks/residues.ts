// What the crop before leaves to the one that follows in the same year, by the tables: for the word `ledger`, where the
// crop is typed, and for a plot, where the record tells what was cleared. What takes from a need is ground/need.ts.

import { readCrops } from '#engine/ground/crop-names.ts';
import { cropOf } from '#engine/ground/crops.ts';
import { point, type Range } from '#engine/quantity/range.ts';
import type { Bed } from '#journal/parts/beds.ts';

/** Nitrogen, g/m², that the residues of a crop leave; of several named, each on its share. Nothing where no table tells. */
export function residuesOf(crop: string | undefined): Range | undefined {
  const known = readCrops(crop ?? '').flatMap(({ id }) => (id === undefined ? [] : (cropOf(id) ?? [])));
  const left = known.flatMap(({ residueNGPerM2 }) => residueNGPerM2 ?? []);
  return left.length === 0 ? undefined : point(left.reduce((total, one) => total + one, 0) / known.length);
}

/** The crop that was cleared off the bed for a planting, in the same year; nothing where nobody told of a clearing. */
export function cropBefore(bed: Bed, planted: Bed['plantings'][number] | undefined): string | undefined {
  if (planted === undefined) return undefined;
  const earlier = bed.plantings.slice(0, bed.plantings.indexOf(planted));
  const at = earlier.findLastIndex(({ body }) => body.act === 'cleared');
  const cleared = earlier[at];
  if (cleared === undefined || yearOf(cleared) !== yearOf(planted)) return undefined;
  return cleared.body.crop ?? earlier.slice(0, at).findLast(({ body }) => body.act !== 'cleared')?.body.crop;
}

/** Crops that stood on the bed in the year before a planting; nothing where the record tells of none. */
export function cropsYearBefore(bed: Bed, planted: Bed['plantings'][number] | undefined): string | undefined {
  if (planted === undefined) return undefined;
  const year = `${Number(yearOf(planted)) - 1}`;
  return bed.plantings.findLast((one) => one.body.act !== 'cleared' && yearOf(one) === year)?.body.crop;
}

function yearOf({ when }: Bed['plantings'][number]): string {
  return when.on.slice(0, 4);
}
