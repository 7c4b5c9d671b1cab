// What went on a bed besides liquid, out of the record, as supplies: dressings by their material or analysis, a green
// manure by weight or by the area of the bed, products by their label. Pours and the sum stand in ledger.ts.

import { greenManureSupply } from '#engine/ground/credits.ts';
import { productSupply, type Supply } from '#engine/ground/supply.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { ActOf } from '#journal/act.ts';
import type { Plot } from '#journal/fold.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { strainedFrom } from '#plot/batch/strained.ts';
import { areaOf } from '#plot/place/bed-area.ts';
import { type DressingGiven, dressingSupply } from '../ledger-supply.ts';
import { heapCompost } from './heap-compost.ts';

/** Compost of a heap on a day, as its own mix makes it. */
export type Composts = (heap: string, on: string) => Partial<DressingGiven>;

/** Works each heap out once a day, whatever number of beds gets of it. */
export function compostsOf(plot: Plot): Composts {
  const made = new Map<string, Partial<DressingGiven>>();
  return (heap, today) => {
    const key = `${today} ${heap}`;
    const found = made.get(key) ?? heapCompost({ plot, heap, today });
    made.set(key, found);
    return found;
  };
}

/** Dressings of a bed that a sum counts. */
export function dressingsOn(
  plot: Plot,
  bed: Bed,
  within: (day: number) => boolean,
  composts: Composts,
): readonly Supply[] {
  return bed.dressings.flatMap((act): readonly Supply[] => {
    const day = act.when.dateDay;
    const { what, amount, material, lot, batch, product, heap, analysis } = act.body;
    if (!within(day)) return [];
    if (amount === undefined) return what === 'cover-crop' ? [greenManureOn(bed, day, material)] : [];
    const size = 'massKg' in amount ? { massKg: amount.massKg } : { volumeL: amount.volumeL };
    if (what === 'product') return productOf(plot, product, day, size.massKg);
    const from = lot === undefined ? undefined : plot.lots.get(lot)?.act.body;
    const known = batch === undefined ? undefined : plot.batches.get(batch);
    const given: DressingGiven = {
      kind: what,
      ...size,
      ...(what === 'compost' && heap !== undefined ? composts(heap, act.when.on.slice(0, 10)) : {}),
      ...elementsOf(from?.analysis),
      ...elementsOf(analysis),
      ...materialOf(material ?? from?.material),
    };
    return [dressingSupply(given, day, known && strainedFrom(plot, known))];
  });
}

/** Grown on the bed and not weighed; of what, by the material told. */
function greenManureOn(bed: Bed, day: number, of: string | undefined): Supply {
  const kind = of === undefined ? 'untold' : LEGUMES.includes(of) ? 'legume' : 'other';
  return greenManureSupply({
    what: of?.replaceAll('-', ' ') ?? 'a cover crop',
    day,
    areaM2: areaOf(bed.facts)?.areaM2 ?? 0,
    kind,
  });
}

const LEGUMES: readonly string[] = ['legume-tops', 'lucerne', 'hay-legume'];

type Analysis = ActOf<'bed.dressed'>['body']['analysis'];

/** What an analysis tells of a dressing; nothing where there is none. */
export function elementsOf(analysis: Analysis): Partial<DressingGiven> {
  const { dryMatter, nPercentDm, pPercentDm, kPercentDm, cn } = analysis ?? {};
  return Object.fromEntries(
    Object.entries({ dryMatter, nPercentDm, pPercentDm, kPercentDm, cn }).filter(([, value]) => value !== undefined),
  );
}

function materialOf(named: string | undefined): Partial<DressingGiven> {
  return named === undefined ? {} : { material: named, name: named.replaceAll('-', ' ') };
}

/** A product by its label; without a label its content stays unknown. */
function productOf(plot: Plot, id: string | undefined, day: number, massKg: number | undefined): readonly Supply[] {
  const bought = plot.products.find((one) => one.id === id || one.entry.id === id);
  const label = bought?.body;
  const name = label?.name ?? 'a product nobody described';
  const told = label?.nPercent ?? label?.p2o5Percent ?? label?.k2oPercent;
  if (label === undefined || told === undefined || massKg === undefined) return [unknownSupply(name, day)];
  const { nPercent = 0, p2o5Percent = 0, k2oPercent = 0 } = label;
  const release = releaseOf(plot, bought?.id);
  return [productSupply({ name, day, massKg, nPercent, p2o5Percent, k2oPercent, release })];
}

/** As the label has it; a product of which nobody told it may rot or dissolve. */
export function releaseOf(plot: Plot, id: string | undefined): 'at-once' | 'slow' | 'untold' {
  const told = id === undefined ? undefined : plot.labels.get(id)?.body.release;
  return told === undefined ? 'untold' : told === 'soluble' ? 'at-once' : 'slow';
}

const WHOLE: Range = { low: 100, likely: 100, high: 100 };

function unknownSupply(what: string, day: number): Supply {
  return { kind: 'product', what, day, totalG: {}, sharePercent: WHOLE, pace: 'at-once' };
}
