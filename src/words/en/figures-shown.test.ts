import { describe, expect, it } from 'vitest';
import { type ChangeSaid, isMoved, type MovedOf, sayBoth, sayMoved, sayShown } from './figures-shown.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const then = { tables: { number: 1, on: '2026-11-30', digest: '1a2b3c4d' }, model: 1 };
const now = { tables: { number: 2, on: '2026-12-03', digest: '5e6f7a8b' }, model: 1 };
const band = (likely: number, spread = 0.2) => ({ low: likely * (1 - spread), likely, high: likely * (1 + spread) });
const change = (what: ChangeSaid['what'], before: number, after: number): ChangeSaid => ({
  what,
  before: band(before),
  now: band(after),
  byPercent: (100 * (after - before)) / before,
});
const peg14 = { of: 'liquid', peg: 14 } as const;
const said = (of: MovedOf, changes: readonly ChangeSaid[], more: object = {}) =>
  plain(sayMoved({ of, changes, shownBy: then, now, enteredAnew: false, ...more }));

describe('what newer tables moved', () => {
  it.each([
    [
      'one figure',
      peg14,
      [change('nGPerL', 1, 0.96)],
      'With the tables of 3 Dec 2026 the liquid of peg 14 holds 4 % less nitrogen than was shown before.',
    ],
    [
      'two figures in one sentence',
      peg14,
      [change('nGPerL', 1, 0.96), change('kGPerL', 2, 2.2)],
      'With the tables of 3 Dec 2026 the liquid of peg 14 holds 4 % less nitrogen and 10 % more potassium than was shown before.',
    ],
    [
      'less than one in a hundred',
      { of: 'pours', name: 'Gate' } as const,
      [change('nG', 25, 25.1)],
      'With the tables of 3 Dec 2026 the pours on Gate gave 0.4 % more nitrogen than was shown before.',
    ],
    [
      'the range alone',
      peg14,
      [{ what: 'nGPerL', before: band(1), now: band(1, 0.3), byPercent: 0 } as const],
      'With the tables of 3 Dec 2026 the liquid of peg 14 holds nitrogen in another range than was shown before.',
    ],
    [
      'a figure that is not known any more',
      peg14,
      [{ what: 'pGPerL', before: band(1), now: undefined, byPercent: undefined } as const],
      'With the tables of 3 Dec 2026 there is no figure any more for the liquid of peg 14: phosphorus.',
    ],
    [
      'where none was shown before',
      peg14,
      [{ what: 'nGPerL', before: { low: 0, likely: 0, high: 0.1 }, now: band(1), byPercent: undefined } as const],
      'With the tables of 3 Dec 2026 the liquid of peg 14 holds more nitrogen than was shown before.',
    ],
    [
      'the days of bottles',
      { of: 'bottles', peg: 14 } as const,
      [change('useFirstDays', 91, 82)],
      'With the tables of 3 Dec 2026 the bottles of peg 14 keep 9 days less than was shown before.',
    ],
    [
      'one day',
      { of: 'bottles', peg: 14 } as const,
      [change('useFirstDays', 91, 92)],
      'With the tables of 3 Dec 2026 the bottles of peg 14 keep 1 day more than was shown before.',
    ],
  ])('is said of %s', (_, of, changes, sentence) => {
    expect(said(of, changes)).toBe(sentence);
  });

  it('names the formulas where the tables are the same, and a later entry where there was one', () => {
    const formulas = { now: { ...then, model: 2 }, enteredAnew: true };
    expect(said(peg14, [change('nGPerL', 1, 0.9)], formulas)).toBe(
      'With the formulas of model 2 the liquid of peg 14 holds 10 % less nitrogen than was shown before. What you entered since then can be part of the reason.',
    );
  });

  it('is nothing where the figure reads the same', () => {
    expect(isMoved('nGPerL', band(1), band(1.0004))).toBe(false);
    expect(isMoved('nGPerL', band(1), band(1.02))).toBe(true);
    expect(isMoved('useFirstDays', band(90), band(90.2))).toBe(false);
    expect(isMoved('nGPerL', band(1), undefined)).toBe(true);
  });

  it('leaves both figures readable', () => {
    expect(plain(sayBoth('nGPerL', band(1), band(0.96)))).toBe(
      'Nitrogen in a litre: before 1 g (0.8 to 1.2), now 0.96 g (0.77 to 1.15).',
    );
    expect(plain(sayBoth('useFirstDays', band(90), undefined))).toBe(
      'Days until use first by: before 90 days (72 to 108), not known now.',
    );
    expect(plain(sayShown('kG', band(2)))).toBe('Potassium: 2 g (1.6 to 2.4).');
  });
});
