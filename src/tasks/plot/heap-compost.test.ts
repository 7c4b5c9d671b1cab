// Compost of an own heap counts by what went into it: nitrogen left over dry matter left, worked out by hand below.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { kg, recorder } from '../../../test/scenarios/recorder.ts';
import { dressingSupply } from '../ledger-supply.ts';
import { coverSources } from './cover-sources.ts';
import { heapView } from './heap.ts';
import { heapCompost } from './heap-compost.ts';
import { plotLedger } from './ledger.ts';

function heapOf(
  ...ingredients: readonly { readonly material?: string; readonly name?: string; readonly kg: number }[]
) {
  const me = recorder();
  const bed = me.did('bed.described', '2026-01-02', {
    name: 'M',
    area: { typed: '10 m²', areaM2: 10 },
    crop: 'kale',
    eaten: 'cooked',
  });
  const fed = me.did('heap.fed', '2026-01-10', {
    heap: 'the bay',
    ingredients: ingredients.map(({ kg: mass, ...what }) => ({ ...what, amount: kg(mass) })),
  });
  const laid = me.did('bed.dressed', '2026-06-10', { bed: bed.id, what: 'compost', heap: 'the bay', amount: kg(10) });
  return fold([bed, fed, laid]);
}
const ask = { heap: 'the bay', today: '2026-06-10' };
const season = { from: '2026-01-01', to: '2026-12-31' };
const GRASS = { material: 'grass-clippings-fresh', kg: 100 };
const LEAVES = { material: 'dry-leaves', kg: 60 };

describe('compost of a heap', () => {
  it('holds what is left of nitrogen over what is left of dry matter', () => {
    const plot = heapOf(GRASS, LEAVES);
    const left = heapView({ plot, ...ask })?.left;
    const n = heapCompost({ plot, ...ask }).nPercentDm;
    const likely = typeof n === 'object' ? n.likely : Number.NaN;
    expect(likely).toBeCloseTo((100 * (left?.nitrogenKg.likely ?? 0)) / (left?.dryKg.likely ?? 0), 9);
    // Between the two it was made of, dry: clippings 3.3 %, leaves 0.9 %; carbon goes faster than nitrogen.
    expect(likely).toBeGreaterThan(0.9);
    expect(likely).toBeLessThan(5);
  });

  it('is richer out of clippings than out of leaves, on the heap and on the bed', () => {
    const givenG = (plot: ReturnType<typeof heapOf>) => plotLedger({ plot, ...season }).value.beds[0]?.givenG;
    const [rich, poor] = [heapOf(GRASS, { ...LEAVES, kg: 20 }), heapOf({ ...GRASS, kg: 20 }, LEAVES)];
    const cn = (plot: ReturnType<typeof heapOf>) => {
      const found = heapCompost({ plot, ...ask }).cn;
      return typeof found === 'object' ? found.likely : Number.NaN;
    };
    expect(cn(rich)).toBeLessThan(cn(poor));
    expect(givenG(rich)?.n?.likely).toBeGreaterThan(givenG(poor)?.n?.likely ?? Number.NaN);
    expect(givenG(rich)?.k?.likely).toBeGreaterThan(givenG(poor)?.k?.likely ?? Number.NaN);
    // Phosphorus is not followed through the heap: usual compost for both.
    expect(givenG(rich)?.p).toEqual(givenG(poor)?.p);
  });

  it('that cures is a source of the cover, by the same content, as much as is surely left', () => {
    const plot = heapOf(GRASS, { ...LEAVES, kg: 90 });
    const now = '2026-09-30T12:00';
    const view = heapView({ plot, heap: 'the bay', today: now.slice(0, 10) });
    expect(view?.next.act).toBe('cure');
    const [source] = coverSources({ plot, now, beds: [] });
    const content = heapCompost({ plot, heap: 'the bay', today: now.slice(0, 10) });
    const supply = dressingSupply({ kind: 'compost', massKg: 1, ...content }, 0, undefined);
    expect(source).toMatchObject({ id: 'heap-the bay', kind: 'compost' });
    expect(source?.perKg.nTotalG).toBeCloseTo(supply.totalG.n?.likely ?? Number.NaN, 9);
    expect(source?.perKg.nTotalG).not.toBeCloseTo(
      dressingSupply({ kind: 'compost', massKg: 1 }, 0, undefined).totalG.n?.likely ?? Number.NaN,
      1,
    );
    // 10 kg of it lie on the bed already.
    expect(source?.haveKg).toBeCloseTo((view?.left?.massKg.low ?? Number.NaN) - 10, 9);
  });

  it('counts as usual compost where a row of the heap cannot be counted, or nobody told of such a heap', () => {
    expect(heapCompost({ plot: heapOf(GRASS, { name: 'something grey', kg: 5 }), ...ask })).toEqual({});
    expect(heapCompost({ plot: heapOf(GRASS), heap: 'the other', today: ask.today })).toEqual({});
  });

  it('gives way to an analysis of the grower’s own', () => {
    const plot = heapOf(GRASS, LEAVES);
    const [bed] = plot.beds.values();
    const act = bed?.dressings[0];
    if (bed === undefined || act === undefined) throw new Error('no dressing');
    const told = { ...act, body: { ...act.body, analysis: { nPercentDm: 1, dryMatter: 0.5 } } };
    const beds = new Map([[bed.id, { ...bed, dressings: [told] }]]);
    const supply = plotLedger({ plot: { ...plot, beds }, ...season }).value.beds[0]?.byKind[0];
    // 10 kg · 50 % dry · 1 % nitrogen is 50 g in all; only part of it is free in a season.
    expect(supply?.givenG.n?.high).toBeLessThanOrEqual(50);
  });
});
