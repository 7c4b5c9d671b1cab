// What lies on the plot and may go on a heap: lots whose slip lets them, and the strained solids of batches. A lot that is
// set aside or out is never among them, nor the solids of a batch with such a lot in it.

import type { Plot } from '#journal/fold.ts';
import { heapNames } from '#words/en/heap-sheet.ts';
import { pegName } from './batch-name.ts';
import { keptOutIn, stockView } from './scraps.ts';

/** One thing to choose, by the word that the form keeps for it: `lot:…` or `batch:…`. */
export interface HeapOffer {
  readonly choice: string;
  readonly name: string;
  readonly leftKg: number;
}

export interface HeapOffers {
  readonly lots: readonly HeapOffer[];
  readonly solids: readonly HeapOffer[];
}

/** Less than this is not offered. @practice */
const NOTHING_LEFT_KG = 0.01;
const NOT_FOR_A_HEAP: readonly (string | undefined)[] = ['out', 'pile-apart'];

/** Lots, the oldest first, and solids by their peg. @arithmetic weighed less what a heap or a bed got of it by weight */
export function heapOffers({ plot, today }: { readonly plot: Plot; readonly today: string }): HeapOffers {
  const lots = stockView({ plot, today })
    .lots.filter(({ heapMay }) => heapMay)
    .map(({ id, name, leftKg }) => ({ choice: `lot:${id}`, name, leftKg }));
  const given = givenFrom(plot);
  const solids = [...plot.batches.values()].flatMap((batch): readonly HeapOffer[] => {
    const last = batch.strainings.at(-1);
    if (last === undefined || NOT_FOR_A_HEAP.includes(last.body.solidsTo)) return [];
    const weighedKg = batch.strainings.reduce((sum, { solidsKg }) => sum + solidsKg, 0);
    const leftKg = weighedKg - (given.get(batch.id) ?? 0);
    if (!(leftKg >= NOTHING_LEFT_KG)) return [];
    if (keptOutIn(plot, batch)?.some(({ goes }) => goes !== 'compost-only')) return [];
    return [{ choice: `batch:${batch.id}`, name: heapNames.solids(pegName(plot, batch)), leftKg }];
  });
  return { lots, solids };
}

/** Kilograms of each batch's solids that a heap or a bed got by weight. @arithmetic */
function givenFrom(plot: Plot): ReadonlyMap<string, number> {
  const fed = plot.heapFed.flatMap(({ body }) => body.ingredients);
  const dressed = [...plot.beds.values()].flatMap(({ dressings }) => dressings.map(({ body }) => body));
  const given = new Map<string, number>();
  for (const { batch, amount } of [...fed, ...dressed])
    if (batch !== undefined && amount !== undefined && 'massKg' in amount)
      given.set(batch, (given.get(batch) ?? 0) + amount.massKg);
  return given;
}

/** What a row of the form names: a lot, the solids of a batch, or a material of the list. */
export function namedBy(choice: string): {
  readonly lot?: string;
  readonly batch?: string;
  readonly material?: string;
} {
  const [, what, id] = /^(lot|batch):(.+)$/.exec(choice) ?? [];
  if (what === 'lot' && id !== undefined) return { lot: id };
  if (what === 'batch' && id !== undefined) return { batch: id };
  return choice === '' ? {} : { material: choice };
}
