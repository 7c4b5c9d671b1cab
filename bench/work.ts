// The work that is timed: the engine as a screen calls it, materials looked up beforehand, and the words of
// the contract from a raw input to the answer. Amounts change from call to call.

import { type PourOrder, pour } from '#engine/can/pour.ts';
import { fit } from '#engine/pail/fit.ts';
import type { Recipe } from '#engine/pail/recipe.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { can as canTask } from '#tasks/can.ts';
import { fit as fitTask } from '#tasks/fit.ts';
import { heap as heapTask } from '#tasks/heap.ts';

const grams = (i: number) => (i % 100) / 100;

function recipes(): readonly Recipe[] {
  const product = sugarProduct('white-sugar');
  if (product === undefined) throw new Error('the table of sugars has no white sugar');
  return Array.from({ length: 100 }, (_, i) => ({
    vessel: { volumeL: 12, gasRoom: 0.25 },
    plants: [
      resolvePart({ material: 'grass-clippings-fresh', massKg: 2 + grams(i) }),
      resolvePart({
        name: 'trimmings',
        massKg: 0.8,
        dryMatter: 0.1,
        sugarsGPerKgDm: 350,
        bufferEqPerKgDmPerPh: 0.24,
        ph: 6.2,
      }),
      resolvePart({
        name: 'wet grounds',
        massKg: 0.3,
        dryMatter: 0.35,
        sugarsGPerKgDm: 0,
        bufferEqPerKgDmPerPh: 0.1,
        ph: 5.5,
      }),
    ],
    water: { volumeL: 7, alkalinityMeqPerL: 4.24, ph: 7.6 },
    sugar: { product, massKg: 0.25 },
    targetPh: 3.9,
  }));
}

const order = (n: number): PourOrder => ({
  batch: { peg: 14, state: 'ready', held: true, ph: 3.7, ecDsPerM: 12 },
  strength: { kind: 'ratio', ratio: { n, reading: 'in' } },
  canL: 10,
  areaM2: 9.6,
  depthLPerM2: 2.5,
  spoon: 'metric',
  water: { alkalinityMeqPerL: 4.24, ecDsPerM: 0.58, ph: 7.6 },
  way: 'soil',
});

/** Every piece of work that is timed, by what it is called. */
export function pieces(): readonly {
  readonly name: string;
  readonly aimPerSecond?: number;
  readonly work: (i: number) => unknown;
}[] {
  const made = recipes();
  const orders = Array.from({ length: 100 }, (_, i) => order(100 + i));
  const rawFit = (i: number) => ({
    vessel: { volumeL: 12, gasRoom: 0.25 },
    plants: [
      { material: 'grass-clippings-fresh', massKg: 2 + grams(i) },
      { name: 'trimmings', massKg: 0.8, dryMatter: 0.1, sugarsGPerKgDm: 350, bufferEqPerKgDmPerPh: 0.24, ph: 6.2 },
    ],
    water: { volumeL: 7, alkalinityMeqPerL: 4.24 },
    sugar: { product: 'white-sugar', massKg: 0.25 },
  });
  const rawCan = (i: number) => ({
    ratio: { n: 100 + (i % 100), reading: 'in' },
    canL: 10,
    areaM2: 9.6,
    depthLPerM2: 2.5,
    spoon: 'metric',
    water: { alkalinityMeqPerL: 4.24, ecDsPerM: 0.58 },
  });
  const rawHeap = (i: number) => ({
    ingredients: [
      { material: 'grass-clippings-fresh', massKg: 10 + grams(i) },
      { material: 'dry-leaves', massKg: null },
      { material: 'cardboard', massKg: null },
    ],
    target: { cn: 30, moisturePercent: 60 },
  });
  return [
    { name: 'fit, engine', aimPerSecond: 20_000, work: (i) => fit(made[i % made.length] as Recipe) },
    { name: 'can, engine', aimPerSecond: 20_000, work: (i) => pour(orders[i % orders.length] as PourOrder) },
    { name: 'fit, raw input to answer', work: (i) => answered(fitTask(rawFit(i))) },
    { name: 'can, raw input to answer', work: (i) => answered(canTask(rawCan(i))) },
    { name: 'heap, raw input to answer', work: (i) => answered(heapTask(rawHeap(i))) },
  ];
}

function answered(reply: { readonly ok: boolean }): unknown {
  if (!reply.ok) throw new Error(`the bench's own input was refused: ${JSON.stringify(reply)}`);
  return reply;
}
