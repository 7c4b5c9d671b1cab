// What came out, in plain English: the sum, the feed with its bands and ceilings, the solids, how long it may
// stand. Nothing is computed here. Lids and bottles are vessel.ts.

import type { Range } from '#engine/quantity/range.ts';
import type { Values } from '#engine/rules/rule.ts';
import { band, besideLimit, figure, withUnit } from '../figures.ts';
import { sayPressure } from './vessel.ts';

const n = (values: Values, key: string) => Number(values[key]);

/** One sentence or two for each rule about straining. */
export const strainCautions: Readonly<Record<string, (values: Values) => string>> = {
  'strained-batch-lost': () =>
    'This batch is lost. Do not pour it on any bed. Layer it into the heap with dry leaves, away from ditches and wells, as your local rules ask.',
  'strained-lot-not-for-liquid': (v) =>
    `${v.lots} should not be in a liquid feed. Do not pour this batch where food grows; see the reason at that lot.`,
  'strained-lot-of-the-heap': (v) =>
    `${v.lots} went in, which belongs in the heap. Strain it finely, pour it on the soil of beds that are cooked, and look there for seedlings that nobody sowed.`,
  'strained-batch-unknown': () =>
    'The state of this batch is not known, and that never counts as good. Look again and read the acidity before any use.',
  'strained-batch-doubtful': () =>
    'This batch is in doubt. Wait for a second nose and a second reading within 24 hours before any use.',
  'strained-not-sour': (v) =>
    `At pH ${besideLimit(n(v, 'ph'), n(v, 'sourPh'), '', 1)} it has not turned sour (${besideLimit(n(v, 'sourPh'), n(v, 'ph'), '', 1)} or below). Put it on no bed yet. Look again in a day or two; if the acidity does not come or the smell turns foul, it goes on the heap.`,
  'strained-before-ready': (v) =>
    `At pH ${besideLimit(n(v, 'ph'), n(v, 'readyPh'), '', 1)} it is sour but not ready. Keep it under a loose lid until two readings 48 hours apart are ${besideLimit(n(v, 'readyPh'), n(v, 'ph'), '', 1)} or below.`,
  'strained-more-than-could': (v) =>
    `Did ${besideLimit(n(v, 'drainedL'), n(v, 'couldL'), 'L', 1)} really come out? Water and the plants' own water make only about ${besideLimit(n(v, 'couldL'), n(v, 'drainedL'), 'L', 1)}. Measure again, or add what else went in, such as rain or rinsing water.`,
  'strained-sum-open': (v) =>
    n(v, 'unexplainedPercent') > 0
      ? `Is something not weighed? ${withUnit(n(v, 'inKg'), 'kg', 1)} went in and ${withUnit(n(v, 'outKg'), 'kg', 1)} came out: ${besideLimit(n(v, 'unexplainedPercent'), n(v, 'withinPercent'), '%', 0)} is missing, more than the ${besideLimit(n(v, 'withinPercent'), n(v, 'unexplainedPercent'), '%', 0)} that gas, drips and a kitchen scale explain.`
      : `Is something not entered? ${withUnit(n(v, 'inKg'), 'kg', 1)} went in and ${withUnit(n(v, 'outKg'), 'kg', 1)} came out: ${besideLimit(-n(v, 'unexplainedPercent'), n(v, 'withinPercent'), '%', 0)} more than went in. Weigh and measure again.`,
  'strained-tag-not-a-drink': () =>
    'Write the tag before you fill the bottle: peg, what it is, the date, by whom, and in large letters "not a drink". What does not say what it is gets taken for a drink.',
  'strained-figures-too-low': (v) =>
    `Not known for ${v.lots}: ${v.elements}. The amounts shown, and the conductivity, miss them and are too low.`,
  'strained-starter-not-counted': (v) =>
    `What the ${withUnit(n(v, 'starterL'), 'L')} of starter brought along is not known and not counted.`,
};

