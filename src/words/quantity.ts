// What to say about an amount or a dilution as typed: what is wrong, what would do, and the one question
// that settles it. The reading itself stands in engine/quantity; nothing is decided here.

import type { Ask, StyleChoice } from '#engine/quantity/ask.ts';
import { countryMeant, type KeptAmount } from '#engine/quantity/kept.ts';
import { plainFigure } from '#engine/quantity/number.ts';
import type { AmountProblem, ParsedAmount } from '#engine/quantity/parse.ts';
import type { ParsedRatio, Ratio, RatioProblemCode } from '#engine/quantity/ratio.ts';
import { ratioVolumes } from '#engine/quantity/ratio.ts';
import type { SpoonMeasured } from '#engine/quantity/spoons.ts';
import type { Dimension, GallonCountry, SpoonCountry } from '#engine/quantity/units.ts';
import { figure, withUnit } from './figures.ts';

/** What is wrong, and what would do, in the words of a field problem. */
export interface Said {
  readonly message: string;
  readonly allowed: string;
}

const WANTED: Readonly<Record<Dimension, string>> = {
  mass: 'a mass, such as 2.4 kg, 250 g or 5 lb 4 oz',
  volume: 'a volume, such as 1.5 L, 250 mL or 6 tbsp',
  area: 'an area, such as 5.76 m² or 60 sq ft',
  temperature: 'a temperature, such as 18 °C or 64 °F',
  count: 'a whole number',
};

const IS: Readonly<Record<Dimension, string>> = {
  mass: 'a mass',
  volume: 'a volume',
  area: 'an area',
  temperature: 'a temperature',
  count: 'a number',
};

const SI: Readonly<Record<Dimension, string>> = { mass: 'kg', volume: 'L', area: 'm²', temperature: '°C', count: '' };

const COUNTRY: Readonly<Record<GallonCountry | SpoonCountry, string>> = {
  us: 'US',
  imperial: 'imperial',
  metric: 'metric',
  uk: 'UK',
  au: 'Australian',
};

const MEASURE: Readonly<Record<string, string>> = {
  gal: 'gallon',
  qt: 'quart',
  pt: 'pint',
  floz: 'fluid ounce',
  cup: 'cup',
  tbsp: 'tablespoon',
  tsp: 'teaspoon',
};

/** What is wrong with a typed amount, and what would do. */
export function sayAmountProblem(failed: Extract<ParsedAmount, { readonly ok: false }>): Said {
  const { problem, ask } = failed;
  return { message: amountMessage(problem), allowed: ask === undefined ? amountAllowed(problem) : sayAsk(ask) };
}

function amountMessage(problem: AmountProblem): string {
  const wanted = IS[problem.allowed.dimension];
  const unit = problem.unit ?? '';
  switch (problem.message) {
    case 'empty':
      return 'is empty';
    case 'not-a-number':
      return 'does not begin with a number';
    case 'ambiguous-mark':
      return 'can be read in two ways: the mark may stand before decimals or thousands';
    case 'unclear-number':
      return 'is not one clear amount';
    case 'negative':
      return 'is less than nothing';
    case 'zero':
      return 'is nothing';
    case 'too-large':
      return 'is more than can be believed';
    case 'too-small':
      return problem.allowed.dimension === 'temperature'
        ? 'is colder than can be believed'
        : 'is less than can be weighed or measured';
    case 'not-whole':
      return 'is not a whole number';
    case 'unit-missing':
      return 'has no unit';
    case 'unit-unknown':
      return `has a unit that is not known here: ${unit}`;
    case 'wrong-dimension':
      return `is ${IS[problem.found ?? 'count']}, and ${wanted} is wanted`;
    case 'country-needed':
      return `does not say whose measure it is: ${unit}`;
    case 'product-needed':
      return 'is a volume, and its mass differs from product to product';
  }
}

function amountAllowed(problem: AmountProblem): string {
  const { dimension, least, most } = problem.allowed;
  if (problem.message === 'wrong-dimension' && dimension === 'volume' && /oz|ounce/i.test(problem.unit ?? ''))
    return `${WANTED.volume}; a fluid ounce is written fl oz`;
  if (problem.message === 'too-large' || problem.message === 'too-small') {
    const from = dimension === 'temperature' || dimension === 'count' ? String(least) : 'more than 0';
    return `${from} to ${withUnit(most, SI[dimension])}`.replace('more than 0 to', 'more than 0, up to');
  }
  return WANTED[dimension];
}

