// What a grower tells of the ground is kept as typed, within its bounds, whatever the order; a report of an older
// program reads as before, and a newer program's is kept by an older one.

import { describe, expect, it } from 'vitest';
import { recorder } from '../../../test/scenarios/recorder.ts';
import type { Kept } from '../entry.ts';
import { fold } from '../fold.ts';
import { newestBody } from '../upgrade.ts';
import { kinds } from './index.ts';

const line = { what: 'p', typed: '30', value: 30, unit: 'ppm' };
const oca = { name: 'oca', source: 'Our own scale, 2025' };
const band = (likely: number) => ({ typed: String(likely), low: likely, likely, high: likely });

describe('what is told of the ground', () => {
  it.each([
    ['goal.told', { bed: ID(1), goal: { typed: '0', yieldKgPerM2: 0 } }],
    ['goal.told', { bed: ID(1), goal: { typed: '101', yieldKgPerM2: 101 } }],
    ['goal.told', { goal: { typed: '2', yieldKgPerM2: 2 } }],
    ['crop.described', oca],
    ['crop.described', { name: 'oca', harvest: band(2) }],
    ['crop.described', { ...oca, harvest: { typed: '4 to 2', low: 4, likely: 3, high: 2 } }],
    ['crop.described', { ...oca, nNeed: band(101) }],
    ['product.labelled', { product: ID(1), release: 'perhaps' }],
    ['soil.tested', { figures: [] }],
    ['soil.tested', { figures: [{ ...line, depthCm: 0 }] }],
    ['soil.tested', { figures: [{ ...line, depthCm: 301 }] }],
  ] as const)('is refused out of its bounds: %s %j', (kind, body) => {
    expect(kinds[kind].newest.safeParse(body).success).toBe(false);
  });
  it('is kept at its bounds', () => {
    expect(kinds['goal.told'].newest.safeParse({ bed: ID(1), goal: { typed: '100', yieldKgPerM2: 100 } }).success).toBe(
      true,
    );
    expect(kinds['crop.described'].newest.safeParse({ ...oca, nNeed: band(100), harvest: band(100) }).success).toBe(
      true,
    );
    expect(kinds['soil.tested'].newest.safeParse({ figures: [{ ...line, depthCm: 300 }] }).success).toBe(true);
  });
  it('a soil report of version 1 says the same in version 2, and told no depth', () => {
    const body = { figures: [line] };
    const { did } = recorder();
    const entry = { ...did('soil.tested', '2026-04-01', { figures: [{ ...line, what: 'p' }] }), v: 1, body };
    expect(newestBody(entry)).toEqual(body);
    expect(kinds['soil.tested'].older?.[1]?.safeParse({ figures: [{ ...line, depthCm: 20 }] }).success).toBe(false);
  });
});

describe('the plot of it', () => {
  const me = recorder();
  const bed = me.did('bed.described', '2026-04-01', { name: 'Long' });
  const meal = me.did('product.bought', '2026-04-02', { name: 'meal', what: 'feed', nPercent: 7 });
  const first = me.did('product.labelled', '2026-04-03', { product: meal.id, release: 'soluble' });
  const then = me.did('product.labelled', '2026-04-04', { product: meal.id, release: 'slow' });
  const goal = me.did('goal.told', '2026-04-05', { bed: bed.id, goal: { typed: '3 kg/m²', yieldKgPerM2: 3 } });
  const astray = me.did('goal.told', '2026-04-05', { bed: ID(9), goal: { typed: '3', yieldKgPerM2: 3 } });
  const label = me.did('product.labelled', '2026-04-05', { product: ID(9), release: 'slow' });
  const entries: readonly Kept[] = [bed, meal, first, then, goal, astray, label];

  it.each([
    ['as told', entries],
    ['backwards', entries.toReversed()],
    ['twice', [...entries, ...entries]],
  ])('has the newest label of a product and the goals of a bed: %s', (_, list) => {
    const plot = fold(list);
    expect(plot.labels.get(meal.id)?.body.release).toBe('slow');
    expect(plot.beds.get(bed.id)?.goals.map(({ body }) => body.goal.yieldKgPerM2)).toEqual([3]);
    expect(plot.waiting.map(({ id }) => id).sort()).toEqual([astray.id, label.id].sort());
  });
});

function ID(last: number): string {
  return `019eb63b-4c40-703f-ba57-7491aecbe80${last}`;
}
