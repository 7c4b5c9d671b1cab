// Undo counts by a time that only counts up; after a reload nobody is told minutes.

import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { recentOf } from './recent.ts';

const AT = '2026-06-03T16:00:00.000Z';
const entry = (id: string, more: Partial<Entry> = {}): Entry => ({
  ...{ id, plot: 'p', by: 'me', device: 'd', at: AT, on: '2026-06-03T18:00', kind: 'bottle.vented', v: 1 },
  ...{ body: {}, ...more },
});
const MINUTE = 60_000;
const DAY = 1440 * MINUTE;
const recent = (given: Partial<Parameters<typeof recentOf>[0]> & Pick<Parameters<typeof recentOf>[0], 'entries'>) =>
  recentOf({ device: 'd', cameMs: new Map(), aliveMs: 0, nowMs: Date.parse(AT), ...given });

describe('what can be undone', () => {
  it.each([0, -30 * DAY, 30 * DAY])('counts its ten minutes while the page lives, the clock moved by %d ms', (by) => {
    const given = { entries: [entry('a')], cameMs: new Map([['a', 1000]]), nowMs: Date.parse(AT) + by };
    expect(recent({ ...given, aliveMs: 1000 + 4 * MINUTE })).toMatchObject([{ minutesLeft: 6 }]);
    expect(recent({ ...given, aliveMs: 1000 + 10 * MINUTE })).toMatchObject([{ minutesLeft: 1 }]);
    expect(recent({ ...given, aliveMs: 1001 + 10 * MINUTE })).toEqual([]);
  });

  it('is offered without minutes after a reload', () => {
    for (const by of [2 * MINUTE, -2 * MINUTE]) {
      const [one] = recent({ entries: [entry('a')], nowMs: Date.parse(AT) + by });
      expect(one).toMatchObject({ entry: { id: 'a' }, minutesLeft: undefined });
    }
  });

  it('is nothing after a reload with the clock moved by a month', () => {
    for (const by of [30 * DAY, -30 * DAY])
      expect(recent({ entries: [entry('a')], nowMs: Date.parse(AT) + by })).toEqual([]);
  });

  it('is neither what was withdrawn nor what another device wrote', () => {
    const entries = [entry('a'), entry('b', { device: 'other' }), entry('c'), entry('d', { replaces: 'c' })];
    expect(recent({ entries }).map(({ entry: { id } }) => id)).toEqual(['a']);
  });
});
