// What acts take from elsewhere: kilograms from each lot of the stock, by filling, topping up, the heap and dressings;
// litres of starter from each bottle or batch. Only sums; what is left of each is told where the thing itself is.

import type { Act } from '../act.ts';

/** Kilograms taken from each lot. */
export function usedOf(acts: readonly Act[], lineOf: ReadonlyMap<string, string>): ReadonlyMap<string, number> {
  const used = new Map<string, number>();
  const take = (lot: string | undefined, massKg: number | undefined) => {
    if (lot !== undefined && massKg !== undefined) add(used, lineOf.get(lot) ?? lot, massKg);
  };
  for (const act of acts) {
    if (act.kind === 'peg.filled' || act.kind === 'peg.toppedUp') {
      for (const { lot, mass } of act.body.parts ?? []) take(lot, mass.massKg);
    } else if (act.kind === 'heap.fed') {
      // A lot given to the heap by the barrow has no mass: what is left of it then stays as weighed.
      for (const { lot, amount } of act.body.ingredients) take(lot, 'massKg' in amount ? amount.massKg : undefined);
    } else if (act.kind === 'bed.dressed') {
      const { lot, amount } = act.body;
      take(lot, amount !== undefined && 'massKg' in amount ? amount.massKg : undefined);
    }
  }
  return used;
}

/** Litres of starter taken from each bottle or batch. */
export function startersOf(acts: readonly Act[], lineOf: ReadonlyMap<string, string>): ReadonlyMap<string, number> {
  const taken = new Map<string, number>();
  for (const act of acts) {
    if (act.kind !== 'peg.filled' && act.kind !== 'peg.toppedUp') continue;
    for (const { from, volume } of act.body.starter ?? []) {
      if (from !== undefined) add(taken, lineOf.get(from) ?? from, volume.volumeL);
    }
  }
  return taken;
}

function add(sums: Map<string, number>, id: string, by: number): void {
  sums.set(id, (sums.get(id) ?? 0) + by);
}
