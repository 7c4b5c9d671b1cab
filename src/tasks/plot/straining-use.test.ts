// What a strained liquid may be used for: the strictest reason decides, from lost over a lot that is no feed to held.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { kg, litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { straining } from './straining.ts';

type Looked = readonly [on: string, ph: number, smell?: 'egg' | 'sewage'];

const LEAVES = { material: 'cabbage-leaves', mass: kg(2) };

/** The use of a pail of 1 June, strained on a day of that month. */
function useOf(
  looks: readonly Looked[],
  { day, ph, part = LEAVES }: { day: string; ph: number; part?: NonNullable<Body<'peg.filled'>['parts']>[number] },
) {
  const me = recorder();
  const filled = me.did('peg.filled', '2026-06-01', {
    peg: 5,
    temperatureC: 20,
    parts: [part],
    water: [{ volume: litres(5) }],
    sugar: [{ product: 'white-sugar', mass: kg(0.15) }],
  });
  const looked = looks.map(([on, at, smell]) =>
    me.did('peg.looked', `2026-06-${on}`, { batch: filled.id, acidity: meter(at), ...(smell && { smell }) }),
  );
  const plot = fold([filled, ...looked]);
  const batch = plot.batches.get(filled.id);
  if (batch === undefined) throw new Error('no batch');
  const answer = straining({
    ...{ plot, batch, now: `2026-06-${day}T10:00`, drainedL: 5, solidsKg: 1.5 },
    acidity: { ph, by: 'meter' },
    bottle: { sizeL: 1, filledL: 0.9, count: 5, cap: 'vent', material: 'plastic', temperatureC: 18 },
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return answer.value.use;
}

const SOUR: readonly Looked[] = [
  ['05', 3.9],
  ['08', 3.7],
];
const LONG_SOUR: readonly Looked[] = [...SOUR, ['15', 3.7], ['21', 3.7]];
const FOUL: readonly Looked[] = [
  ['04', 6.1, 'sewage'],
  ['07', 6.9, 'sewage'],
];

describe('what a strained liquid is for', () => {
  it('is cooked crops from ready on, and raw ones once it was sour for 15 days at 20 °C: from 20 June', () => {
    expect(useOf(SOUR, { day: '09', ph: 3.7 })).toMatchObject({ kind: 'cooked-only', heldOn: '2026-06-20' });
    expect(useOf(LONG_SOUR, { day: '23', ph: 3.7 })).toMatchObject({ kind: 'held', heldOn: '2026-06-20' });
  });
  it('is nothing while it is not sour, or sour and not ready', () => {
    expect(useOf([['03', 4.9]], { day: '04', ph: 4.9 }).kind).toBe('not-sour');
    expect(useOf([['03', 4.4]], { day: '04', ph: 4.1 }).kind).toBe('not-ready');
  });
  it('is nothing where nobody looked before, where it smelled of eggs, where it was lost', () => {
    expect(useOf([], { day: '20', ph: 3.7 }).kind).toBe('not-ready');
    expect(useOf([...SOUR.slice(0, 1), ['08', 3.9, 'egg']], { day: '09', ph: 3.7 }).kind).toBe('doubtful');
    expect(useOf(FOUL, { day: '08', ph: 3.7 })).toMatchObject({ kind: 'lost', heldOn: undefined });
  });
  it('is nothing of clippings of which nobody knows whether weedkiller was used, however long it was sour', () => {
    const clippings = { material: 'grass-clippings-fresh', mass: kg(2) };
    expect(useOf(LONG_SOUR, { day: '23', ph: 3.7, part: { ...clippings, treated: 'unknown' } }).kind).toBe(
      'lot-not-for-liquid',
    );
    expect(useOf(LONG_SOUR, { day: '23', ph: 3.7, part: { ...clippings, treated: 'no' } }).kind).toBe('held');
  });
  it('is nothing of a lost batch first of all, whatever went in', () => {
    const part = { material: 'grass-clippings-fresh', mass: kg(2), treated: 'unknown' as const };
    expect(useOf(FOUL, { day: '08', ph: 3.7, part }).kind).toBe('lost');
  });
});
