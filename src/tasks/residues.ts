// What the crop before leaves to the one that follows in the same growing year, by the tables: for the word `ledger`, where the
// crop is typed, and for a plot, where the record tells what was cleared. What takes from a need is ground/need.ts.

import { readCrops } from '#engine/ground/crop-names.ts';
import { cropOf } from '#engine/ground/crops.ts';
import { point, type Range } from '#engine/quantity/range.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { growingYearsApart } from '#plot/ground/season.ts';
import type { Hemisphere } from '#plot/place/hemisphere.ts';

/** Nitrogen, g/m², that the residues of a crop leave; of several named, each on its share. Nothing where no table tells. */
export function residuesOf(crop: string | undefined): Range | undefined {
  const known = readCrops(crop ?? '').flatMap(({ id }) => (id === undefined ? [] : (cropOf(id) ?? [])));
  const left = known.flatMap(({ residueNGPerM2 }) => residueNGPerM2 ?? []);
  return left.length === 0 ? undefined : point(left.reduce((total, one) => total + one, 0) / known.length);
}

/** Growing years between two acts, by the hemisphere of the plot. */
type YearsApart = (earlier: Act, later: Act) => number;
type Act = Bed['plantings'][number];

/** Counts growing years on one side of the equator. */
export function yearsApartOn(hemisphere: Hemisphere | undefined): YearsApart {
  return (earlier, later) => growingYearsApart(earlier.when.dateDay, later.when.dateDay, hemisphere);
}

/** The crop that was cleared off the bed for a planting, in the same year; nothing where nobody told of a clearing. */
export function cropBefore(bed: Bed, planted: Act | undefined, yearsApart: YearsApart): string | undefined {
  if (planted === undefined) return undefined;
  const earlier = bed.plantings.slice(0, bed.plantings.indexOf(planted));
  const at = earlier.findLastIndex(({ body }) => body.act === 'cleared');
  const cleared = earlier[at];
  if (cleared === undefined || yearsApart(cleared, planted) !== 0) return undefined;
  return cleared.body.crop ?? earlier.slice(0, at).findLast(({ body }) => body.act !== 'cleared')?.body.crop;
}

/** Crops that stood on the bed in the year before a planting; nothing where the record tells of none. */
export function cropsYearBefore(bed: Bed, planted: Act | undefined, yearsApart: YearsApart): string | undefined {
  if (planted === undefined) return undefined;
  const earlier = bed.plantings.slice(0, bed.plantings.indexOf(planted));
  return earlier.findLast((one) => one.body.act !== 'cleared' && yearsApart(one, planted) === 1)?.body.crop;
}
