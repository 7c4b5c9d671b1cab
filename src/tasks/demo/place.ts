// The Sedge Corner plot itself: its rule, who is about, its keyholders, beds in walking order, vessels, cans and waters.

import type { Body } from '#journal/kinds/index.ts';
import { type Diary, litres, millilitres, squareMetres } from './diary.ts';

export const SET_UP_ON = '2026-04-18';
const IMPERIAL_GALLON_L = 4.54609;
/** Alkalinity of 1 mg/L as CaCO3, meq/L. @arithmetic two charges on 100.09 g/mol */
const MEQ_PER_MG_CACO3 = 2 / 100.09;

/** The things of the plot, by the ids the other acts name them with. */
export interface DemoPlace {
  readonly beds: Readonly<Record<'G' | 'M' | 'S' | 'F' | 'T' | 'R' | 'P' | 'X', string>>;
  readonly pail: string;
  readonly drum: string;
  readonly barrel: string;
  readonly can7: string;
  readonly can2Gallons: string;
  readonly can10: string;
  readonly tap: string;
  readonly butt: string;
}

type BedTold = Omit<Body<'bed.described'>, 'walkingOrder' | 'bed'>;

const BEDS: Readonly<Record<keyof DemoPlace['beds'], BedTold>> = {
  G: { name: 'Gate', area: squareMetres(5.76), lengthM: 4.8, crop: '8 tomatoes', eaten: 'raw-fruit', feed: 'soil' },
  M: { name: 'Middle', area: squareMetres(5.76), lengthM: 4.8, crop: 'kale, chard', eaten: 'cooked', feed: 'soil' },
  S: { name: 'Shed', area: squareMetres(3.6), lengthM: 3, crop: 'lettuce, rocket', eaten: 'raw-leaf', feed: 'none' },
  F: {
    name: 'Fence',
    area: squareMetres(6.75),
    fedArea: squareMetres(3.4),
    lengthM: 4.5,
    crop: 'squash, climbing beans',
    eaten: 'cooked',
    feed: 'soil',
    note: 'Only the squash half is fed.',
  },
  T: {
    name: 'Tunnel',
    area: squareMetres(10),
    lengthM: 5,
    crop: 'cucumber, peppers',
    eaten: 'raw-fruit',
    feed: 'soil',
  },
  R: {
    name: 'Roots',
    area: squareMetres(5.76),
    lengthM: 4.8,
    crop: 'carrots, beetroot',
    eaten: 'raw-root',
    feed: 'none',
    note: 'Carrots are eaten raw, beetroot cooked.',
  },
  P: {
    name: 'Pots',
    pots: { count: 12, volumeL: 15 },
    crop: 'chillies, strawberries',
    eaten: 'raw-fruit',
    feed: 'soil',
    note: '1 L each.',
  },
  X: {
    name: 'Trial',
    area: squareMetres(7.2),
    fedArea: squareMetres(3.6),
    lengthM: 6,
    crop: 'chard',
    eaten: 'cooked',
    feed: 'soil',
    note: 'Eight plots of 0.9 m²: four fed, four water.',
  },
};

/** Sets the plot up in spring. */
export function setUp({ did }: Diary): DemoPlace {
  const on = SET_UP_ON;
  did('Rake', on, 'plot.described', {
    name: 'Sedge Corner',
    timeZone: 'UTC',
    hemisphere: 'north',
    outsideScraps: true,
    kitchenScraps: true,
    cookedFood: false,
    siteRule: {
      text: 'Garden waste and raw trimmings allowed. No cooked food, no meat. Lidded vessels only.',
      on,
    },
    present: ['dog', 'children'],
    keyholders: [
      { tag: 'Rake', units: 'imperial', gallon: 'uk', spoon: 'uk' },
      { tag: 'Fork', units: 'metric', spoon: 'metric' },
      { tag: 'Can', units: 'metric', spoon: 'metric' },
      { tag: 'Trowel', units: 'metric', spoon: 'metric', language: 'de' },
    ],
  });
  const bed = (tag: keyof DemoPlace['beds'], walkingOrder: number) =>
    did('Rake', on, 'bed.described', { ...BEDS[tag], tag, walkingOrder }).id;
  const vessel = (body: Body<'vessel.described'>) =>
    did('Rake', on, 'vessel.described', { gasRoomFraction: 0.25, ...body }).id;
  const can = (body: Body<'can.described'>) => did('Rake', on, 'can.described', { kind: 'can', ...body }).id;
  const beds = {
    G: bed('G', 1),
    M: bed('M', 2),
    S: bed('S', 3),
    F: bed('F', 4),
    T: bed('T', 5),
    R: bed('R', 6),
    P: bed('P', 7),
    X: bed('X', 8),
  };
  const pail = vessel({ name: '12 L pail', volume: litres(12), lid: 'loose', place: 'shed window' });
  const drum = vessel({ name: '30 L drum', volume: litres(30), lid: 'loose', place: 'north wall' });
  const barrel = vessel({ name: '60 L barrel', volume: litres(60), lid: 'loose', tap: true, place: 'by the gate' });
  const can7 = can({ name: '7 L can', volume: litres(7), rose: true });
  const can2Gallons = can({
    name: '2 gallon can',
    volume: { typed: '2 imperial gal', volumeL: 2 * IMPERIAL_GALLON_L },
    rose: true,
  });
  const can10 = can({ name: '10 L can', volume: litres(10), rose: true });
  can({ name: 'jug', kind: 'jug', volume: litres(1) });
  can({ name: 'syringe', kind: 'syringe', volume: millilitres(20) });
  can({ name: 'sprayer', kind: 'sprayer', volume: litres(5), nozzleMm: 0.4 });
  return { beds, pail, drum, barrel, can7, can2Gallons, can10, ...waters({ did }) };
}

function waters({ did }: Pick<Diary, 'did'>): { tap: string; butt: string } {
  const tap = did('Fork', SET_UP_ON, 'water.reported', {
    source: 'tap',
    ph: 7.6,
    chlorine: { kind: 'chloramine', mgPerL: 0.6 },
    alkalinity: { typed: '212 mg/L CaCO3', alkalinityMeqPerL: 212 * MEQ_PER_MG_CACO3 },
    hardness: { typed: '268 mg/L CaCO3', hardnessMgPerLCaCo3: 268 },
    ecDsPerM: 0.58,
  });
  const butt = did('Fork', SET_UP_ON, 'water.reported', {
    source: 'butt',
    name: '210 L butt',
    chlorine: { kind: 'none' },
    alkalinity: { typed: '12 mg/L CaCO3', alkalinityMeqPerL: 12 * MEQ_PER_MG_CACO3 },
    droppings: true,
    note: 'Roof water; gulls sit on the roof.',
  });
  return { tap: tap.id, butt: butt.id };
}
