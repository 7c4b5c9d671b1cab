// The sheet of the cover in plain English: headings, choices, the offers of a shop and what is wrong with one.

import type { Nutrient } from '#engine/ground/need.ts';
import type { Range } from '#engine/quantity/range.ts';
import { band, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { nutrientNames, sayAmount } from './cover.ts';

/** Grams, one decimal below ten. */
const grams = (value: number) => withUnit(value, 'g', Math.abs(value) < 10 ? 1 : 0);

export const coverSheet = {
  title: 'How to close the gap',
  lead: 'What the beds still miss this season, and how what lies in the garden closes it before anything is bought. All figures are estimates.',
  empty: 'Here will stand what to put on each bed. It needs a bed with its size and its crop.',
  start: 'Tell the beds of the plot',
  working: 'The plan is being worked out.',
  failed: 'The plan could not be worked out on this device. The sums of each bed stand on the sheet before.',
  toSums: 'To what the beds got',
  status: {
    covered: 'All that is missing can be closed.',
    short: 'Part of it stays open, as told below.',
    'nothing-missing': 'No bed misses anything that is known of.',
    'no-plan': 'No plan was found.',
    'no-beds': '',
  },
  costs: (cost: Range) =>
    cost.high > 0
      ? `It costs ${figure(cost.likely, 2)} (${figure(cost.low, 2)} to ${figure(cost.high, 2)}) in the money of the prices told.`
      : 'It costs nothing but work.',
  choose: 'What counts first?',
  aims: [
    ['least-cost', 'Least money'],
    ['least-purchase', 'Least bought'],
  ] as const,
  nutrient: 'Drawn for',
  nutrients: [
    ['n', 'Nitrogen'],
    ['p', 'Phosphorus'],
    ['k', 'Potassium'],
  ] as const,
  drawing: 'The length of a strip is what the bed misses. Hatched is what closes it; what stays open is dashed.',
  alternative: (nutrient: Nutrient, bed: string, missing: number | null, left: number | null) =>
    missing === null
      ? `${bed}: how much ${nutrientNames[nutrient]} it misses is not known.`
      : missing < 0.05
        ? `${bed}: no ${nutrientNames[nutrient]} missing.`
        : `${bed}: misses ${grams(missing)} of ${nutrientNames[nutrient]}, ${grams(left ?? missing)} stay open.`,
  headings: {
    uses: 'Put on the beds',
    buys: 'Buy',
    binds: 'What holds it back',
    short: 'What stays open',
    excess: 'What comes past the need',
    notKnown: 'What is not known',
  },
  order: ['uses', 'buys', 'short', 'binds', 'excess', 'notKnown'] as const,
  whyOpen: 'Why, material by material',
  care: 'Spread fresh clippings thin, wilted first, and keep them off stems (common practice, no source). Of bought feed, what the label says comes first.',
  table: 'As a table',
  columns: ['Bed', 'Material', 'Amount', 'A square metre', 'Nitrogen', 'Phosphorus', 'Potassium'],
  grams,
  amount: (massKg: number) => sayAmount(massKg, undefined),
  perM2: (kgPerM2: number) => withUnit(kgPerM2, 'kg/m²', 1),
  why: 'why?',
  waysHeading: 'Best use of what lies here',
  waysLead:
    'How much of the nitrogen of each lot reaches a bed this season, by the way it goes. The tick is the high end.',
  waysWhy: 'What each way brings',
  noWays: 'No scraps lie here with a way open to them.',
  ways: { mulch: 'mulch', ferment: 'ferment', heap: 'heap', lawn: 'lawn' },
  wayGrams: (seasonG: Range) => band(seasonG, 'g', Math.abs(seasonG.likely) < 10 ? 1 : 0),
  best: 'best',
  limitsHeading: 'What a shop offers, and what you can spend',
  limitsLead: 'Nothing is bought unless a price stands here or a feed with a label and a price was bought before.',
  limits: {
    money: 'Most to spend',
    minutes: 'Most time, minutes',
    bucketMinutes: 'Minutes for one bucket, fetched and spread',
  },
  badLimit: {
    money: (typed: string) => `“${typed}” is no sum of money; allowed: 0 and up, or nothing.`,
    minutes: (typed: string) => `“${typed}” is no number of minutes; allowed: 0 and up, or nothing.`,
    bucketMinutes: (typed: string) => `“${typed}” is no number of minutes; allowed: 0.1 and up, or nothing.`,
  },
  noBucketMinutes: 'Say how long one bucket takes, so that the time can be counted.',
  fields: {
    name: 'Name',
    n: 'N, %',
    p2o5: 'P₂O₅, %',
    k2o: 'K₂O, %',
    release: 'How it lets go',
    pack: 'Pack',
    price: 'Price of a pack',
  },
  releases: [
    ['', 'not told'],
    ['slow', 'it rots: meal, pellets'],
    ['at-once', 'it dissolves'],
  ] as const,
  labelNote:
    'Take the three numbers as the label has them: nitrogen, then P₂O₅ and K₂O. They are counted as phosphorus and potassium.',
  more: 'Another offer',
  noName: 'The offer has no name; allowed: 1 to 80 letters.',
  badPercent: (typed: string) => `“${typed}” is no share of the label; allowed: 0 to 100.`,
  badSum: (sum: number) => `N, P₂O₅ and K₂O come to ${figure(sum)} % together; allowed: up to 100.`,
  badPack: (typed: string) => `“${typed}” is no mass of a pack; allowed: more than 0, such as 5 kg.`,
  badPrice: (typed: string) => `“${typed}” is no price; allowed: 0 and up.`,
  expectedHeading: 'What is still to come',
  expectedLead:
    'Clippings of mowings ahead, a green manure to be cut, compost that will be ripe: it counts like what lies here, at no price.',
  expectedNote:
    'A legume is planned as tops cut and laid or dug in on the bed. Its figures are those of green tops in bloom; how much grows nobody knows before.',
  expectedFields: { material: 'What', amount: 'How much' },
  expectedChoose: 'choose',
  expectedMore: 'Another line',
  expectedName: (name: string) => `${name}, still to come`,
  noMaterial: 'Say what is to come.',
  solids: (peg: PegName) => `solids of peg ${peg}`,
  compost: (heap: string) => `compost of heap ${heap}`,
  bucket: (litres: number) => ({
    one: `bucket of ${withUnit(litres, 'L', 0)}`,
    many: `buckets of ${withUnit(litres, 'L', 0)}`,
  }),
} as const;
