// The season of a bed: uptake over the crop's stages, what came free as the ledger counts it, and how they stand.

import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import { gardenEntries } from '../demo/garden.ts';
import { gotSums, gotView } from './got.ts';
import { releaseView } from './release.ts';

const today = '2026-08-20';
const garden = gardenEntries(today);
const bedCalled = (name: string) => {
  const id = [...fold(garden).beds.values()].find(({ facts }) => facts.name === name)?.id;
  if (id === undefined) throw new Error(`the demo has no bed ${name}`);
  return id;
};
const viewOf = (name: string, more: readonly Entry[] = []) => {
  const view = releaseView({ plot: fold([...garden, ...more]), bed: bedCalled(name), today });
  if (view === undefined) throw new Error(`no view of ${name}`);
  return view;
};
function dressed(name: string, on: string, body: Omit<Body<'bed.dressed'>, 'bed'>): Entry {
  const [first] = garden;
  if (first === undefined) throw new Error('the demo has entries');
  const about = { id: '019fffff-4c40-703f-ba57-7491aecbe805', kind: 'bed.dressed', v: 1, on } as const;
  return { ...first, ...about, body: { bed: bedCalled(name), ...body } };
}
const kg = (massKg: number) => ({ typed: `${massKg} kg`, massKg });

describe('the season of tomatoes planted on 30 May', () => {
  const view = viewOf('Gate');

  it('starts with nothing on the evening before and ends when the stages of the crop are over', () => {
    const [first] = view.points;
    expect(view.plantedOn).toBe('2026-05-30');
    expect([first?.on, first?.takenUpG?.likely, first?.freeG?.likely]).toEqual(['2026-05-29', 0, 0]);
    // FAO-56 table 11, tomato: 30 + 40 + 45 + 30 days
    expect((view.end?.day ?? 0) - momentOf('2026-05-30').dateDay).toBe(145);
  });
  it('has all of the target taken up at its end: 18.5 g/m² on 5.76 m²', () => {
    expect(view.end?.takenUpG?.likely).toBeCloseTo(18.5 * 5.76, 6);
  });
  it('never takes up less on a later day', () => {
    const taken = view.points.map(({ takenUpG }) => takenUpG?.likely ?? Number.NaN);
    expect(taken.every((grams, i) => i === 0 || grams >= (taken[i - 1] ?? Number.NaN))).toBe(true);
  });
  it('shows today free what the sheet of all beds says the bed got', () => {
    const got = gotView(gotSums({ plot: fold(garden), today }), 'n').beds.find(({ name }) => name === 'Gate');
    expect(view.today.on).toBe(today);
    expect(view.today.freeG).toEqual(got?.givenG);
  });
  it('is behind with nothing but the liquid', () => {
    expect(view.today.standing).toBe('behind');
    expect(view.end?.standing).toBe('behind');
    expect(view.aheadUntil).toBeUndefined();
  });
});

describe('a bed with forty kilograms of clippings at sowing', () => {
  const mulch = dressed('Shed', '2026-05-09', {
    what: 'mulch',
    amount: kg(40),
    material: 'grass-clippings-fresh',
  });
  const view = viewOf('Shed', [mulch]);
  it('lets go by and by: more is free at the end of each week, and the band is ordered', () => {
    const free = view.points.map(({ freeG }) => freeG);
    for (const [i, band] of free.entries()) {
      if (band === null) throw new Error('clippings are in the table');
      expect(band.low).toBeLessThanOrEqual(band.likely);
      expect(band.likely).toBeLessThanOrEqual(band.high);
      expect(band.likely).toBeGreaterThanOrEqual(free[i - 1]?.likely ?? 0);
    }
  });
  it('runs ahead early on', () => {
    expect(view.aheadUntil).toBeDefined();
    expect(view.behindFrom ?? '9999').not.toBe(view.points[1]?.on);
  });
});

describe('what is not known', () => {
  it('leaves the uptake open where no planting was told, and draws the release all the same', () => {
    const view = viewOf('Middle');
    expect(view.plantedOn).toBeUndefined();
    expect(view.points.every(({ takenUpG }) => takenUpG === null)).toBe(true);
    expect(view.today.standing).toBe('unknown');
    expect(view.today.freeG?.likely).toBeGreaterThan(0);
  });
  it('leaves the release open where nobody knows what a gift holds', () => {
    const view = viewOf('Shed', [dressed('Shed', '2026-06-01', { what: 'product', amount: kg(1) })]);
    expect(view.today.freeG).toBeNull();
    expect(view.today.standing).toBe('unknown');
  });
  it('is nothing for a bed that is not there', () => {
    expect(releaseView({ plot: fold(garden), bed: 'nowhere', today })).toBeUndefined();
  });
});
