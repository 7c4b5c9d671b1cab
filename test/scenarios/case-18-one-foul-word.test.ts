import { describe, expect, it } from 'vitest';
import { sayState } from '#words/en/souring.ts';
import { meter, on } from './can-card.ts';

describe('one foul word while pH falls to 3.8', () => {
  const judged = on(
    7,
    20,
    meter([
      [0, 6.3, 'grassy'],
      [2, 4.5, 'sour'],
      [4, 4.1, 'sour'],
      [7, 3.8, 'butter-gone-off'],
    ]),
  );

  it('is doubtful, although two readings are low enough', () => {
    expect(judged.state).toBe('doubtful');
    expect(judged.held).toBe(false);
  });
  it('asks for a second nose within 24 hours', () => {
    expect(judged.wouldChange.map(({ code }) => code)).toEqual(['second-nose-decides']);
    expect(judged.nextLookDay).toBeLessThanOrEqual(8);
    expect(sayState(judged).join(' ')).toMatch(/second nose within 24 hours/);
  });
});
