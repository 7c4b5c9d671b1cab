// Whether two moments of a batch lie as far apart as a limit asks. Days are minutes divided by 1440, so that a full hour or
// a full day between two of them comes out a hair short or long: whoever compares them with a limit asks here.

/** From one moment to another, in days since the filling. */
export interface Span {
  readonly fromDay: number;
  readonly toDay: number;
}

/** What differences of floating figures stray by. */
const STRAY_DAYS = 1e-9;

/** Whether a span is as long as this or longer; never where an end is not known. @arithmetic */
export function isAtLeast({ fromDay, toDay }: Span, days: number): boolean {
  return toDay - fromDay >= days - STRAY_DAYS;
}

/** Whether a span is as long as this or shorter; never where an end is not known. @arithmetic */
export function isAtMost({ fromDay, toDay }: Span, days: number): boolean {
  return toDay - fromDay <= days + STRAY_DAYS;
}

/** Whether a span is shorter than this; never where an end is not known. @arithmetic */
export function isShorter({ fromDay, toDay }: Span, days: number): boolean {
  return toDay - fromDay < days - STRAY_DAYS;
}
