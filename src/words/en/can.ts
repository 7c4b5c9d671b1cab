// What to pour, in plain English: the can card's lines, the tools to measure with, and one sentence or two for
// each rule about a batch, a can, a leaf or a nozzle. Nothing is computed here.

import type { Measure } from '#engine/can/measures.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { SpoonCountry } from '#engine/quantity/units.ts';
import type { Values } from '#engine/rules/rule.ts';
import { band, besideLimit, counted, figure, withUnit } from '../figures.ts';
import { sayDate } from './app.ts';

const n = (values: Values, key: string) => Number(values[key]);
/** The date from which a batch counts as held, where one is known. */
const heldFrom = ({ heldOn }: Values) =>
  heldOn === undefined ? '' : ` It counts as held from ${sayDate(String(heldOn))}, if nothing turns before then.`;
const peg = (values: Values) => (values.peg ? `Peg ${values.peg}` : 'This batch');
const pegWithin = (values: Values) => (values.peg ? `peg ${values.peg}` : 'this batch');
const EC = 'dS/m';

/** Whose spoon, and what it holds: a table and a tea spoon of one country do not hold the same. */
const spoonWords: Readonly<Record<'tablespoon' | 'teaspoon', Readonly<Record<SpoonCountry, string>>>> = {
  tablespoon: { us: 'US', metric: 'metric (15 mL)', uk: 'older British (17.8 mL)', au: 'Australian (20 mL)' },
  teaspoon: { us: 'US', metric: 'metric (5 mL)', uk: 'older British (5.9 mL)', au: 'Australian (5 mL)' },
};

