import { describe, expect, it } from 'vitest';
import { sayState } from '#words/en/souring.ts';
import { meter, on } from './can-card.ts';

describe('a cold batch: pH 6.9, 6.4, 5.7, 5.1 on days 0, 3, 6, 9 at 11 °C', () => {
  const judged = on(
    9,
    11,
    meter([
      [0, 6.9],
      [3, 6.4],
      [6, 5.7],
      [9, 5.1],
    ]),
  );

  it('is slow, and the sentence says that it is not lost', () => {
    expect(judged.state).toBe('slow');
    expect(sayState(judged)[0]).toMatch(/slow, not lost/i);
  });
  it('is looked at again in three days', () => {
    expect(judged.nextLookDay).toBe(12);
  });
  it('says what would change the word', () => {
    expect(judged.wouldChange.map(({ code }) => code)).toContain('two-low-readings-make-it-ready');
  });
});
