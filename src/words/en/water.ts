// A water in plain English: what its chlorine and its alkalinity ask for, and what is not worth doing.
// Numbers come from the engine; nothing is computed here.

import type { Values } from '#engine/rules/rule.ts';
import type { WaterAdvice, WaterAdviceCode, WaterAnswer } from '#engine/scraps/water.ts';
import { besideLimit, figure, withUnit } from '../figures.ts';

type Say = (values: Values) => string;

const n = (values: Values, key: string) => Number(values[key]);
/** 3 mg, 142 mg, 1.26 g: what a kitchen or jeweller's scale shows. */
const small = (mg: number) => (mg >= 1000 ? withUnit(mg / 1000, 'g') : withUnit(mg, 'mg'));

const WHERE: Readonly<Record<string, string>> = {
  roof: 'Water off a roof may hold what birds leave there',
  ditch: 'Ditch water may hold what animals leave in it',
  pond: 'Pond water may hold what animals leave in it',
};

/** One sentence or two for each rule about a water. */
export const waterCautions: Readonly<Record<string, Say>> = {
  'water-of-animal-origin-possible': (v) =>
    `${WHERE[String(v.source)] ?? 'This water may hold what animals leave in it'}. ${
      v.raw ? 'For crops eaten raw take tap water, straight from the tap, for the pail and for the can. ' : ''
    }A batch made or thinned with it goes on soil only, never on leaves, at least ${withUnit(n(v, 'touchesSoil'), 'days')} before picking where the eaten part touches soil and ${withUnit(n(v, 'otherwise'), 'days')} elsewhere. The days are borrowed from the US organic rule for raw manure (7 CFR 205.203). Local codes and site rules come first.`,
  'water-source-not-named': () =>
    'Say where the water comes from before it goes near a crop eaten raw. Until then use tap water, straight from the tap.',
  'rain-not-boiled': (v) =>
    v.raw
      ? 'Do not use rain unboiled for crops eaten raw: boil it and let it cool, or take tap water, straight from the tap. Rain that ran off a roof counts as roof water.'
      : 'Boil rain and let it cool before it goes into a batch, or take tap water. Rain that ran off a roof counts as roof water.',
  'well-not-tested': (v) =>
    `Use well water only after a laboratory found no E. coli in 100 mL of it, lately.${v.raw ? ' Until then take tap water, straight from the tap, for crops eaten raw.' : ''} The yardstick is that of the US produce rule for teas; local codes come first.`,
  'more-chlorine-than-drinking-water': (v) =>
    `${besideLimit(n(v, 'mgPerL'), n(v, 'mostMgPerL'), 'mg/L')} is more than drinking water may hold in the US (${besideLimit(n(v, 'mostMgPerL'), n(v, 'mgPerL'), 'mg/L')}). Check the reading and its unit. Do not pour it on plants before a test strip shows none left.`,
  'ascorbic-acid-disputed': () =>
    'Whether ascorbic acid removes chloramine is disputed: one kinetic study found no effect, utilities say it works. Take thiosulfate or a carbon filter, and check with a test strip afterwards.',
  'thiosulfate-two-figures': (v) =>
    `Thiosulfate: ${figure(n(v, 'mgPerMg'), 1)} mg of the crystals (pentahydrate) per mg of chlorine is what the reaction asks. A printed field figure is ${figure(n(v, 'fieldMgPerMg'), 1)} mg per mg; its basis is not known.`,
  'hardness-is-not-alkalinity': (v) =>
    `The figure in ${v.unit} was taken as alkalinity (carbonate hardness). Total hardness is another line of the report and says little about acid: use the alkalinity line.`,
  'mmol-read-as-bicarbonate': () =>
    'The figure in mmol/L was read as bicarbonate. If the report means mmol/L of calcium carbonate, double it.',
};