/** One sentence or two for each rule about pouring. */
export const canCautions: Readonly<Record<string, (values: Values) => string>> = {
  'batch-none': () => 'No batch named: these are volumes alone. Pour only what has a peg and was judged ready.',
  'batch-no-peg': () =>
    'No dose for a jar without a peg. Read its pH and smell it from arm’s length, never taste it, and ask the other keyholders. If nobody knows it, compost it: tip it on the heap, away from ditches and wells.',
  'batch-lost': (v) =>
    `No dose: ${pegWithin(v)} is lost. Do not pour it on any bed. Layer it into the heap with dry leaves, away from ditches and wells, as your local rules ask.`,
  'batch-unknown': (v) =>
    `No dose: what ${pegWithin(v)} is like is not known, and that never counts as good. Look again and read the acidity, or compost it.`,
  'batch-souring': (v) =>
    `Wait: ${pegWithin(v)} is still souring. Pour it once two readings 48 hours apart make it ready.`,
  'batch-slow': (v) =>
    `Wait: ${pegWithin(v)} is slow and not yet sour enough. A warmer place brings it on; pour it once it is ready.`,
  'batch-doubtful': (v) =>
    `Wait: ${pegWithin(v)} is in doubt. Ask for a second nose and a second reading within 24 hours before any use.`,
  'batch-not-held': (v) =>
    `${peg(v)} is ready but not held: it has not stayed at pH 4.0 or below long enough. Until then it goes only on beds whose next harvest is cooked or more than ${withUnit(n(v, 'days'), 'days')} off.${heldFrom(v)}`,
  'batch-not-held-raw-bed': (v) =>
    `Not on this bed yet: it is eaten raw, and ${pegWithin(v)} is not held. Wait until it is held, or pour it on a bed that is cooked or picked more than ${withUnit(n(v, 'days'), 'days')} from now.${heldFrom(v)}`,
  'raw-bed-picked-soon': (v) =>
    v.toPickDays === undefined
      ? `Say when this bed is picked. What is eaten raw waits ${withUnit(n(v, 'days'), 'days')} after a pour on the soil; local rules may ask for more.`
      : `Wait with this bed: it is eaten raw and picked in ${withUnit(n(v, 'toPickDays'), 'days', 0)}. Pour it only when picking is ${withUnit(n(v, 'days'), 'days')} away or more; local rules may ask for more.`,
  'leaf-eaten-raw': (v) =>
    v.eaten
      ? 'Never on the leaves of anything eaten raw. Pour on the soil instead, at the foot of the plants.'
      : 'Not on leaves: say first whether this crop is eaten raw or cooked. Anything eaten raw is never sprayed.',
  'aim-too-weak': (v) =>
    `This batch cannot bring ${besideLimit(n(v, 'aimGPerM2'), n(v, 'mostGPerM2'), 'g/m²')}: even undiluted at this depth it holds ${besideLimit(n(v, 'mostGPerM2'), n(v, 'aimGPerM2'), 'g/m²')}. Aim lower, pour more often, or close the gap with compost or mulch.`,
  'aim-water-too-salty': (v) =>
    `The water alone has ${besideLimit(n(v, 'waterEcDsPerM'), n(v, 'maxEcDsPerM'), EC)}, not below the ${besideLimit(n(v, 'maxEcDsPerM'), n(v, 'waterEcDsPerM'), EC)} asked for. Use rain water, or raise the limit if the crop bears it.`,
  'salt-never': (v) =>
    `No dose at this strength: it would add ${besideLimit(n(v, 'ecDsPerM'), n(v, 'limitDsPerM'), EC)} of salt, and no drench adds more than ${besideLimit(n(v, 'limitDsPerM'), n(v, 'ecDsPerM'), EC)}. Dilute it further.`,
  'salt-over': (v) => {
    const limit = besideLimit(n(v, 'limitDsPerM'), n(v, 'ecDsPerM'), EC);
    const salt = besideLimit(n(v, 'ecDsPerM'), n(v, 'limitDsPerM'), EC);
    if (v.way === 'leaf')
      return `Too salty for leaves: ${salt}, where a spray stays at or below ${limit}. Dilute it further.`;
    if (v.growth === 'established')
      return `Too salty: it adds ${salt}, where grown plants bear ${limit}. Dilute it further.`;
    return v.growth
      ? `Too salty for seedlings: it adds ${salt}, where they bear ${limit}. Dilute it further.`
      : `Too salty for seedlings: it adds ${salt}, where they bear ${limit}. Dilute it further, or say that the plants are established.`;
  },
  'salt-near': (v) =>
    `Close to the salt limit of ${besideLimit(n(v, 'limitDsPerM'), n(v, 'ecDsPerM'), EC)}: likely ${besideLimit(n(v, 'ecDsPerM'), n(v, 'limitDsPerM'), EC)}, perhaps ${besideLimit(n(v, 'highEcDsPerM'), n(v, 'limitDsPerM'), EC)}. Try three plants first, or dilute it further.`,
  'crop-salt-over': (v) =>
    `Too salty for ${v.crop}: the can has ${besideLimit(n(v, 'ecDsPerM'), n(v, 'limitDsPerM'), EC)}, and ${v.crop} yields less beyond ${besideLimit(n(v, 'limitDsPerM'), n(v, 'ecDsPerM'), EC)} in the soil (${withUnit(n(v, 'slopePercentPerDsPerM'), '%')} for each ${EC}). Dilute it further.`,
  'crop-salt-near': (v) =>
    `Close to what ${v.crop} bears: ${besideLimit(n(v, 'limitDsPerM'), n(v, 'ecDsPerM'), EC)}. The can has likely ${besideLimit(n(v, 'ecDsPerM'), n(v, 'limitDsPerM'), EC)}, perhaps ${besideLimit(n(v, 'highEcDsPerM'), n(v, 'limitDsPerM'), EC)}. Dilute it further or water well after.`,
  'crop-salt-not-known': (v) =>
    `How much salt ${v.crop} bears is not in our table. The general limits alone were looked at.`,
  'salt-not-measured-strong': (v) =>
    `Measure the salt of the concentrate first (a conductivity pen), or go to 1 in ${figure(n(v, 'n'), 0)} or weaker. The saltiest such liquid in print would put ${besideLimit(n(v, 'mostEcDsPerM'), n(v, 'limitDsPerM'), EC)} into this can; the limit here is ${besideLimit(n(v, 'limitDsPerM'), n(v, 'mostEcDsPerM'), EC)}.`,
  'salt-not-measured': (v) =>
    `The salt of the concentrate was not measured. The saltiest such liquid in print would put ${besideLimit(n(v, 'mostEcDsPerM'), n(v, 'limitDsPerM'), EC)} into this can, under the limit of ${besideLimit(n(v, 'limitDsPerM'), n(v, 'mostEcDsPerM'), EC)}.`,
  'too-sour-for-dry-soil': (v) =>
    `Wet the soil first: this can stands near pH ${besideLimit(n(v, 'ph'), n(v, 'limitPh'), '', 1)}, and below ${besideLimit(n(v, 'limitPh'), n(v, 'ph'), '', 1)} it goes on moist soil only.`,
  'outside-pour-ph': (v) =>
    `This can may stand between pH ${figure(n(v, 'lowPh'), 1)} and ${figure(n(v, 'highPh'), 1)}; ${figure(n(v, 'fromPh'), 1)} to ${figure(n(v, 'toPh'), 1)} is usual. Pour on moist soil, and try three plants first.`,
  'leaf-acid-over': (v) =>
    `Too sour for leaves: ${besideLimit(n(v, 'acidMmolPerL'), n(v, 'limitMmolPerL'), 'mmol/L')} of acid that burns, at pH ${figure(n(v, 'phLow'), 1)}, where leaves bear ${besideLimit(n(v, 'limitMmolPerL'), n(v, 'acidMmolPerL'), 'mmol/L')}. Dilute it further, or pour on the soil.`,
  'leaf-alcohol-over': (v) =>
    `Too much alcohol for leaves: ${besideLimit(n(v, 'percent'), n(v, 'limitPercent'), '%')}, where it stays under ${besideLimit(n(v, 'limitPercent'), n(v, 'percent'), '%')}. Dilute it further, or pour on the soil.`,
  'leaf-acid-not-known': () =>
    'How much acid and alcohol would lie on the leaves is not known. Spray three plants two days before the rest, or pour on the soil.',
  'nozzle-clogs': (v) =>
    v.strainedMm === undefined
      ? `How fine was it strained? A ${withUnit(n(v, 'nozzleMm'), 'mm')} nozzle wants ${besideLimit(n(v, 'meshMm'), n(v, 'strainedMm'), 'mm')} or finer: strain it so, or pour.`
      : `It will clog: a ${withUnit(n(v, 'nozzleMm'), 'mm')} nozzle, strained at ${besideLimit(n(v, 'strainedMm'), n(v, 'meshMm'), 'mm')}. Strain to ${besideLimit(n(v, 'meshMm'), n(v, 'strainedMm'), 'mm')} or finer, or pour.`,
  'eaten-not-told': (v) =>
    `Say whether the bed is eaten raw or cooked. If raw: on the soil only, from a held batch, ${withUnit(n(v, 'days'), 'days')} or more before picking.`,
  'can-water-not-told': () => 'The water was not described, so how sour and how salty the can is was not worked out.',
  'ratio-is-practice': (v) =>
    `The strength, 1 ${v.reading} ${figure(n(v, 'n'))}, is common practice without a source. Try it on three plants before a whole bed.`,
  'use-today': () =>
    'Use it today; tip the rest on soil. Once it is thinned with tap water the acid no longer keeps it.',
};

