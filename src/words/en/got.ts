// What the beds got, in plain English: the sheet's own words, and a sentence for each bed.

import type { Nutrient } from '#engine/ground/need.ts';
import type { Range } from '#engine/quantity/range.ts';
import { band } from '../figures.ts';
import { sayDate } from './app.ts';
import { sharePercent } from './ledger.ts';

const NAMES: Readonly<Record<Nutrient, string>> = { n: 'nitrogen', p: 'phosphorus', k: 'potassium' };
const KINDS: Readonly<Record<string, string>> = {
  pour: 'liquid feed',
  compost: 'compost',
  mulch: 'mulch',
  solids: 'strained solids',
  product: 'bought feed',
  'cover-crop': 'cover crop',
};

export const got = {
  title: 'What the beds got',
  choose: 'Which nutrient?',
  nutrients: [
    ['n', 'Nitrogen'],
    ['p', 'Phosphorus'],
    ['k', 'Potassium'],
  ] as const,
  empty: 'Each bed will stand here with what it needs, what it was given and what is missing.',
  start: 'Tell the beds of the plot',
  lead: (from: string, to: string) =>
    `Counted from ${sayDate(from)} to ${sayDate(to)}. The need is that of the whole season. All figures are estimates.`,
  needLegend: 'need, dashed to its high end',
  kind: (kind: string) => KINDS[kind] ?? kind,
  table: 'As a table',
  columns: ['Bed', 'Needs, g', 'Got, g', 'Missing, g', 'Too much, g', 'Liquid, % of need'],
  notKnown: 'not known',
  why: 'why?',
  unsized: (names: readonly string[]) => `Not counted, as no area was told: ${names.join(', ')}.`,
  noCrop: 'crop not told',
  commandLine:
    'How the gap closes at least cost is worked out on the command line for now: the word ledger with sources.',
} as const;

const grams = (one: Range | null) => (one === null ? got.notKnown : band(one, 'g', placesOf(one.likely)));

function placesOf(value: number): number {
  return Math.abs(value) >= 10 || value === 0 ? 0 : Math.abs(value) >= 1 ? 1 : 2;
}

/** Grams of one cell of the table. */
export const sayGrams = grams;

interface BedSaid {
  readonly needG: Range | null;
  readonly givenG: Range | null;
  readonly missingG: Range | null;
  readonly excessG: Range | null;
  readonly liquidPercent: Parameters<typeof sharePercent>[0] | null;
}

/** One bed: what it needs, got and misses; then the liquid's share, always. */
export function sayBed(nutrient: Nutrient, bed: BedSaid): readonly string[] {
  const over = bed.excessG !== null && bed.excessG.likely > 0;
  return [
    bed.needG === null
      ? `How much ${NAMES[nutrient]} it needs is not known. Got ${grams(bed.givenG)}.`
      : `Needs ${grams(bed.needG)}, got ${grams(bed.givenG)}, ${over ? `${grams(bed.excessG)} too much` : `${grams(bed.missingG)} missing`}.`,
    bed.liquidPercent === null
      ? 'The share of the liquid in the need is not known.'
      : `The liquid brought ${sharePercent(bed.liquidPercent)} of the need.`,
  ];
}

/** The drawing in words. */
export function gotAlternative(name: string, sentences: readonly string[]): string {
  return `${name}: ${sentences.join(' ')}`;
}
