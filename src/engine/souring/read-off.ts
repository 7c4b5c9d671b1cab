// What is read off the draws beside the forecast: the band each reading was expected in by the looks before it, the
// acidity every six hours for drawing, the gas of each day, and how far the looks have moved the unknowns.

import type { Range } from '../quantity/range.ts';
import type { ModelEvidence } from './expected-reasons.ts';
import { gasByDay } from './gas/output.ts';
import type { Look } from './look.ts';
import { at, KEPT_EVERY_H } from './model/course.ts';
import { UNKNOWNS, type Unknown, USUAL_SPREAD } from './model/draws.ts';
import { bandAt, type Ensemble, quantiles } from './model/ensemble.ts';
import { READING_SD } from './model/evidence.ts';
import type { Learned } from './model/learn.ts';

const SHARES = [0.1, 0.5, 0.9] as const;
const MINUTE_DAYS = 1.001 / (24 * 60);
/** z of the 10th and 90th percentile. @arithmetic */
const Z_90 = 1.2815515655446004;

function bandOf(values: readonly number[], weights: Float64Array): Range {
  const [low, likely, high] = quantiles(values, weights, SHARES) as [number, number, number];
  return { low, likely, high };
}

/** One acidity reading beside what was expected of it. */
export interface ReadingBeside {
  readonly day: number;
  readonly ph: number;
  readonly by: 'meter' | 'strip';
  /** The reading with the error of its tool, 10th to 90th percentile. */
  readonly errorPh: Range;
  /** The band it should fall in by what was known before it; null where the forecast could not use it. */
  readonly expectedPh: Range | null;
}

/** Every reading with the error of its tool, beside the band it was expected in. @arithmetic look-up in the model's evidence */
export function readingsBeside(looks: readonly Look[], { readings }: ModelEvidence): readonly ReadingBeside[] {
  return looks.flatMap(({ day, ph, by }) => {
    if (ph === undefined) return [];
    const tool = by === 'meter' ? 'meter' : 'strip';
    const off = Z_90 * READING_SD[tool];
    const found = readings.find((one) => one.by === tool && Math.abs(one.day - day) <= MINUTE_DAYS);
    return [
      {
        day,
        ph,
        by: tool,
        errorPh: { low: ph - off, likely: ph, high: ph + off },
        expectedPh: found?.band ?? null,
      } as const,
    ];
  });
}

/** The acidity every six hours, for drawing. @arithmetic weighted quantiles */
export function phBand(ensemble: Ensemble, days: number): readonly { readonly day: number; readonly ph: Range }[] {
  const points = Math.round((days * 24) / KEPT_EVERY_H) + 1;
  return Array.from({ length: points }, (_, point) => {
    const day = (point * KEPT_EVERY_H) / 24;
    return { day, ph: bandAt(ensemble, day, 'ph') };
  });
}

/** Litres of gas from each day to the next. @arithmetic weighted quantiles of what each draw makes, by gas/output.ts */
export function gasBands(
  ensemble: Ensemble,
  batch: { readonly days: number; readonly liquidL: number; readonly meanC: (day: number) => number },
): readonly { readonly day: number; readonly gasL: Range }[] {
  return Array.from({ length: Math.floor(batch.days) + 1 }, (_, day) => {
    const madeGPerL = ensemble.members.map(({ run }) => at(run, day + 1, 'co2GPerL') - at(run, day, 'co2GPerL'));
    const litres = (co2GPerL: number) =>
      gasByDay({
        curve: { days: [day, day + 1], co2GPerL: [0, co2GPerL] },
        liquidL: batch.liquidL,
        temperatureC: batch.meanC(day),
      })[0]?.gasL ?? Number.NaN;
    const { low, likely, high } = bandOf(madeGPerL, ensemble.weights);
    return { day, gasL: { low: litres(low), likely: litres(likely), high: litres(high) } };
  });
}

/** What is believed of one unknown, before the looks and after them. */
export type BeliefMoved = {
  readonly unknown: Unknown;
  /** factor: times the likely value; °C and pH: added to it. */
  readonly unit: 'factor' | '°C' | 'pH';
} & Readonly<Record<'from' | 'to', Range>>;

const READ: Readonly<Record<Unknown, { readonly unit: BeliefMoved['unit']; readonly of: (z: number) => number }>> = {
  rate: { unit: 'factor', of: (z) => Math.exp(USUAL_SPREAD.rateLnFactor * z) },
  count: { unit: 'factor', of: (z) => 10 ** (USUAL_SPREAD.countLog10Factor * z) },
  buffer: { unit: 'factor', of: (z) => Math.exp(USUAL_SPREAD.bufferLnFactor * z) },
  sugar: { unit: 'factor', of: (z) => Math.exp(USUAL_SPREAD.sugarLnFactor * z) },
  warmth: { unit: '°C', of: (z) => USUAL_SPREAD.warmthC * z },
  startPh: { unit: 'pH', of: (z) => USUAL_SPREAD.startPh * z },
};

/** How far the looks have moved each unknown, in units a person can read. @arithmetic weighted quantiles, spreads of draws.ts */
export function beliefsMoved({ ensemble, prior }: Pick<Learned, 'ensemble' | 'prior'>): readonly BeliefMoved[] {
  return UNKNOWNS.map((unknown, u) => {
    const { unit, of } = READ[unknown];
    const middle = prior.middle[u] as number;
    const off = Z_90 * (prior.width[u] as number);
    const z = ensemble.members.map(({ unknowns }) => unknowns[u] as number);
    const to = bandOf(z, ensemble.weights);
    return {
      unknown,
      unit,
      from: { low: of(middle - off), likely: of(middle), high: of(middle + off) },
      to: { low: of(to.low), likely: of(to.likely), high: of(to.high) },
    };
  });
}
