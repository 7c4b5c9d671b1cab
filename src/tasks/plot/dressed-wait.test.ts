// What lay on a bed that is eaten raw is waited for like a pour: 7 CFR 205.203(c)(1), 120 days where the part that is eaten
// touches the soil; (c)(2), no wait for compost that was hot enough, long enough and turned.

import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { kg, litres, recorder } from '../../../test/scenarios/recorder.ts';
import { pickList } from './pick.ts';

const me = recorder();
const bed = me.did('bed.described', '2026-04-01', {
  name: 'Salad',
  crop: 'lettuce',
  eaten: 'raw-leaf',
  area: { typed: '2 m²', areaM2: 2 },
});
const dressed = (more: object) =>
  me.did('bed.dressed', '2026-06-20', { bed: bed.id, what: 'compost', amount: kg(10), ...more });
const heapOf = (material: string) =>
  me.did('heap.fed', '2026-04-10', { heap: 'bay', ingredients: [{ material, amount: kg(60) }] });
const answer = (entries: readonly Entry[]) => pickList({ plot: fold([bed, ...entries]), now: '2026-07-01T09:00' })[0];

/** Readings of one temperature, turned every third day. */
const log = (temperatureC: number, days: number) =>
  Array.from({ length: days }, (_, i) =>
    me.did('heap.looked', new Date(Date.UTC(2026, 3, 12 + i)).toISOString().slice(0, 10), {
      heap: 'bay',
      temperatureC,
      turned: i % 3 === 0,
    }),
  );

describe('a bed of lettuce', () => {
  it('waits 120 days for manure laid on it', () => {
    // 20 June + 120 days = 18 October
    const told = answer([dressed({ material: 'horse-manure' })]);
    expect(told).toMatchObject({ answer: 'wait', tillOn: '2026-10-18', waitDays: 120, why: 'animal-origin' });
    expect(told?.waitsFor?.laid).toBe('compost');
    expect(told?.last).toBe(undefined);
  });
  it('waits as long for compost of a heap with manure that was never hot', () => {
    const warm = [heapOf('horse-manure'), ...log(40, 20), dressed({ heap: 'bay' })];
    expect(answer(warm)).toMatchObject({ answer: 'wait', tillOn: '2026-10-18' });
  });
  it('waits for none that was 60 °C for 20 days and turned seven times', () => {
    expect(answer([heapOf('horse-manure'), ...log(60, 20), dressed({ heap: 'bay' })])?.answer).toBe('pick');
  });
  it('waits for no compost of plants alone, no clippings, no bought feed', () => {
    expect(answer([heapOf('straw'), dressed({ heap: 'bay' })])?.answer).toBe('pick');
    expect(answer([dressed({ what: 'mulch', material: 'grass-clippings-fresh' })])?.answer).toBe('pick');
    expect(answer([dressed({ what: 'product' })])?.answer).toBe('pick');
  });
  it('waits 120 days for compost of a heap that nobody fed in the record, and for solids of no batch', () => {
    expect(answer([dressed({ heap: 'elsewhere' })])).toMatchObject({ tillOn: '2026-10-18', why: 'source-not-known' });
    expect(answer([dressed({ what: 'solids' })])).toMatchObject({ tillOn: '2026-10-18', why: 'source-not-known' });
  });
  it('waits 120 days for solids of a batch that was not held, of plants and tap water', () => {
    const filled = me.did('peg.filled', '2026-06-01', {
      peg: 7,
      parts: [{ name: 'clippings', material: 'grass-clippings-fresh', mass: kg(2) }],
      water: [{ source: 'tap', volume: litres(5) }],
      lid: 'loose',
    });
    const strained = me.did('peg.strained', '2026-06-15', { batch: filled.id, drained: litres(4), rest: 'nothing' });
    const told = answer([filled, strained, dressed({ what: 'solids', batch: filled.id })]);
    expect(told).toMatchObject({ answer: 'wait', tillOn: '2026-10-18', why: 'not-held-raw' });
  });
});
