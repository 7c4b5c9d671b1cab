// Goals and own crops as typed, and what they do to the need of a bed.

import { describe, expect, it } from 'vitest';
import { cropOf } from '#engine/ground/crops.ts';
import { fold } from '#journal/fold.ts';
import { recorder } from '../../../test/scenarios/recorder.ts';
import { cropsAsked, readGoal, readOwnCrop } from './goal-forms.ts';
import { plotLedger } from './ledger.ts';

const me = recorder();
const on = '2026-04-01';
const area = { typed: '10 m²', areaM2: 10 };
const kale = me.did('bed.described', on, { name: 'Long', area, crop: 'kale' });
const oca = me.did('bed.described', on, { name: 'Far', area, crop: '12 oca' });
const two = me.did('bed.described', on, { name: 'Gate', area, crop: 'kale, beetroot' });
const loose = me.did('bed.described', on, { name: 'Loose', crop: 'kale' });
const start = [kale, oca, two, loose];
const plot = fold(start);
const today = '2026-06-01';
const goalOf = (bed: string, goal: string, told: { readonly crop?: string; readonly plants?: string } = {}) =>
  readGoal({ crop: '', plants: '', note: '', goal, ...told }, { plot, bed, today, countries: {} });
const perM2 = (read: ReturnType<typeof goalOf>) => (read.read.ok ? read.read.body.goal.yieldKgPerM2 : undefined);
const needOf = (entries: Parameters<typeof fold>[0], bed: string) =>
  plotLedger({ plot: fold(entries), from: '2026-01-01', to: today, bed }).value.beds[0];

describe('a goal', () => {
  it.each([
    ['30 kg', 3],
    ['3 kg/m²', 3],
    ['3 kg per m2', 3],
    // 0.45359237 kg over 0.09290304 m²
    ['1 lb/sq ft', 0.45359237 / 0.09290304],
  ])('of "%s" from 10 m² is %d kg/m²', (typed, expected) => {
    expect(perM2(goalOf(kale.id, typed))).toBeCloseTo(expected, 9);
  });
  it('for a plant asks how many there are, or takes the count of the bed: 12 × 2 lb from 10 m²', () => {
    const kalePlants = goalOf(kale.id, '2 lb/plant');
    expect(!kalePlants.read.ok && [...kalePlants.read.troubles.keys()]).toEqual(['plants']);
    expect(perM2(goalOf(kale.id, '2 lb/plant', { plants: '12' }))).toBeCloseTo((12 * 2 * 0.45359237) / 10, 9);
    expect(perM2(goalOf(oca.id, '2 lb a plant'))).toBeCloseTo((12 * 2 * 0.45359237) / 10, 9);
  });
  it('of one of two crops is over its half of the bed', () => {
    expect(perM2(goalOf(two.id, '10 kg', { crop: 'beetroot' }))).toBeCloseTo(2, 9);
  });
  it('out of what is usual is asked about and kept', () => {
    const most = cropOf('kale')?.yieldKgPerM2?.high ?? Number.NaN;
    expect(goalOf(kale.id, `${most} kg/m²`).question).toBeUndefined();
    const over = goalOf(kale.id, `${most + 1} kg/m²`);
    expect(over.question).toMatch(/right\?/);
    expect(over.read.ok).toBe(true);
  });
  it.each([
    [kale.id, '', 'goal'],
    [kale.id, '3', 'goal'],
    [kale.id, '3 L/m²', 'goal'],
    [kale.id, '3 kg/basket', 'goal'],
    [kale.id, '3000 kg', 'goal'],
    [loose.id, '3 kg', 'goal'],
  ])('is refused: %s "%s"', (bed, typed, field) => {
    const { read } = goalOf(bed, typed);
    expect(!read.ok && [...read.troubles.keys()]).toEqual([field]);
  });
  it('moves the need by the published step, for its crop alone, until another crop stands there', () => {
    const crop = cropOf('kale');
    const at = crop?.needYieldKgPerM2 ?? Number.NaN;
    const step = crop?.nPer20PercentGPerM2 ?? Number.NaN;
    const told = me.did('goal.told', '2026-05-01', {
      bed: kale.id,
      crop: 'kale',
      goal: { typed: 'a fifth more', yieldKgPerM2: at * 1.2 },
    });
    const plain = needOf(start, kale.id)?.cropNeedG.n?.likely ?? Number.NaN;
    // 20 % more harvest: one step more, on 10 m²
    expect((needOf([...start, told], kale.id)?.cropNeedG.n?.likely ?? 0) - plain).toBeCloseTo(step * 10, 6);
    const after = me.did('bed.described', '2026-05-02', { bed: kale.id, crop: 'beetroot' });
    const beetroot = me.did('bed.described', '2026-05-02', { bed: kale.id, crop: 'beetroot' });
    expect(needOf([...start, told, after], kale.id)?.cropNeedG).toEqual(
      needOf([...start, beetroot], kale.id)?.cropNeedG,
    );
  });
});

describe('a crop of the grower’s own', () => {
  const read = readOwnCrop('oca', {
    source: 'Our own scale',
    harvest: '2 to 4',
    nNeed: '120 kg/ha',
    pContent: '0.05 %',
  });
  it('is read in the units told: 120 kg/ha are 12 g/m², 0.05 % are 0.5 g/kg', () => {
    expect(read.ok && read.body).toMatchObject({
      name: 'oca',
      source: 'Our own scale',
      harvest: { typed: '2 to 4', low: 2, likely: 3, high: 4 },
      nNeed: { typed: '120 kg/ha', likely: 12 },
      pContent: { typed: '0.05 %', likely: 0.5 },
    });
  });
  it('gives its bed a need, with the source told; what was left out stays not known', () => {
    expect(needOf(start, oca.id)?.needG).toEqual({ n: null, p: null, k: null });
    if (!read.ok) throw new Error('not read');
    const own = me.did('crop.described', '2026-04-05', read.body);
    const bed = needOf([...start, own], oca.id);
    // 12 g/m² and 3 kg/m² × 0.5 g/kg, on 10 m²
    expect(bed?.needG.n?.likely).toBeCloseTo(120, 6);
    expect(bed?.needG.p?.likely).toBeCloseTo(15, 6);
    expect(bed?.needG.k).toBeNull();
    const [asked] = cropsAsked(fold([...start, own]), oca.id, today);
    expect(asked).toMatchObject({ name: 'oca', listed: false, ownSource: 'Our own scale' });
  });
  it.each([
    [{ harvest: '2' }, ['source']],
    [{ source: 'x', harvest: '4 to 2' }, ['harvest']],
    [{ source: 'x', harvest: 'lots', nNeed: '3 stone' }, ['harvest', 'nNeed']],
    [{ source: 'x', nNeed: '101' }, ['nNeed']],
  ] as const)('is refused at its fields: %j', (typed, fields) => {
    const found = readOwnCrop('oca', typed);
    expect(!found.ok && [...found.troubles.keys()].sort()).toEqual([...fields].sort());
  });
  it('with a source alone says that a figure is wanted', () => {
    const found = readOwnCrop('oca', { source: 'x' });
    expect(!found.ok && [...found.troubles.values()][0]?.sentence).toContain('says nothing');
  });
});
