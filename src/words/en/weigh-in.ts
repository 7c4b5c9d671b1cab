// The weigh-in screen in plain English: the verdict, the cures, the sugar window, the text of the
// drawing. Labels and headings stand in weigh-in-labels.ts.
// Figures come from the answer of the word `fit`; nothing is computed here.

import type { Cure } from '#engine/pail/cures.ts';
import type { ShapeKind } from '#engine/pail/shape.ts';
import type { SugarWindow } from '#engine/pail/sugar.ts';
import type { Fill, Lift } from '#engine/pail/volume.ts';
import type { Range } from '#engine/quantity/range.ts';
import { band, besideLimit, counted, figure, withUnit } from '../figures.ts';
import { noRoomForSugar } from './fit.ts';
import { shapeNames } from './weigh-in-labels.ts';
import { written, writtenEnds } from './working.ts';

/** What still has to be told before a fit stands. */
export function stillMissing(missing: readonly ('vessel' | 'scraps' | 'water')[]): string {
  const names = { vessel: 'which vessel', scraps: 'which scraps and their weight', water: 'how much water' };
  const list = missing.map((one) => names[one]);
  const last = list.pop() ?? '';
  return `Still to tell: ${list.length > 0 ? `${list.join(', ')} and ${last}` : last}.`;
}

/** What stands in place of an answer while something typed cannot be read. */
export function unreadable(count: number): string {
  return `${counted(count, 'entry', 'entries')} cannot be read yet. The sentence stands beside it; what was typed is kept.`;
}

/** The largest figure of the sheet, and the words after it. */
export function verdict(fill: Fill): { readonly figure: string; readonly rest: string } {
  if (!fill.fits) return { figure: withUnit(fill.overL, 'L', 1), rest: 'too much' };
  const room = fill.usableL - fill.volumeL.likely;
  return { figure: withUnit(room, 'L', 1), rest: fill.usedPercent < 60 ? 'left empty' : 'to spare' };
}

/** Under the verdict: what stands in it, against what would fit. */
export function fillSentence(fill: Fill, about: { readonly vesselL: number; readonly shape: ShapeKind }): string {
  const vessel = `${withUnit(about.vesselL, 'L')} ${shapeNames[about.shape]}`;
  const used = fill.fits ? `, ${figure(fill.usedPercent, 0)}\u00a0% of it used` : '';
  return `${band(fill.volumeL, 'L', 1)} in a ${vessel} with ${withUnit(fill.usableL, 'L', 1)} to the fill line${used}.`;
}

/** How high it stands while gas lifts the mat. */
export function liftSentence(lift: Lift): string {
  const where = lift.passesRim ? 'over the rim' : 'below the rim';
  return `As it gasses the mat rises to ${figure(lift.lowL, 1)} to ${withUnit(lift.highL, 'L', 1)}, ${where}.`;
}

/** What there is to lift. */
export function massSentence(massKg: number): string {
  return `${withUnit(massKg, 'kg', 1)} in all, without the vessel.`;
}

/** A cure as a block: what it does in a few words, and what it comes to. */
export function cureWords(
  cure: Cure,
  about: { readonly larger: boolean },
): { readonly head: string; readonly body: string } {
  switch (cure.kind) {
    case 'scale':
      return { head: `Shrink everything to ${figure((cure.factor ?? 1) * 100, 0)}\u00a0%`, body: amounts(cure) };
    case 'more':
      return { head: `Make ${figure(cure.factor ?? 1, 1)} times as much`, body: amounts(cure) };
    case 'vessel':
      return {
        head: `Use a ${about.larger ? 'larger' : 'smaller'} vessel, ${withUnit(cure.volumeL ?? 0, 'L', 1)} or more`,
        body: 'Sets the vessel to just that size; then type the size of yours.',
      };
    case 'leave-out': {
      const out = cure.leftOut;
      const amount = out?.volumeL === undefined ? withUnit(out?.massKg ?? 0, 'kg') : withUnit(out.volumeL, 'L');
      return { head: `Leave out ${amount} of ${shortName(out?.what ?? '')}`, body: leaves(cure) };
    }
  }
}

