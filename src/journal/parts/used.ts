// What acts take from elsewhere: kilograms from each lot of the stock, by filling, topping up, the heap and dressings;
// litres of starter from each bottle or batch. Only sums; what is left of each is told where the thing itself is.

import type { ActOf } from '../act.ts';

type PutIn = readonly (ActOf<'peg.filled'> | ActOf<'peg.toppedUp'>)[];

/** Kilograms taken from each lot. */
export function usedOf(
  by: {
    readonly putIn: PutIn;
    readonly heapFed: readonly ActOf<'heap.fed'>[];
    readonly dressed: readonly ActOf<'bed.dressed'>[];
  },
  lineOf: ReadonlyMap<string, string>,
): ReadonlyMap<string, number> {
  const used = new Map<string, number>();
  const take = (lot: string | undefined, massKg: number | undefined) => {
    if (lot !== undefined && massKg !== undefined) add(used, lineOf.get(lot) ?? lot, massKg);
  };
  for (const { body } of by.putIn) for (const { lot, mass } of body.parts ?? []) take(lot, mass.massKg);
  for (const { body } of by.heapFed) {
    // A lot given to the heap by the barrow has no mass: what is left of it then stays as weighed.
    for (const { lot, amount } of body.ingredients) take(lot, 'massKg' in amount ? amount.massKg : undefined);
  }
  for (const { body } of by.dressed) {
    const { lot, amount } = body;
    take(lot, amount !== undefined && 'massKg' in amount ? amount.massKg : undefined);
  }
  return used;
}

/** Litres of starter taken from each bottle or batch. */
export function startersOf(putIn: PutIn, lineOf: ReadonlyMap<string, string>): ReadonlyMap<string, number> {
  const taken = new Map<string, number>();
  for (const { body } of putIn) {
    for (const { from, volume } of body.starter ?? []) {
      if (from !== undefined) add(taken, lineOf.get(from) ?? from, volume.volumeL);
    }
  }
  return taken;
}

function add(sums: Map<string, number>, id: string, by: number): void {
  sums.set(id, (sums.get(id) ?? 0) + by);
}
