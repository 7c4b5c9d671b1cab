// What lies ahead of a reader's clock, with and without a time of day.

import { describe, expect, it } from 'vitest';
import { momentOf } from '#journal/moment.ts';
import { isAhead } from './counted.ts';

const ahead = (when: string, now: string, byMinutes?: number) => isAhead(momentOf(when), momentOf(now), byMinutes);

describe('what lies ahead', () => {
  it('of a day without a time begins with the next day: its last minute is not ahead', () => {
    expect(ahead('2026-06-10T00:00', '2026-06-10')).toBe(false);
    expect(ahead('2026-06-10T23:59', '2026-06-10')).toBe(false);
    expect(ahead('2026-06-11T00:00', '2026-06-10')).toBe(true);
    expect(ahead('2026-06-11T00:04', '2026-06-10', 5)).toBe(false);
    expect(ahead('2026-06-11T00:05', '2026-06-10', 5)).toBe(true);
  });
  it('of a time is what is later by more than so many minutes', () => {
    expect(ahead('2026-06-10T09:00', '2026-06-10T09:00')).toBe(false);
    expect(ahead('2026-06-10T09:01', '2026-06-10T09:00')).toBe(true);
    expect(ahead('2026-06-10T09:05', '2026-06-10T09:00', 5)).toBe(false);
    expect(ahead('2026-06-10T09:06', '2026-06-10T09:00', 5)).toBe(true);
  });
  it('of a date alone is a later date', () => {
    expect(ahead('2026-06-10', '2026-06-10T00:01')).toBe(false);
    expect(ahead('2026-06-11', '2026-06-10T23:59')).toBe(true);
  });
});
