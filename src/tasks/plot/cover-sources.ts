// What a plot has to close a gap with, as the cover takes it: clippings, coffee grounds, strained solids, ripe compost, bought
// feed by its label. Only what may go there: nothing set aside, nothing of a lost batch, no solids on what is eaten raw.

import type { CoverSource, SpokenUnit } from '#engine/ground/cover/input.ts';
import { mostLayerKgPerM2 } from '#engine/ground/cover/layers.ts';
import { productSupply, type Supply } from '#engine/ground/supply.ts';
import { product, scale } from '#engine/quantity/range.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { strainedFrom } from '#plot/batch/strained.ts';
import { coverSheet as words } from '#words/en/cover-sheet.ts';
import { type DressingGiven, dressingSupply } from '../ledger-supply.ts';
import { pegName } from './batch-name.ts';
import { bedsThatMayBe } from './counted.ts';
import { heapsOf, heapView } from './heap.ts';
import { compostOf } from './heap-compost.ts';
import { nameOf } from './kept-out.ts';
import { elementsOf, releaseOf } from './ledger-dressings.ts';
import { stateAt } from './shelf.ts';

export interface SourcesAsk {
  readonly plot: Plot;
  /** Local date-time. */
  readonly now: string;
  /** Beds by the id the cover has them under. */
  readonly beds: readonly { readonly id: string; readonly bed: Bed }[];
}

/** Least that is worth a line: 100 g. */
export const LEAST_KG = 0.1;
const BUCKET_L = 10;
/** Scraps soft enough to lie on a bed as they are. */
export const MULCHES: readonly string[] = ['grass-clippings-fresh', 'grass-clippings-wilted', 'lucerne'];
export const COFFEE = 'coffee-grounds';
const COOKED: readonly (string | undefined)[] = ['cooked', 'not-eaten'];

/** Everything of the garden and every feed bought once, in the order a hand would reach for it. */
export function coverSources(ask: SourcesAsk): readonly CoverSource[] {
  return [...scrapsOf(ask), ...solidsOf(ask), ...compostsOf(ask), ...feedsOf(ask)];
}

/** Lots that may go in and are soft enough to lie on a bed as they are. */
function scrapsOf({ plot }: SourcesAsk): readonly CoverSource[] {
  return [...plot.lots.values()].flatMap((lot): readonly CoverSource[] => {
    const { material: id, analysis } = lot.act.body;
    if (lot.goes !== 'liquid' || !(lot.leftKg >= LEAST_KG) || id === undefined) return [];
    const coffee = id === COFFEE;
    if (!coffee && !MULCHES.includes(id)) return [];
    const given: DressingGiven = { kind: 'mulch', material: id, massKg: 1, ...elementsOf(analysis) };
    return [
      {
        id: lot.id,
        name: nameOf(lot),
        kind: coffee ? 'other' : 'clippings-mulch',
        perKg: perKgOf(dressingSupply(given, 0, undefined)),
        haveKg: lot.leftKg,
        mostKgPerM2: layerOf(id),
        ...(coffee ? { coffee: true } : { fresh: true }),
        ...unitOf(id),
      },
    ];
  });
}

/** Solids of sour batches that went nowhere yet, for beds whose crop is cooked or not eaten. */
function solidsOf({ plot, now, beds }: SourcesAsk): readonly CoverSource[] {
  return [...plot.batches.values()].flatMap((batch): readonly CoverSource[] => {
    const strainedKg = batch.strainings.reduce((sum, { solidsKg }) => sum + solidsKg, 0);
    const haveKg = strainedKg - solidsGone(plot, batch.id);
    const last = batch.strainings.at(-1);
    if (last === undefined || !(haveKg >= LEAST_KG) || stateAt(batch, last.when, plot) !== 'ready') return [];
    if (momentOf(now).dateDay - last.when.dateDay > keepsDays('strained-solids')) return [];
    const supply = dressingSupply({ kind: 'solids', massKg: 1 }, 0, strainedFrom(plot, batch));
    return [
      {
        id: `solids-${batch.id}`,
        name: words.solids(pegName(plot, batch)),
        kind: 'solids',
        perKg: perKgOf(supply),
        haveKg,
        mostKgPerM2: layerOf('strained-solids'),
        fresh: true,
        offBeds: eatenRaw(beds),
        ...unitOf('strained-solids'),
      },
    ];
  });
}

/** Kilograms of a batch's solids that went on the heap or on a bed; a barrow of them counts as all. */
function solidsGone({ heapFed, beds }: Plot, batch: string): number {
  const given = [
    ...heapFed.flatMap(({ body }) => body.ingredients.filter((one) => one.batch === batch).map(({ amount }) => amount)),
    ...[...beds.values()].flatMap(({ dressings }) =>
      dressings.filter(({ body }) => body.batch === batch).map(({ body }) => body.amount),
    ),
  ];
  return given.reduce(
    (sum, amount) => sum + (amount !== undefined && 'massKg' in amount ? amount.massKg : Number.POSITIVE_INFINITY),
    0,
  );
}

