import { describe, expect, it } from 'vitest';
import { card, held14, rulesOf, tap, textOf } from './can-card.ts';

const spray = {
  ratio: { n: 400, reading: 'in' },
  canL: 5,
  way: 'leaf',
  eaten: 'cooked',
  batch: held14,
  water: tap,
  nozzleMm: 0.4,
};

describe('a 0.4 mm nozzle', () => {
  it('will clog with what was strained at 1 mm: 0.2 mm or finer, or pour', () => {
    const said = card({ ...spray, strainedMm: 1 });
    expect(rulesOf(said, 'hold')).toEqual(['nozzle-clogs']);
    expect(textOf(said)).toMatch(/will clog.*0\.2\smm or finer, or pour/);
  });
  it('passes what was strained at 0.2 mm', () => {
    expect(rulesOf(card({ ...spray, strainedMm: 0.2 }), 'hold')).toEqual([]);
  });
  it('asks how fine when nobody says', () => {
    expect(rulesOf(card(spray), 'hold')).toEqual(['nozzle-clogs']);
  });
});