function amounts(cure: Cure): string {
  const lots = (cure.plants ?? []).map((lot) => `${shortName(lot.name)} ${withUnit(lot.massKg, 'kg')}`);
  const water = cure.waterL === undefined ? [] : [`water ${withUnit(cure.waterL, 'L')}`];
  const sugar = cure.sugarKg ? [`sugar ${withUnit(cure.sugarKg * 1000, 'g', 0)}`] : [];
  return [...water, ...lots, ...sugar].join(', ');
}

function leaves(cure: Cure): string {
  const out = cure.leftOut;
  if (out?.volumeL !== undefined) return `${withUnit(cure.waterL ?? 0, 'L')} of water goes in.`;
  const lot = cure.plants?.find((one) => one.name === out?.what);
  return `${withUnit(lot?.massKg ?? 0, 'kg')} of it goes in.`;
}

/** The sugar window in grams of the product at hand. */
export interface SugarInProduct {
  readonly productName: string;
  readonly leastG: Range;
  readonly mostG: number;
  readonly weighedG: number;
}

/** One sentence that says what to do about sugar. */
export function sugarSentence(sugar: Omit<SugarWindow, 'terms'>, as: SugarInProduct): string {
  const grams = (value: number) => withUnit(value, 'g', 0);
  if (sugar.reach !== 'margin')
    return noRoomForSugar({
      ...{ productName: as.productName, leastG: as.leastG.likely, mostG: as.mostG },
      ...(sugar.reach === 'no margin' && { withoutMarginG: sugar.withoutMarginProductG }),
    });
  if (sugar.tooMuch)
    return `${besideLimit(as.weighedG - as.mostG, 0, 'g', 0)} more than the acid can use: the rest would feed yeast.`;
  if (sugar.leastHexoseG.likely <= 0) return 'The scraps bring enough sugar of their own; none need be added.';
  if (sugar.enough) return `Enough to turn sour, with a margin of two; at most ${grams(as.mostG)}.`;
  const missing =
    as.weighedG > 0 ? `${besideLimit(as.leastG.likely - as.weighedG, 0, 'g', 0)} short: it may not turn sour.` : '';
  const range = `${grams(as.leastG.likely)} (${figure(as.leastG.low, 0)} to ${figure(as.leastG.high, 0)})`;
  return `${missing} Weigh in at least ${range} of ${as.productName}, at most ${grams(as.mostG)}.`.trim();
}

/** Own sugar and what souring takes, in plain words. */
export function sugarNeeds(sugar: Omit<SugarWindow, 'terms'>): { readonly own: string; readonly needed: string } {
  return {
    own: `The scraps bring ${band(sugar.ownHexoseBandG, 'g', 0)} of sugars of their own.`,
    needed: `Souring takes ${band(sugar.neededHexoseBandG, 'g', 0)} of sugars, before any margin.`,
  };
}

/** Words on the sugar bar, and the bar as a sentence for who cannot see it. */
export const sugarBar = {
  short: 'may not sour',
  range: (leastG: number, mostG: number) => `${figure(leastG, 0)} to ${withUnit(mostG, 'g', 0)}`,
  most: (mostG: number, leastG: number) => `most ${besideLimit(mostG, leastG, 'g', 0)}`,
  least: (leastG: number, mostG: number) => `least ${besideLimit(leastG, mostG, 'g', 0)}`,
  weighed: (weighedG: number) => withUnit(weighedG, 'g', 0),
  alternative: (as: SugarInProduct, closed: boolean) =>
    closed
      ? `Sugar bar: least ${besideLimit(as.leastG.likely, as.mostG, 'g', 0)} lies above most ${besideLimit(as.mostG, as.leastG.likely, 'g', 0)} of ${as.productName}; no amount keeps the margin.`
      : `Sugar bar: ${figure(as.leastG.likely, 0)} to ${withUnit(as.mostG, 'g', 0)} of ${as.productName}; ${withUnit(as.weighedG, 'g', 0)} weighed.`,
};

/** The names on the drawing that are no ingredient. */
export const drawingNames = {
  rim: (vesselL: number) => `rim ${withUnit(vesselL, 'L')}`,
  gasRoom: 'fill line',
  lift: 'gassing',
  usable: (usableL: number) => withUnit(usableL, 'L', 1),
  over: (overL: number) => withUnit(overL, 'L', 1),
};

