// The answer of `sour` put on the calendar of one peg: when it is likely to be ready and held, as spans of dates, the gas
// of today and of the day of the most, what the room would have to be, the ways to save it. Figures are the answer's.

import type { Range } from '#engine/quantity/range.ts';
import type { Brake } from '#engine/souring/brake.ts';
import type { LidKind } from '#engine/souring/gas/lid.ts';
import { CO2_LIMITS_PPM, leastRoomM3 } from '#engine/souring/gas/room.ts';
import { assumedParts } from '#plot/batch/recipe.ts';
import type { DayRange, SourResult } from '../sour.ts';
import { dateOfDay, type PegView } from './peg.ts';

/** A span on the calendar, with its days since the filling for drawing. */
export interface SpanOfDates {
  readonly fromDay: number;
  readonly toDay: number;
  readonly fromOn: string;
  readonly toOn: string;
  /** The late end may lie past the days that were run. */
  readonly openEnded: boolean;
}

/** What may come, and how many of ten draws get there by the last day run. */
export interface Coming {
  readonly span: SpanOfDates | undefined;
  readonly tenths: number;
}

export interface PegForecast {
  /** Undefined where the word for the peg already says it, or where the batch is lost. */
  readonly ready: Coming | undefined;
  readonly held: Coming | undefined;
  readonly untilOn: string;
  readonly plateauPh: Range | undefined;
  readonly brake: Brake | undefined;
  /** Litres of today; undefined once it is emptied. */
  readonly gasTodayL: Range | undefined;
  readonly gasMost: { readonly on: string; readonly gasL: Range; readonly past: boolean } | undefined;
  /** A room smaller than this, with its air renewed once a day, could pass the limit of a working day. */
  readonly roomM3: number | undefined;
  readonly limitPpm: number;
  readonly lid: LidKind;
  readonly rescues: SourResult['rescues'];
  readonly questions: readonly string[];
  readonly readings: SourResult['readings'];
  readonly beliefs: SourResult['beliefs'];
  readonly assumed: SourResult['assumed'];
  /** Reasons that only the model gives. */
  readonly beside: readonly string[];
}

/** Renewals of air in an hour: once a day. */
const ONCE_A_DAY_PER_H = 1 / 24;
const DRAWS_OF_TEN = 10;

/** The answer on the calendar of its peg. */
export function pegForecast(view: PegView, result: SourResult): PegForecast {
  const over = view.state === 'lost';
  const stands = view.endedOn === undefined;
  const { days, reachedFraction } = result;
  const coming = (range: DayRange | null, fraction: number): Coming => ({
    span: range === null ? undefined : spanOf(view, range),
    tenths: Math.round(fraction * DRAWS_OF_TEN),
  });
  const most = days.reduce((a, b) => (b.gasRangeLPerDay.likely > a.gasRangeLPerDay.likely ? b : a));
  return {
    ready: over || view.state === 'ready' ? undefined : coming(result.readyDay, reachedFraction.ready),
    held: over || view.held ? undefined : coming(result.heldDay, reachedFraction.held),
    untilOn: dateOfDay(view.batch.filled, result.runDays),
    plateauPh: over ? undefined : result.plateauPh,
    brake: over || view.state === 'ready' ? undefined : result.brake,
    gasTodayL: stands ? days[Math.floor(view.judgedDay)]?.gasRangeLPerDay : undefined,
    gasMost: stands
      ? { on: dateOfDay(view.batch.filled, most.day), gasL: most.gasRangeLPerDay, past: most.day + 1 <= view.judgedDay }
      : undefined,
    roomM3: stands
      ? leastRoomM3({ gasLPerDay: most.gasRangeLPerDay.high, airChangesPerH: ONCE_A_DAY_PER_H }, CO2_LIMITS_PPM.day)
      : undefined,
    limitPpm: CO2_LIMITS_PPM.day,
    lid: result.lid,
    rescues: stands ? result.rescues : [],
    questions: result.questions.map(({ text }) => text),
    readings: result.readings,
    beliefs: result.beliefs,
    assumed: [...result.assumed, ...assumedParts(view.batch)],
    beside: result.beside,
  };
}

/** A day that lies behind counts as today: the looks did not show it. */
function spanOf({ batch, judgedDay }: PegView, { low, high, openEnded }: DayRange): SpanOfDates {
  const on = (day: number) => dateOfDay(batch.filled, day);
  const [from, to] = [Math.max(low, judgedDay), Math.max(high, judgedDay)];
  return { fromDay: from, toDay: to, fromOn: on(from), toOn: on(to), openEnded };
}
