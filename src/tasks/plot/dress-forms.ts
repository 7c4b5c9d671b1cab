// What went onto a bed besides liquid, and what was bought for it, as typed: of what, how much, by the grower's own analysis
// or the label. What the stock offers for a dressing is told here too; a lot that its slip keeps back is not offered.

import { phosphorusPercent, potassiumPercent } from '#engine/ground/oxides.ts';
import type { Countries } from '#engine/quantity/ask.ts';
import { figureAlone, readFigure } from '#engine/quantity/number.ts';
import { materials } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { dressForm, productForm } from '#words/en/ground-forms.ts';
import { type BulkHabits, readBulk } from './bulk-amount.ts';
import { bedsThatMayBe } from './counted.ts';
import { type Asked, type FieldTrouble, type FormRead, readForm, type Typed } from './form.ts';
import { heapsOf } from './heap.ts';
import { LEAST_KG, nameOf } from './kept-out.ts';

export type DressingKind = Body<'bed.dressed'>['what'];

export interface Offered {
  /** "heap:the heap", "lot:…", "batch:…", "product:…", "material:straw". */
  readonly id: string;
  readonly name: string;
}

export interface DressingSources {
  readonly groups: readonly { readonly name: string; readonly rows: readonly Offered[] }[];
  /** Lots that their slips keep off the beds for now. */
  readonly heldBack: readonly string[];
}

/** What a dressing of a kind may be of: heaps, lots, strained pegs, products, then the list. */
export function dressingSources(plot: Plot, kind: DressingKind): DressingSources {
  const lots = [...plot.lots.values()].filter(({ leftKg }) => leftKg >= LEAST_KG);
  const ofLots = kind === 'mulch' || kind === 'cover-crop';
  const all = [
    {
      of: kind === 'compost',
      name: dressForm.heaps,
      rows: heapsOf(plot).map((heap) => ({ id: `heap:${heap}`, name: heap })),
    },
    {
      of: ofLots,
      name: dressForm.lots,
      rows: lots
        .filter(({ goes }) => goes === 'liquid')
        .map((lot) => ({ id: `lot:${lot.id}`, name: dressForm.lot(nameOf(lot), lot.leftKg) })),
    },
    {
      of: kind === 'solids',
      name: dressForm.batches,
      rows: [...plot.batches.values()]
        .filter(({ strainings }) => strainings.length > 0)
        .toReversed()
        .map(({ id, peg }) => ({ id: `batch:${id}`, name: dressForm.solidsOf(peg) })),
    },
    {
      of: kind === 'product',
      name: dressForm.products,
      rows: plot.products
        .filter(({ body }) => body.what !== 'sugar')
        .toReversed()
        .map(({ id, body }) => ({ id: `product:${id}`, name: body.name })),
    },
    {
      of: kind !== 'product' && kind !== 'solids',
      name: dressForm.materials,
      rows: materials.filter(({ into }) => into !== 'out').map(({ id, name }) => ({ id: `material:${id}`, name })),
    },
  ];
  return {
    groups: all.filter(({ of, rows }) => of && rows.length > 0).map(({ name, rows }) => ({ name, rows })),
    heldBack: ofLots ? lots.filter(({ goes }) => goes !== 'liquid').map(nameOf) : [],
  };
}

/** Whether a dressing comes to a bed of what is eaten raw as raw as what it came from. */
export function isRawOnRaw(plot: Plot, bed: string, kind: DressingKind): boolean {
  const told = plot.beds.get(bed);
  const isRaw = told === undefined || bedsThatMayBe(told).some(({ eaten }) => eaten?.startsWith('raw') ?? true);
  return kind !== 'product' && isRaw;
}

export interface DressingTyped {
  readonly what: DressingKind;
  /** An id of the offer; '' where it is not told. */
  readonly of: string;
  readonly texts: Typed;
}

const ANALYSIS = ['nPercentDm', 'pPercentDm', 'kPercentDm', 'cn'] as const;

