// What a bed got and what it needs, in plain English: the need, what was given, the liquid's share with its range, what
// is missing or too much. Nothing is computed here.

import type { Range } from '#engine/quantity/range.ts';
import type { Values } from '#engine/rules/rule.ts';
import { band, besideLimit, figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);
const ELEMENT: Readonly<Record<string, string>> = { n: 'nitrogen', p: 'phosphorus', k: 'potassium' };
const KIND: Readonly<Record<string, string>> = {
  pour: 'the liquid',
  compost: 'compost',
  mulch: 'mulch',
  solids: 'strained solids',
  product: 'bought feed',
  'cover-crop': 'a cover crop',
};
const CLASS: Readonly<Record<string, string>> = {
  low: 'low',
  medium: 'medium',
  high: 'high',
  excessive: 'more than high',
};

const METHOD: Readonly<Record<string, string>> = {
  'bray-1': 'A Bray-1',
  olsen: 'An Olsen',
  'mehlich-3': 'A Mehlich-3',
  'ammonium-acetate': 'An ammonium acetate',
  'ammonium-nitrate': 'An ammonium nitrate',
};

/** A list of kinds as the rules give it. */
const kinds = (value: unknown) =>
  String(value)
    .split(', ')
    .map((kind) => KIND[kind] ?? kind)
    .join(', ');
const element = (v: Values) => ELEMENT[String(v.element)] ?? String(v.element);

/** One sentence or two for each rule about what the ground got. */
export const groundCautions: Readonly<Record<string, (values: Values) => string>> = {
  'soil-method-missing': (v) =>
    `By which method was ${element(v)} of ${v.bed} tested (${v.typed})? The same soil gives other numbers by another method. The report names it: Bray-1, Olsen or Mehlich-3 for phosphorus; Mehlich-3, ammonium acetate or ammonium nitrate for potassium. Until then no class is given.`,
  'soil-method-not-for-element': (v) =>
    `Is the method right for ${element(v)} of ${v.bed} (${v.typed})? No scale is known here for it. Read the report again; until then no class is given.`,
  'soil-unit-not-for-method': (v) =>
    `Is the unit of ${element(v)} of ${v.bed} right (${v.typed})? It does not go with that method here. Known are ppm, lb/acre, kg/ha, mg/L and index. Until then no class is given.`,
  'soil-method-against-ph': (v) =>
    `${METHOD[String(v.method)] ?? 'Such a'} number on a soil of pH\u00a0${v.soilPh === undefined ? 'like this' : figure(n(v, 'soilPh'), 1)} (${v.bed}, ${v.typed})? Bray fails on limy soil and Olsen on sour soil: ask the laboratory which extract it used, or check the pH. Until then no class is given.`,
  'soil-scales-differ': (v) =>
    `${v.bed}: ${element(v)} counts as ${CLASS[String(v.class)]} here, and as ${v.others} by scales of other places. The scale of your own region comes first.`,
  'ground-crop-not-told': (v) => `What grows on ${v.bed} was not told: its need is not known.`,
  'ground-crop-unknown': (v) =>
    `${v.bed}: ${v.crops} stands in no table here, so its need is not known. Add it with a source of your own, or name a crop of the list.`,
  'ground-figure-unknown': (v) => `${v.bed}: not known are ${v.figures}. What rests on them is left open.`,
  'ground-p-full': (v) =>
    `Phosphorus of ${v.bed} tests ${CLASS[String(v.class)]}. Add no compost, manure or phosphate there until a test is lower; ${withUnit(n(v, 'givenG'), 'g')} came from ${kinds(v.from)}. For nitrogen use what carries little phosphorus, such as legumes or thin clippings.`,
  'ground-k-full': (v) =>
    `Potassium of ${v.bed} tests ${CLASS[String(v.class)]}. Add none until a test is lower; ${withUnit(n(v, 'givenG'), 'g')} came from ${kinds(v.from)}.`,
  'ground-p-builds-up': (v) =>
    `${v.bed} got ${besideLimit(n(v, 'givenG'), n(v, 'needG'), 'g')} of phosphorus, and the harvest carries about ${besideLimit(n(v, 'needG'), n(v, 'givenG'), 'g')} away. It builds up: give less from ${kinds(v.from)}, and have the soil tested.`,
  'ground-k-builds-up': (v) =>
    `${v.bed} got ${besideLimit(n(v, 'givenG'), n(v, 'needG'), 'g')} of potassium, and the harvest carries about ${besideLimit(n(v, 'needG'), n(v, 'givenG'), 'g')} away. It builds up: give less from ${kinds(v.from)}, and have the soil tested.`,
  'ground-n-over': (v) =>
    `${v.bed} got about ${besideLimit(n(v, 'givenG'), n(v, 'needG'), 'g')} of nitrogen and needs about ${besideLimit(n(v, 'needG'), n(v, 'givenG'), 'g')}. What is over may wash out: stop adding from ${kinds(v.from)} this season.`,
  'ground-ties-up': (v) =>
    `${v.bed}: ${kinds(v.from)} ties up about ${withUnit(n(v, 'tiedG'), 'g')} of nitrogen. Leave such stuff on top instead of digging it in, or add something rich in nitrogen.`,
  'ground-coffee-no-credit': (v) =>
    `${v.bed}: coffee grounds count as no nitrogen in their first season; fresh ones hold growth back. Put them in the heap first.`,
  'ground-release-untold': (v) =>
    `${v.bed}: whether ${v.what} dissolves or has to rot first was not told. It counts as what rots, and at most as all of it at once. Read the label: salts dissolve; meals, pellets and manures rot.`,
  'ground-low-soil': (v) =>
    `${v.bed} tests low in ${v.elements}. The need shown is what the harvest carries away; how much more would build the soil up is not known here. Follow your laboratory’s advice.`,
  'ground-content-unknown': (v) => `${v.bed}: not known is what is in ${v.what}. The sums miss it and are too low.`,
  'ground-no-soil-test': (v) =>
    `No soil test was read for ${v.beds}: phosphorus and potassium shown as needed are what the harvest carries away, and nitrogen the soil holds is not taken off unless you told it.`,
  'ground-no-yield-goal': (v) =>
    `No yield goal was told for ${v.beds}: the nitrogen need is that of a good field crop, and a garden crop may take less. Local codes may set their own limits.`,
  'ground-warmth-assumed': (v) =>
    `No temperatures were entered. We assume soil of ${band({ low: n(v, 'lowC'), likely: n(v, 'likelyC'), high: n(v, 'highC') }, '°C', 0)} for what has to rot.`,
};

