// The weigh-in in plain English: does it fit, will it sour. Numbers come from the engine; nothing is
// computed here. One sentence a fact, the one to act on first.

import type { Cure } from '#engine/pail/cures.ts';
import type { Fit } from '#engine/pail/fit.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { Values } from '#engine/rules/rule.ts';
import { band, besideLimit, decimalsApart, figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);

/** One sentence for each rule of the weigh-in. */
export const fitCautions: Readonly<Record<string, (values: Values) => string>> = {
  'past-the-fill-line': (v) =>
    `Do not fill yet: ${besideLimit(n(v, 'overL'), 0, 'L', 1)} too much for the fill line at ${withUnit(n(v, 'usableL'), 'L', 1)}. Mend it first.`,
  'mat-rises-over-the-rim': (v) =>
    `As it gasses the mat can rise to ${figure(n(v, 'lowL'), 1)} to ${besideLimit(n(v, 'highL'), n(v, 'rimL'), 'L', 1)}, over the rim at ${besideLimit(n(v, 'rimL'), n(v, 'highL'), 'L', 1)}. Leave more gas room, or stand it in a tray and push the mat under daily for three days.`,
  'fill-it-where-it-stands': (v) =>
    `It will weigh about ${besideLimit(n(v, 'massKg'), n(v, 'mostKg'), 'kg', 0)}. Fill it where it stands, with a jug; do not lift more than ${besideLimit(n(v, 'mostKg'), n(v, 'massKg'), 'kg', 0)}.`,
  'sugar-window-closed': (v) =>
    noRoomForSugar({
      productName: String(v.product),
      ...{ leastG: n(v, 'leastG'), mostG: n(v, 'mostG') },
      ...(v.lowG !== undefined && { withoutMarginG: { low: n(v, 'lowG'), high: n(v, 'highG') } }),
    }),
  'may-not-turn-sour': (v) =>
    `It may not turn sour. Weigh in about ${withUnit(n(v, 'leastProductG'), 'g', 0)} of ${v.product} in all, or swap clippings for fruit scraps.`,
  'more-sugar-than-the-acid-uses': (v) =>
    `${besideLimit(n(v, 'overG'), 0, 'g', 0)} more ${v.product} than the acid can use: the rest would feed yeast and make alcohol and gas. Keep it under ${withUnit(n(v, 'mostG'), 'g', 0)}.`,
  'more-than-the-beds-use': (v) =>
    `About ${besideLimit(n(v, 'drainedL'), n(v, 'usableL'), 'L', 0)} would be drained off, ${figure(n(v, 'times'), 1)} times what the beds named can take (${besideLimit(n(v, 'usableL'), n(v, 'drainedL'), 'L', 1)}) in ${withUnit(n(v, 'shelfDays'), 'days', 0)}. Make a smaller batch.`,
};

/** Where no amount of a sugar keeps its margin, or none would do: what it takes, and what opens it. */
export function noRoomForSugar(of: {
  readonly productName: string;
  readonly leastG: number;
  readonly mostG: number;
  /** Where some amount would do without the margin. */
  readonly withoutMarginG?: Pick<Range, 'low' | 'high'>;
}): string {
  const grams = (value: number) => withUnit(value, 'g', 0);
  const { productName, leastG, mostG, withoutMarginG: bare } = of;
  const least = besideLimit(leastG, mostG, 'g', 0);
  const other = 'Use more water, fewer clippings, or fruit scraps in place of sugar.';
  const yeast = `above ${besideLimit(mostG, leastG, 'g', 0)} the rest feeds yeast`;
  if (bare === undefined)
    return Number.isFinite(leastG)
      ? `No amount of ${productName} would do: it takes ${least} with the margin of two, and ${yeast}. ${other}`
      : `No amount of ${productName} would do: it takes up more acid than it makes. Use white sugar or fruit scraps, or fewer clippings.`;
  const margin = Number.isFinite(leastG)
    ? `No amount of ${productName} keeps the margin of two: that takes ${least}, and ${yeast}.`
    : `No amount of ${productName} keeps the margin of two, since it takes up acid itself; ${yeast}.`;
  return `${margin} Without a margin ${figure(bare.low, 0)} to ${grams(bare.high)} may turn it sour. ${other}`;
}

