// A bed that is eaten raw, and a bottle of feed that was sour long enough: what a phone that is wrong about the time may
// not open. For the scenarios and properties of clocks.

import type { Entry } from '#journal/entry.ts';
import { litres, meter, recorder } from './recorder.ts';

/**
 * The ground: bed, batch 14 held since June, one group of its bottles; all written by one phone with a right clock.
 * @param rest whether the vessel was emptied
 */
export function heldBottle(rest: 'nothing' | 'stays' = 'nothing') {
  const can = recorder({ by: 'Can', device: 'phone-can', seed: 3 });
  const bed = can.did('bed.described', '2026-05-01', {
    name: 'Gate',
    area: { typed: '4 m2', areaM2: 4 },
    crop: 'beans',
    eaten: 'raw-fruit',
  });
  const batch = can.did('peg.filled', '2026-06-01T18:00', {
    peg: 14,
    parts: [{ material: 'nettle', mass: { typed: '1 kg', massKg: 1 }, treated: 'no' }],
    water: [{ volume: litres(6), source: 'tap' }],
    temperatureC: 20,
  });
  const look = (on: string, ph: number) =>
    can.did('peg.looked', on, { batch: batch.id, acidity: meter(ph), smell: 'sour', temperatureC: 20 });
  const strained = can.did('peg.strained', '2026-07-01T18:00', {
    batch: batch.id,
    drained: litres(5),
    rest,
    acidity: meter(3.6),
    ecDsPerM: 1,
  });
  const bottle = can.did('bottle.filled', '2026-07-01T18:10', {
    batch: batch.id,
    filled: litres(1),
    count: 5,
    cap: 'vent',
    material: 'plastic',
  });
  const looks = [look('2026-06-05T18:00', 3.9), look('2026-06-10T18:00', 3.8), look('2026-06-28T18:00', 3.7)];
  return { can, bed, batch, bottle, ground: [bed, batch, ...looks, strained, bottle] as readonly Entry[] };
}

/** Orders in which entries may arrive: as written, backwards, the last first, odds before evens. */
export function orders(entries: readonly Entry[]): readonly (readonly Entry[])[] {
  const [odd, even] = [entries.filter((_, i) => i % 2 === 1), entries.filter((_, i) => i % 2 === 0)];
  return [entries, entries.toReversed(), [...entries.slice(-1), ...entries.slice(0, -1)], [...odd, ...even]];
}
