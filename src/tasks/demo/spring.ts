// The spring pegs: 13, a rehearsal in a kitchen jar that left a little starter, and 16, the barrel that went off.

import type { Body } from '#journal/kinds/index.ts';
import { type Diary, grams, kg, litres } from './diary.ts';
import type { DemoPlace } from './place.ts';

const HEAP = 'the bay';

/** A meter's reading. */
export const meter = (ph: number) => ({ typed: String(ph), ph, by: 'meter' as const });

/** Peg 13; gives back the bottle of starter. */
export function rehearsal({ did }: Diary, { tap }: DemoPlace): string {
  const filled = did('Trowel', '2026-05-16T10:00', 'peg.filled', {
    peg: 13,
    vesselName: 'kitchen jar',
    lid: 'loose',
    place: 'shed window',
    temperatureC: 20,
    parts: [{ material: 'grass-clippings-fresh', treated: 'no', mass: grams(150) }],
    water: [{ volume: litres(0.3), water: tap }],
    sugar: [{ product: 'white-sugar', mass: grams(10) }],
    note: 'A rehearsal.',
  });
  const seen: readonly (readonly [on: string, ph: number, smell: Body<'peg.looked'>['smell']])[] = [
    ['2026-05-16T10:00', 6.2, 'grassy'],
    ['2026-05-19T10:00', 4.6, 'sour'],
    ['2026-05-23T10:00', 4.0, 'sour'],
    ['2026-05-26T10:00', 3.8, 'sour'],
    ['2026-05-30T10:00', 3.8, 'yeasty'],
  ];
  for (const [on, ph, smell] of seen) {
    did('Trowel', on, 'peg.looked', {
      batch: filled.id,
      acidity: meter(ph),
      smell,
      surface: 'clear',
      temperatureC: 20,
    });
  }
  did('Trowel', '2026-05-31T10:00', 'peg.strained', {
    batch: filled.id,
    drained: litres(0.3),
    solids: grams(130),
    rest: 'nothing',
    meshMm: 1,
    acidity: meter(3.8),
    solidsTo: 'heap',
  });
  return did('Trowel', '2026-05-31T10:20', 'bottle.filled', {
    batch: filled.id,
    filled: litres(0.3),
    count: 1,
    size: litres(1),
    cap: 'vent',
    material: 'plastic',
    place: 'shed shelf',
    note: 'Kept as starter.',
  }).id;
}

/** Peg 16: lost, and layered into the heap. */
export function wentOff({ did }: Diary, { barrel, tap }: DemoPlace): void {
  const filled = did('Can', '2026-05-20T10:00', 'peg.filled', {
    peg: 16,
    vessel: barrel,
    lid: 'tight',
    place: 'full sun',
    temperatureC: 29,
    parts: [{ material: 'grass-clippings-fresh', treated: 'no', mass: kg(22) }],
    water: [{ volume: litres(33), water: tap }],
    note: 'Filled to the rim, no sugar, lid clipped.',
  });
  const batch = filled.id;
  const warm = { batch, temperatureC: 29 } as const;
  did('Can', '2026-05-20T10:00', 'peg.looked', { ...warm, acidity: meter(6.4), smell: 'grassy' });
  did('Can', '2026-05-23T10:00', 'peg.looked', { ...warm, acidity: meter(6.1) });
  did('Can', '2026-05-26T10:00', 'peg.looked', { ...warm, acidity: meter(6.3), smell: 'egg' });
  did('Fork', '2026-05-29T10:00', 'peg.looked', {
    ...warm,
    acidity: meter(6.9),
    smell: 'sewage',
    surface: 'larvae',
    lidBulged: true,
    note: 'Black film.',
  });
  did('Fork', '2026-05-30T10:00', 'peg.tipped', {
    batch,
    to: 'heap',
    why: 'Lost. Vented outdoors first; nothing of it went on a bed.',
  });
  did('Fork', '2026-05-30T10:00', 'heap.fed', {
    heap: HEAP,
    ingredients: [
      { batch, amount: litres(55) },
      { material: 'dry-leaves', amount: litres(110) },
    ],
    note: 'In layers, away from the ditch.',
  });
}

/** What went on the heap of the stock, and at the season's end. */
export function heapOf({ did }: Diary, rhubarb: string): void {
  did('Rake', '2026-06-10T10:00', 'heap.fed', {
    heap: HEAP,
    ingredients: [
      { lot: rhubarb, amount: kg(1.2) },
      { material: 'dry-leaves', amount: litres(20) },
    ],
  });
  did('Can', '2026-07-05T10:00', 'heap.looked', { heap: HEAP, temperatureC: 48, moisture: 'right', smell: 'earthy' });
}
