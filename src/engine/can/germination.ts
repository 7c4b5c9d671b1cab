// The cress test of a diluted feed: seeds on wet paper, counted and measured beside seeds in the diluting water alone.
// Gives the germination index of each strength, its class, and the strength that follows. A pass is a good sign and
// no proof; the printed card and the sentences are words/en/spray.ts.

import { sprayFigure } from './spray-figures.ts';

const at = (id: string, quantity: string) => sprayFigure(id, quantity).likely;

/** How the test is laid out, and its lines; the source of each stands in data/spray.csv. */
export const GERMINATION = {
  dishCount: at('germination-layout', 'dishCount'),
  seedsPerDishCount: at('germination-layout', 'seedsPerDishCount'),
  waterMl: at('germination-layout', 'waterMl'),
  controlGerminatedPercent: at('germination-control', 'germinatedPercent'),
  controlRootMm: at('germination-control', 'rootMm'),
  harmPercent: at('germination-class', 'harmPercent'),
  passPercent: at('germination-class', 'passPercent'),
  waterPercent: at('germination-class', 'waterPercent'),
  apartPercent: at('germination-noise', 'apartPercent'),
  marginFactor: at('germination-advice', 'marginFactor'),
} as const;

/** All dishes of one strength, or of the water alone: seeds laid, seeds with a root, mean root of those. */
export interface Dishes {
  readonly sownCount: number;
  readonly germinatedCount: number;
  readonly meanRootMm: number;
}

export type GerminationClass = 'harmful' | 'doubtful' | 'no-harm' | 'above-water';
export type GerminationFault =
  | 'counts-do-not-fit'
  | 'too-few-seeds'
  | 'control-did-not-germinate'
  | 'control-roots-short';

export interface GerminationReading {
  /** Why the test does not count; empty when it does. */
  readonly faults: readonly GerminationFault[];
  /** NaN when the counts do not fit. */
  readonly indexPercent: number;
  /** Missing when the test does not count. */
  readonly class?: GerminationClass;
  /** Whether it stands more than 25 points from the water's 100. */
  readonly apartFromWater: boolean;
}

/**
 * Germination index of one strength against the diluting water.
 *
 *   GI = 100·(G/Gc)·(L/Lc)    G: share germinated, L: mean root, c: control
 *
 * @returns percent; 0 where nothing germinated; NaN where the control has nothing to divide by
 * @source zucconi-1981
 */
export function germinationIndexPercent(sample: Dishes, control: Dishes): number {
  const germinated = sample.germinatedCount / sample.sownCount / (control.germinatedCount / control.sownCount);
  const root = (sample.germinatedCount === 0 ? 0 : sample.meanRootMm) / control.meanRootMm;
  const index = 100 * germinated * root;
  return Number.isFinite(index) ? index : Number.NaN;
}

/**
 * One strength read: the test counts when the control has germinated to 80 % with roots of 15 mm, and both have all
 * their seeds. Classes: under 50 harmful, to 80 doubtful, over 80 no harm seen, over 100 above water.
 * @source radhouani-composts abstract, for 50
 * @source picon-toro-2012 abstract, for 80
 * @source zucconi-1981 the classes
 */
export function readGermination(sample: Dishes, control: Dishes): GerminationReading {
  if (!(fits(sample) && fits(control))) {
    return { faults: ['counts-do-not-fit'], indexPercent: Number.NaN, apartFromWater: false };
  }
  const faults: GerminationFault[] = [];
  const seeds = GERMINATION.dishCount * GERMINATION.seedsPerDishCount;
  if (!(Math.min(sample.sownCount, control.sownCount) >= seeds)) faults.push('too-few-seeds');
  if (!(100 * control.germinatedCount >= GERMINATION.controlGerminatedPercent * control.sownCount)) {
    faults.push('control-did-not-germinate');
  }
  if (!(control.meanRootMm >= GERMINATION.controlRootMm)) faults.push('control-roots-short');
  const indexPercent = germinationIndexPercent(sample, control);
  if (faults.length > 0) return { faults, indexPercent, apartFromWater: false };
  return {
    faults,
    indexPercent,
    class: classOf(indexPercent),
    apartFromWater: toldApart(indexPercent, GERMINATION.waterPercent),
  };
}

function fits({ sownCount, germinatedCount, meanRootMm }: Dishes): boolean {
  const counts = [sownCount, germinatedCount].every((count) => Number.isInteger(count) && count >= 0);
  const root = germinatedCount === 0 || (Number.isFinite(meanRootMm) && meanRootMm >= 0);
  return counts && root && sownCount > 0 && germinatedCount <= sownCount;
}

function classOf(indexPercent: number): GerminationClass {
  if (!(indexPercent >= GERMINATION.harmPercent)) return 'harmful';
  if (!(indexPercent > GERMINATION.passPercent)) return 'doubtful';
  return indexPercent > GERMINATION.waterPercent ? 'above-water' : 'no-harm';
}

/**
 * Whether two indices differ by more than the noise of such a test, 25 points.
 * @memory standard deviation of 12 to 18 points with three dishes of ten seeds
 */
export function toldApart(onePercent: number, otherPercent: number): boolean {
  return Math.abs(onePercent - otherPercent) > GERMINATION.apartPercent;
}

/** One strength tried: 1 part in n of the mixture. */
export interface StrengthTried {
  readonly n: number;
  readonly sample: Dishes;
}

/** The strength to use, as 1 in n; or why none follows. */
export type StrengthAdvice =
  | { readonly found: true; readonly n: number; readonly strongestPassedN: number }
  | { readonly found: false; readonly why: 'not-valid' | 'none-passed' };

/**
 * The strength to use: the strongest that passed, with every weaker one tried passing too, made weaker by a margin of 2.
 * A test that does not count, in any of its strengths, gives none.
 * @practice our caution, no source, for the margin
 */
export function adviceStrength(tried: readonly StrengthTried[], control: Dishes): StrengthAdvice {
  const read = tried
    .map(({ n, sample }) => ({ n, reading: readGermination(sample, control) }))
    .toSorted((a, b) => b.n - a.n);
  const valid = read.every(({ n, reading }) => n >= 1 && reading.faults.length === 0);
  if (!valid || read.length === 0) return { found: false, why: 'not-valid' };
  const fails = read.findIndex(({ reading }) => !(reading.class === 'no-harm' || reading.class === 'above-water'));
  const strongest = (fails === -1 ? read : read.slice(0, fails)).at(-1);
  if (strongest === undefined) return { found: false, why: 'none-passed' };
  return { found: true, n: strongest.n * GERMINATION.marginFactor, strongestPassedN: strongest.n };
}
