// The season of one bed in nitrogen: what the crop can have taken up by each week, beside what came free of everything
// given, with today in it and the weeks to come if nothing more is given. Each sum is the ledger's for that day.

import { point, type Range, scale, sumTogether } from '#engine/quantity/range.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { growingDays, seasonOf, USUAL_SEASON_DAYS } from '#plot/ground/season.ts';
import { hemisphereOf } from '#plot/place/hemisphere.ts';
import { meanUsualC, usualWarmthOf } from '#plot/place/warmth.ts';
import { onDay } from './dates.ts';
import { plotLedger } from './ledger.ts';

/** By the evening of a day: taken up at most, and free. */
export interface ReleasePoint {
  readonly on: string;
  readonly day: number;
  /** Null where the crop, its need or its planting is not known. */
  readonly takenUpG: Range | null;
  /** Null where the content of what was given is not known. */
  readonly freeG: Range | null;
}

/** How what is free stands to what can have been taken up; even where the bands touch. */
export type Standing = 'behind' | 'even' | 'ahead' | 'unknown';

export interface ReleaseMoment extends ReleasePoint {
  readonly standing: Standing;
}

export interface ReleaseView {
  readonly bed: string;
  readonly name: string;
  readonly crops: readonly string[];
  readonly plantedOn: string | undefined;
  /** A point for the evening before the first day, for the end of each week, and for today. */
  readonly points: readonly ReleasePoint[];
  /** First days of the months in it. */
  readonly months: readonly { readonly on: string; readonly day: number }[];
  readonly today: ReleaseMoment;
  /** The end of the season, if nothing more is given; undefined once it is past. */
  readonly end: ReleaseMoment | undefined;
  /** First day from which what is free stays behind. */
  readonly behindFrom: string | undefined;
  /** Last day on which what is free is ahead. */
  readonly aheadUntil: string | undefined;
  /** Nobody told the stages of the crop: a usual season was taken, so many days. */
  readonly usualDays: number | undefined;
  /** Soil of the days to come. */
  readonly soilC: Range;
  readonly nothingGiven: boolean;
}

export interface ReleaseAsk {
  readonly plot: Plot;
  readonly bed: string;
  /** Local date. */
  readonly today: string;
}

const WEEK_DAYS = 7;

/** The season of a bed; undefined where the bed has no area, or is not there. */
export function releaseView({ plot, bed: id, today }: ReleaseAsk): ReleaseView | undefined {
  const bed = plot.beds.get(id);
  if (bed === undefined) return undefined;
  const told = shownDays(plot, bed, momentOf(today).dateDay);
  const sums = (toDay: number, fromDay = told.sinceDay) =>
    plotLedger({ plot, from: onDay(fromDay), to: onDay(toDay), bed: id }).value.beds[0];
  const whole = sums(told.lastDay);
  if (whole === undefined) return undefined;
  // What is left of earlier gifts comes free from the first day of the season on, and is drawn from there.
  const season = whole.carriedG.n?.high ? { ...told, fromDay: told.sinceDay } : told;
  const { sinceDay, lastDay, todayDay, planted } = season;
  // Weeks from the planting on, so that none of them is half before it.
  const weeks = planted === undefined ? undefined : sums(lastDay, planted)?.weeks;
  const taken = planted === undefined || weeks === undefined ? undefined : takenUp(weeks, planted, lastDay);
  const pointOn = (day: number): ReleasePoint => ({
    on: onDay(day),
    day,
    takenUpG: taken?.(day) ?? null,
    freeG: day < sinceDay ? point(0) : (sums(day)?.givenG.n ?? null),
  });
  const points = daysOf(season).map(pointOn);
  const now = points.find(({ day }) => day === todayDay) ?? pointOn(todayDay);
  const last = points.at(-1);
  const moments = points.map(momentFrom);
  return {
    bed: id,
    name: whole.name,
    crops: whole.crops,
    plantedOn: planted === undefined ? undefined : onDay(planted),
    points,
    months: monthsOf(season),
    today: momentFrom(now),
    end: last === undefined || last.day <= todayDay ? undefined : momentFrom(last),
    behindFrom: sinceWhen(moments)?.on,
    aheadUntil: moments.findLast(({ standing }) => standing === 'ahead')?.on,
    usualDays: season.usual ? USUAL_SEASON_DAYS : undefined,
    soilC: meanUsualC(usualWarmthOf(plot.facts), { fromDay: todayDay + 1, toDay: lastDay + 1 }),
    nothingGiven: whole.byKind.length === 0,
  };
}

