// How much of the nitrogen in what is given comes free for plants, and when: the share over a season by the nitrogen of
// the dry matter, for compost by its C:N, and its release by degree days. Below the break-even nitrogen is tied up: a
// negative share. Sums of what was given are supply.ts.

import { capAt, floorAt, point, product, type Range, scale } from '../quantity/range.ts';
import { plain, releaseFigure } from './figures.ts';

/** Points of the curve for fresh plant matter, from the least nitrogen up. */
const POINTS = ['fresh-1-5', 'fresh-2', 'fresh-2-5', 'fresh-3', 'fresh-3-5', 'fresh-4', 'fresh-5-5', 'fresh-12'].map(
  (id) => ({ nPercentDm: releaseFigure(id, 'nPercentDm').likely, panPercent: plain(releaseFigure(id, 'panPercent')) }),
);

/**
 * Share of the nitrogen of fresh plant matter that plants can have over a season, percent.
 *
 * Straight lines between the points of data/release.csv; from 1.5 to 3.5 % nitrogen in dry matter it is the published
 * line of 0 to 35 lb a US ton. Below 1.5 % what is dug in is tied up instead (tiedUpG).
 * @range nPercentDm 0 and up; beyond the last point its share
 * @source pnw-636 highlights
 * @checked published/pan.csv, worked/pan.csv
 */
export function panPercent(nPercentDm: number): Range {
  const [first] = POINTS;
  const last = POINTS.at(-1);
  if (first === undefined || last === undefined) return point(Number.NaN);
  if (!(nPercentDm > first.nPercentDm)) return first.panPercent;
  for (const [i, upper] of POINTS.entries()) {
    const lower = POINTS[i - 1];
    if (lower === undefined || nPercentDm > upper.nPercentDm) continue;
    const along = (nPercentDm - lower.nPercentDm) / (upper.nPercentDm - lower.nPercentDm);
    const between = (end: keyof Range) =>
      lower.panPercent[end] + along * (upper.panPercent[end] - lower.panPercent[end]);
    return { low: between('low'), likely: between('likely'), high: between('high') };
  }
  return last.panPercent;
}

/**
 * Nitrogen that poor stuff takes out of the soil when it is dug in, grams, never below 0.
 *
 *   tied up = dry mass · (break-even − nitrogen fraction)
 *
 * @memory break-even 1.25 % likely, 1.0 to 1.5 %: data/release.csv
 * @checked worked/pan.test.ts
 */
export function tiedUpG({ dryKg, nPercentDm }: { readonly dryKg: number; readonly nPercentDm: number }): Range {
  const even = plain(releaseFigure('tie-up', 'breakEvenNFraction'));
  const grams = (fraction: number) => Math.max(0, dryKg * (fraction - nPercentDm / 100) * 1000);
  return { low: grams(even.low), likely: grams(even.likely), high: grams(even.high) };
}

/**
 * Share of a finished compost's nitrogen in the first year, percent, by its C:N.
 * @range without a C:N that of finished compost
 * @source clemson-compost below 20 released, above 30 tied up; @memory the shares
 * @checked worked/pan.test.ts
 */
export function compostPanPercent(cn: number | undefined): Range {
  const edge = (quantity: string) => releaseFigure('compost', quantity).likely;
  if (cn === undefined) return plain(releaseFigure('compost', 'panPercent'));
  if (cn < edge('curedBelowCn')) return plain(releaseFigure('compost-cured', 'panPercent'));
  if (cn < edge('releasesBelowCn')) return plain(releaseFigure('compost', 'panPercent'));
  return plain(releaseFigure(cn <= edge('tiesUpAboveCn') ? 'compost-20-30' : 'compost-over-30', 'panPercent'));
}

/** What is given by how fast it lets go; 'untold' may be a meal that rots or a salt that dissolves. */
export type Pace = 'at-once' | 'fresh' | 'compost' | 'untold';

/**
 * Share of the season's nitrogen that has come free after so many degree days over 0 °C.
 *
 *   F = (1 − e^(−k D)) / (1 − e^(−k D_year)), never above 1
 *
 * k of fresh matter from "most in 4 to 6 weeks" at 15 to 20 °C; k of compost from 0.02 to 0.05 a week at 25 °C.
 * @returns 0 to 1; never falls with degree days
 * @source pnw-636 highlights; kusonwiriyawong-2005 the base; @memory the pace of compost
 */
export function releasedFraction(pace: Pace, degreeDays: Range): Range {
  if (pace === 'at-once') return point(1);
  if (pace === 'untold') return { ...releasedFraction('fresh', degreeDays), high: 1 };
  const k = PACES[pace];
  const share = (perDayFactor: number, days: number) =>
    Math.min(1, Math.expm1(-perDayFactor * Math.max(0, days)) / Math.expm1(-perDayFactor * YEAR_DEGREE_DAYS));
  return {
    low: share(k.low, degreeDays.low),
    likely: share(k.likely, degreeDays.likely),
    high: share(k.high, degreeDays.high),
  };
}

function freshPace(): Range {
  const rate = -Math.log1p(-releaseFigure('release', 'mostFraction').likely);
  const after = releaseFigure('release', 'mostAfterDays');
  const at = releaseFigure('release', 'mostAtC');
  return {
    low: rate / (after.high * at.high),
    likely: rate / (after.likely * at.likely),
    high: rate / (after.low * at.low),
  };
}

/**
 * Grams that come free of a total by a share that may be negative, percent; never more than the total at either end.
 * The release and the total are taken as independent of the share.
 * @source jcgm-100-2008 5.1.6, each sign by itself
 */
export function freeG({
  totalG,
  sharePercent,
  releasedFraction: released,
}: {
  readonly totalG: Range;
  readonly sharePercent: Range;
  readonly releasedFraction: Range;
}): Range {
  const gain = floorAt(scale(sharePercent, 0.01), 0);
  const loss: Range = {
    low: Math.max(0, -sharePercent.high / 100),
    likely: Math.max(0, -sharePercent.likely / 100),
    high: Math.max(0, -sharePercent.low / 100),
  };
  const gained = product([totalG, gain, released]);
  const lost = product([totalG, loss, released]);
  const free: Range = {
    low: loss.high > 0 ? -lost.high : gained.low,
    likely: gained.likely - lost.likely,
    high: gain.high > 0 ? gained.high : -lost.low,
  };
  return capAt(free, totalG.high);
}

const YEAR_DEGREE_DAYS = releaseFigure('release', 'yearDegreeDays').likely;
const PACES = { fresh: freshPace(), compost: plain(releaseFigure('release-compost', 'perDegreeDay')) } as const;
