// The rounds: a patch test on three plants, then every fed bed each fortnight at 1 to 40, out of the bottles of peg 14
// once it is held. The tunnel is a week late, and two phones write that pour down. What is left goes on the heap.

import type { Body } from '#journal/kinds/index.ts';
import { type DemoTag, type Diary, litres, millilitres } from './diary.ts';
import type { DemoPlace } from './place.ts';

const RATIO = { n: 40, reading: 'to' } as const;

interface Pour {
  readonly bed: string;
  readonly pouredL: number;
  readonly can: string;
  readonly canL: number;
}

/** What one bed takes, filled can by can: full cans, then the rest. @arithmetic concentrate = litres / 41 */
function poured(bottle: string, { bed, pouredL, can, canL }: Pour): Body<'bed.fed'> {
  const full = Math.floor(pouredL / canL + 1e-9);
  const restL = Math.round((pouredL - full * canL) * 1000) / 1000;
  const sizes = [...Array.from({ length: full }, () => canL), ...(restL > 0 ? [restL] : [])];
  return {
    bed,
    from: [{ bottle, volume: millilitres(Math.round((pouredL * 1000) / (RATIO.n + 1))) }],
    poured: litres(Math.round(pouredL * 100) / 100),
    ratio: RATIO,
    way: 'soil',
    cans: sizes.map((volumeL) => ({
      can,
      volumeL,
      concentrateMl: Math.round((volumeL * 1000) / (RATIO.n + 1)),
      pouredFraction: 1,
    })),
  };
}

/** Patch test, three rounds, the tunnel's twin entries, and the season's end. */
export function rounds({ did }: Diary, place: DemoPlace, bottle: string): void {
  const { beds, can10, can2Gallons } = place;
  const pour = (by: DemoTag, on: string, bed: string, pouredL: number) =>
    did(by, on, 'bed.fed', poured(bottle, { bed, pouredL, can: can10, canL: 10 }));
  did('Fork', '2026-07-04T17:00', 'bed.fed', {
    ...poured(bottle, { bed: beds.M, pouredL: 1.85, can: can10, canL: 10 }),
    note: 'Patch test: three kale plants, the rest of the bed waits.',
  });
  const fortnights: readonly (readonly [on: string, by: DemoTag])[] = [
    ['2026-07-07', 'Fork'],
    ['2026-07-21', 'Can'],
    ['2026-08-04', 'Fork'],
  ];
  for (const [on, by] of fortnights) {
    pour(by, `${on}T07:30`, beds.G, 11.52);
    pour(by, `${on}T07:45`, beds.M, 11.52);
    pour(by, `${on}T08:00`, beds.F, 6.8);
    pour(by, `${on}T08:15`, beds.P, 12);
    pour(by, `${on}T08:30`, beds.X, 7.2);
  }
  pour('Can', '2026-07-14T07:40', beds.T, 20);
  const twoCansL = 4 * 4.54609;
  did('Rake', '2026-07-14T08:20', 'bed.fed', {
    ...poured(bottle, { bed: beds.T, pouredL: twoCansL, can: can2Gallons, canL: twoCansL / 2 }),
    poured: { typed: '4 imperial gal', volumeL: twoCansL },
  });
  pour('Rake', '2026-07-28T07:40', beds.T, 20);
  pour('Can', '2026-08-11T07:40', beds.T, 20);
  did('Trowel', '2026-10-24T10:00', 'bottle.emptied', {
    bottle,
    lost: litres(1.2),
    to: 'heap',
    note: 'Past its date.',
  });
}