type Elements = Readonly<Record<'n' | 'p' | 'k', Range | null>>;

/** A share of a need; no upper end where the need may be nothing. */
interface Share {
  readonly low: number;
  readonly likely: number;
  readonly high: number | null;
}
type Shares = Readonly<Record<'n' | 'p' | 'k', Share | null>>;

/** What the sentences need of the answer; the task's result has all of it. */
export interface LedgerSaid {
  readonly beds: readonly {
    readonly name: string;
    readonly needG: Elements;
    readonly givenG: Elements;
    readonly missingG: Elements;
    readonly excessG: Elements;
    readonly liquidSharePercent: Shares;
  }[];
  readonly plot: {
    readonly needG: Elements;
    readonly givenG: Elements;
    readonly missingG: Elements;
    readonly liquidSharePercent: Shares;
  };
  readonly cover?: {
    readonly says: readonly string[];
    readonly binds: readonly string[];
    readonly notKnown: readonly string[];
  };
}

const SYMBOLS = ['n', 'p', 'k'] as const;

/** The answer in plain sentences: a few for each bed, then the plot. */
export function sayLedger(said: LedgerSaid): readonly string[] {
  return [
    ...said.beds.flatMap((bed) => [
      `${bed.name}: needs ${amounts(bed.needG)}; got ${amounts(bed.givenG)}; missing ${amounts(bed.missingG)}.`,
      ...shares(bed.liquidSharePercent, bed.name),
      ...(SYMBOLS.some((one) => (bed.excessG[one]?.likely ?? 0) > 0)
        ? [`${bed.name}: more than needed ${amounts(onlyOver(bed.excessG))}.`]
        : []),
    ]),
    `The plot, beds with a known need: needs ${amounts(said.plot.needG)}; all beds got ${amounts(said.plot.givenG)}; missing ${amounts(said.plot.missingG)}.`,
    ...shares(said.plot.liquidSharePercent, 'The plot'),
    ...(said.cover === undefined ? [] : [...said.cover.says, ...said.cover.binds, ...said.cover.notKnown]),
  ];
}

function onlyOver(excess: Elements): Elements {
  const over = (one: Range | null) => (one !== null && one.likely > 0 ? one : null);
  return { n: over(excess.n), p: over(excess.p), k: over(excess.k) };
}

function amounts(grams: Elements): string {
  const known = SYMBOLS.flatMap((one) => {
    const amount = grams[one];
    return amount === null ? [] : [`${one.toUpperCase()} ${band(amount, 'g', digits(amount.likely))}`];
  });
  return known.length > 0 ? known.join(', ') : 'an amount that is not known';
}

function shares(percent: Shares, name: string): readonly string[] {
  const known = SYMBOLS.flatMap((one) => {
    const share = percent[one];
    return share === null ? [] : [`${sharePercent(share)} of the ${ELEMENT[one]}`];
  });
  return known.length > 0 ? [`${name}: the liquid brought ${known.join(', ')} that is needed.`] : [];
}

/** A share with its range; where the low end of the need is nothing, there is no upper end. */
export function sharePercent({ low, likely, high }: Share): string {
  // A share is an estimate within half or twice: more places would claim more. A tiny one keeps its first digit.
  const tiny = Math.min(5, Math.ceil(-Math.log10(likely)));
  const places = likely === 0 || likely >= 10 ? 0 : likely >= 1 ? 1 : Math.max(2, tiny);
  if (high !== null) return band({ low, likely, high }, '%', places);
  return `${withUnit(likely, '%', places)} (${figure(low, places)} or more)`;
}

/** Three places below one, two below ten, none from a hundred on; nothing is plain 0. */
function digits(value: number): number {
  const size = Math.abs(value);
  return size >= 100 || size === 0 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
}
