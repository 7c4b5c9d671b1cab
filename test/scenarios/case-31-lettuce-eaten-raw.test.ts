import { describe, expect, it } from 'vitest';
import { card, held14, rulesOf, tap, textOf } from './can-card.ts';

const lettuce = {
  ratio: { n: 200, reading: 'in' },
  canL: 10,
  crop: 'lettuce',
  eaten: 'raw',
  batch: held14,
  water: tap,
};

describe('a bed of lettuce, eaten raw', () => {
  it.each([0, 14, 200])('is never sprayed on the leaf, also %d days before picking', (daysToPick) => {
    const said = card({ ...lettuce, way: 'leaf', daysToPick });
    expect(rulesOf(said, 'stop')).toContain('leaf-eaten-raw');
    expect(said.perCan).toBeUndefined();
  });
  it('is not sprayed either while nobody says how it is eaten', () => {
    expect(rulesOf(card({ ...lettuce, eaten: undefined, way: 'leaf' }), 'stop')).toContain('leaf-eaten-raw');
  });
  it('gets a soil pour only 14 days before picking or more, by our caution, no source', () => {
    expect(rulesOf(card({ ...lettuce, daysToPick: 13.9 }), 'hold')).toContain('raw-bed-picked-soon');
    expect(rulesOf(card({ ...lettuce, daysToPick: 14 }), 'hold')).toEqual([]);
    const caution = card({ ...lettuce, daysToPick: 3 }).cautions.find(({ rule }) => rule === 'raw-bed-picked-soon');
    expect(caution?.source).toBe('our caution, no source');
  });
  it('is on hold while the day of picking is not told', () => {
    expect(rulesOf(card(lettuce), 'hold')).toContain('raw-bed-picked-soon');
  });
  it('gets nothing from a batch that is not held, unless picking is more than 120 days off', () => {
    const unheld = { ...lettuce, batch: { ...held14, held: false } };
    expect(rulesOf(card({ ...unheld, daysToPick: 120 }), 'hold')).toContain('batch-not-held-raw-bed');
    expect(rulesOf(card({ ...unheld, daysToPick: 121 }), 'hold')).toEqual(['batch-not-held']);
  });
  it('is on hold when the can is saltier than lettuce bears, 1.3 dS/m (Maas and Hoffman 1977)', () => {
    const salty = card({ ...lettuce, ratio: { n: 4, reading: 'in' }, growth: 'established', daysToPick: 30 });
    expect(rulesOf(salty, 'hold')).toContain('crop-salt-over');
    expect(textOf(salty)).toMatch(/beyond 1\.3\sdS\/m/);
  });
});