interface Season {
  /** First day of the season, from which all is counted; what is shown may start later. */
  readonly sinceDay: number;
  readonly fromDay: number;
  readonly lastDay: number;
  readonly todayDay: number;
  readonly planted: number | undefined;
  readonly usual: boolean;
}

/** From the first thing given or the planting to the end of the crop, today always in it. */
function shownDays(plot: Plot, bed: Bed, todayDay: number): Season {
  const { fromDay: sinceDay, planted } = seasonOf({ bed, hemisphere: hemisphereOf(plot.facts), todayDay });
  const plantedDay = planted?.when.dateDay;
  const acts = [
    ...bed.dressings.map(({ when }) => when.dateDay),
    ...bed.feeds.filter((feed) => feed.counts !== 'no').map(({ act }) => act.when.dateDay),
    ...(plantedDay === undefined ? [] : [plantedDay]),
  ].filter((day) => day >= sinceDay && day <= todayDay);
  const fromDay = acts.length > 0 ? Math.min(...acts) : sinceDay;
  const stages = growingDays(planted?.body.crop ?? bed.crop);
  const cleared = bed.plantings.find(
    ({ body, when }) => body.act === 'cleared' && when.dateDay > (plantedDay ?? todayDay),
  );
  const grown = (plantedDay ?? fromDay) + (stages ?? USUAL_SEASON_DAYS);
  const lastDay = Math.max(todayDay, Math.min(grown, cleared?.when.dateDay ?? grown));
  const usual = plantedDay !== undefined && stages === undefined;
  return { sinceDay, fromDay, lastDay, todayDay, planted: plantedDay, usual };
}

/** The evening before, the end of each week, the last day, and today. */
function daysOf({ fromDay, lastDay, todayDay }: Season): readonly number[] {
  const days = new Set([fromDay - 1, todayDay, lastDay]);
  for (let day = fromDay - 1 + WEEK_DAYS; day < lastDay; day += WEEK_DAYS) days.add(day);
  return [...days].sort((a, b) => a - b);
}

function monthsOf({ fromDay, lastDay }: Season): ReleaseView['months'] {
  return Array.from({ length: lastDay - fromDay + 1 }, (_, i) => ({ on: onDay(fromDay + i), day: fromDay + i })).filter(
    ({ on }) => on.endsWith('-01'),
  );
}

type Weeks = readonly { readonly needNG: Range | null }[];

/** Taken up by the evening of a day: the ledger's weeks added up, evenly within a week; undefined without a need. */
function takenUp(weeks: Weeks, fromDay: number, lastDay: number): ((day: number) => Range) | undefined {
  const needs = weeks.flatMap(({ needNG }) => needNG ?? []);
  if (needs.length < weeks.length) return undefined;
  return (day) => {
    const gone = day - fromDay + 1;
    if (gone <= 0) return point(0);
    const full = Math.floor(gone / WEEK_DAYS);
    const before = needs.slice(0, full);
    const now = needs[full];
    // The last week may be shorter.
    const length = Math.min(WEEK_DAYS, lastDay - fromDay + 1 - full * WEEK_DAYS);
    const part = now && length > 0 ? scale(now, (gone - full * WEEK_DAYS) / length) : undefined;
    return sumTogether([...before, ...(part ? [part] : [])]);
  };
}

function momentFrom(one: ReleasePoint): ReleaseMoment {
  const { takenUpG, freeG } = one;
  if (takenUpG === null || freeG === null) return { ...one, standing: 'unknown' };
  const standing = freeG.high < takenUpG.low ? 'behind' : freeG.low > takenUpG.high ? 'ahead' : 'even';
  return { ...one, standing };
}

/** The first moment after which all are behind. */
function sinceWhen(told: readonly ReleaseMoment[]): ReleaseMoment | undefined {
  const lastOther = told.findLastIndex(({ standing }) => standing !== 'behind');
  return told[lastOther + 1];
}
