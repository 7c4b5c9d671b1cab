// What can still help a batch, in plain English: each option with what the model expects of it beside leaving it as it
// is, the cautions, and how to tip it. Numbers come from the engine; nothing is computed here, and nothing is promised.

import type { Values } from '#engine/rules/rule.ts';
import type { DayBand } from '#engine/souring/model/ensemble.ts';
import type { Rescue, RescueKind } from '#engine/souring/rescue.ts';
import { figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);
const litres = (values: Values, key: string) => withUnit(n(values, key), 'L', n(values, key) < 10 ? 1 : 0);
const grams = (values: Values, key: string) => withUnit(n(values, key), 'g', 0);
const day = (value: number) => `day ${figure(value, 0)}`;

/** What each option asks of the grower, as an order. */
export const rescueSentences: Readonly<Record<RescueKind, (values: Values) => string>> = {
  wait: (v) => `Wait, and look again on ${day(n(v, 'nextLookDay'))}.`,
  warmth: (v) =>
    Number.isFinite(n(v, 'fromC'))
      ? `Move it to a place at about ${withUnit(n(v, 'toC'), '°C', 0)}; it stands at ${withUnit(n(v, 'fromC'), '°C', 0)} now.`
      : `Measure how warm it stands. Below ${withUnit(n(v, 'toC'), '°C', 0)}, move it to a warmer place.`,
  skim: () => 'Skim off what floats on top.',
  close: () => 'Keep air out: weigh the plants under, and fit a lid that lets gas out but little air in.',
  sugar: (v) => `Stir in ${grams(v, 'sugarG')} of white sugar, dissolved in a little of the liquid.`,
  starter: (v) => `Add ${litres(v, 'volumeL')} of live liquid from a batch that turned out well.`,
  tip: () => 'Tip it onto the heap and start again. That is no failure.',
};

/** How many draws in ten. */
function tenths(share: number): string {
  const ten = Math.round(share * 10);
  return ten === 0 ? 'hardly any' : ten === 10 ? 'nearly all' : `about ${figure(ten, 0)} in 10`;
}

/** When a pH is passed: between two days, after a day, or hardly at all. */
function span({ low, high, reachedFraction }: DayBand, untilDay: number): string {
  if (low === undefined || reachedFraction < 0.05) return `not by ${day(untilDay)}`;
  if (high === undefined) return `${day(low)} at the soonest, ${tenths(reachedFraction)} by ${day(untilDay)}`;
  return Math.round(low) === Math.round(high) ? `about ${day(low)}` : `${day(low)} to ${figure(high, 0)}`;
}

/** One option in sentences: what to do, and what the model expects. */
export function sayRescue({ kind, values, expects, helps }: Rescue): readonly string[] {
  const said = [rescueSentences[kind](values)];
  if (expects === undefined) return said;
  const { reach, asItIs, untilDay } = expects;
  const both = (of: typeof reach) => `pH 4.2 ${span(of['4.2'], untilDay)}; pH 4.0 ${span(of['4.0'], untilDay)}`;
  if (kind === 'wait') return [...said, `The model expects: ${both(asItIs)}.`];
  if (helps !== true) return [...said, 'The model expects no more of this than of waiting.'];
  return [...said, `The model expects: ${both(reach)}. As it is: ${both(asItIs)}.`];
}

/** Every option, least effort first. */
export function sayRescues(options: readonly Rescue[]): readonly string[] {
  return options.flatMap(sayRescue);
}

const maybe = (v: Values, what: string) =>
  v.known === true
    ? `${what.charAt(0).toUpperCase()}${what.slice(1)} went in: keep it`
    : `Unless you know that no ${what} went in, keep it`;

/** One or two sentences for each rule about rescuing and tipping. */
export const rescueCautions: Readonly<Record<string, (values: Values) => string>> = {
  'rescue-no-sugar-to-a-foul-one': () =>
    'Add no sugar and no starter while it smells foul, climbs, or loses acid: sugar feeds what spoils it as well. In tests, germs that make people ill multiplied in compost teas with added food.',
  'rescue-sugar-is-at-its-most': (v) =>
    `Add no more sugar: ${withUnit(n(v, 'mostHexoseGPerL'), 'g', 0)} to the litre is the most, and that much is in. What lies above it turns to alcohol.`,
  'rescue-sugar-not-past-the-most': (v) =>
    `Not more than ${grams(v, 'mostG')} of white sugar from now on: ${withUnit(n(v, 'mostHexoseGPerL'), 'g', 0)} to the litre in all is the most. What lies above it turns to alcohol.`,
  'rescue-starter-from-a-good-batch': () =>
    'Take starter only from a batch that is ready, with no foul word and no coloured fuzz. Leave the gas room free.',
  'rescue-warm-not-hot': () =>
    'Warm, not hot: out of the sun, and below 30 °C. A full vessel is heavy: lift it with a second person, or empty some into a second one first.',
  'rescue-skim-gently': () =>
    'Lift it off whole, without stirring it in and without leaning over it. Put it under the leaves of the heap, and wash your hands.',
  'rescue-never-seal': () => 'Never seal it: gas has to get out. A vent, a water trap or a loose lid will do.',
  'rescue-is-an-estimate': () =>
    'These days are what a model expects, and it can be wrong. The next reading tells more than the model does.',
  'tip-nothing-of-it-on-a-bed': () => 'Nothing of it goes on any bed or into any can, diluted or not.',
  'tip-animal-matter-not-into-a-food-heap': (v) =>
    `${maybe(v, 'manure, meat, fish or dairy')} out of a heap that is meant for food beds. Ask your local rules where such matter may go.`,
  'tip-untested-clippings-not-into-a-food-heap': (v) =>
    `${maybe(v, 'untested clippings')} out of a heap that is meant for food beds: some weedkillers outlast a heap. Keep it apart until a bean test has cleared it.`,
  'tip-under-dry-leaves': (v) =>
    `${v.leavesL === undefined ? 'Tip it in layers under dry leaves, twice its own volume of them' : `Tip it in layers under about ${litres(v, 'leavesL')} of dry leaves`}, outdoors, away from ditches, wells and paths. How far is for your local rules to say.`,
};
