// What went into a heap, row by row: lots, materials, strained solids and lost batches of the record, each with its
// figures and its mass. What cannot be counted is listed by name, never passed over.

import { strainedBatch } from '#engine/bottle/strained.ts';
import {
  type Ingredient,
  massOfVolume,
  resolveIngredient,
  volumeOfMass,
  type Weighed,
} from '#engine/heap/ingredient.ts';
import { mixOf } from '#engine/heap/mix.ts';
import { asRange, point, type Range, scale, sum } from '#engine/quantity/range.ts';
import { material } from '#engine/tables/index.ts';
import type { ActOf } from '#journal/act.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import type { Batch } from '#journal/parts/batch.ts';
import { strainedFrom } from '#plot/batch/strained.ts';
import { heapNames } from '#words/en/heap-sheet.ts';
import { solidsPortion } from '../ledger-supply.ts';
import { pegName } from './batch-name.ts';

type Told = Body<'heap.fed'>['ingredients'][number];

/** A litre of a whole batch, plants and water together. @practice */
const BATCH_KG_PER_L = 1;

/** One row of a heap: everything of one kind that went in, added up. */
export interface HeapRowView {
  readonly key: string;
  readonly name: string;
  /** Amounts as they were typed, oldest first. */
  readonly typed: readonly string[];
  /** Undefined where the row cannot be counted. */
  readonly weighed: Weighed | undefined;
  /** Loose litres: as told by barrows and buckets, else from the mass; undefined where neither tells. */
  readonly volumeL: Range | undefined;
}

/** Every row of some feedings, in the order in which each kind first came. */
export function heapRows(plot: Plot, feedings: readonly ActOf<'heap.fed'>[]): readonly HeapRowView[] {
  const rows = new Map<string, HeapRowView>();
  for (const { body } of feedings) {
    for (const told of body.ingredients) {
      const one = rowOf(plot, told);
      const had = rows.get(one.key);
      rows.set(one.key, had === undefined ? one : together(had, one));
    }
  }
  return [...rows.values()];
}

function together(a: HeapRowView, b: HeapRowView): HeapRowView {
  const weighed =
    a.weighed && b.weighed
      ? { ingredient: a.weighed.ingredient, massKg: sum([a.weighed.massKg, b.weighed.massKg]) }
      : undefined;
  const volumeL = a.volumeL && b.volumeL ? sum([a.volumeL, b.volumeL]) : undefined;
  return { ...a, typed: [...a.typed, ...b.typed], weighed, volumeL };
}

function rowOf(plot: Plot, told: Told): HeapRowView {
  const known = ingredientOf(plot, told);
  const massKg = known.ingredient && massOf(told, known.ingredient);
  return {
    key: `${told.batch ?? told.lot ?? told.material ?? told.name}`,
    name: known.name,
    typed: [told.amount.typed],
    weighed: known.ingredient && massKg ? { ingredient: known.ingredient, massKg } : undefined,
    volumeL:
      'volumeL' in told.amount
        ? point(told.amount.volumeL)
        : known.ingredient && massKg && volumeOfMass(known.ingredient, massKg),
  };
}

interface Named {
  readonly name: string;
  readonly ingredient: Ingredient | undefined;
}

function ingredientOf(plot: Plot, told: Told): Named {
  if (told.batch !== undefined) return batchIngredient(plot, plot.batches.get(told.batch));
  const lot = told.lot === undefined ? undefined : plot.lots.get(told.lot)?.act.body;
  const id = told.material ?? lot?.material;
  const analysis = { ...lot?.analysis, ...told.analysis };
  const row = id === undefined ? undefined : material(id);
  const name = told.name ?? lot?.name ?? row?.name ?? id ?? heapNames.unnamed;
  if (row === undefined && analysis.dryMatter === undefined) return { name, ingredient: undefined };
  return {
    name,
    ingredient: resolveIngredient({
      material: row?.id,
      name,
      dryMatter: analysis.dryMatter,
      nPercentDm: analysis.nPercentDm,
      kPercentDm: analysis.kPercentDm,
      cn: analysis.cn,
      treated: lot?.slip?.treated,
    }),
  };
}

/**
 * The solids of a strained batch by its own balance; or, where it was tipped whole, all its plants with their water and
 * the C:N they went in with.
 */
function batchIngredient(plot: Plot, batch: Batch | undefined): Named {
  if (batch === undefined) return { name: heapNames.unnamed, ingredient: undefined };
  const name = heapNames.solids(pegName(plot, batch));
  if (batch.strainings.length > 0) {
    return {
      name,
      ingredient: resolveIngredient({ ...solidsFigures(plot, batch), material: 'strained-solids', name }),
    };
  }
  const whole = heapNames.batch(pegName(plot, batch));
  const { parts: tipped, waterL } = batch.tipped.parts.length > 0 ? batch.tipped : batch.contents;
  const parts = tipped.flatMap(({ material: id, name: own, analysis, massKg }) =>
    id === undefined || material(id) === undefined
      ? []
      : [{ ingredient: resolveIngredient({ ...analysis, material: id, name: own }), massKg: point(massKg) }],
  );
  if (parts.length === 0) return { name: whole, ingredient: undefined };
  const mix = mixOf(parts);
  const wetKg = mix.massKg.likely + waterL;
  if (!(mix.massKg.likely > 0)) return { name: whole, ingredient: undefined };
  return {
    name: whole,
    ingredient: resolveIngredient({ name: whole, dryMatter: scale(mix.dryKg, 1 / wetKg), cn: mix.cn }),
  };
}

/** Solids drier than this were not weighed whole. @practice our caution, no source: pressed by hand they hold more water */
const DRIEST_FRACTION = 0.5;

/** What is left in the solids of a batch, and its own C:N; what is not known is left to the materials table. */
function solidsFigures(plot: Plot, batch: Batch) {
  const strained = strainedFrom(plot, batch);
  const { solidsCn } = strainedBatch(strained);
  const cn = solidsCn.known ? { cn: solidsCn.cn } : {};
  const own = solidsPortion(strained, strained.solidsKg);
  if (own === undefined || !(asRange(own.dryMatter ?? 1).likely < DRIEST_FRACTION)) return cn;
  const { dryMatter, nPercentDm, kPercentDm } = own;
  return { ...cn, dryMatter, nPercentDm, kPercentDm };
}

function massOf({ amount, batch }: Told, { bulkKgPerM3 }: Ingredient): Range | undefined {
  if ('massKg' in amount) return amount.bandKg ?? point(amount.massKg);
  if (bulkKgPerM3 !== undefined) return massOfVolume({ volumeL: amount.volumeL, bulkKgPerM3 });
  return batch === undefined ? undefined : point(amount.volumeL * BATCH_KG_PER_L);
}