/** Reads a dressing of a bed. */
export function readDressing(
  { what, of, texts }: DressingTyped,
  { bed, ...habits }: { readonly bed: string } & BulkHabits,
): FormRead<'bed.dressed'> {
  const troubles = new Map<string, FieldTrouble>();
  const [kind = '', ...rest] = of.split(':');
  const id = rest.join(':');
  if (what === 'product' && kind !== 'product') troubles.set('of', { sentence: dressForm.noProduct });
  const typedAmount = (texts.amount ?? '').trim();
  // A green manure is seldom weighed: what it leaves then goes by the bed's area.
  const isUnweighed = typedAmount === '' && what === 'cover-crop';
  const amount = isUnweighed ? undefined : readBulk(typedAmount, habits);
  if (amount && 'trouble' in amount) troubles.set('amount', amount.trouble);
  else if (amount && what === 'product' && !('massKg' in amount.value)) {
    troubles.set('amount', { sentence: dressForm.byWeight });
  }
  const dryMatter = percentOf(texts.dryMatter ?? '');
  if (dryMatter === 'unread') {
    troubles.set('dryMatter', { sentence: dressForm.noPercent((texts.dryMatter ?? '').trim()) });
  }
  const base = {
    bed,
    what,
    ...(amount && 'value' in amount && { amount: amount.value }),
    ...(id !== '' && { [kind]: id }),
    ...(typeof dryMatter === 'number' && { analysis: { dryMatter } }),
  };
  const asked: readonly Asked[] = [
    ...ANALYSIS.map((field) => ({ field: `analysis.${field}`, as: 'figure' }) as const),
    { field: 'note', as: 'text' },
  ];
  const typed = {
    ...Object.fromEntries(ANALYSIS.map((field) => [`analysis.${field}`, texts[field] ?? ''])),
    note: texts.note ?? '',
  };
  const read = readForm('bed.dressed', asked, typed, { base });
  const found = read.ok ? [] : [...read.troubles].map(([field, one]) => [field.replace('analysis.', ''), one] as const);
  if (read.ok && troubles.size === 0) return read;
  return { ok: false, troubles: new Map([...found, ...troubles]) };
}

function percentOf(typed: string): number | 'unread' | undefined {
  const text = typed.trim().replace(/\s*%$/, '');
  if (text === '') return undefined;
  const figure = readFigure(text);
  return figure.ok && figure.rest === '' && figure.value >= 1 && figure.value <= 100 ? figure.value / 100 : 'unread';
}

/** The label of a product, and what it is in elements. */
export interface LabelRead {
  readonly n: number;
  readonly p2o5: number;
  readonly k2o: number;
  readonly p: number;
  readonly k: number;
}

/** "5-3-8", "NPK 5 + 3 + 8", "5 3 8"; undefined where it is no label. @arithmetic oxides.ts */
export function readLabel(typed: string): LabelRead | undefined {
  const text = typed.replace(/^\s*n\s*-?\s*p\s*-?\s*k\s*:?/i, '').trim();
  const parts = text.split(/\s*[-–+/;]\s*|\s+/);
  if (parts.length !== 3 || !parts.every((one) => /^\d+(?:[.,]\d+)?%?$/.test(one))) return undefined;
  const [n = Number.NaN, p2o5 = Number.NaN, k2o = Number.NaN] = parts.map((one) =>
    figureAlone(one.replace('%', ''), { least: 0, most: 100 }),
  );
  if (![n, p2o5, k2o].every((one) => one >= 0 && one <= 100)) return undefined;
  return { n, p2o5, k2o, p: phosphorusPercent(p2o5), k: potassiumPercent(k2o) };
}

export interface ProductRead {
  readonly bought: Body<'product.bought'>;
  /** Undefined where nobody read the label for it. */
  readonly release: Body<'product.labelled'>['release'] | undefined;
}

/** Reads a purchase: what the label says, and how it lets go. */
export function readProduct(
  typed: Typed,
  countries: Countries,
): { readonly ok: true; readonly value: ProductRead } | Extract<FormRead<'product.bought'>, { ok: false }> {
  const troubles = new Map<string, FieldTrouble>();
  const npk = (typed.npk ?? '').trim();
  const label = readLabel(npk);
  if (npk !== '' && label === undefined) troubles.set('npk', { sentence: productForm.badLabel(npk) });
  if (label && label.n + label.p2o5 + label.k2o > 100) troubles.set('npk', { sentence: productForm.overWhole });
  const price = (typed.price ?? '').trim();
  const amount = priceOf(price);
  if (price !== '' && amount === undefined) troubles.set('price', { sentence: productForm.badPrice(price) });
  if ((typed.name ?? '').trim() === '') troubles.set('name', { sentence: productForm.noName });
  const base = {
    what: typed.what || 'feed',
    ...(label && { nPercent: label.n, p2o5Percent: label.p2o5, k2oPercent: label.k2o }),
    ...(amount !== undefined && { cost: { typed: price, amount } }),
  };
  const asked: readonly Asked[] = [
    { field: 'name', as: 'text' },
    { field: 'mass', as: 'amount', dimension: 'mass' },
    { field: 'note', as: 'text' },
  ];
  const read = readForm('product.bought', asked, typed, { base, countries });
  if (!read.ok || troubles.size > 0) {
    return { ok: false, troubles: new Map([...(read.ok ? [] : read.troubles), ...troubles]) };
  }
  const { release } = typed;
  return {
    ok: true,
    value: { bought: read.body, release: release === 'soluble' || release === 'slow' ? release : undefined },
  };
}

/** A price with or without the sign of its money before or behind. */
function priceOf(text: string): number | undefined {
  const found = /^[^\d\s-]{0,4}\s*(\d+(?:[.,]\d{1,2})?)\s*[^\d\s]{0,4}$/.exec(text);
  return found?.[1] === undefined ? undefined : figureAlone(found[1], { least: 0, most: 1_000_000 });
}
