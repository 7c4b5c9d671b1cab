// A day as a ruled line of 24 hours: where its open stretches, its sunrise and sunset, the hour that runs and the
// figures under it stand.

/** A stretch of hours, from its first to the end of its last. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Neighbouring open hours as stretches. @arithmetic */
export function stretchesOf(open: readonly boolean[]): readonly Stretch[] {
  const found: Stretch[] = [];
  for (const [hour, isOpen] of open.entries()) {
    const last = found.at(-1);
    if (!isOpen) continue;
    if (last?.to === hour) found[found.length - 1] = { from: last.from, to: hour + 1 };
    else found.push({ from: hour, to: hour + 1 });
  }
  return found;
}

const EDGE = 2;
const HOURS_A_DAY = 24;

/** Where an hour of the day stands on a line of so many px. @arithmetic */
export function hourX(hour: number, width: number): number {
  return EDGE + ((width - 2 * EDGE) * Math.max(0, Math.min(HOURS_A_DAY, hour))) / HOURS_A_DAY;
}

/** "06:00 to 10:00", an hour alone too. */
export function sayStretch({ from, to }: Stretch): string {
  const clock = (hour: number) => `${String(hour).padStart(2, '0')}:00`;
  return `${clock(from)}–${clock(to)}`;
}
