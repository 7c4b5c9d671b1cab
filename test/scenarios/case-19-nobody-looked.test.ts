import { describe, expect, it } from 'vitest';
import { meter, on } from './can-card.ts';

describe('a ready batch that nobody looks at for ten days', () => {
  const looks = meter([
    [0, 6.3],
    [2, 4.5],
    [4, 4.1],
    [7, 3.8],
  ]);

  it('is ready on day 7 and still on day 16', () => {
    expect(on(7, 20, looks).state).toBe('ready');
    expect(on(16, 20, looks).state).toBe('ready');
  });
  it('is unknown from day 17 on, and no longer held', () => {
    for (const day of [17, 18, 40]) expect(on(day, 20, looks)).toMatchObject({ state: 'unknown', held: false });
  });
});