interface Volumes {
  readonly concentrateMl: number;
  readonly waterMl: number;
}

/** What the sentences need of the answer; the task's result has all of it. */
export interface CanSaid {
  readonly canL: number;
  readonly perCan?: Volumes | undefined;
  readonly otherReading?: (Volumes & { readonly n: number; readonly reading: 'in' | 'to' }) | undefined;
  readonly cans?: readonly { readonly volumeL: number; readonly concentrateMl: number }[] | undefined;
  readonly totalL?: number | undefined;
  readonly concentrateL?: number | undefined;
  readonly measures?: readonly { readonly text: string }[] | undefined;
  readonly twoStep?:
    | {
        readonly firstConcentrateMl: number;
        readonly firstWaterMl: number;
        readonly thenMl: number;
        readonly canL: number;
      }
    | undefined;
  readonly diluted: { readonly ph?: Range | undefined; readonly ecDsPerM?: Range | undefined };
  readonly given?: { readonly nGPerM2?: Range | undefined; readonly kGPerM2?: Range | undefined } | undefined;
}

/** Millilitres for a jug: a tenth below 100 mL, hundredths where a dose is that small. */
function ml(volumeMl: number): string {
  return withUnit(volumeMl, 'mL', volumeMl >= 100 ? 0 : volumeMl >= 10 ? 1 : 2);
}

/** One tool with its count, as it stands on the can card. */
export function sayMeasure(measure: Measure): string {
  switch (measure.tool) {
    case 'jug':
      return `jug: ${withUnit(measure.count, 'mL', 0)}${off(measure.errorPercent)}`;
    case 'syringe':
      return `${sayFills(measure.count)}${off(measure.errorPercent)}`;
    case 'tablespoon':
    case 'teaspoon':
      return `${measure.countText} ${spoonWords[measure.tool][measure.spoon]} ${measure.tool}${measure.count > 1 ? 's' : ''}${off(measure.errorPercent)}`;
    case 'mix':
      return `one mix for ${counted(measure.count, 'can')}: ${ml(measure.concentrateMl)} of concentrate, water to ${ml(measure.mixMl)}, then ${ml(measure.eachMl)} of it in each can`;
  }
}

