// The temperature log of a heap: readings by day since it was built, turnings, and later feedings. A day counts by its
// lowest reading; a day without one counts as not hot, since nobody saw it.

/** One entry of the log. */
export interface LogEntry {
  /** Whole days since the heap was built. */
  readonly day: number;
  /** Probe in the core. */
  readonly coreC?: number | undefined;
  /** Probe near the edge, where the heap is coolest. */
  readonly edgeC?: number | undefined;
  /** Hours of that day that were told to be at 55 °C or more. */
  readonly hotH?: number | undefined;
  readonly turned?: boolean | undefined;
  /** Fresh material was put in. */
  readonly fed?: boolean | undefined;
}

/** One day as the rules read it. */
export interface LogDay {
  readonly day: number;
  readonly coreC: number | undefined;
  readonly edgeC: number | undefined;
  readonly hotH: number | undefined;
  readonly turned: boolean;
  readonly fed: boolean;
}

/** The days of a log in order, one line each: the lowest reading of each place, the longest heat told. @arithmetic */
export function daysOf(log: readonly LogEntry[]): readonly LogDay[] {
  const days = new Map<number, LogDay>();
  for (const one of log) {
    const day = Math.floor(one.day);
    const had = days.get(day);
    days.set(day, {
      day,
      coreC: least(had?.coreC, one.coreC),
      edgeC: least(had?.edgeC, one.edgeC),
      hotH: one.hotH ?? had?.hotH,
      turned: had?.turned === true || one.turned === true,
      fed: had?.fed === true || one.fed === true,
    });
  }
  return [...days.values()].sort((a, b) => a.day - b.day);
}

function least(oneC: number | undefined, otherC: number | undefined): number | undefined {
  if (oneC === undefined || otherC === undefined) return oneC ?? otherC;
  return Math.min(oneC, otherC);
}

/** Days since the last feeding: what was in before may have been hot, what came then was not. @arithmetic */
export function sinceFed(days: readonly LogDay[]): {
  readonly days: readonly LogDay[];
  readonly fedDay: number | undefined;
} {
  const fedDay = days.findLast(({ fed, day }) => fed && day > (days[0]?.day ?? 0))?.day;
  return { days: fedDay === undefined ? days : days.filter(({ day }) => day > fedDay), fedDay };
}

/** A run of hot days. */
export interface Run {
  readonly fromDay: number;
  readonly toDay: number;
  readonly hotDays: number;
  readonly turningsCount: number;
}

/** Days in a row that were hot, by a test of the core; a missing day ends the run. @arithmetic */
export function runsOf(days: readonly LogDay[], hot: (coreC: number) => boolean): readonly Run[] {
  const runs: Run[] = [];
  let open: Run | undefined;
  for (const { day, coreC, turned } of days) {
    const isHot = coreC !== undefined && hot(coreC);
    if (isHot && open !== undefined && day === open.toDay + 1) {
      open = {
        fromDay: open.fromDay,
        toDay: day,
        hotDays: open.hotDays + 1,
        turningsCount: open.turningsCount + Number(turned),
      };
    } else {
      if (open) runs.push(open);
      open = isHot ? { fromDay: day, toDay: day, hotDays: 1, turningsCount: Number(turned) } : undefined;
    }
  }
  return open ? [...runs, open] : runs;
}

/** All hot days, in a row or not, with the turnings from the first to the last of them. @arithmetic */
export function hotDaysOf(days: readonly LogDay[], hot: (coreC: number) => boolean): Run {
  const isHot = ({ coreC }: LogDay) => coreC !== undefined && hot(coreC);
  const found = days.filter(isHot);
  const fromDay = found[0]?.day ?? Number.NaN;
  const toDay = found.at(-1)?.day ?? Number.NaN;
  const turnings = days.filter(({ turned, day }) => turned && day >= fromDay && day <= toDay);
  return { fromDay, toDay, hotDays: found.length, turningsCount: turnings.length };
}
