// What two cases are said to differ in: one sentence for each way it can come out.

import { describe, expect, it } from 'vitest';
import { sayDay, sayDays, sayDifference } from './two-cases.ts';

const NONE = { before: null, after: null };
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const warmer = [{ kind: 'warmth', byC: 8 } as const];

describe('what a change does, in words', () => {
  it('names degrees in words and days in figures', () => {
    const said = sayDifference({ changes: warmer, sour: { before: 11, after: 6 }, held: NONE, withinDays: 60 });
    expect(plain(said)).toBe('Eight degrees warmer is likely to bring it to pH 4.2 about 5 days earlier.');
  });

  it('takes the plural for more than one change, and tells the hold where it moves', () => {
    const changes = [...warmer, { kind: 'sugar', byG: -50 } as const];
    const said = sayDifference({
      changes,
      sour: { before: 6, after: 11 },
      held: { before: 20, after: 30 },
      withinDays: 60,
    });
    expect(plain(said)).toBe(
      'Eight degrees warmer and 50 g less sugar are likely to bring it to pH 4.2 about 5 days later. It is then likely to be held about 10 days later.',
    );
  });

  it('says so where one case, or neither, comes to pH 4.2', () => {
    const say = (before: number | null, after: number | null) =>
      plain(sayDifference({ changes: warmer, sour: { before, after }, held: NONE, withinDays: 60 }));
    expect(say(null, 9)).toMatch(/on about day 9; as it is, it is not likely to get there within 60 days\.$/);
    expect(say(9, null)).toMatch(/likely to keep it from pH 4\.2 for 60 days or more, against about day 9/);
    expect(say(null, null)).toMatch(/not likely to bring it to pH 4\.2 within 60 days either/);
    expect(say(9, 9.2)).toMatch(/changes little/);
  });

  it('counts the changes where there are more than three', () => {
    const changes = [
      ...warmer,
      { kind: 'water', byL: 1 } as const,
      { kind: 'chop', to: 'fine' } as const,
      { kind: 'lid', to: 'vent' } as const,
    ];
    const said = sayDifference({ changes, sour: { before: 11, after: 6 }, held: NONE, withinDays: 60 });
    expect(said).toMatch(/^These four changes together are likely/);
  });

  it('promises nothing', () => {
    const said = sayDifference({ changes: warmer, sour: { before: 11, after: 6 }, held: NONE, withinDays: 60 });
    expect(said).toMatch(/likely/);
  });
});

describe('a day in the table', () => {
  it('has halves under ten days, and says where it is not likely to come', () => {
    expect(plain(sayDay(2.3, 60))).toBe('day 2.5');
    expect(plain(sayDay(12.4, 60))).toBe('day 12');
    expect(plain(sayDay(null, 60))).toBe('not likely within 60 days');
  });

  it('says of a span that its end was not seen', () => {
    expect(sayDays({ low: 8.6, high: 20.2 })).toBe('8.5 to 20');
    expect(sayDays({ low: 12, high: null })).toBe('12 or later');
    expect(sayDays(null)).toBe('fewer than half of the runs');
  });
});
