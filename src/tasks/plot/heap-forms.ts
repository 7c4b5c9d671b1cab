// The two forms of a heap: a feeding, one row per ingredient by barrow, bucket or weight, and a look. What was typed is
// kept beside what it was read as; every trouble stands at its field.

import type { Countries } from '#engine/quantity/ask.ts';
import type { Body } from '#journal/kinds/index.ts';
import { heapForms } from '#words/en/heap-sheet.ts';
import { form as words } from '#words/en/plot.ts';
import { readBulk } from './bulk-amount.ts';
import { type Asked, type FieldTrouble, type FormRead, readForm, type Troubles, type Typed } from './form.ts';
import type { HeapOffers } from './heap-offers.ts';

/** One row of a feeding as typed. */
export interface FeedingRow {
  readonly lot?: string | undefined;
  readonly batch?: string | undefined;
  readonly material?: string | undefined;
  readonly name?: string | undefined;
  /** "2 barrows", "3 buckets", "4.5 kg", "20 L". */
  readonly amount: string;
}

export interface FeedingTyped {
  readonly heap: string;
  readonly rows: readonly FeedingRow[];
  readonly water?: string | undefined;
  readonly note?: string | undefined;
  /** Litres that one of each holds, as the grower told; without it barrows and buckets are asked about. */
  readonly litresOf?: { readonly barrow?: number | undefined; readonly bucket?: number | undefined } | undefined;
  readonly countries?: Countries | undefined;
  /** What may go on a heap today; a lot or a batch that is not among it is refused. */
  readonly offers: HeapOffers;
}

/** Reads a feeding; a row left wholly empty is no row. */
export function readFeeding(typed: FeedingTyped): FormRead<'heap.fed'> {
  const troubles = new Map<string, FieldTrouble>();
  const ingredients: Body<'heap.fed'>['ingredients'][number][] = [];
  typed.rows.forEach((row, i) => {
    const { lot, batch, material, name } = row;
    const amount = row.amount.trim();
    const isNamed = [lot, batch, material, name].some((one) => one !== undefined && one !== '');
    if (!isNamed && amount === '') return;
    if (!isNamed) troubles.set(`ingredients.${i}.material`, { sentence: heapForms.noWhat });
    if (!isOffered(row, typed.offers)) troubles.set(`ingredients.${i}.material`, { sentence: heapForms.notOffered });
    const read = readBulk(amount, typed);
    if ('trouble' in read) troubles.set(`ingredients.${i}.amount`, read.trouble);
    else
      ingredients.push({
        ...(lot && { lot }),
        ...(batch && { batch }),
        ...(material && { material }),
        ...(name && { name }),
        amount: read.value,
      });
  });
  if (ingredients.length === 0 && troubles.size === 0) troubles.set('ingredients', { sentence: heapForms.noRow });
  const asked: readonly Asked[] = [
    { field: 'heap', as: 'text' },
    { field: 'water', as: 'amount', dimension: 'volume' },
    { field: 'note', as: 'text' },
  ];
  const texts = { heap: typed.heap, water: typed.water ?? '', note: typed.note ?? '' };
  const read = readForm('heap.fed', asked, texts, { base: { ingredients }, countries: typed.countries ?? {} });
  if (troubles.size === 0) return read;
  return { ok: false, troubles: merged(troubles, read.ok ? new Map() : read.troubles) };
}

function isOffered({ lot, batch }: FeedingRow, { lots, solids }: HeapOffers): boolean {
  if (lot) return lots.some(({ choice }) => choice === `lot:${lot}`);
  return !batch || solids.some(({ choice }) => choice === `batch:${batch}`);
}

/** Troubles of the rows, and of the rest of the form; what follows from a row in trouble is not told twice. */
function merged(rows: Troubles, rest: Troubles): Troubles {
  return new Map([...[...rest].filter(([field]) => !field.startsWith('ingredients')), ...rows]);
}

/** What is asked at a look. */
export const lookAsked: readonly Asked[] = [
  { field: 'temperatureC', as: 'figure' },
  { field: 'moisture', as: 'one', words: ['dry', 'right', 'wet'] },
  { field: 'smell', as: 'one', words: ['earthy', 'sour', 'ammonia', 'egg', 'sewage', 'cannot-smell'] },
  { field: 'turned', as: 'yes' },
  { field: 'note', as: 'text' },
];

/** Reads a look at a heap. */
export function readHeapLook(heap: string, typed: Typed): FormRead<'heap.looked'> {
  const isTold = lookAsked.some(({ field }) => (typed[field] ?? '').trim() !== '');
  if (!isTold) return { ok: false, troubles: new Map([['temperatureC', { sentence: words.nothingTold }]]) };
  return readForm('heap.looked', lookAsked, typed, { base: { heap } });
}