/** The drawing in words. */
export function drawingAlternative(
  fill: Fill,
  lift: Lift,
  about: {
    readonly vesselL: number;
    readonly shape: ShapeKind;
    readonly layers: readonly { readonly name: string; readonly litres: number }[];
  },
): string {
  const layers = about.layers.map((layer) => `${layer.name} ${withUnit(layer.litres, 'L')}`).join(', ');
  const over = fill.fits
    ? `It ends ${withUnit(fill.usableL - fill.volumeL.likely, 'L', 1)} below the fill line.`
    : `It stands ${besideLimit(fill.overL, 0, 'L', 1)} above the fill line${lift.passesRim ? ' and runs down the side' : ''}.`;
  return `A ${withUnit(about.vesselL, 'L')} ${shapeNames[about.shape]} cut open, to scale. From the floor up: ${layers}. ${over}`;
}

/** The empty vessel in words, before a fit stands. */
export function waitingAlternative(vesselL?: number, shape?: ShapeKind): string {
  return vesselL === undefined || shape === undefined
    ? 'An empty pail in dashes: it waits for figures.'
    : `An empty ${withUnit(vesselL, 'L')} ${shapeNames[shape]}, to scale.`;
}

/** Scale of the drawing. */
export function scaleText(denominator: number): string {
  return `1\u00a0:\u00a0${figure(denominator)}`;
}

/** A working, in words. */
export const workingWords = {
  formula: 'Formula',
  inputs: 'What went in',
  range: (value: Range, unit: string) => `Range ${writtenEnds(value, unit)}: about four times in five it lies between.`,
  sources: 'Sources',
  noSource: 'plain arithmetic',
  doubts: 'What is not sure',
  input: written,
};

/** What a block opens, for a screen reader. */
export function whyOf(label: string): string {
  return `why? ${label}`;
}

/** Where a figure without a publication comes from. */
const ORIGINS: Readonly<Record<string, string>> = {
  'our-caution': 'our own advice',
  practice: 'common practice',
  memory: 'from memory',
};

/** Assumptions of the answer, one line each. */
export function assumedLine(one: {
  readonly field: string;
  readonly material: string;
  readonly value: Range;
  readonly source: string;
}): string {
  const names: Readonly<Record<string, string>> = {
    sugarsGPerKgDm: 'own sugar, g per kg dry',
    bufferEqPerKgDmPerPh: 'buffer, eq per kg dry and pH',
    ph: 'own pH',
    alkalinityMeqPerL: 'alkalinity, meq per litre',
    gasRoom: 'gas room, as a fraction of the volume',
    dryMatter: 'dry matter, as a fraction of the mass',
    temperatureC: 'temperature, °C',
    'bottle.temperatureC': 'temperature, °C',
  };
  return `${one.material}: ${names[one.field] ?? one.field} not known, taken as ${band(one.value, '')}; ${ORIGINS[one.source] ?? one.source}.`;
}

/** Nutrients put in, one line each. */
export function nutrientLine(element: 'n' | 'p' | 'k', grams: Range, missing: readonly string[]): string {
  const name = { n: 'Nitrogen', p: 'Phosphorus', k: 'Potassium' }[element];
  const gap = missing.length > 0 ? `; not known for ${missing.join(', ')}, so it is more than that` : '';
  return `${name} ${band(grams, 'g')}${gap}.`;
}

/** What a name says after its comma or in its bracket; '' where there is none. */
export function restOfName(name: string): string {
  return name
    .slice(shortName(name).length)
    .replace(/^[\s,(]+|\)$/g, '')
    .trim();
}

/** A name as it stands on the drawing: what comes before a comma or a bracket. */
export function shortName(name: string): string {
  return name.split(/[,(]/)[0]?.trim() ?? name;
}

/** Link from the verdict to what stops it. */
export function stopsBelow(count: number): string {
  return count === 1 ? 'One thing stops this: see what' : `${count} things stop this: see what`;
}

/** Heading over folded cautions. */
export function more(count: number): string {
  return `${count} more worth knowing`;
}
