// A full hour or day between two moments is that, at every minute of the batch. Days are minutes divided by 1440.
import { describe, expect, it } from 'vitest';
import { isAtLeast, isAtMost, isShorter } from './days.ts';
import { judgeBatch } from './judge.ts';
import { type Look, visits } from './look.ts';

const SECOND = 1 / 86_400;
const at = (minute: number) => minute / 1440;
/** Every minute of thirty days, or every so many. */
const minutes = (step = 1) => Array.from({ length: (30 * 1440) / step }, (_, i) => i * step);

describe('a span', () => {
  it.each([
    [2 - SECOND, false, true],
    [2, true, true],
    [2 + SECOND, true, false],
  ])('of %d days is at least two: %s, and at most two: %s', (days, least, most) => {
    expect(isAtLeast({ fromDay: 5, toDay: 5 + days }, 2)).toBe(least);
    expect(isAtMost({ fromDay: 5, toDay: 5 + days }, 2)).toBe(most);
  });
  it('is neither where an end is not known', () => {
    for (const span of [
      { fromDay: Number.NaN, toDay: 3 },
      { fromDay: 1, toDay: Number.NaN },
    ]) {
      expect(isAtLeast(span, 0)).toBe(false);
      expect(isShorter(span, 0)).toBe(false);
      expect(isAtMost(span, 9)).toBe(false);
    }
  });
});

describe('at every minute of a month', () => {
  it('entries an hour apart are one visit, and those of 61 minutes are two', () => {
    const together = (gap: number) =>
      minutes().filter((minute) => visits([{ day: at(minute) }, { day: at(minute + gap) }]).length === 1).length;
    expect(together(60)).toBe(43_200);
    expect(together(61)).toBe(0);
  });

  it('one white tuft that two people entered an hour apart is no second one', () => {
    const tuft = (minute: number): Look => ({ day: at(minute), ph: 4.5, by: 'meter', surface: 'fuzzy-white' });
    const states = minutes(61).map(
      (minute) =>
        judgeBatch({ looks: [tuft(minute), tuft(minute + 60)], temperatureC: 20, today: at(minute + 60) }).state,
    );
    expect(states.filter((state) => state === 'lost')).toEqual([]);
  });

  it('a slow batch that has not fallen for three full days is in doubt', () => {
    const read = (minute: number): Look => ({ day: at(minute), ph: 5.5, by: 'meter' });
    const states = minutes(61).map((minute) => {
      const [from, to] = [6 * 1440 + minute, 9 * 1440 + minute];
      return judgeBatch({ looks: [read(from), read(to)], temperatureC: 20, today: at(to) }).state;
    });
    expect(states.filter((state) => state !== 'doubtful')).toEqual([]);
  });

  it('nothing is known ten full days after the last look', () => {
    const states = minutes(61).map(
      (minute) =>
        judgeBatch({
          looks: [{ day: at(minute), ph: 4.5, by: 'meter' }],
          temperatureC: 20,
          today: at(minute + 10 * 1440),
        }).state,
    );
    expect(states.filter((state) => state !== 'unknown')).toEqual([]);
  });
});
