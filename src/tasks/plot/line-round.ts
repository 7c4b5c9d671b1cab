// The next round over the beds: how many litres it wants, how much concentrate that is, and when it is due. What each
// can gets, and whether a bed may be fed at all on the day, is the can card's to say.

import { concentrateFraction, type Ratio } from '#engine/quantity/ratio.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { onDay } from './dates.ts';

/** Litres on a square metre in one round, litres for one pot, days from round to round. @practice */
export const DEPTH_L_PER_M2 = 2;
export const POT_L = 1;
export const ROUND_EVERY_DAYS = 14;

/** Beds that fall due within so many days of the first are fed with it. @practice */
const GATHERS_DAYS = 3;
/** A pour of less than this share of a bed's litres, such as a patch test, is no round. @practice */
const LEAST_SHARE = 0.5;

export interface Round {
  /** Diluted feed for every bed and pot that is fed, and the concentrate in it. */
  readonly wantedL: number;
  readonly concentrateL: number | undefined;
  /** The same for the beds that fall due together; all of them while nothing was poured. */
  readonly dueL: number;
  readonly dueConcentrateL: number | undefined;
  /** Their tags. */
  readonly dueBeds: readonly string[];
  /** As poured last; undefined while nothing was poured with a ratio. */
  readonly ratio: Ratio | undefined;
  /** Today where that is past; undefined while nothing was poured. */
  readonly on: string | undefined;
  readonly due: boolean;
}

/** The next round, from the beds as they are fed now and the pours so far. @arithmetic area · depth + pots · litres */
export function roundOf(plot: Plot, today: string): Round {
  const todayDay = momentOf(today).dateDay;
  const beds = [...plot.beds.values()].filter((bed) => bed.facts.gone !== true && wantedOn(bed) > 0);
  const begun = beds.some((bed) => lastRoundDay(bed) !== undefined);
  const falls = beds.map((bed) => ({ bed, day: begun ? dueDay(bed, todayDay) : todayDay }));
  const first = falls.reduce((least, { day }) => Math.min(least, day), Number.POSITIVE_INFINITY);
  const together = falls.filter(({ day }) => day <= first + GATHERS_DAYS).map(({ bed }) => bed);
  const litres = (of: readonly Bed[]) => of.reduce((sumL, bed) => sumL + wantedOn(bed), 0);
  const ratio = beds
    .flatMap(({ feeds }) => feeds)
    .filter(({ act }) => act.body.ratio !== undefined)
    .sort((a, b) => a.act.when.wallMinute - b.act.when.wallMinute)
    .at(-1)?.act.body.ratio;
  const wantedL = litres(beds);
  const dueL = litres(together);
  const share = ratio === undefined ? undefined : concentrateFraction(ratio);
  return {
    wantedL,
    concentrateL: share === undefined ? undefined : wantedL * share,
    dueL,
    dueConcentrateL: share === undefined ? undefined : dueL * share,
    dueBeds: together.map(({ facts }) => facts.tag ?? facts.name ?? ''),
    ratio,
    on: begun ? onDay(first) : undefined,
    due: begun && first === todayDay,
  };
}

function dueDay(bed: Bed, todayDay: number): number {
  const last = lastRoundDay(bed);
  return last === undefined ? todayDay : Math.max(last + ROUND_EVERY_DAYS, todayDay);
}

/** The day of the last pour that was more than a patch test. */
function lastRoundDay(bed: Bed): number | undefined {
  const least = wantedOn(bed) * LEAST_SHARE;
  return bed.feeds.findLast(({ counts, pouredL }) => counts !== 'no' && pouredL >= least)?.act.when.dateDay;
}

/** Litres of diluted feed that one bed or row of pots takes in a round. @practice depth and litres a pot */
export function wantedOn(bed: Bed): number {
  if (fedShare(bed) === 0) return 0;
  return fedM2(bed) * DEPTH_L_PER_M2 + (bed.facts.area === undefined ? (bed.facts.pots?.count ?? 0) * POT_L : 0);
}

/** Square metres of a bed that are fed; pots have none. @arithmetic */
export function fedM2(bed: Bed): number {
  return (bed.facts.area?.areaM2 ?? 0) * fedShare(bed);
}

/**
 * Share of a bed that is fed: none where its telling says none, or while leaf is eaten raw from it and nothing was told;
 * the fed part where one was told; else all of it.
 */
export function fedShare({ facts, eaten }: Bed): number {
  if (facts.feed === 'none' || (facts.feed === undefined && eaten === 'raw-leaf')) return 0;
  const areaM2 = facts.area?.areaM2;
  if (areaM2 === undefined || facts.fedArea === undefined) return 1;
  return Math.min(1, facts.fedArea.areaM2 / areaM2);
}

/** Whether a bed stands in a trial. */
export function isTrial(plot: Plot, bed: string): boolean {
  return plot.trialsLaid.some(({ body }) => body.plots.some((one) => one.bed === bed));
}