/** Heaps that cure: what is left of them at the low end, and not on crops eaten raw where something of animals is in it. */
function compostsOf({ plot, now, beds }: SourcesAsk): readonly CoverSource[] {
  return heapsOf(plot).flatMap((heap): readonly CoverSource[] => {
    const view = heapView({ plot, heap, today: now.slice(0, 10) });
    if (view === undefined || view.next.act !== 'cure' || view.notCounted.length > 0) return [];
    const goneKg = [...plot.beds.values()]
      .flatMap(({ dressings }) => dressings.filter(({ body }) => body.heap === heap))
      .reduce((sum, { body: { amount } }) => sum + (amount !== undefined && 'massKg' in amount ? amount.massKg : 0), 0);
    const haveKg = (view.left?.massKg.low ?? 0) - goneKg;
    if (!(haveKg >= LEAST_KG)) return [];
    const clean = view.verdicts.some(({ met }) => met) || view.rows.every(({ material: one }) => isPlant(one?.group));
    const supply = dressingSupply({ kind: 'compost', massKg: 1, ...compostOf(view) }, 0, undefined);
    return [
      {
        id: `heap-${heap}`,
        name: words.compost(heap),
        kind: 'compost',
        perKg: perKgOf(supply),
        haveKg,
        ...(clean ? {} : { offBeds: eatenRaw(beds) }),
        ...unitOf('finished-compost'),
      },
    ];
  });
}

function isPlant(group: string | undefined): boolean {
  return group !== undefined && group !== 'manure' && group !== 'animal';
}

/** A feed bought once, at the price it had: more of it can be bought. What is left of the bag nobody told. */
function feedsOf({ plot }: SourcesAsk): readonly CoverSource[] {
  return plot.products.flatMap(({ id, body }): readonly CoverSource[] => {
    const { name, what, mass, cost, nPercent, p2o5Percent, k2oPercent } = body;
    const labelled = nPercent !== undefined && p2o5Percent !== undefined && k2oPercent !== undefined;
    if (what !== 'feed' || !labelled || cost === undefined || mass === undefined || !(mass.massKg > 0)) return [];
    const release = releaseOf(plot, id);
    return [
      shopSource({ id, name, nPercent, p2o5Percent, k2oPercent, release, packKg: mass.massKg, packCost: cost.amount }),
    ];
  });
}

/** A feed in a shop, in packs. */
export interface ShopFeed {
  readonly id: string;
  readonly name: string;
  readonly nPercent: number;
  readonly p2o5Percent: number;
  readonly k2oPercent: number;
  readonly release: 'at-once' | 'slow' | 'untold';
  readonly packKg: number;
  readonly packCost: number;
}

/** A feed in a shop as a source. @arithmetic price of a kilogram */
export function shopSource({ id, packKg, packCost, ...label }: ShopFeed): CoverSource {
  return {
    id,
    name: label.name,
    kind: label.release === 'at-once' ? 'bought-mineral' : 'bought-organic',
    perKg: perKgOf(productSupply({ ...label, day: 0, massKg: 1 })),
    costPerKg: packCost / packKg,
    packKg,
  };
}

/** Ids of beds whose crop is eaten raw, or nobody told how. */
export function eatenRaw(beds: SourcesAsk['beds']): readonly string[] {
  return beds.filter(({ bed }) => !bedsThatMayBe(bed).every(({ eaten }) => COOKED.includes(eaten))).map(({ id }) => id);
}

/** Kilograms of a loose cubic metre; NaN where no table has it. */
export function bulkOf(id: string): number {
  return material(id)?.figures.bulkKgPerM3?.likely ?? Number.NaN;
}

/** Most days before it spoils; a material nobody knows keeps none. */
function keepsDays(id: string): number {
  return material(id)?.figures.spoilDays?.high ?? 0;
}

/** Most that may lie on a square metre. */
export function layerOf(id: string): number {
  return mostLayerKgPerM2(id === COFFEE ? COFFEE : 'mulch', bulkOf(id));
}

/** A bucket of it, where the table has its bulk. */
export function unitOf(id: string): { readonly unit?: SpokenUnit } {
  const massKg = (bulkOf(id) * BUCKET_L) / 1000;
  return massKg > 0 ? { unit: { ...words.bucket(BUCKET_L), massKg } } : {};
}

/** What a kilogram sets free over the season. @arithmetic */
export function perKgOf({ totalG, sharePercent }: Supply): CoverSource['perKg'] {
  const { n, p, k } = totalG;
  return {
    ...(n ? { nG: product([n, scale(sharePercent, 0.01)]), nTotalG: n.likely } : {}),
    ...(p ? { pG: p } : {}),
    ...(k ? { kG: k } : {}),
  };
}
