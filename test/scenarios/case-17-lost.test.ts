import { describe, expect, it } from 'vitest';
import { sayState } from '#words/en/souring.ts';
import { card, meter, on } from './can-card.ts';

describe('pH 6.1, 6.3, 6.9 with a smell of egg', () => {
  const looks = meter([
    [0, 6.1],
    [3, 6.3, 'egg'],
    [6, 6.9, 'egg'],
  ]);
  const judged = on(6, 20, looks);

  it('is lost, by smell and by acidity together', () => {
    expect(judged.state).toBe('lost');
    expect(judged.reasons.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['foul-twice', 'foul-and-not-falling', 'climbed']),
    );
  });
  it('was lost already at the first egg, when pH had not fallen from 6.1', () => {
    expect(on(3, 20, looks).state).toBe('lost');
  });
  it('says where it goes, and has no next look', () => {
    expect(sayState(judged)[0]).toMatch(/heap/);
    expect(judged.nextLookDay).toBeUndefined();
  });
  it('gets no dose', () => {
    const said = card({
      ratio: { n: 200, reading: 'in' },
      canL: 9,
      batch: { peg: 16, state: judged.state, held: judged.held },
    });
    expect(said.perCan).toBeUndefined();
    expect(said.noDose?.join()).toMatch(/lost/);
  });
});
