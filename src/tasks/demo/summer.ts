// The summer pegs: 14, a good pail, strained and bottled, and 15, a slow drum in a cold place.

import type { Body } from '#journal/kinds/index.ts';
import { type Diary, grams, kg, litres } from './diary.ts';
import type { DemoPlace } from './place.ts';
import { meter } from './spring.ts';
import type { DemoStock } from './stock.ts';

interface Seen {
  readonly on: string;
  readonly ph: number;
  readonly temperatureC: number;
  readonly smell: Body<'peg.looked'>['smell'];
  readonly surface: Body<'peg.looked'>['surface'];
}

const PEG_14: readonly Seen[] = [
  { on: '2026-06-10T09:30', ph: 6.3, temperatureC: 20, smell: 'grassy', surface: 'clear' },
  { on: '2026-06-11T09:30', ph: 5.2, temperatureC: 20, smell: 'grassy', surface: 'bubbles' },
  { on: '2026-06-12T09:30', ph: 4.5, temperatureC: 22, smell: 'sour', surface: 'bubbles' },
  { on: '2026-06-14T09:30', ph: 4.1, temperatureC: 20, smell: 'sour', surface: 'bubbles' },
  { on: '2026-06-17T09:30', ph: 3.8, temperatureC: 18, smell: 'yeasty', surface: 'bubbles' },
  { on: '2026-06-19T09:30', ph: 3.7, temperatureC: 20, smell: 'yeasty', surface: 'clear' },
];

/** Peg 14; gives back its seven bottles. */
export function goodPail({ did }: Diary, place: DemoPlace, stock: DemoStock, starter: string): string {
  const batch = did('Rake', '2026-06-10T09:30', 'peg.filled', {
    peg: 14,
    vessel: place.pail,
    lid: 'loose',
    place: 'shed window',
    temperatureC: 20,
    parts: [
      { lot: stock.clippings, mass: kg(2.1) },
      { lot: stock.cabbage, mass: kg(0.7) },
      { lot: stock.trimmings, mass: kg(0.4) },
    ],
    water: [{ volume: litres(5.2), water: place.tap }],
    sugar: [{ product: 'white-sugar', mass: grams(150), bought: stock.whiteSugar }],
    starter: [{ volume: litres(0.2), from: starter }],
  }).id;
  for (const { on, ph, ...rest } of PEG_14) did('Trowel', on, 'peg.looked', { batch, acidity: meter(ph), ...rest });
  did('Rake', '2026-06-20T10:00', 'peg.strained', {
    batch,
    drained: litres(6.3),
    solids: kg(2.1),
    rest: 'nothing',
    meshMm: 1,
    acidity: meter(3.7),
    solidsTo: 'heap',
  });
  const bottles = did('Rake', '2026-06-20T10:20', 'bottle.filled', {
    batch,
    filled: litres(0.9),
    count: 7,
    size: litres(1),
    cap: 'vent',
    material: 'plastic',
    place: 'shed shelf',
    temperatureC: 18,
  }).id;
  did('Rake', '2026-06-20T10:40', 'heap.fed', {
    heap: 'the bay',
    ingredients: [
      { batch, amount: kg(2.1) },
      { material: 'dry-leaves', amount: litres(20) },
    ],
  });
  did('Trowel', '2026-06-20T10:45', 'bottle.emptied', { bottle: starter, to: 'heap' });
  for (const on of ['2026-06-23', '2026-06-30', '2026-07-07']) {
    did('Can', `${on}T10:00`, 'bottle.vented', { bottle: bottles, found: on === '2026-06-23' ? 'hiss' : 'nothing' });
  }
  return bottles;
}

const PEG_15: readonly (readonly [on: string, ph: number, smell: Body<'peg.looked'>['smell']])[] = [
  ['2026-06-11', 6.9, 'grassy'],
  ['2026-06-14', 6.4, 'grassy'],
  ['2026-06-17', 5.7, 'grassy'],
  ['2026-06-20', 5.1, 'sour'],
  ['2026-06-23', 4.7, 'sour'],
  ['2026-06-27', 4.4, 'sour'],
  ['2026-07-01', 4.1, 'sour'],
  ['2026-07-03', 4.1, 'sour'],
  ['2026-07-10', 4.1, 'sour'],
];

/** Peg 15: slow, ready at last, never held; too much for the cooked beds. */
export function slowDrum({ did }: Diary, { drum, tap }: DemoPlace): void {
  const batch = did('Fork', '2026-06-11T10:30', 'peg.filled', {
    peg: 15,
    vessel: drum,
    lid: 'loose',
    place: 'north wall',
    temperatureC: 11,
    parts: [
      { material: 'grass-clippings-fresh', name: 'own clippings', treated: 'no', mass: kg(4.6) },
      { material: 'cabbage-leaves', name: 'cabbage outers', treated: 'no', mass: kg(1.6) },
    ],
    water: [{ volume: litres(14), water: tap }],
    sugar: [{ product: 'white-sugar', mass: grams(350) }],
  }).id;
  for (const [on, ph, smell] of PEG_15) {
    did('Fork', `${on}T10:30`, 'peg.looked', {
      batch,
      acidity: meter(ph),
      smell,
      surface: 'clear',
      temperatureC: 11,
      ...(on === '2026-06-20' && { note: 'I would tip it tomorrow.' }),
    });
  }
  did('Fork', '2026-07-18T10:00', 'peg.tipped', {
    batch,
    to: 'heap',
    why: 'Never held, and more than the cooked beds can use.',
  });
}
