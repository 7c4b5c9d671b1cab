// What the feeding form of a heap offers: lots whose slip lets them, solids by their batch; nothing that was set aside.

import { describe, expect, it } from 'vitest';
import { strainedBatch } from '#engine/bottle/strained.ts';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { strainedFrom } from '#plot/batch/strained.ts';
import { kg, recorder } from '../../../test/scenarios/recorder.ts';
import { gardenEntries } from '../demo/garden.ts';
import { heapView } from './heap.ts';
import { readFeeding } from './heap-forms.ts';
import { heapOffers, namedBy } from './heap-offers.ts';

const today = '2026-06-10';
const me = recorder();
const own = { whose: 'own', cameFrom: 'garden', treated: 'no' } as const;
const weighed = (name: string, slip: object) =>
  me.did('scraps.weighed', '2026-06-09', {
    material: 'grass-clippings-wilted',
    name,
    mass: kg(5),
    slip: { ...own, ...slip },
  });
const good = weighed('lawn', {});
const doubtful = weighed('from next door', { whose: 'neighbour', cameFrom: 'neighbour', treated: 'unknown' });

describe('what may go on a heap', () => {
  const plot = fold([good, doubtful]);
  const offers = heapOffers({ plot, today });
  it('is the lot of the own lawn with what is left of it, and not the one set aside', () => {
    expect(offers.lots).toEqual([{ choice: `lot:${good.id}`, name: 'lawn', leftKg: 5 }]);
    expect(plot.lots.get(doubtful.id)?.goes).toBe('set-aside');
  });
  it('is refused in the form where it is not offered, so that a draft from before cannot pass', () => {
    const read = (choice: string) =>
      readFeeding({ heap: 'bay', offers, rows: [{ ...namedBy(choice), amount: '2 kg' }] });
    expect(read(`lot:${good.id}`)).toMatchObject({ ok: true, body: { ingredients: [{ lot: good.id }] } });
    const refused = read(`lot:${doubtful.id}`);
    expect(refused.ok ? [] : [...refused.troubles.keys()]).toEqual(['ingredients.0.material']);
  });
  it('shrinks by what a heap got by weight', () => {
    const fed = me.did('heap.fed', today, { heap: 'bay', ingredients: [{ lot: good.id, amount: kg(2) }] });
    expect(heapOffers({ plot: fold([good, fed]), today }).lots[0]?.leftKg).toBeCloseTo(3, 9);
  });
});

describe('strained solids', () => {
  const solids = (solidsTo: 'heap' | 'out' | 'pile-apart', solidsKg: number, parts: Body<'peg.filled'>['parts']) => {
    const filled = me.did('peg.filled', '2026-06-01', { peg: 5, temperatureC: 20, parts });
    const strained = me.did('peg.strained', '2026-06-09', {
      batch: filled.id,
      drained: { typed: '5 L', volumeL: 5 },
      solids: kg(solidsKg),
      solidsTo,
      rest: 'nothing',
    });
    return heapOffers({ plot: fold([good, doubtful, filled, strained]), today }).solids.map(({ leftKg }) => leftKg);
  };
  const sound = [{ material: 'cabbage-leaves', mass: kg(2) }];
  it('are offered from ten grams on, and not where they went out or on a pile apart', () => {
    expect(solids('heap', 0.8, sound)).toEqual([0.8]);
    expect(solids('heap', 0.01, sound)).toEqual([0.01]);
    expect(solids('heap', 0.009, sound)).toEqual([]);
    expect(solids('out', 0.8, sound)).toEqual([]);
    expect(solids('pile-apart', 0.8, sound)).toEqual([]);
  });
  it('of a lot that is set aside are not offered, of lots that are not are', () => {
    const part = ({ id }: { readonly id: string }) => ({ lot: id, material: 'grass-clippings-wilted', mass: kg(1) });
    expect(solids('heap', 0.8, [part(good)])).toEqual([0.8]);
    expect(solids('heap', 0.8, [part(good), part(doubtful)])).toEqual([]);
  });
});

describe('strained solids of the demo garden', () => {
  const before = gardenEntries('2026-07-06');
  const unfed = before.filter(({ kind }) => kind !== 'heap.fed');
  const solidsOf = (entries: typeof before) => heapOffers({ plot: fold(entries), today: '2026-07-06' }).solids;
  it('are offered by their peg, with what was weighed of them, until a heap got them', () => {
    const offered = solidsOf(unfed).find(({ name }) => name === 'strained solids of peg 14');
    expect(offered?.leftKg).toBeGreaterThan(0);
    expect(offered?.choice).toMatch(/^batch:/);
    expect(solidsOf(before).map(({ name }) => name)).not.toContain('strained solids of peg 14');
  });
  it('count in a heap by the balance of their own batch: its C:N, and all the nitrogen it kept', () => {
    const plot = fold(unfed);
    const batch = [...plot.batches.values()].find(({ peg }) => peg === 14);
    if (batch === undefined) throw new Error('the demo has a peg 14');
    const strained = strainedFrom(plot, batch);
    const { solidsCn, fates } = strainedBatch(strained);
    const fed = me.did('heap.fed', '2026-07-06', {
      heap: 'alone',
      ingredients: [{ batch: batch.id, amount: kg(strained.solidsKg) }],
    });
    const again = fold([...unfed, { ...fed, plot: unfed[0]?.plot ?? '' }]);
    const view = heapView({ plot: again, heap: 'alone', today: '2026-07-06' });
    expect(solidsCn.known && view?.cn?.likely).toBeCloseTo(solidsCn.known ? solidsCn.cn.likely : Number.NaN, 9);
    // What is left of the nitrogen is a share of what the solids kept, and never more.
    const keptG = fates.n.known ? fates.n.solidsG.high : Number.NaN;
    expect(view?.left?.nitrogenKg.likely).toBeGreaterThan(0);
    expect(1000 * (view?.left?.nitrogenKg.high ?? Number.NaN)).toBeLessThanOrEqual(keptG * 1.001 + 1e-9);
    expect(view?.left?.massKg.likely).toBeGreaterThan(0);
  });
});

describe('the word of a choice', () => {
  it('names a lot, a batch, a material, or nothing', () => {
    expect([namedBy('lot:a'), namedBy('batch:b'), namedBy('straw'), namedBy('')]).toEqual([
      { lot: 'a' },
      { batch: 'b' },
      { material: 'straw' },
      {},
    ]);
  });
});
