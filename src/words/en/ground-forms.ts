// The sheet of one bed: what it got, what went on, and the forms by which a grower tells the ground's facts: dressings,
// bought products, soil reports, what is hoped to be picked, crops of their own. Nothing is computed here.

import type { Range } from '#engine/quantity/range.ts';
import { band, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate } from './app.ts';
import { sayGrams } from './got.ts';

const CLASS: Readonly<Record<string, string>> = {
  low: 'low',
  medium: 'medium',
  high: 'high',
  excessive: 'more than high',
};

/** What the season of a bed starts with. */
const STARTS = {
  cleared: 'the bed was cleared',
  planted: 'this crop was planted',
  midwinter: 'midwinter',
  'twelve-months': 'twelve months',
  asked: 'the day you chose',
} as const;

const gotBedWater = 'Plain water';

/** One bed of what the beds got. */
export const gotBed = {
  title: (name: string) => `${name}: what it got`,
  back: 'All beds',
  gone: 'This bed is not in the record.',
  lead: ({ from, to, start }: { readonly from: string; readonly to: string; readonly start: keyof typeof STARTS }) =>
    `Counted from ${sayDate(from, to)} (${STARTS[start]}) to ${sayDate(to)}. The need is that of the whole season. All figures are estimates.`,
  noSize: 'No size was told for this bed, so its need cannot be worked out. What goes on is written down all the same.',
  toPlot: 'Tell its size',
  noCrop: 'What grows on it was not told: its need is not known.',
  tellCrop: 'Tell its crop',
  table: 'Need and given, in grams',
  columns: ['', 'Needs', 'Got', 'Missing', 'Too much', 'Liquid, % of need'] as const,
  names: { n: 'Nitrogen', p: 'Phosphorus', k: 'Potassium', ca: 'Calcium', mg: 'Magnesium' } as const,
  also: (name: string, grams: string) => `${name} came along: ${grams}.`,
  dryMatter: (kg: Range) => `Dry plant matter, food for the soil: ${band(kg, 'kg', 1)}.`,
  soilClass: (element: 'p' | 'k', found: string | null) =>
    `${element === 'p' ? 'Phosphorus' : 'Potassium'}: ${found === null ? 'no report that could be read' : `tests ${CLASS[found]}`}.`,
  history: 'What went on it',
  nothing: 'Nothing is written down for it yet this season.',
  poured: (what: string, pours: number, concentrate: string, diluted: string) =>
    `${what}: ${pours === 1 ? 'one pour' : `${pours} pours`}, ${what === gotBedWater ? diluted : `${concentrate} of feed in ${diluted}`}.`,
  water: gotBedWater,
  peg: (peg: PegName) => `Peg\u00a0${peg}`,
  unknownLiquid: 'A liquid of this record no longer known',
  litres: (litres: Range) => band(litres, 'L', litres.likely < 1 ? 2 : 1),
  told: 'What you told of it',
  takeBack: 'Take it back',
  takeBackOf: (sentence: string) => `Take it back: ${sentence}`,
  sure: 'Yes, take it back',
  leave: 'Leave it',
} as const;

/** Less than this is not worth a word. @practice */
const LEAST_SAID_G = 0.05;

/** What earlier gifts still bring; nothing where they bring nothing. */
export function sayCarried(grams: Readonly<Record<'n' | 'p' | 'k', Range | null>>): readonly string[] {
  const parts = (['n', 'p', 'k'] as const).flatMap((one) => {
    const carried = grams[one];
    if (carried === null || Math.abs(carried.likely) < LEAST_SAID_G) return [];
    return [`${gotBed.names[one].toLowerCase()} ${sayGrams(carried)}`];
  });
  return parts.length === 0
    ? []
    : [`Part of it was given before that day and is only now released: ${parts.join('; ')}.`];
}

