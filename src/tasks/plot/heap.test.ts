import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { gardenEntries } from '../demo/garden.ts';
import { heapsOf, heapView } from './heap.ts';
import { readFeeding, readHeapLook } from './heap-forms.ts';

const demo = (untilOn: string) => fold(gardenEntries(untilOn));

describe('the heaps of the demo garden', () => {
  it('hold what was put in, row by row, by what it came from', () => {
    const plot = demo('2026-07-06');
    const found = heapsOf(plot);
    expect(found.length).toBeGreaterThan(0);
    const rows = found.flatMap((heap) => heapView({ plot, heap, today: '2026-07-06' })?.rows ?? []);
    const names = rows.map(({ name }) => name);
    expect(names).toContain('peg 16, tipped whole');
    expect(names).toContain('strained solids of peg 14');
    expect(names.filter((name) => name === 'dry tree leaves').length).toBeLessThanOrEqual(found.length);
    for (const { massKg } of rows) expect(massKg?.likely).toBeGreaterThan(0);
  });

  it('tell the lost barrel with its water: 22 kg of clippings and 33 L of water hold 18 % of 22 kg dry in 55 kg', () => {
    const plot = demo('2026-06-01');
    const [heap = ''] = heapsOf(plot);
    const view = heapView({ plot, heap, today: '2026-06-01' });
    // 55 L at 1 kg/L, dry 3.96/55 = 7.2 %; leaves 110 L at 90 kg/m³ = 9.9 kg, dry 62 %.
    const dryKg = 55 * ((22 * 0.18) / 55) + 9.9 * 0.62;
    expect(view?.moisturePercent?.likely).toBeCloseTo(100 * (1 - dryKg / (55 + 9.9)), 6);
    // C:N of clippings as they went in (15), of leaves 48.5 with 0.94 % nitrogen; the batch counts as 55 % carbon.
    const [batchC, leafC] = [3.96 * 0.55, 9.9 * 0.62 * 0.0094 * 48.5];
    expect(view?.cn?.likely).toBeCloseTo((batchC + leafC) / (batchC / 15 + leafC / 48.5), 6);
  });

  it('gives the curve, the verdicts and one next act once it was probed', () => {
    const plot = demo('2026-07-06');
    const views = heapsOf(plot).map((heap) => heapView({ plot, heap, today: '2026-07-06' }));
    const probed = views.find((view) => (view?.curve.points.length ?? 0) > 0);
    expect(probed?.curve.points.at(-1)).toMatchObject({ on: '2026-07-05', coreC: 48 });
    expect(probed?.verdicts.map(({ met }) => met)).not.toContain(true);
    expect(probed?.verdicts.every(({ text }) => text.includes('missing'))).toBe(true);
    expect(probed?.cautions.map(({ rule }) => rule)).toContain('heap-core-only');
    expect(probed?.next.text).toMatch(/\.$/);
  });

  it('is not there before anything went in', () => {
    const plot = demo('2026-07-06');
    expect(heapView({ plot, heap: heapsOf(plot)[0] ?? '', today: '2026-05-01' })).toBeUndefined();
    expect(heapView({ plot, heap: 'no such heap', today: '2026-07-06' })).toBeUndefined();
  });
});