function sayFills(volumeMl: number): string {
  const full = Math.floor(volumeMl / 20);
  const restMl = volumeMl - full * 20;
  const rest = restMl > 0 ? withUnit(restMl, 'mL', 1) : '';
  if (full === 0) return `20 mL syringe: ${rest}`;
  return `20 mL syringe: ${counted(full, 'full one')}${rest ? ` and ${rest}` : ''}`;
}

function off(errorPercent: number): string {
  const rounded = Math.round(errorPercent * 10) / 10;
  if (rounded === 0) return '';
  return ` (${rounded > 0 ? '+' : '−'}${withUnit(Math.abs(rounded), '%', 1)})`;
}

/** The can card in plain sentences, cautions apart. */
export function sayCan(result: CanSaid): readonly string[] {
  if (!result.perCan) return ['No dose: see why below.'];
  const { perCan } = result;
  return [
    `For one can of ${withUnit(result.canL, 'L')}: ${ml(perCan.concentrateMl)} of concentrate, then water to the mark (${ml(perCan.waterMl)}).`,
    ...sayOther(result),
    ...sayBed(result),
    ...(result.measures ?? []).map(({ text }) => `Measure with ${text}.`),
    ...sayTwoStep(result),
    ...sayDiluted(result),
    ...sayGiven(result),
  ];
}

function sayOther({ otherReading, perCan, canL }: CanSaid): readonly string[] {
  if (!otherReading) return [];
  const { n: parts, reading, concentrateMl } = otherReading;
  if (ml(concentrateMl) === ml(perCan?.concentrateMl ?? Number.NaN)) return [];
  return [`Read as 1 ${reading} ${figure(parts)} it would be ${ml(concentrateMl)} in ${withUnit(canL, 'L')}.`];
}

function sayBed({ cans, totalL, concentrateL, canL }: CanSaid): readonly string[] {
  if (!cans || totalL === undefined || concentrateL === undefined) return [];
  const full = cans.filter(({ volumeL }) => volumeL === canL).length;
  const part = cans.find(({ volumeL }) => volumeL !== canL);
  const parts = [
    ...(full > 0 ? [`${counted(full, 'full can')} of ${withUnit(canL, 'L')}`] : []),
    ...(part ? [`one of ${withUnit(part.volumeL, 'L', 1)} with ${ml(part.concentrateMl)}`] : []),
  ];
  return [
    `For the bed: ${withUnit(totalL, 'L', 1)} in all, with ${ml(concentrateL * 1000)} of concentrate: ${parts.join(', and ')}.`,
  ];
}

function sayTwoStep({ twoStep }: CanSaid): readonly string[] {
  if (!twoStep) return [];
  const { firstConcentrateMl, firstWaterMl, thenMl, canL } = twoStep;
  return [
    `In two steps, because the dose is under 2 mL: first ${ml(firstConcentrateMl)} of concentrate in ${ml(firstWaterMl)} of water; then ${ml(thenMl)} of that, and water to ${withUnit(canL, 'L')}.`,
  ];
}

function sayDiluted({ diluted }: CanSaid): readonly string[] {
  const { ph, ecDsPerM } = diluted;
  return [
    ...(ph ? [`The can stands near pH ${band(ph, '', 1)}.`] : []),
    ...(ecDsPerM ? [`Its salt: ${band(ecDsPerM, EC, 2)}.`] : []),
  ];
}

/** Places for a few milligrams as for a few grams. */
function grams(g: Range): number {
  return g.likely < 0.1 ? 3 : g.likely < 10 ? 2 : 1;
}

function sayGiven({ given }: CanSaid): readonly string[] {
  const { nGPerM2, kGPerM2 } = given ?? {};
  return [
    ...(nGPerM2
      ? [`It brings nitrogen, ${band(nGPerM2, 'g/m²', grams(nGPerM2))}, most of it not yet open to plants.`]
      : []),
    ...(kGPerM2 ? [`It brings potassium, ${band(kGPerM2, 'g/m²', grams(kGPerM2))}.`] : []),
  ];
}