const ADVICE: Readonly<Record<WaterAdviceCode, Say>> = {
  'tap-straight': () =>
    'For crops eaten raw: tap water, straight from the tap, for the pail and for the can. It was kept clean on its way, and standing open can undo that.',
  'chlorine-not-given': () =>
    'Chlorine is not known: look in the water report, or use a pool or aquarium strip. The report also says whether it is chlorine or chloramine.',
  'no-chlorine': () => 'No chlorine: nothing to remove.',
  'pail-hardly-matters': (v) =>
    `For the pail it hardly matters: ${small(n(v, 'chlorineMg'))} of chlorine against ${
      v.plantsKg === undefined ? 'kilograms of plant matter' : `${withUnit(n(v, 'plantsKg'), 'kg')} of plants`
    }, which use it up in minutes. Use the water as it is. No trial was found either way; this is reasoning.`,
  'can-optional': (v) =>
    `For diluting it is optional: ${small(n(v, 'chlorineMg'))} of chlorine meets a finished liquid, and the can is poured the same day.`,
  'dose-either': (v) =>
    `Removing it takes ${small(n(v, 'ascorbicAcidMg'))} of ascorbic acid, or ${small(n(v, 'thiosulfatePentahydrateMg'))} of sodium thiosulfate crystals (pentahydrate).`,
  'dose-thiosulfate': (v) =>
    `Removing chloramine takes ${small(n(v, 'thiosulfatePentahydrateMg'))} of sodium thiosulfate crystals (pentahydrate), or a carbon filter; a test strip afterwards shows whether it worked.`,
  'standing-free': (v) =>
    `Standing indoors does little in one night: half of it goes in about ${figure(n(v, 'indoorsLowH'), 0)} to ${withUnit(n(v, 'indoorsHighH'), 'h', 0)} in an open vessel indoors, in about ${figure(n(v, 'sunLowH'), 1)} to ${withUnit(n(v, 'sunHighH'), 'h', 1)} in full sun.`,
  'standing-not-chloramine': () => 'Chloramine does not leave by standing; waiting is not worth it.',
  'alkalinity-not-given': () =>
    'Alkalinity is not known: look for alkalinity or carbonate hardness in the water report. Without it the sugar of a batch is worked out less well.',
  'alkalinity-ignore': (v) =>
    `The alkalinity costs about ${withUnit(n(v, 'acidG'), 'g', 1)} of acid${shareOf(v)}: ignore it.`,
  'alkalinity-counts': (v) =>
    `The alkalinity costs about ${withUnit(n(v, 'acidG'), 'g', 1)} of acid${shareOf(v)}: give it at the weigh-in, which adds the sugar for it. Softer water or less of it helps too.`,
  'can-hardly-sour': (v) =>
    `Diluted 1 in ${figure(n(v, 'n'), 0)} with this water the can is hardly sour at all, so nothing holds germs down in it: use it today.`,
  'can-stays-sour': (v) =>
    `Diluted 1 in ${figure(n(v, 'n'), 0)} with this water the can stays sour: pour it on moist soil, not on leaves, and use it today.`,
};

function shareOf(values: Values): string {
  return values.percent === undefined ? '' : `, ${figure(n(values, 'percent'), 0)} % of what the plants take up`;
}

/** The text of one piece of advice. */
export function sayAdvice(advice: WaterAdvice): string {
  return ADVICE[advice.code](advice.values);
}

type Said = Omit<WaterAnswer, 'advice'> & { readonly advice: readonly string[] };

/** The answer about one water, sentence by sentence: its figures, then the advice. */
export function sayWater(water: Said): readonly string[] {
  const lines: string[] = [];
  if (water.alkalinityMeqPerL !== undefined && water.lacticAcidEatenG !== undefined)
    lines.push(
      `Alkalinity ${withUnit(water.alkalinityMeqPerL, 'meq/L', 2)}: takes up ${withUnit(water.lacticAcidEatenG, 'g', 1)} of lactic acid.`,
    );
  if (water.chlorineMg !== undefined && water.chlorineMg > 0) lines.push(`Chlorine in it: ${small(water.chlorineMg)}.`);
  return [...lines, ...water.advice];
}
