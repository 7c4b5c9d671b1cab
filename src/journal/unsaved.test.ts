import { describe, expect, it } from 'vitest';
import { kg, recorder } from '../../test/scenarios/recorder.ts';
import type { Entry } from './entry.ts';
import { type LastFile, unsavedElsewhere } from './unsaved.ts';

const DAY_MS = 86_400_000;
const TODAY = Date.UTC(2026, 5, 20, 9);
const rake = recorder();
/** An entry recorded so many days from today, as its device's clock had it. */
const recorded = (days: number): Entry => ({
  ...rake.did('scraps.weighed', '2026-06-01', { name: 'leaves', mass: kg(1) }),
  at: new Date(TODAY + days * DAY_MS).toISOString(),
});
/** A file read back so many days from today, as the clock was then. */
const file = (days: number, ...held: readonly Entry[]): LastFile => {
  const at = new Date(TODAY + days * DAY_MS).toISOString();
  return { on: at.slice(0, 10), at, held: held.map(({ id }) => id).join('\n') };
};
const unsaved = (entries: readonly Entry[], last?: LastFile, dueDays?: number) =>
  unsavedElsewhere(entries, { file: last, nowMs: TODAY, ...(dueDays !== undefined && { dueDays }) });

const [old, fresh] = [recorded(-8), recorded(-2)];

describe('entries that no file holds', () => {
  it('are told once the oldest is a week old, or sooner where that is asked', () => {
    expect(unsaved([recorded(-6), fresh])).toEqual({ count: 2, days: 6, isDue: false });
    expect(unsaved([recorded(-7), fresh])).toEqual({ count: 2, days: 7, isDue: true });
    expect(unsaved([recorded(-3)], undefined, 3).isDue).toBe(true);
    expect(unsaved([fresh], undefined, 3).isDue).toBe(false);
  });
  it('are those whose ids the file lacks, whatever the clocks say', () => {
    expect(unsaved([old, fresh], file(-1, old, fresh))).toEqual({ count: 0, days: 0, isDue: false });
    // Taken in from another phone after the file, recorded long before it.
    expect(unsaved([old, fresh], file(-1, fresh))).toEqual({ count: 1, days: 8, isDue: true });
  });
  it('are none where nothing was recorded since the file, however old that is', () => {
    expect(unsaved([old], file(-700, old))).toEqual({ count: 0, days: 0, isDue: false });
  });
});

describe('a clock that is or was wrong', () => {
  it('400 days ahead when the file was read back: what came after the file is told', () => {
    expect(unsaved([old, fresh], file(400, old))).toEqual({ count: 1, days: undefined, isDue: true });
  });
  it('400 days ahead when an entry was recorded: the entry is told, and the others are', () => {
    expect(unsaved([recorded(400)])).toEqual({ count: 1, days: undefined, isDue: true });
    expect(unsaved([recorded(400), fresh], file(-1, fresh)).isDue).toBe(true);
  });
  it('400 days ahead now, or back when an entry was recorded: it is told', () => {
    expect(unsaved([recorded(-400)])).toMatchObject({ isDue: true, days: 400 });
  });
  it('set back since: what was recorded lies ahead and is told', () => {
    expect(unsaved([recorded(3)], file(2)).isDue).toBe(true);
  });
  it('minutes off between two phones is no reason to ask', () => {
    expect(unsaved([recorded(0.01), recorded(-0.01)], file(0.001))).toEqual({ count: 2, days: 0, isDue: false });
  });
  it('cannot be read at all: it is told', () => {
    expect(unsaved([{ ...fresh, at: 'soon' }]).isDue).toBe(true);
    expect(unsaved([fresh], { ...file(-1), at: 'long ago' }).isDue).toBe(true);
    expect(unsavedElsewhere([fresh], { file: undefined, nowMs: Number.NaN }).isDue).toBe(true);
  });
});