describe('a heap turned through three hot weeks', () => {
  const base = gardenEntries('2026-05-01');
  const [first] = base;
  const act = (n: number, kind: Entry['kind'], on: string, body: object): Entry =>
    ({
      ...first,
      id: `01900000-0000-7000-8000-${String(n).padStart(12, '0')}`,
      kind,
      on,
      at: `${on.slice(0, 10)}T12:00:00Z`,
      body,
    }) as Entry;
  const dayOf = (day: number) => `2026-05-${String(2 + day).padStart(2, '0')}`;
  const fed = act(1, 'heap.fed', dayOf(0), {
    heap: 'bay',
    ingredients: [
      { material: 'grass-clippings-fresh', amount: { typed: '100 kg', massKg: 100 } },
      { material: 'dry-leaves', amount: { typed: '100 kg', massKg: 100 } },
      { name: 'something grey', amount: { typed: '1 kg', massKg: 1 } },
    ],
  });
  const looks = Array.from({ length: 16 }, (_, i) =>
    act(10 + i, 'heap.looked', dayOf(1 + i), { heap: 'bay', temperatureC: 60, turned: i % 3 === 2 }),
  );
  const view = (entries: readonly Entry[]) =>
    heapView({ plot: fold([...base, ...entries], first?.plot), heap: 'bay', today: '2026-05-20' });

  it('meets the organic rule for a turned heap, as its C:N at the start is 31.6', () => {
    const found = view([fed, ...looks]);
    expect(found?.cn?.likely).toBeCloseTo(31.6, 1);
    expect(found?.verdicts.find(({ rule, way }) => rule === 'cfr-7' && way === 'turned')?.met).toBe(true);
    expect(found?.verdicts.find(({ rule, way }) => rule === 'cfr-21' && way === 'turned')?.missing).toEqual([
      { what: 'curing' },
    ]);
  });

  it('starts anew when it is fed again', () => {
    const again = act(99, 'heap.fed', dayOf(10), fed.body as object);
    const found = view([fed, ...looks, again]);
    expect(found?.verdicts.find(({ rule, way }) => rule === 'cfr-7' && way === 'turned')?.met).toBe(false);
    expect(found?.cautions.map(({ rule }) => rule)).toContain('heap-fed-since');
  });

  it('names what it cannot count', () => {
    expect(view([fed])?.notCounted).toEqual(['something grey']);
    expect(view([fed])?.next.act).toBe('probe');
  });
});

describe('the feeding form', () => {
  const offers = { lots: [], solids: [] };
  const rows = [
    { material: 'grass-clippings-fresh', amount: '2 barrows' },
    { material: 'dry-leaves', amount: '3 buckets' },
    { name: 'old hay', amount: '4.5 kg' },
    { amount: '' },
  ];

  it('reads barrows and buckets by the litres that were told, and kilograms as they are', () => {
    const read = readFeeding({ heap: 'bay', offers, rows, litresOf: { barrow: 90, bucket: 10 }, water: '5 L' });
    expect(read).toMatchObject({
      ok: true,
      body: {
        heap: 'bay',
        ingredients: [
          { material: 'grass-clippings-fresh', amount: { typed: '2 barrows', volumeL: 180 } },
          { material: 'dry-leaves', amount: { typed: '3 buckets', volumeL: 30 } },
          { name: 'old hay', amount: { typed: '4.5 kg', massKg: 4.5 } },
        ],
        water: { volumeL: 5 },
      },
    });
  });

  it('asks what a bucket holds, what an amount means and what a row is, all at once', () => {
    const read = readFeeding({
      heap: 'bay',
      offers,
      rows: [...rows.slice(1, 2), { material: 'straw', amount: 'a lot' }, { amount: '2 kg' }],
    });
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect([...read.troubles.keys()].sort()).toEqual([
      'ingredients.0.amount',
      'ingredients.1.amount',
      'ingredients.2.material',
    ]);
  });

  it('takes no feeding without a row, and no look that says nothing', () => {
    expect(readFeeding({ heap: 'bay', offers, rows: [] }).ok).toBe(false);
    expect(readHeapLook('bay', {}).ok).toBe(false);
  });

  it('reads a look', () => {
    expect(readHeapLook('bay', { temperatureC: '58', moisture: 'right', smell: 'earthy', turned: 'yes' })).toEqual({
      ok: true,
      body: { heap: 'bay', temperatureC: 58, moisture: 'right', smell: 'earthy', turned: true },
    });
    expect(readHeapLook('bay', { temperatureC: 'hot' }).ok).toBe(false);
  });
});