/** "Compost, mulch or solids went on." */
export const dressForm = {
  summary: 'Compost, mulch or solids went on',
  what: 'What went on',
  kinds: [
    ['compost', 'Compost'],
    ['mulch', 'Mulch'],
    ['solids', 'Strained solids'],
    ['cover-crop', 'Cover crop'],
    ['product', 'A bought product'],
  ] as const,
  of: 'Of what',
  notTold: 'not told',
  heaps: 'Heaps',
  lots: 'Scraps in stock',
  batches: 'Strained pegs',
  products: 'Bought',
  materials: 'From the list',
  lot: (name: string, leftKg: number) => `${name}, ${withUnit(leftKg, 'kg', 1)} left`,
  solidsOf: (peg: PegName) => `solids of peg\u00a0${peg}`,
  heldBack: (names: readonly string[]) =>
    `Not offered, since their slip keeps them off the beds for now: ${names.join(', ')}.`,
  noProducts: 'No bought product is written down yet; do that below first.',
  fields: {
    amount: 'How much (2 barrows, 3 buckets, 4.5 kg, 20 L)',
    barrow: 'One barrow holds, L',
    bucket: 'One bucket holds, L',
    dryMatter: 'Dry matter, % of fresh weight',
    nPercentDm: 'Nitrogen, % of dry matter',
    pPercentDm: 'Phosphorus, % of dry matter',
    kPercentDm: 'Potassium, % of dry matter',
    cn: 'C:N',
    note: 'Note',
  } as Readonly<Record<string, string>>,
  analysis: 'Your own analysis of it, if you have one',
  notWeighed: 'A cover crop nobody weighed goes by the area of the bed: leave the amount empty.',
  raw: 'What is eaten raw here: scraps, solids and unfinished compost are as raw as what they came from. Dig them in before sowing, keep them off what is picked soon, and follow your local code; the pick list waits for solids, for manure and for compost of a heap with manure in it; of compost put on without its heap it knows nothing (our caution, no source).',
  noProduct: 'Say which product: choose it above.',
  byWeight:
    'A product goes by its weight, since its label counts in per cent of it; allowed: kilograms, grams, pounds.',
  noPercent: (text: string) => `"${text}" is not a share; allowed: a number from 1 to 100.`,
} as const;

/** "A product was bought." */
export const productForm = {
  summary: 'A product was bought',
  fields: {
    name: 'Its name',
    what: 'What it is',
    npk: 'N-P-K as the label has them, such as 5-3-8',
    release: 'What the label says of how it lets go',
    mass: 'Weight bought',
    price: 'Price paid, if you like',
    note: 'Note',
  } as Readonly<Record<string, string>>,
  kinds: { feed: 'feed', compost: 'compost', mulch: 'mulch', lime: 'lime', other: 'something else' } as const,
  releases: [
    ['soluble', 'Dissolves: salts, liquid feed'],
    ['slow', 'Rots first: meal, pellets, manure'],
    ['', 'Not known'],
  ] as const,
  unknownRelease: 'Not known counts as what rots, and at most as all of it at once.',
  noName: 'Say what it is called.',
  badLabel: (text: string) =>
    `"${text}" is no label; allowed: three numbers from 0 to 100, such as 5-3-8: nitrogen, phosphate (P₂O₅), potash (K₂O).`,
  overWhole: 'The three come to more than the whole; look at the label again.',
  badPrice: (text: string) =>
    `"${text}" is no price; allowed: a number from 0 to 1000000, with a sign of its money or without.`,
  label: (label: {
    readonly n: number;
    readonly p2o5: number;
    readonly k2o: number;
    readonly p: number;
    readonly k: number;
  }) =>
    `Nitrogen ${figure(label.n)} %, phosphate ${figure(label.p2o5)} %, potash ${figure(label.k2o)} %: that is ${figure(label.p)} % of phosphorus and ${figure(label.k)} % of potassium.`,
} as const;

