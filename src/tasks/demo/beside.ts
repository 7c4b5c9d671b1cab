// Beside the flow: plantings and pickings, the weather as it was typed in, and the trial of four pairs.

import type { Body } from '#journal/kinds/index.ts';
import { type Diary, grams, kg } from './diary.ts';
import type { DemoPlace } from './place.ts';

/** Sown, planted, and picked. */
export function harvest({ did }: Diary, { beds }: DemoPlace): void {
  did('Fork', '2026-05-09', 'bed.planted', {
    bed: beds.S,
    act: 'sown',
    crop: 'lettuce, rocket',
    eaten: 'raw-leaf',
    firstPickOn: '2026-06-22',
  });
  did('Fork', '2026-05-30', 'bed.planted', {
    bed: beds.G,
    act: 'planted',
    crop: '8 tomatoes',
    eaten: 'raw-fruit',
    plants: 8,
    firstPickOn: '2026-08-18',
  });
  did('Fork', '2026-05-30', 'bed.planted', {
    bed: beds.T,
    act: 'planted',
    crop: 'cucumber, peppers',
    eaten: 'raw-fruit',
    firstPickOn: '2026-07-13',
  });
  const picks: readonly (readonly [on: string, bed: string, crop: string, massG: number])[] = [
    ['2026-06-22', beds.S, 'lettuce', 420],
    ['2026-06-26', beds.S, 'rocket', 150],
    ['2026-07-08', beds.M, 'kale', 800],
    ['2026-07-13', beds.T, 'cucumber', 640],
    ['2026-08-18', beds.G, 'tomatoes', 1150],
    ['2026-08-29', beds.F, 'squash', 2300],
  ];
  for (const [on, bed, crop, massG] of picks) {
    did('Trowel', `${on}T10:30`, 'bed.picked', { bed, crop, mass: massG < 1000 ? grams(massG) : kg(massG / 1000) });
  }
}

type Day = Body<'weather.typed'>['days'][number];

/** A run of days from a date of June 2026 on: lows and highs, °C. */
function days(from: number, temperatures: readonly (readonly [lowC: number, highC: number])[]): Day[] {
  return temperatures.map(([lowC, highC], i) => {
    const day = from + i;
    const date = day <= 30 ? `2026-06-${String(day).padStart(2, '0')}` : `2026-07-${String(day - 30).padStart(2, '0')}`;
    return { on: date, lowC, highC };
  });
}

/** A cool fortnight, then warm days with one of 31 °C; rain on day 9 of peg 14, wind on day 11. */
export function weather({ did }: Diary): void {
  const typed = (on: string, seen: Day[]) => did('Can', `${on}T08:00`, 'weather.typed', { what: 'seen', days: seen });
  typed(
    '2026-06-14',
    days(8, [
      [9, 15],
      [9, 14],
      [10, 15],
      [9, 14],
      [9, 15],
      [9, 14],
      [10, 15],
    ]),
  );
  typed(
    '2026-06-18',
    days(15, [
      [9, 15],
      [9, 14],
      [10, 15],
      [9, 15],
    ]),
  );
  typed('2026-06-19', [{ on: '2026-06-19', lowC: 9, highC: 13, rainMm: 18 }]);
  typed('2026-06-21', [
    { on: '2026-06-20', lowC: 9, highC: 15 },
    { on: '2026-06-21', lowC: 9, highC: 17, windMPerS: 8 },
  ]);
  typed(
    '2026-06-28',
    days(22, [
      [14, 21],
      [14, 22],
      [15, 24],
      [14, 23],
      [15, 25],
      [14, 22],
      [14, 24],
    ]),
  );
  typed(
    '2026-07-02',
    days(29, [
      [15, 26],
      [16, 26],
      [17, 31],
      [15, 25],
    ]),
  );
}

/** Fed less water, grams, pair by pair; the side was chosen by coin. */
const PAIRS = [
  { fedG: 660, waterG: 598, fedPlace: 'left', waterPlace: 'right' },
  { fedG: 622, waterG: 640, fedPlace: 'right', waterPlace: 'left' },
  { fedG: 620, waterG: 575, fedPlace: 'right', waterPlace: 'left' },
  { fedG: 642, waterG: 635, fedPlace: 'left', waterPlace: 'right' },
] as const;

/** Four side-by-side pairs of chard, the same litres on both. */
export function trial({ did }: Diary, { beds }: DemoPlace): void {
  const bed = beds.X;
  const laid = did('Trowel', '2026-06-25', 'trial.laid', {
    name: 'Fed against its water twin',
    measure: 'chard picked, g',
    treatments: ['fed', 'water'],
    plots: PAIRS.flatMap(({ fedPlace, waterPlace }, i) => [
      { block: `pair ${i + 1}`, treatment: 'fed', bed, place: fedPlace },
      { block: `pair ${i + 1}`, treatment: 'water', bed, place: waterPlace },
    ]),
    note: 'The same litres on both; the side was chosen by coin.',
  });
  for (const [i, { fedG, waterG }] of PAIRS.entries()) {
    const block = `pair ${i + 1}`;
    did('Trowel', '2026-09-12', 'trial.weighed', { trial: laid.id, block, treatment: 'fed', mass: grams(fedG) });
    did('Trowel', '2026-09-12', 'trial.weighed', { trial: laid.id, block, treatment: 'water', mass: grams(waterG) });
  }
}
