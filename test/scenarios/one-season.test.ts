// One season, not a calendar year: what a bed got before 1 January still counts by its release, on either side of the
// equator, and its answers of two days beside each other differ by no more than two days' release.

import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { coverInput } from '#tasks/plot/cover.ts';
import { gotSums, gotView } from '#tasks/plot/got.ts';
import { gotBed } from '#tasks/plot/got-bed.ts';
import { releaseView } from '#tasks/plot/release.ts';
import { kg, litres, recorder } from './recorder.ts';

interface Told {
  readonly hemisphere?: 'north' | 'south';
  readonly latitudeDeg?: number;
}

/** A plot at some place with a bed of 6 m², and what happened on it. */
function gardenAt(
  place: Told,
  crop: string | undefined,
  acts: (me: ReturnType<typeof recorder>, bed: string) => Entry[],
) {
  const me = recorder({ seed: 41 });
  const plot = me.did('plot.described', '2026-03-01', { name: 'Corner', ...place });
  const bed = me.did('bed.described', '2026-03-01', {
    name: 'Long',
    area: { typed: '6 m²', areaM2: 6 },
    ...(crop && { crop }),
  });
  return { plot: fold([plot, bed, ...acts(me, bed.id)]), bed: bed.id };
}
type Garden = ReturnType<typeof gardenAt>;

/** Nitrogen, phosphorus and potassium of the bed on a day, by its own sheet, the sheet of all beds and the cover alike. */
function onDay({ plot, bed }: Garden, today: string) {
  const own = gotBed({ plot, bed, today });
  const cover = coverInput({ plot, to: today }).beds[0];
  const all = gotSums({ plot, today });
  const of = (nutrient: 'n' | 'p' | 'k') => {
    const row = own?.rows.find((one) => one.nutrient === nutrient);
    const shown = gotView(all, nutrient).beds[0];
    expect(shown?.givenG).toEqual(row?.givenG);
    expect(cover?.missingG[nutrient] ?? null).toEqual(row?.missingG);
    return { given: row?.givenG?.likely ?? Number.NaN, missing: row?.missingG?.likely, over: row?.excessG?.likely };
  };
  return {
    n: of('n'),
    p: of('p'),
    k: of('k'),
    cautions: own?.cautions.map(({ rule }) => rule).sort(),
    from: own?.from,
  };
}

/** More of a summer's nitrogen than this does not come free in two days. */
const TWO_DAYS_FRACTION = 0.05;

function isSteady(garden: Garden, before: string, after: string) {
  const [a, b] = [onDay(garden, before), onDay(garden, after)];
  for (const nutrient of ['n', 'p', 'k'] as const) {
    const [was, is] = [a[nutrient].given, b[nutrient].given];
    expect(is, nutrient).toBeGreaterThanOrEqual(was - 1e-9);
    expect(is - was, nutrient).toBeLessThanOrEqual(TWO_DAYS_FRACTION * was);
  }
  expect(b.cautions).toEqual(a.cautions);
  return a;
}

const tomatoes = (place: Told, isPlantingTold = true) =>
  gardenAt(place, isPlantingTold ? undefined : 'tomatoes', (me, bed) => [
    me.did('bed.dressed', '2026-09-20', { bed, what: 'compost', amount: kg(30) }),
    ...(isPlantingTold ? [me.did('bed.planted', '2026-10-10', { bed, act: 'planted', crop: 'tomatoes' })] : []),
    me.did('bed.dressed', '2026-10-20', { bed, what: 'mulch', material: 'grass-clippings-fresh', amount: kg(60) }),
    me.did('bed.dressed', '2026-11-20', { bed, what: 'mulch', material: 'grass-clippings-fresh', amount: kg(60) }),
  ]);

