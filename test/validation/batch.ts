// A published batch as the engine takes it: the plants as a part, the water, sugar, salt and starter, and the store's
// temperature. Everything goes through mixtureOf and course, as a grower's pail does; nothing is set up by hand
// but the starter's cells and a yeast that was added, which the papers count and a grower cannot.

import type { Range } from '#engine/quantity/range.ts';
import { point } from '#engine/quantity/range.ts';
import type { Part } from '#engine/scraps/part.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import type { Batch } from '#engine/souring/model/course.ts';
import { type Spread, USUAL_SPREAD } from '#engine/souring/model/draws.ts';
import { type Mixture, mixtureOf } from '#engine/souring/model/mixture.ts';
import type { Parameters } from '#engine/souring/model/parameters.ts';
import { CELL_G } from '#engine/souring/model/state.ts';
import { hourlyC } from '#engine/souring/model/temperature.ts';
import type { Conditions } from './read.ts';

/** Picks one value from a band: the likely one, or a draw. */
export type Take = (quantity: string, band: Range) => number;

/** One batch, ready to run, with the kilograms that published figures are told by. */
export interface Filled {
  readonly batch: Batch;
  /** Dry matter of plants and added sugar, kg per litre of the liquid. */
  readonly dryKgPerL: number;
  /** All that is in the vessel, kg per litre of the liquid. */
  readonly allKgPerL: number;
  /** log10 of yeast per g that was added, if any. */
  readonly yeastLog10PerG: number | undefined;
}

/** A vessel small enough to follow the store at once: every set is kept at one temperature. */
const JAR_L = 1;

export const LIKELY: Take = (_, band) => band.likely;

function product(id: string) {
  const found = sugarProduct(id);
  if (found === undefined) throw new Error(`no sugar ${id}`);
  return found;
}

const WHITE = product('white-sugar');
const MOLASSES = product('cane-molasses');

/** Builds a batch from its conditions for so many days. */
export function fill(conditions: Conditions, take: Take, days: number): Filled {
  const takenOf = (quantity: string): number | undefined => {
    const band = conditions.of.get(quantity);
    return band === undefined ? undefined : take(quantity, band);
  };
  const told = (quantity: string): number => {
    const value = takenOf(quantity);
    if (value === undefined) throw new Error(`${conditions.set} ${conditions.batch}: no ${quantity}`);
    return value;
  };
  const massKg = told('massKg');
  const dryMatter = told('dryMatter');
  const plant: Part = {
    id: undefined,
    name: conditions.batch,
    massKg,
    into: 'liquid',
    dryMatter: point(dryMatter),
    sugarsGPerKgDm: point(told('sugarsGPerKgDm')),
    bufferEqPerKgDmPerPh: point(told('bufferEqPerKgDmPerPh')),
    ph: point(told('startPh')),
    ammoniaMolPerKgDm: 0,
    displacementLPerKg: point(1),
    nPercentDm: point(told('nPercentDm')),
    assumed: [],
    unknown: [],
  };
  const molassesKg = (takenOf('molassesKgPerKg') ?? 0) * massKg;
  const hexoseG = (takenOf('hexoseGPerKg') ?? 0) * massKg;
  const sugar =
    molassesKg > 0
      ? { product: MOLASSES, massKg: molassesKg }
      : { product: WHITE, massKg: hexoseG / WHITE.hexoseGPerKg.likely };
  const volumeL = told('waterLPerKg') * massKg;
  const mixture = mixtureOf({
    plants: [plant],
    water: { volumeL, alkalinityMeqPerL: takenOf('alkalinityMeqPerL') ?? 0, ph: takenOf('waterPh') ?? 7 },
    sugar,
    saltKg: ((takenOf('saltGPerKg') ?? 0) * massKg) / 1000,
  });
  const allKgPerL = (massKg + volumeL + sugar.massKg) / mixture.liquidL;
  return {
    batch: {
      mixture: withStarter(mixture, takenOf('starterLog10PerG')),
      hourlyC: hourlyC({ warmth: told('temperatureC'), days, vesselL: JAR_L }),
      opennessFraction: Math.min(1, Math.max(0, told('openness'))),
    },
    dryKgPerL: (massKg * dryMatter + sugar.massKg) / mixture.liquidL,
    allKgPerL,
    yeastLog10PerG: takenOf('yeastLog10PerG'),
  };
}

/** A culture that the paper counts per gram of fresh plant. */
function withStarter(mixture: Mixture, log10PerG: number | undefined): Mixture {
  if (log10PerG === undefined) return mixture;
  return { ...mixture, starterGPerL: 10 ** log10PerG * CELL_G * 1000 * mixture.plantKgPerL };
}

/** The parameters of a run with the yeast that was added. */
export function withYeast(parameters: Parameters, filled: Filled): Parameters {
  if (filled.yeastLog10PerG === undefined) return parameters;
  return { ...parameters, yeast: { ...parameters.yeast, startLog10CountPerG: filled.yeastLog10PerG } };
}

const Z_90 = 1.2815515655446004;
const sd = (band: Range | undefined) => (band === undefined ? 0 : (band.high - band.low) / 2 / Z_90);
const lnSd = (band: Range | undefined) =>
  band === undefined || band.low <= 0 ? 0 : Math.log(band.high / band.low) / 2 / Z_90;

/**
 * How far the six unknowns go for a batch: as far as for any pail, and further where the paper tells less than a
 * grower would (a temperature that is not stated).
 */
export function spreadOf(conditions: Conditions): Spread {
  const { of } = conditions;
  return {
    rateLnFactor: USUAL_SPREAD.rateLnFactor,
    countLog10Factor: USUAL_SPREAD.countLog10Factor,
    bufferLnFactor: Math.max(USUAL_SPREAD.bufferLnFactor, lnSd(of.get('bufferEqPerKgDmPerPh'))),
    sugarLnFactor: Math.max(USUAL_SPREAD.sugarLnFactor, lnSd(of.get('sugarsGPerKgDm'))),
    warmthC: Math.max(USUAL_SPREAD.warmthC, sd(of.get('temperatureC'))),
    startPh: Math.max(USUAL_SPREAD.startPh, sd(of.get('startPh'))),
  };
}

/** Conditions that the six unknowns already vary; a draw takes their likely value. */
export const VARIED_BY_DRAWS: readonly string[] = ['bufferEqPerKgDmPerPh', 'sugarsGPerKgDm', 'temperatureC', 'startPh'];