/** What the sentences need beside the engine's answer. */
export interface About {
  readonly vesselL: number;
  readonly targetPh: number;
  readonly productName: string;
}

type Said = Pick<Fit, 'fill' | 'lift' | 'cures' | 'inputs' | 'unknown'> & {
  readonly sugar: Omit<Fit['sugar'], 'terms'>;
  readonly about: About;
};

/** The answer of one weigh-in, sentence by sentence. */
export function sayFit(fit: Said): readonly string[] {
  const { fill, about } = fit;
  const lines: string[] = [];
  const volume = band(fill.volumeL, 'L', decimalsApart(fill.volumeL.likely, fill.usableL, 1));
  const room = `${besideLimit(fill.usableL, fill.volumeL.likely, 'L', 1)} to the fill line of a ${withUnit(about.vesselL, 'L')} vessel`;
  lines.push(
    fill.fits
      ? `It fits: ${volume}, with ${room}, ${figure(fill.usedPercent, 0)} % of it used.`
      : `It does not fit: ${volume}, with ${room}. ${withUnit(fill.overL, 'L', 1)} too much.`,
  );
  lines.push(
    `While it gasses the mat stands at ${figure(fit.lift.lowL, 1)} to ${withUnit(fit.lift.highL, 'L', 1)}. All together ${withUnit(fill.massKg, 'kg', 1)}.`,
  );
  for (const cure of fit.cures) lines.push(sayCure(cure));
  lines.push(...saySugar(fit));
  lines.push(
    `Goes in with the plants: nitrogen ${band(fit.inputs.nG, 'g')}, phosphorus ${band(fit.inputs.pG, 'g')}, potassium ${band(fit.inputs.kG, 'g')}.`,
  );
  for (const gap of fit.unknown) {
    const name = { n: 'nitrogen', p: 'phosphorus', k: 'potassium' }[gap.element];
    lines.push(`The ${name} of ${gap.materials.join(', ')} is not known, so that total is too low.`);
  }
  return lines;
}

function saySugar(fit: Said): string[] {
  const { sugar, about } = fit;
  const need = `To reach pH ${figure(about.targetPh, 1)} the acid takes ${band(sugar.neededHexoseBandG, 'g', 0)} of sugars; the plants bring about ${withUnit(sugar.ownHexoseG, 'g', 0)} of their own.`;
  if (sugar.leastHexoseG.likely <= 0) return [need, 'With a margin for a wet start, no sugar need be added.'];
  if (sugar.window === 'closed') return [need];
  const least = `With a margin of two, add ${withUnit(sugar.leastHexoseG.likely, 'g', 0)} (${figure(sugar.leastHexoseG.low, 0)} to ${figure(sugar.leastHexoseG.high, 0)}), which is ${withUnit(sugar.asProductG, 'g', 0)} of ${about.productName}; at most ${withUnit(sugar.mostHexoseG, 'g', 0)} of sugars.`;
  return [need, least];
}

/** One cure as one sentence that says what to do. */
export function sayCure(cure: Cure): string {
  const lots = (cure.plants ?? []).map((lot) => `${lot.name} ${withUnit(lot.massKg, 'kg')}`).join(', ');
  const rest = [
    cure.waterL === undefined ? '' : `water ${withUnit(cure.waterL, 'L')}`,
    lots,
    cure.sugarKg ? `sugar ${withUnit(cure.sugarKg * 1000, 'g', 0)}` : '',
  ]
    .filter(Boolean)
    .join(', ');
  switch (cure.kind) {
    case 'scale':
      return `Shrink everything to ${figure((cure.factor ?? 1) * 100, 0)} %: ${rest}.`;
    case 'more':
      return `Make ${figure(cure.factor ?? 1, 1)} times as much: ${rest}.`;
    case 'vessel':
      return `Or use another vessel: from ${withUnit(cure.volumeL ?? 0, 'L', 1)} it would just reach the fill line.`;
    case 'leave-out': {
      const out = cure.leftOut;
      const amount = out?.volumeL !== undefined ? withUnit(out.volumeL, 'L') : withUnit(out?.massKg ?? 0, 'kg');
      return `Leave out ${amount} of ${out?.what ?? 'it'}: ${rest}.`;
    }
  }
}
