import { describe, expect, it } from 'vitest';
import type { Surface } from '#engine/souring/look.ts';
import { meter, on } from './can-card.ts';

const start = meter([
  [0, 6.3],
  [1, 5.2],
  [2, 4.5],
]);
const top = (day: number, ph: number, surface: Surface) => ({ day, ph, by: 'meter', surface }) as const;
const codes = (judged: ReturnType<typeof on>) => judged.reasons.map(({ code }) => code);

describe('what grows on top', () => {
  it('leaves the word as it is for a flat white film, and notes it', () => {
    const judged = on(4, 20, [...start, top(4, 4.1, 'flat-white')]);
    expect(judged.state).toBe('souring');
    expect(codes(judged)).toContain('flat-white');
  });
  it('leaves the word as it is for one white tuft, notes it, and asks for a look in 24 hours', () => {
    const judged = on(4, 20, [...start, top(4, 4.1, 'fuzzy-white')]);
    expect(judged.state).toBe('souring');
    expect(codes(judged)).toContain('white-fuzz-once');
    expect(judged.nextLookDay).toBe(5);
  });
  it('is lost at white fuzz twice', () => {
    expect(on(5, 20, [...start, top(4, 4.1, 'fuzzy-white'), top(5, 4.0, 'fuzzy-white')]).state).toBe('lost');
  });
  it('is not lost when two people see one tuft at one visit', () => {
    expect(on(4.02, 20, [...start, top(4, 4.1, 'fuzzy-white'), top(4.02, 4.1, 'fuzzy-white')]).state).toBe('souring');
  });
  it('is lost at any coloured fuzz, however sour', () => {
    expect(on(4, 20, [...start, top(4, 3.6, 'coloured-fuzz')]).state).toBe('lost');
  });
});
