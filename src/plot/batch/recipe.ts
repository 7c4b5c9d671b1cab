// A batch of the record on its way to the engine: what was entered of it, and the same with every figure in place. Every question about a
// batch starts here: its layers, the sugar left, its straining, its forecast.

import type { Mix, SugarIn } from '#engine/pail/recipe.ts';
import type { Assumed, Part, Portion } from '#engine/scraps/part.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarOrWhite, sugarProduct } from '#engine/scraps/sugar.ts';
import { assumedOfWater, assumedUsual, usual, usualBand } from '#engine/scraps/usual.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { BatchPart } from '#journal/parts/contents.ts';

/** A balance needs some water; a batch without any is asked with a drop. @arithmetic */
export const DROP_L = 1e-6;

/** What was entered of a batch, before any table has spoken. */
export interface BatchEntered {
  readonly plants: readonly Portion[];
  readonly water: { readonly volumeL: number; readonly alkalinityMeqPerL?: number | undefined };
  readonly sugar: { readonly product: string; readonly massKg: number };
  readonly starterL: number;
}

/** What was entered of a batch: what every question about it starts from. */
export function enteredOf(plot: Plot, batch: Batch): BatchEntered {
  const { parts, waterL, starterL } = batch.contents;
  return {
    plants: parts.map(portionOf),
    water: { volumeL: waterL, alkalinityMeqPerL: alkalinityOf(plot, batch) },
    sugar: sugarOf(batch),
    starterL,
  };
}

/** Whether its dry matter is known, from the table or from an analysis. */
export function isKnown({ material: id, analysis }: BatchPart): boolean {
  return (id !== undefined && material(id) !== undefined) || analysis?.dryMatter !== undefined;
}

/** A part of a batch as a lot of scraps. */
function portionOf(part: BatchPart): Portion {
  const { material: id, name, treated, analysis, massKg } = part;
  const row = id === undefined ? undefined : material(id);
  return {
    ...(analysis ?? {}),
    ...(row === undefined ? {} : { material: row.id }),
    ...(isKnown(part) ? {} : { dryMatter: usualBand('part.dryMatter') }),
    ...(name === undefined ? (row === undefined && id !== undefined ? { name: id } : {}) : { name }),
    ...(treated === undefined ? {} : { treated }),
    massKg,
  };
}

/** A batch as the pail's rooms take it; its starter counts as water. */
export function mixOf(plot: Plot, batch: Batch): Omit<Mix, 'targetPh'> {
  const { plants, water, sugar, starterL } = enteredOf(plot, batch);
  return {
    plants: plants.map(resolvePart),
    water: {
      volumeL: water.volumeL + starterL,
      alkalinityMeqPerL: water.alkalinityMeqPerL ?? usual('water.alkalinityMeqPerL').likely,
      ph: usual('water.ph').likely,
    },
    sugar: { product: sugarOrWhite(sugar.product), massKg: sugar.massKg },
  };
}

/** The plants of a batch with every figure in place. */
export function plantsOf({ contents }: Batch): readonly Part[] {
  return contents.parts.map((part) => resolvePart(portionOf(part)));
}

/** What was taken of a batch that nobody told: of its water, and of parts that no table knows. */
export function assumedIn(plot: Plot, batch: Batch): readonly Assumed[] {
  return [...assumedOfWater({ alkalinityMeqPerL: alkalinityOf(plot, batch) }), ...assumedParts(batch)];
}

/** Parts whose dry matter was taken as something. */
export function assumedParts({ contents }: Batch): readonly Assumed[] {
  return contents.parts
    .filter((part) => !isKnown(part))
    .map((part) => assumedUsual('part.dryMatter', { field: 'dryMatter', material: resolvePart(portionOf(part)).name }));
}

/** Each sugar of it; one that the table does not have takes the room of white sugar. */
export function sugarsOf({ contents }: Batch): readonly SugarIn[] {
  return contents.sugar.map(({ product: id, massKg }) => ({
    product: { ...sugarOrWhite(id), id, ...(sugarProduct(id) === undefined && { name: id }) },
    massKg,
  }));
}

/** The sugars as one: that of which there was most, with the weight of all. */
function sugarOf({ contents }: Batch): { readonly product: string; readonly massKg: number } {
  const most = [...contents.sugar].sort((a, b) => b.massKg - a.massKg)[0];
  const known = most !== undefined && sugarProduct(most.product) !== undefined;
  return {
    product: known ? most.product : 'white-sugar',
    massKg: contents.sugar.reduce((total, { massKg }) => total + massKg, 0),
  };
}

/** Alkalinity of its water as reported; of several reports the hardest counts. @practice our caution, no source */
function alkalinityOf(plot: Plot, { contents }: Batch): number | undefined {
  const told = contents.waters.flatMap((id) => {
    const report = plot.waters.find((one) => one.id === id)?.body.alkalinity;
    return report === undefined ? [] : [report.alkalinityMeqPerL];
  });
  return told.length > 0 ? Math.max(...told) : undefined;
}
