import { describe, expect, it } from 'vitest';
import { meter, on } from './can-card.ts';

describe('a good batch at 20 °C: pH 6.3, 5.2, 4.5, 4.1, 3.8, 3.7 on days 0, 1, 2, 4, 7, 9, smelling sour', () => {
  const looks = meter([
    [0, 6.3, 'sour'],
    [1, 5.2, 'sour'],
    [2, 4.5, 'sour'],
    [4, 4.1, 'sour'],
    [7, 3.8, 'sour'],
    [9, 3.7, 'sour'],
  ]);

  it.each([0, 1, 2, 4, 5, 6.9])('is souring on day %d: at most one reading at or below 4.2', (day) => {
    expect(on(day, 20, looks).state).toBe('souring');
  });
  it('is ready on day 7: 4.1 and 3.8, three days apart', () => {
    const judged = on(7, 20, looks);
    expect(judged.state).toBe('ready');
    expect(judged.reasons.find(({ code }) => code === 'two-low-readings')?.values).toEqual({
      firstPh: 4.1,
      firstDay: 4,
      lastPh: 3.8,
      lastDay: 7,
    });
  });
});