/** The one question that settles an amount, each choice with what it holds. */
export function sayAsk(ask: Ask): string {
  if (ask.kind === 'product') return 'name the product, or give a mass';
  if (ask.kind === 'style') return ask.choices.map(({ value }) => writtenOut(value, ask.behind)).join(' or ');
  const measure = MEASURE[ask.measure] ?? ask.measure;
  const choices = ask.choices.map(({ country, mL }) => `${COUNTRY[country]} (${millilitres(mL)})`);
  return `which ${measure}: ${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}`;
}

/** A figure that every style reads alike, with the unit that was typed: "1250 g", "1.25 g". */
function writtenOut(value: number, behind: string): string {
  return `${plainFigure(value)}${behind === '' ? '' : '\u00a0'}${behind}`;
}

/** An amount as it was typed, with whose gallon or spoon was meant where the text does not say so. */
export function sayTyped(amount: KeptAmount): string {
  const country = countryMeant(amount);
  return country === undefined ? amount.typed : `${amount.typed} (${COUNTRY[country]})`;
}

/** One reading of a figure that can be read in two ways, for a button. */
export function sayStyleChoice({ value }: StyleChoice, behind: string): string {
  const size = value >= 1000 ? 'a thousand or more' : `less than ${Math.floor(value) + 1}`;
  return `Read as ${writtenOut(value, behind)}, ${size}`;
}

/** Tenths below 1 L, as a cook's measures are told apart. */
function millilitres(mL: number): string {
  return withUnit(mL, 'mL', mL < 100 && Math.abs(mL - Math.round(mL)) > 0.01 ? 1 : 0);
}

/** "2½ tablespoons (UK), 1.3 % under". */
export function saySpoons(measured: SpoonMeasured, spoon: SpoonCountry): string {
  const noun = measured.count > 1 ? `${measured.tool}s` : measured.tool;
  const off = Math.abs(measured.errorPercent);
  const error = off < 0.05 ? 'exact' : `${figure(off, 1)} % ${measured.errorPercent < 0 ? 'under' : 'over'}`;
  return `${measured.text} ${noun} (${COUNTRY[spoon]}), ${error}`;
}

const PLAIN_FIGURES = 'figures without a mark before thousands, such as 1 in 1250 or 1 in 1.25';
const RATIO_WANTED = 'such as 1 in 200, 1 to 40 or 0.5 %';
const RATIO_MESSAGE: Readonly<Record<RatioProblemCode, string>> = {
  empty: 'is empty',
  'not-a-ratio': 'is not a dilution that can be read',
  'not-positive': 'holds a figure that is not more than 0',
  'ambiguous-mark': 'can be read in two ways: the mark may stand before decimals or thousands',
  reversed: 'has more concentrate than mixture',
  'too-large': 'is thinner than can be believed',
};

/** What is wrong with a typed dilution, and what would do. */
export function sayRatioProblem(failed: Extract<ParsedRatio, { readonly ok: false }>): Said {
  const { message, allowed } = failed.problem;
  if (message === 'too-large') return { message: RATIO_MESSAGE[message], allowed: `up to 1 in ${allowed.most}` };
  if (message === 'ambiguous-mark') return { message: RATIO_MESSAGE[message], allowed: PLAIN_FIGURES };
  if (message === 'reversed')
    return { message: RATIO_MESSAGE[message], allowed: `the concentrate first, ${RATIO_WANTED}` };
  return { message: RATIO_MESSAGE[message], allowed: RATIO_WANTED };
}

/** Both readings of a typed colon, each as volumes in the can at hand. */
export function sayReadings(readings: readonly Ratio[], canL: number): readonly string[] {
  return readings.map((ratio) => {
    const { concentrateMl, waterMl } = ratioVolumes({ ratio, mixtureL: canL });
    return `1 ${ratio.reading} ${figure(ratio.n)}: ${withUnit(concentrateMl, 'mL', 0)} of concentrate and ${withUnit(waterMl, 'mL', 0)} of water make ${withUnit(canL, 'L')}`;
  });
}