/** "A soil report." */
export const soilForm = {
  summary: 'A soil report',
  whole: 'It is of',
  wholeWords: (bed: string) =>
    [
      ['bed', bed],
      ['plot', 'the whole plot'],
    ] as const,
  thePlot: 'the plot',
  laboratory: 'Laboratory, if you like',
  row: (i: number) => `Line ${i + 1}`,
  fields: {
    what: 'What',
    value: 'Value',
    unit: 'Unit',
    method: 'Method',
    depth: 'Depth, cm or in',
    note: 'Note',
  } as Readonly<Record<string, string>>,
  addRow: 'Another line',
  insist: 'Keep the lines as typed all the same',
  insistFirst:
    'A line above is in question. Read the report again, or tick that it is kept as typed; it then counts for nothing until it is put right.',
  noRow: 'Type at least one line of the report.',
  noValue: 'Say the value that the report has.',
  noUnit: 'Say the unit that the report has; allowed: ppm, mg/kg, lb/acre, kg/ha, mg/L or index.',
  notFigure: (text: string) =>
    `"${text}" is not a number; allowed: digits, with a point for decimals, as the report has them.`,
  twoWays: (text: string) => `"${text}" can be read in two ways; allowed: the same without a mark for thousands.`,
  badPh: (text: string) => `"${text}" is no pH of a soil; allowed: 2 to 12.`,
  badPercent: (text: string) => `"${text}" is no share; allowed: 0 to 100, in %.`,
  badDepth: (text: string) => `"${text}" is no depth; allowed: 1 to 300 cm, or inches with "in" behind.`,
  class: (found: string, source: string) => `Tests ${CLASS[found] ?? found}, by ${source}.`,
  others: (others: readonly { readonly class: string; readonly source: string }[]) =>
    others.length === 0
      ? ''
      : `Other published scales: ${others.map((one) => `${CLASS[one.class] ?? one.class} (${one.source})`).join('; ')}. The scale of your own region comes first.`,
  nitrate: (gPerM2: number, depthAssumed: boolean) =>
    `Counts as ${withUnit(gPerM2, 'g', 1)} of nitrogen on each square metre${depthAssumed ? ', for a sample taken 17 cm deep, since no depth was told' : ''}.`,
  nitrateUnit:
    'Is the unit right? Nitrate nitrogen is read here in ppm, lb/acre, kg/ha or g/m². Until then it is not taken off the need.',
  matter: (gPerM2: Range) => `Lets go about ${band(gPerM2, 'g', 1)} of nitrogen a year on each square metre.`,
  matterUnit: 'Is the unit right? This is read here in %. Until then it is not taken off the need.',
  ph: 'Kept; it tells which methods suit this soil.',
  kept: 'Kept as typed; nothing is worked out from it here.',
  units: ['ppm', 'mg/kg', 'lb/acre', 'kg/ha', 'mg/L', 'index', '%'] as const,
  methods: ['Bray-1', 'Olsen', 'Mehlich-3', 'Ammonium acetate', 'Ammonium nitrate'] as const,
} as const;

/** "What you expect to pick." */
export const goalForm = {
  summary: 'What you expect to pick',
  crop: 'Of which crop',
  goal: (crop: string) => `How much ${crop} over the season (12 kg, 3 kg/m², 2 lb/plant)`,
  plants: 'How many plants, if you said "a plant"',
  noCrop: 'Say first what grows on this bed, on the plot sheet.',
  table: (range: Range, source: string) => `Usual: ${band(range, 'kg/m²', 1)}, by ${source}.`,
  noTable: 'What is usual is not known here.',
  read: (kgPerM2: number) => `That is ${withUnit(kgPerM2, 'kg/m²', 2)}.`,
  outside: (kgPerM2: number, { low, high }: Range) =>
    `Is ${withUnit(kgPerM2, 'kg/m²', 2)} right? Usual are ${figure(low, 1)} to ${figure(high, 1)}. It is kept as you say; the need goes with it.`,
  before: (typed: string) => `Told before: ${typed}.`,
  noGoal: 'Say how much; allowed: kilograms or pounds, for the bed, for a square metre or for a plant.',
  notPer: (text: string) =>
    `"${text}" is nothing to count a harvest by; allowed: m², sq ft, plant, or nothing for the whole bed.`,
  noPlants: 'Say how many plants there are; allowed: a whole number from 1 to 1000000.',
  noArea: 'No size was told for this bed; allowed: an amount for a square metre, such as 3 kg/m².',
} as const;

/** "Your own crop." */
export const cropForm = {
  summary: (crop: string) => `Your own crop: ${crop}`,
  lead: (crop: string) =>
    `${crop} stands in no table here, so its need is not known. Tell what you know, and where you have it from; a figure left empty stays not known.`,
  again: (source: string) => `Told before, from: ${source}. A new telling stands in its place.`,
  fields: {
    source: 'Where you have it from',
    harvest: 'Harvest, kg/m² (2, or 2 to 4)',
    nNeed: 'Nitrogen to be had over the season, g/m²',
    nContent: 'Nitrogen in the harvest, g/kg',
    pContent: 'Phosphorus in the harvest, g/kg',
    kContent: 'Potassium in the harvest, g/kg',
    note: 'Note',
  } as Readonly<Record<string, string>>,
  noSource: 'Say where you have it from: a book, a laboratory, your own scale.',
  notBand: (text: string, units: readonly string[]) =>
    `"${text}" is not a figure; allowed: a number, or two with "to" between them, in ${units.join(', ')}.`,
} as const;
