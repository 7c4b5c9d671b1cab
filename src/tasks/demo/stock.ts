// What came to the scale and from the shop: lots of scraps with their source slips, two sugars.

import { type Diary, kg } from './diary.ts';

export const WEIGHED_ON = '2026-06-09';

/** Lots that go into a peg or onto the heap later. */
export interface DemoStock {
  readonly clippings: string;
  readonly cabbage: string;
  readonly trimmings: string;
  readonly rhubarb: string;
  readonly whiteSugar: string;
}

/** Weighs in everything of the second week of June. */
export function weighIn({ did }: Diary): DemoStock {
  const on = WEIGHED_ON;
  const own = { whose: 'own', treated: 'no' } as const;
  const kitchen = { whose: 'household', treated: 'no' } as const;
  const sugar = did('Can', '2026-05-02', 'product.bought', {
    name: 'white sugar',
    what: 'sugar',
    sugar: 'white-sugar',
    mass: kg(2),
  });
  did('Can', '2026-05-02', 'product.bought', {
    name: 'blackstrap',
    what: 'sugar',
    sugar: 'cane-molasses',
    mass: kg(1.3),
  });
  const clippings = did('Rake', on, 'scraps.weighed', {
    material: 'grass-clippings-fresh',
    mass: kg(6.4),
    slip: { ...own, untreatedMonths: 14 },
    condition: 'fresh',
    origin: 'garden',
    goes: 'in',
  });
  did('Rake', on, 'scraps.weighed', {
    material: 'grass-clippings-fresh',
    mass: kg(9),
    slip: { whose: 'neighbour', treated: 'unknown' },
    condition: 'fresh',
    origin: 'garden',
    goes: 'set-aside',
  });
  const cabbage = did('Trowel', on, 'scraps.weighed', {
    material: 'cabbage-leaves',
    name: 'cabbage outers',
    mass: kg(1.8),
    slip: own,
    condition: 'fresh',
    origin: 'garden',
    goes: 'in',
  });
  const trimmings = did('Trowel', on, 'scraps.weighed', {
    material: 'kitchen-trimmings',
    name: 'frozen trimmings',
    mass: kg(2.1),
    slip: kitchen,
    condition: 'frozen',
    origin: 'kitchen',
    goes: 'in',
  });
  did('Trowel', on, 'scraps.weighed', {
    material: 'coffee-grounds',
    mass: kg(0.9),
    slip: kitchen,
    condition: 'fresh',
    origin: 'kitchen',
    goes: 'in',
  });
  did('Trowel', on, 'scraps.weighed', {
    material: 'banana-skin',
    mass: kg(0.7),
    slip: kitchen,
    condition: 'fresh',
    origin: 'kitchen',
    goes: 'in',
  });
  const rhubarb = did('Rake', on, 'scraps.weighed', {
    material: 'rhubarb-leaves',
    mass: kg(1.2),
    slip: own,
    condition: 'fresh',
    origin: 'garden',
    goes: 'compost-only',
  });
  did('Rake', on, 'scraps.weighed', {
    material: 'blighted-haulm',
    mass: kg(3.5),
    slip: own,
    condition: 'fresh',
    origin: 'garden',
    goes: 'out',
  });
  did('Trowel', on, 'scraps.weighed', {
    material: 'cooked-food',
    name: 'cooked rice',
    mass: kg(0.6),
    slip: kitchen,
    condition: 'fresh',
    origin: 'cooked',
    goes: 'out',
    note: 'Out by the site rule.',
  });
  return {
    clippings: clippings.id,
    cabbage: cabbage.id,
    trimmings: trimmings.id,
    rhubarb: rhubarb.id,
    whiteSugar: sugar.id,
  };
}
