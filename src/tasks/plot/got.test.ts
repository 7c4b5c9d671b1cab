// The strips of a sheet hold what the ledger says: fractions of the need of each bed, the liquid first, nothing made up.

import { describe, expect, it } from 'vitest';
import type { Range } from '#engine/quantity/range.ts';
import { emptyPlot } from '#journal/empty-plot.ts';
import { fold } from '#journal/fold.ts';
import { litres, recorder } from '../../../test/scenarios/recorder.ts';
import { gardenEntries } from '../demo/garden.ts';
import { gotSums, gotView } from './got.ts';
import { plotLedger } from './ledger.ts';

const today = '2026-08-20';
const plot = fold(gardenEntries(today));
const sums = gotSums({ plot, today });

describe('what the beds of the demo garden got', () => {
  it.each(['n', 'p', 'k'] as const)('is drawn as fractions of the need of each bed: %s', (nutrient) => {
    const { beds } = gotView(sums, nutrient);
    expect(beds.length).toBe(8);
    for (const { covered, pieces, needG, givenG, byKind } of beds) {
      if (needG === null || givenG === null) throw new Error('the demo knows need and gift of every bed');
      expect((covered?.likely ?? Number.NaN) * needG.likely).toBeCloseTo(givenG.likely, 9);
      expect(pieces.length).toBe(byKind.length);
      for (const { kind, fromFraction, toFraction } of pieces) {
        const given = byKind.find((one) => one.kind === kind)?.givenG.likely;
        expect((toFraction - fromFraction) * needG.likely).toBeCloseTo(given ?? Number.NaN, 9);
      }
    }
  });
  it('puts the beds in walking order, the liquid first, and counts from midwinter to today', () => {
    const view = gotView(sums, 'n');
    const tags = view.beds.map(({ id }) => plot.beds.get(id)?.facts.tag).join('');
    expect(tags).toBe('GMSFTRPX');
    expect(view.kinds[0]).toBe('pour');
    expect([view.from, view.to, view.isOneSeason]).toEqual(['2025-12-21', today, true]);
  });
  it('adds the beds up to the plot', () => {
    const { beds, plot: all } = gotView(sums, 'k');
    const total = (of: (bed: (typeof beds)[number]) => Range | null) =>
      beds.reduce((sum, bed) => sum + (of(bed)?.likely ?? Number.NaN), 0);
    expect(all.needG?.likely).toBeCloseTo(
      total(({ needG }) => needG),
      9,
    );
    expect(all.givenG?.likely).toBeCloseTo(
      total(({ givenG }) => givenG),
      9,
    );
    expect(all.without).toEqual([]);
  });
  it('says of pots how their area was reckoned, and of no other bed', () => {
    const pots = gotView(sums, 'n').beds.filter((bed) => bed.pots !== undefined);
    expect(pots.map(({ name, pots: of }) => [name, of?.count, of?.volumeL])).toEqual([['Pots', 12, 15]]);
  });
  it('is nothing on an empty plot', () => {
    const view = gotView(gotSums({ plot: emptyPlot('019eb63b-4c40-703f-ba57-7491aecbe805'), today }), 'n');
    expect([view.beds, view.unsized]).toEqual([[], []]);
  });
});

describe('a bed that was dressed', () => {
  const dressed = (what: 'compost' | 'mulch', massKg: number, material?: string) => {
    const last = gardenEntries(today).at(-1);
    const bed = [...plot.beds.values()].find(({ facts }) => facts.name === 'Shed')?.id;
    if (last === undefined || bed === undefined) throw new Error('the demo has a bed at the shed');
    const body = { bed, what, amount: { typed: `${massKg} kg`, massKg }, ...(material && { material }) };
    const about = { id: '019fffff-4c40-703f-ba57-7491aecbe805', kind: 'bed.dressed', v: 1, on: '2026-05-10' } as const;
    const again = fold([...gardenEntries(today), { ...last, ...about, body }]);
    return gotView(gotSums({ plot: again, today }), 'p').beds.find(({ id }) => id === bed);
  };
  it('has a stretch for it; a hundred times the compost runs past the end of the strip', () => {
    const some = dressed('compost', 2);
    expect(some?.pieces.map(({ kind }) => kind)).toEqual(['compost']);
    const reach = some?.pieces[0]?.toFraction ?? Number.NaN;
    expect(reach).toBeGreaterThan(0);
    expect(dressed('compost', 200)?.pieces[0]?.toFraction).toBeCloseTo(100 * reach, 6);
    expect(100 * reach).toBeGreaterThan(1);
  });
});

describe('the first and the last day of a period', () => {
  const rake = recorder({ seed: 21 });
  const bed = rake.did('bed.described', '2026-05-01', {
    name: 'Raw',
    area: { typed: '4 m2', areaM2: 4 },
    crop: 'beans',
  });
  const filled = rake.did('peg.filled', '2026-06-01', {
    peg: 7,
    parts: [{ material: 'grass-clippings-fresh', mass: { typed: '2 kg', massKg: 2 } }],
    water: [{ volume: litres(6), source: 'tap' }],
  });
  const strained = rake.did('peg.strained', '2026-06-18', { batch: filled.id, drained: litres(5), rest: 'nothing' });
  const fed = rake.did('bed.fed', '2026-06-30', {
    bed: bed.id,
    from: [{ batch: filled.id, volume: litres(1) }],
    poured: litres(20),
    way: 'soil',
  });
  const plot = fold([bed, filled, strained, fed]);
  const given = (from: string, to: string) => plotLedger({ plot, from, to }).value.beds[0]?.givenG.k?.likely ?? 0;

  it('both count; the day before and the day after do not', () => {
    expect(given('2026-06-01', '2026-06-30')).toBeGreaterThan(0.1);
    expect(given('2026-06-30', '2026-07-31')).toBeGreaterThan(0.1);
    expect(given('2026-06-30', '2026-06-30')).toBeGreaterThan(0.1);
    expect(given('2026-06-01', '2026-06-29')).toBe(0);
    expect(given('2026-07-01', '2026-07-31')).toBe(0);
  });

  it('count on the sheet of what the beds got, on the day of the pour itself', () => {
    const of = (today: string) => gotView(gotSums({ plot, today }), 'k').beds[0]?.pieces.map(({ kind }) => kind);
    expect(of('2026-06-29')).toEqual([]);
    expect(of('2026-06-30')).toEqual(['pour']);
  });
});