/** What the sentences need of the answer; the task's result has all of it. */
export interface StrainSaid {
  readonly balance: {
    readonly inKg: number;
    readonly outKg: number;
    readonly unexplainedPercent: number;
    readonly closes: boolean;
  };
  readonly liquid: Elements<Range | null> & { readonly ecDsPerM: Range | null };
  readonly ceiling: Elements<number | null>;
  readonly solids: { readonly nG: Range | null; readonly kG: Range | null; readonly cn: Range | null };
  readonly useFirst: { readonly days: Range; readonly keeping: 'keeps' | 'short' | 'none' };
  readonly pressure?: {
    readonly upToAtm: number | null;
    readonly heterolacticAtm: number | null;
    readonly temperatureC: number;
  };
}

interface Elements<Value> {
  readonly nGPerL: Value;
  readonly pGPerL: Value;
  readonly kGPerL: Value;
}

/** The answer of one straining, sentence by sentence. */
export function sayStrain(result: StrainSaid): readonly string[] {
  const { liquid, ceiling } = result;
  const lines = [
    sayBalance(result.balance),
    sayElement('Nitrogen', liquid.nGPerL, ceiling.nGPerL),
    sayElement('Phosphorus', liquid.pGPerL, ceiling.pGPerL),
    sayElement('Potassium', liquid.kGPerL, ceiling.kGPerL),
    liquid.ecDsPerM === null
      ? 'Conductivity cannot be estimated: measure it with a pen.'
      : `Conductivity of the undiluted liquid, roughly: ${band(liquid.ecDsPerM, 'dS/m', 1)}. A pen in the bottle knows better.`,
    saySolids(result.solids),
    sayUseFirst(result.useFirst),
  ];
  if (result.pressure) lines.push(sayPressure(result.pressure));
  return lines;
}

function sayBalance(balance: StrainSaid['balance']): string {
  const missing = balance.inKg - balance.outKg;
  const what = missing >= 0 ? 'missing' : 'too much';
  const sum = `In ${withUnit(balance.inKg, 'kg', 2)}, out ${withUnit(balance.outKg, 'kg', 2)}: ${withUnit(Math.abs(missing), 'kg', 2)} ${what} (${withUnit(Math.abs(balance.unexplainedPercent), '%', 0)}).`;
  return balance.closes ? `${sum} The sum closes.` : `${sum} The sum does not close.`;
}

function sayElement(name: string, gPerL: Range | null, most: number | null): string {
  if (gPerL === null || most === null) return `${name}: not known for any lot, so no figure.`;
  return `${name} in a litre, an estimate: ${band(gPerL, 'g')}; no more than ${withUnit(most, 'g')} went in for each litre.`;
}

function saySolids(solids: StrainSaid['solids']): string {
  const parts = [
    solids.nG === null ? 'nitrogen not known' : `nitrogen ${band(solids.nG, 'g')}`,
    solids.kG === null ? 'potassium not known' : `potassium ${band(solids.kG, 'g')}`,
  ];
  const cn = solids.cn === null ? 'C:N not known' : `C:N ${band(solids.cn, '', 0)}`;
  return `Left in the strained solids, for the heap: ${parts.join(', ')}; ${cn}.`;
}

function sayUseFirst(useFirst: StrainSaid['useFirst']): string {
  const { low, likely, high } = useFirst.days;
  const span = `${figure(low, 0)} to ${withUnit(high, 'days', 0)}`;
  switch (useFirst.keeping) {
    case 'keeps':
      return `Use first within about ${withUnit(likely, 'days', 0)} of straining (${span}). The sources disagree, from weeks to the next summer, and none of it is a promise: a rising pH or a film on top ends it at once.`;
    case 'short':
      return `Not sour enough to keep: use it within about ${withUnit(likely, 'days', 0)} of straining (${span}; our caution, no source) once it is ready, or put it on the heap.`;
    case 'none':
      return 'Not a feed to keep: it gets no use-first date.';
  }
}
