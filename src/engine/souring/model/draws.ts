// Many batches that this one might be: seeded draws over what is not known. Six unknowns are what looks can teach
// (rate, start count, buffer, own sugar, warmth, start pH); all other parameters are drawn from their bands and
// stay untaught. Draw i of a seed is the same however the draws are split among workers.

import type { Range } from '../../quantity/range.ts';
import type { Batch } from './course.ts';
import type { Mixture } from './mixture.ts';
import { type Parameters, parametersBy } from './parameters.ts';

/** The six unknowns that looks teach, each counted in standard deviations from its likely value. */
export const UNKNOWNS = ['rate', 'count', 'buffer', 'sugar', 'warmth', 'startPh'] as const;
export type Unknown = (typeof UNKNOWNS)[number];

/** How far each unknown goes, one standard deviation. */
export interface Spread {
  /** All growth and acid, natural logarithm. */
  readonly rateLnFactor: number;
  /** Lactic bacteria at the start, powers of ten. */
  readonly countLog10Factor: number;
  readonly bufferLnFactor: number;
  readonly sugarLnFactor: number;
  readonly warmthC: number;
  readonly startPh: number;
}

/** Spread of a batch of scraps weighed and told from the table. @memory buffer 0.25, sugar 0.35, rate 0.3, count 0.7, 1.5 °C */
export const USUAL_SPREAD: Spread = {
  rateLnFactor: 0.3,
  countLog10Factor: 0.7,
  bufferLnFactor: 0.25,
  sugarLnFactor: 0.35,
  warmthC: 1.5,
  startPh: 0.2,
};

/** z of the 10th and 90th percentile. @arithmetic */
const Z_90 = 1.2815515655446004;

/** Numbers between 0 and 1 from a seed and a stream, the same on every machine. @arithmetic mulberry32 */
export function uniforms(seed: number, stream: number): () => number {
  let state = (Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(stream + 1, 0xc2b2ae35)) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let x = state;
    x = Math.imul(x ^ (x >>> 15), x | 1);
    x ^= x + Math.imul(x ^ (x >>> 7), x | 61);
    return ((x ^ (x >>> 14)) >>> 0) / 4294967296;
  };
}

/** Standard normal numbers from uniform ones. @arithmetic Box and Muller's transform */
export function normals(uniform: () => number): () => number {
  let kept: number | undefined;
  return () => {
    if (kept !== undefined) {
      const value = kept;
      kept = undefined;
      return value;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    kept = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

/** A value of a band at z: on the logarithm where the band is positive and skewed, straight otherwise. @arithmetic */
function within(band: Range, z: number): number {
  if (band.low === band.high) return band.likely;
  const side = z < 0 ? band.low : band.high;
  if (band.low > 0 && band.high / band.low > 1.3) return band.likely * (side / band.likely) ** (Math.abs(z) / Z_90);
  return band.likely + ((side - band.likely) * Math.abs(z)) / Z_90;
}

/** No share is drawn above this. */
const MOST_FRACTION = 0.98;

/** The parameters of draw i before the six unknowns act on them. Counts and rates of the guilds vary apart, too. */
function parametersOf(seed: number, index: number): Parameters {
  const next = normals(uniforms(seed, index));
  return parametersBy((band, _group, name) => {
    if (band.low === band.high) return band.likely;
    const value = within(band, next());
    return name.endsWith('Fraction') ? Math.min(MOST_FRACTION, value) : value;
  });
}

/** The six unknowns of draw i as the prior gives them, in standard deviations. @arithmetic */
export function unknownsOf(seed: number, index: number): Float64Array {
  const next = normals(uniforms(seed + 7919, index));
  return Float64Array.from(UNKNOWNS, () => next());
}

/** What a draw is made from. */
export interface Known {
  readonly batch: Batch;
  readonly spread: Spread;
  readonly seed: number;
}

/** One of the batches this one might be. */
export interface Draw {
  readonly unknowns: Float64Array;
  readonly batch: Batch;
  readonly parameters: Parameters;
}

/**
 * Draw `index` of a batch, with the unknowns given or as the prior has them.
 *
 *   µ, q × exp(0.3 z₁);  log₁₀ start + 0.7 z₂;  B × exp(0.25 z₃);  bound sugar × exp(0.35 z₄);  T + 1.5 z₅;  p₀ + 0.2 z₆
 *
 * @memory the spreads of USUAL_SPREAD; the other parameters' bands name their sources in data/ferment.csv
 */
export function drawOf(known: Known, index: number, unknowns = unknownsOf(known.seed, index)): Draw {
  const { batch, spread } = known;
  const z = (name: Unknown) => unknowns[UNKNOWNS.indexOf(name)] as number;
  const base = parametersOf(known.seed, index);
  const rate = Math.exp(spread.rateLnFactor * z('rate'));
  const count = spread.countLog10Factor * z('count');
  const parameters: Parameters = {
    ...base,
    early: faster(base.early, rate, count),
    late: faster(base.late, rate, count),
    yeast: { ...base.yeast, muPerH: base.yeast.muPerH * rate },
    entero: { ...base.entero, muPerH: base.entero.muPerH * rate },
  };
  const { mixture } = batch;
  const drawn: Mixture = {
    ...mixture,
    bufferEqPerLPerPh: mixture.bufferEqPerLPerPh * Math.exp(spread.bufferLnFactor * z('buffer')),
    boundSugarGPerL: mixture.boundSugarGPerL * Math.exp(spread.sugarLnFactor * z('sugar')),
    startPh: mixture.startPh + spread.startPh * z('startPh'),
  };
  const offsetC = spread.warmthC * z('warmth');
  return {
    unknowns,
    parameters,
    batch: { ...batch, mixture: drawn, hourlyC: batch.hourlyC.map((temperatureC) => temperatureC + offsetC) },
  };
}

function faster<G extends Parameters['early'] | Parameters['late']>(
  guild: G,
  rateFactor: number,
  countLog10Factor: number,
): G {
  return {
    ...guild,
    muPerH: guild.muPerH * rateFactor,
    acidAtRestGPerGPerH: guild.acidAtRestGPerGPerH * rateFactor,
    startLog10CountPerG: guild.startLog10CountPerG + countLog10Factor,
  };
}