describe('tomatoes planted in October at 27.5° south', () => {
  it.each([
    ['by latitude', tomatoes({ latitudeDeg: -27.5 })],
    ['by the answer alone', tomatoes({ hemisphere: 'south' })],
    ['with a latitude against the answer', tomatoes({ latitudeDeg: -27.5, hemisphere: 'north' })],
    ['with no planting told', tomatoes({ latitudeDeg: -27.5 }, false)],
    ['with no place told', tomatoes({})],
  ])('keep what they got over 1 January: %s', (_, garden) => {
    const { n } = isSteady(garden, '2026-12-31', '2027-01-02');
    expect(n.given).toBeGreaterThan(60);
  });

  it('start their season at the midwinter before, and a new one the year after', () => {
    const garden = tomatoes({ latitudeDeg: -27.5 });
    expect(onDay(garden, '2027-01-02').from).toBe('2026-06-21');
    const next = onDay(garden, '2027-06-25');
    expect(next.from).toBe('2027-06-21');
    expect(next.n.given).toBeLessThan(onDay(garden, '2027-06-19').n.given / 4);
  });

  it('show the same on the curve of their season', () => {
    const { plot, bed } = tomatoes({ latitudeDeg: -27.5 });
    const view = releaseView({ plot, bed, today: '2027-01-02' });
    expect(view?.plantedOn).toBe('2026-10-10');
    expect(view?.today.freeG).toEqual(gotBed({ plot, bed, today: '2027-01-02' })?.rows[0]?.givenG);
    // Late summer there: warmer than what is taken where nobody told the place.
    expect(view?.soilC.likely).toBeGreaterThan(20);
  });
});

describe('compost given in autumn in the north', () => {
  const autumn = (
    acts: (me: ReturnType<typeof recorder>, bed: string) => Entry[] = () => [],
    place: Told = { latitudeDeg: 52 },
  ) =>
    gardenAt(place, 'kale', (me, bed) => [
      me.did('bed.dressed', '2026-10-20', { bed, what: 'compost', amount: kg(60) }),
      ...acts(me, bed),
    ]);

  it('is whole on 2 January where the bed was cleared before it', () => {
    const garden = autumn((me, bed) => [
      me.did('bed.planted', '2026-05-10', { bed, act: 'planted', crop: 'tomatoes' }),
      me.did('bed.planted', '2026-10-10', { bed, act: 'cleared' }),
      me.did('bed.planted', '2027-05-10', { bed, act: 'planted', crop: 'kale' }),
    ]);
    isSteady(garden, '2026-12-31', '2027-01-02');
    const [may, then] = [onDay(garden, '2027-05-20'), onDay(garden, '2026-12-31')];
    expect([may.from, then.from]).toEqual(['2026-10-10', '2026-10-10']);
    expect(may.p.given).toBeCloseTo(then.p.given, 9);
    expect(may.n.given).toBeGreaterThan(then.n.given);
  });

  it('counts in the year after by what is still bound in it, where no date of the crop was told', () => {
    const garden = autumn();
    isSteady(garden, '2026-12-31', '2027-01-02');
    const [before, after, summer] = ['2026-12-20', '2026-12-22', '2027-08-01'].map((day) => onDay(garden, day));
    expect(after?.p.given).toBeGreaterThan(0.7 * (before?.p.given ?? Number.NaN));
    expect(after?.p.given).toBeLessThan(before?.p.given ?? Number.NaN);
    expect(summer?.n.given).toBeGreaterThan(10 * (after?.n.given ?? Number.NaN));
    const carried = gotBed({ ...garden, today: '2027-08-01' })?.carriedG;
    expect(carried?.n?.likely).toBeCloseTo(summer?.n.given ?? Number.NaN, 9);
  });

  it('brings no more nitrogen over all its years than its share of the first year', () => {
    const garden = autumn();
    const whole = onDay(garden, '2026-12-20').n.given + onDay(garden, '2027-12-20').n.given;
    // 60 kg of finished compost: 5 % of its nitrogen in the first year (duev-2017, appendix 3)
    expect(onDay(garden, '2028-12-20').n.given).toBeLessThan(0.2 * whole);
  });

  it('is no liquid: a pour of the season before is spent', () => {
    const garden = autumn((me, bed) => {
      const filled = me.did('peg.filled', '2026-06-01', {
        peg: 7,
        parts: [{ material: 'grass-clippings-fresh', mass: kg(2) }],
        water: [{ volume: litres(6), source: 'tap' }],
      });
      const strained = me.did('peg.strained', '2026-06-18', { batch: filled.id, drained: litres(5), rest: 'nothing' });
      const fed = me.did('bed.fed', '2026-06-30', {
        bed,
        from: [{ batch: filled.id, volume: litres(3) }],
        poured: litres(60),
        way: 'soil',
      });
      return [filled, strained, fed];
    });
    const kinds = (today: string) =>
      gotView(gotSums({ plot: garden.plot, today }), 'k').beds[0]?.byKind.map(({ kind }) => kind);
    expect(kinds('2026-12-20')).toEqual(['pour', 'compost']);
    expect(kinds('2026-12-22')).toEqual(['compost']);
  });
});
