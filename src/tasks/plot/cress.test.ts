// The cress test of a feed: what is typed, what is kept, and the arithmetic of Zucconi et al. 1981.
import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { recorder } from '../../../test/scenarios/recorder.ts';
import { cressView, heapCressTests, readCress, readHeapCress } from './cress.ts';

const typed = {
  'control.germinated': '27',
  'control.roots': '20',
  '50.germinated': '18',
  '50.roots': '10',
  '100.germinated': '27',
  '100.roots': '18',
};
const feed = { bottle: '0190e0b0-0000-7000-8000-000000000001' };
const body = (change: Record<string, string> = {}) => {
  const read = readCress({ ...typed, ...change }, feed);
  if (!read.ok) throw new Error([...read.troubles.values()].join(' '));
  return read.body;
};
const troubles = (change: Record<string, string>) => {
  const read = readCress({ ...typed, ...change }, feed);
  return read.ok ? [] : [...read.troubles.keys()];
};

describe('a cress test', () => {
  it('is the share of roots times their length, against the water', () => {
    const view = cressView(body());
    // 100 × (18/30 ÷ 27/30) × (10/20) = 33.3; 100 × 1 × 18/20 = 90
    expect(view.strengths.map(({ n, reading }) => [n, Math.round(reading.indexPercent * 10) / 10])).toEqual([
      [50, 33.3],
      [100, 90],
    ]);
    expect(view.strengths[0]?.findings[0]).toMatchObject({ rule: 'germination-harmful', level: 'hold' });
    expect(view.strengths[1]?.findings[0]).toMatchObject({ rule: 'germination-no-harm' });
    // The strongest that passed, made weaker by 2.
    expect(view.advice).toEqual({ found: true, n: 200, strongestPassedN: 100 });
  });
  it('takes the mean of all roots typed', () => {
    const test = body({ '50.germinated': '4', '50.roots': '9 11 8,5 11,5' });
    expect(test.samples[0]?.dishes).toEqual({ sown: 30, germinated: 4, meanRootMm: 10 });
  });
  it('of which the water failed gives no verdict', () => {
    const view = cressView(body({ 'control.germinated': '20' }));
    expect(view.strengths[0]?.findings[0]?.rule).toBe('germination-not-valid');
    expect(view.advice.found).toBe(false);
  });
  it('refuses what cannot be counted, at its field', () => {
    expect(troubles({ '50.germinated': '31' })).toEqual(['50.germinated']);
    expect(troubles({ '50.roots': '10 11' })).toEqual(['50.roots']);
    expect(troubles({ '50.roots': 'long' })).toEqual(['50.roots']);
    expect(troubles({ '50.roots': '' })).toEqual(['50.roots']);
    expect(troubles({ 'control.germinated': '', 'control.roots': '' })).toEqual(['control.germinated']);
    expect(readCress({ 'control.germinated': '27', 'control.roots': '20' }, feed).ok).toBe(false);
  });
  it('keeps a strength of which nothing grew', () => {
    expect(body({ '50.germinated': '0', '50.roots': '' }).samples[0]?.dishes).toEqual({ sown: 30, germinated: 0 });
  });
});

describe('a cress test of compost', () => {
  const dishes = { 'control.germinated': '27', 'control.roots': '20', '10.germinated': '24', '10.roots': '13' };

  it('is read as that of a feed is, against the water', () => {
    const read = readHeapCress(dishes, 'leaf heap');
    if (!read.ok) throw new Error('not read');
    const [one] = cressView(read.body).strengths;
    // 100 × (24/30 ÷ 27/30) × (13/20) = 57.8: between harm and no harm.
    expect(one?.reading.indexPercent).toBeCloseTo((100 * 24 * 13) / (27 * 20), 9);
    expect(one?.findings[0]?.rule).toBe('germination-doubtful');
  });
  it('asks for both dishes at their fields', () => {
    const read = readHeapCress({ '10.germinated': '31', '10.roots': '13' }, 'leaf heap');
    expect(read.ok ? [] : [...read.troubles.keys()]).toEqual(['10.germinated', 'control.germinated']);
  });
  it('belongs to its heap in the record, the newest first', () => {
    const me = recorder();
    const tests = (['2026-07-01', '2026-08-01'] as const).map((on) => {
      const read = readHeapCress(dishes, 'leaf heap');
      if (!read.ok) throw new Error('not read');
      return me.did('heap.tested', on, read.body);
    });
    const plot = fold(tests);
    expect(heapCressTests(plot, 'leaf heap').map(({ when }) => when.on.slice(0, 10))).toEqual([
      '2026-08-01',
      '2026-07-01',
    ]);
    expect(heapCressTests(plot, 'other')).toEqual([]);
  });
});
