// What the beds got, in plain English: the sheet's own words, a sentence for each bed and one for the plot.

import type { Nutrient } from '#engine/ground/need.ts';
import type { Range } from '#engine/quantity/range.ts';
import { band, counted, withUnit } from '../figures.ts';
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
  lead: ({ from, to, isOneSeason }: { readonly from: string; readonly to: string; readonly isOneSeason: boolean }) =>
    `${isOneSeason ? '' : 'Each bed has its own season. '}Counted from ${sayDate(from, to)}${isOneSeason ? '' : ' or later'} to ${sayDate(to)}. The need is that of the whole season. All figures are estimates.`,
  askHemisphere: 'Is your garden north or south of the equator? Until we know, we count the last twelve months.',
  hemispheres: [
    ['north', 'Say it is north'],
    ['south', 'Say it is south'],
  ] as const,
  needLegend: 'the length of the bed stands for its whole need; open is what is missing',
  overLegend: 'too much, past the end',
  whiskerLegend: 'from the low to the high end of what it got',
  noNeed: 'its need is not known, so nothing is drawn in it',
  lengthAssumed: 'dashed: no length was told',
  widened: (names: readonly string[]) =>
    `Wider than it is, so that it can be seen: the liquid on ${names.join(', ')}. Read its share below.`,
  oneMetre: withUnit(1, 'm'),
  scaleNote: 'all lengths to this scale',
  all: 'All beds',
  kind: (kind: string) => KINDS[kind] ?? kind,
  table: 'As a table',
  columns: ['Bed', 'Needs, g', 'Got, g', 'Of it', 'Missing, g', 'Too much, g', 'Liquid, % of need'],
  notKnown: 'not known',
  why: 'why?',
  unsized: (names: readonly string[]) =>
    `Not counted: ${names.join(', ')}. Tell the area of each, or how many pots stand there and how many litres one holds.`,
  tellSize: 'Tell it on the facts sheet',
  pots: ({ count, volumeL, diameterM, areaM2 }: PotsSaid) =>
    `${counted(count, 'pot')} of ${withUnit(volumeL, 'L')}, taken as tall as wide (${withUnit(diameterM * 100, 'cm', 0)}), count as ${withUnit(areaM2, 'm²', 2)} of ground.`,
  metres: (lengthM: number) => withUnit(lengthM, 'm', lengthM < 10 ? 1 : 0),
  noCrop: 'crop not told',
  toCover: 'How to close the gap',
} as const;

const grams = (one: Range | null) => (one === null ? got.notKnown : band(one, 'g', placesOf(one.likely)));

function placesOf(value: number): number {
  return Math.abs(value) >= 10 || value === 0 ? 0 : Math.abs(value) >= 1 ? 1 : 2;
}

/** Grams of one cell of the table. */
export const sayGrams = grams;

interface PotsSaid {
  readonly count: number;
  readonly volumeL: number;
  readonly diameterM: number;
  readonly areaM2: number;
}

/** What was given, kind by kind. */
export function sayKinds(byKind: readonly { readonly kind: string; readonly givenG: Range }[]): string {
  return byKind.map(({ kind, givenG }) => `${got.kind(kind)} ${grams(givenG)}`).join('; ');
}

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

interface PlotSaid extends BedSaid {
  readonly without: readonly string[];
}

/** All beds together, in a line or two. Too much on one bed does not feed another: both are said. */
export function sayPlot(nutrient: Nutrient, plot: PlotSaid): readonly string[] {
  const name = NAMES[nutrient];
  const open = plot.without.length > 0 ? [`Not in the need, as it is not known: ${plot.without.join(', ')}.`] : [];
  if (plot.needG === null) return [`All beds got ${grams(plot.givenG)} of ${name}.`, ...open];
  const over =
    plot.excessG !== null && plot.excessG.likely > 0 ? ` On some beds ${grams(plot.excessG)} is too much.` : '';
  return [
    `All beds together need ${grams(plot.needG)} of ${name}, got ${grams(plot.givenG)}, and ${grams(plot.missingG)} is missing.${over}`,
    ...(plot.liquidPercent === null ? [] : [`The liquid brought ${sharePercent(plot.liquidPercent)} of the need.`]),
    ...open,
  ];
}

/** The drawing in words. */
export function gotAlternative(name: string, sentences: readonly string[]): string {
  return `${name}: ${sentences.join(' ')}`;
}
