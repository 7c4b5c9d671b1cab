// The season of a bed: from which day on what it is given counts for the crop that stands on it. A bed whose clearing was
// told starts anew there; else the growing year turns in the midwinter of its hemisphere, so that no 1 January cuts a
// summer in two. What was given earlier counts by what comes free from then on (engine/ground/ledger.ts).

import { readCrops } from '#engine/ground/crop-names.ts';
import { cropOf } from '#engine/ground/crops.ts';
import { usual } from '#engine/scraps/usual.ts';
import type { ActOf } from '#journal/act.ts';
import { dayNumber } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import type { Hemisphere } from '../place/hemisphere.ts';

/** What a season starts with: twelve months where nobody told on which side of the equator the plot lies; the day asked for. */
export type SeasonStart = 'cleared' | 'planted' | 'midwinter' | 'twelve-months' | 'asked';

export interface BedSeason {
  readonly fromDay: number;
  readonly start: SeasonStart;
  /** The planting of the crop that stands, where it falls into the season. */
  readonly planted: ActOf<'bed.planted'> | undefined;
}

export interface SeasonAsk {
  readonly bed: Pick<Bed, 'plantings' | 'picks'>;
  readonly hemisphere: Hemisphere | undefined;
  readonly todayDay: number;
}

/** A planting or clearing older than this is of another season. @practice */
const LONGEST_DAYS = 365;
/** Season of a crop whose stages no table has. @practice our caution, no source */
export const USUAL_SEASON_DAYS = usual('crop.seasonDays').likely;
/** Midwinter as month and day. @arithmetic the solstice falls on it or a day beside it */
const MIDWINTER = { north: [12, 21], south: [6, 21] } as const;

/** The season of a bed on a day. */
export function seasonOf({ bed, hemisphere, todayDay }: SeasonAsk): BedSeason {
  const acts = bed.plantings.filter(({ when }) => when.dateDay <= todayDay);
  const last = acts.at(-1);
  const turn = lastTurn(todayDay, hemisphere);
  const start = hemisphere === undefined ? 'twelve-months' : 'midwinter';
  const turned: BedSeason = { fromDay: turn, start, planted: undefined };
  if (last === undefined || todayDay - last.when.dateDay >= LONGEST_DAYS) return turned;
  if (last.body.act === 'cleared') return { fromDay: last.when.dateDay, start: 'cleared', planted: undefined };
  const planted = last;
  const plantedDay = planted.when.dateDay;
  if (plantedDay < turn && !standsOn(turn, planted, bed)) return turned;
  const before = acts.slice(0, -1).findLast((act) => act.body.act === 'cleared' || !isSameCrop(act, planted));
  const since = before === undefined ? Number.NEGATIVE_INFINITY : before.when.dateDay;
  const turnBefore = hemisphere === undefined ? turn : lastTurn(plantedDay, hemisphere);
  if (before?.body.act === 'cleared' && plantedDay - since < LONGEST_DAYS) {
    return { fromDay: since, start: 'cleared', planted };
  }
  // Another crop stood there in the same growing year, and nobody told when it went.
  if (since >= turnBefore) return { fromDay: plantedDay, start: 'planted', planted };
  return { fromDay: turnBefore, start, planted };
}

/** Days from planting to the end of the slowest of these crops; undefined where one of them has no stages. @source fao-56 table 11 */
export function growingDays(crop: string | undefined): number | undefined {
  const days = readCrops(crop ?? '').map(({ id }) => {
    const stages = id === undefined ? undefined : cropOf(id)?.stagesDays;
    return stages?.reduce((sum, one) => sum + one, 0) ?? Number.NaN;
  });
  const most = Math.max(...days);
  return Number.isFinite(most) ? most : undefined;
}

/** Growing years from one day to a later one: 0 in the same, 1 where the first day is of the year before. */
export function growingYearsApart(earlierDay: number, laterDay: number, hemisphere: Hemisphere | undefined): number {
  if (hemisphere === undefined) return Math.round((laterDay - earlierDay) / LONGEST_DAYS);
  return Math.round((lastTurn(laterDay, hemisphere) - lastTurn(earlierDay, hemisphere)) / LONGEST_DAYS);
}

/** The last midwinter up to a day; where the hemisphere is not known, the day twelve months before. @arithmetic Gregorian calendar */
function lastTurn(day: number, hemisphere: Hemisphere | undefined): number {
  if (hemisphere === undefined) return day - LONGEST_DAYS + 1;
  const [month, dayOfMonth] = MIDWINTER[hemisphere];
  let year = 1971 + Math.floor(day / LONGEST_DAYS);
  while (dayNumber(year, month, dayOfMonth) > day) year--;
  return dayNumber(year, month, dayOfMonth);
}

/** Whether a crop that was planted before a day still stands on it: by its stages, or because it was picked since. */
function standsOn(day: number, planted: ActOf<'bed.planted'>, { picks }: SeasonAsk['bed']): boolean {
  const grown = growingDays(planted.body.crop);
  // How long this crop grows stands in no table: it stands until it is cleared.
  if (grown === undefined || planted.when.dateDay + grown > day) return true;
  return picks.some(({ when }) => when.dateDay >= day);
}

function isSameCrop(a: ActOf<'bed.planted'>, b: ActOf<'bed.planted'>): boolean {
  const names = ({ body }: ActOf<'bed.planted'>) =>
    readCrops(body.crop ?? '')
      .map((one) => one.names[0])
      .sort()
      .join();
  return names(a) === names(b);
}
