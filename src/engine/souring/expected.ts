// What the model makes of the looks beside the table of states: the band each reading was expected in by the looks
// before it, and how much acid each unit of pH seems to take. Both are evidence and reasons; no word changes by them.

import type { Range } from '../quantity/range.ts';
import { PKA } from '../scraps/acid.ts';
import { isAtMost } from './days.ts';
import type { ApparentBuffer, ExpectedReading, ModelEvidence } from './expected-reasons.ts';
import { inOrder, type Look, VISIT_DAYS } from './look.ts';
import { ACETIC_G, BUTYRIC_G, KA_ACETIC, KA_BUTYRIC, KA_LACTIC, LACTIC_G } from './model/acidity.ts';
import { at, type Course } from './model/course.ts';
import type { Known } from './model/draws.ts';
import { UNKNOWNS } from './model/draws.ts';
import { type Ensemble, quantiles } from './model/ensemble.ts';
import { readingBand } from './model/forecast.ts';
import { asOf, type Learned } from './model/learn.ts';

/** Nearer to the start than this, the pH shows no buffer. */
const LEAST_FALL_PH = 0.3;

/** Both kinds of evidence, for every look that read the acidity. @memory the model of rates.ts @checked souring/expected.test.ts */
export function modelEvidence(of: {
  readonly known: Known;
  readonly learned: Learned;
  readonly looks: readonly Look[];
}): ModelEvidence {
  const looks = inOrder(of.looks.filter((look) => Number.isFinite(look.day)));
  const readings: ExpectedReading[] = [];
  const buffers: ApparentBuffer[] = [];
  for (const { day, ph, by } of looks) {
    if (ph === undefined || !Number.isFinite(ph)) continue;
    const tool = by === 'meter' ? 'meter' : 'strip';
    const before = asOf(
      of.learned,
      looks.filter((other) => !isAtMost({ fromDay: other.day, toDay: day }, VISIT_DAYS)),
    );
    const band = readingBand(before, day, tool);
    readings.push({ day, ph, by: tool, band, side: !(ph <= band.high) ? 'above' : ph < band.low ? 'below' : 'within' });
    const until = asOf(
      of.learned,
      looks.filter((other) => isAtMost({ fromDay: day, toDay: other.day }, VISIT_DAYS)),
    );
    buffers.push({ day, ph, timesFactor: apparentBuffer(until, of.known, { day, ph }) });
  }
  return { readings, buffers };
}

/**
 * Acid that the draws hold on a day, over the pH it moved and the plants' own buffer.
 *
 *   times = (L·aL + A·aA + Bu·aB − K[f(p) − f(pw)]) / (B (p0 − p)), p as read, at least 0.3 below the start
 *
 * @range 1 where the model's own buffer explains the reading; ammonia and lost acid raise it
 * @source sci-rep-2020-17782 the same balance on its tables: constant in sound silage, more than doubled in fouling
 */
function apparentBuffer(ensemble: Ensemble, known: Known, { day, ph }: { day: number; ph: number }): Range {
  const times = ensemble.members.map(({ unknowns, run }) => {
    const z = (name: (typeof UNKNOWNS)[number]) => unknowns[UNKNOWNS.indexOf(name)] as number;
    const { mixture } = known.batch;
    const buffer = mixture.bufferEqPerLPerPh * Math.exp(known.spread.bufferLnFactor * z('buffer'));
    const fall = Math.max(LEAST_FALL_PH, mixture.startPh + known.spread.startPh * z('startPh') - ph);
    const f = (atPh: number) => 1 / (1 + 10 ** (atPh - PKA.carbonic));
    const carbonate = mixture.alkalinityEqPerL * (f(ph) - f(mixture.waterPh));
    return (acidEqPerL(run, day, ph) - carbonate) / (buffer * fall);
  });
  const [low, likely, high] = quantiles(times, ensemble.weights, [0.1, 0.5, 0.9]) as [number, number, number];
  return { low, likely, high };
}

/** Charge of the acids of a run at a pH. @arithmetic */
function acidEqPerL(run: Course, day: number, ph: number): number {
  const h = 10 ** -ph;
  const ions = (name: 'lacticGPerL' | 'aceticGPerL' | 'butyricGPerL', molarG: number, kaMolPerL: number) =>
    ((at(run, day, name) / molarG) * kaMolPerL) / (kaMolPerL + h);
  return (
    ions('lacticGPerL', LACTIC_G, KA_LACTIC) +
    ions('aceticGPerL', ACETIC_G, KA_ACETIC) +
    ions('butyricGPerL', BUTYRIC_G, KA_BUTYRIC)
  );
}
