import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { litres, recorder } from './recorder.ts';

const can = recorder({ by: 'Can', device: 'phone-can', seed: 3 });
const rake = recorder({ by: 'Rake', device: 'phone-rake', seed: 4 });
const bed = rake.did('bed.described', '2026-05-01', { name: 'Tunnel', tag: 'T', crop: 'cucumber', eaten: 'raw-fruit' });
const filled = rake.did('peg.filled', '2026-06-01', { peg: 14, water: [{ volume: litres(8) }] });
const strained = rake.did('peg.strained', '2026-06-11', { batch: filled.id, drained: litres(6.3), rest: 'nothing' });
const bottle = rake.did('bottle.filled', '2026-06-11', {
  batch: filled.id,
  filled: litres(1),
  cap: 'vent',
  material: 'plastic',
});
const pour = (who: typeof can, on: string, pouredL: number, concentrateL: number) =>
  who.did('bed.fed', on, {
    bed: bed.id,
    from: [{ bottle: bottle.id, volume: litres(concentrateL) }],
    poured: litres(pouredL),
    way: 'soil',
  });
const ground: readonly Entry[] = [bed, filled, strained, bottle];

describe('two keyholders who log one bed within 24 hours on two phones without signal', () => {
  const one = pour(can, '2026-06-24T18:00', 20, 0.4);
  const other = pour(rake, '2026-06-25T08:00', 18, 0.3);
  const plot = fold([...ground, one, other]);

  it('are both kept', () => {
    expect(plot.beds.get(bed.id)?.feeds.map(({ id }) => id)).toEqual([one.id, other.id]);
  });
  it('are asked which it was', () => {
    expect(plot.questions).toMatchObject([{ kind: 'twin-feeds', about: [one.id, other.id].sort(), answers: [] }]);
  });
  it('leave a range until it is answered: one telling at least, both at most', () => {
    expect(plot.beds.get(bed.id)?.pouredL).toEqual({ low: 20, likely: 29, high: 38 });
    const left = plot.bottles.get(bottle.id)?.leftL;
    expect(left?.low).toBeCloseTo(0.3, 9);
    expect(left?.high).toBeCloseTo(0.6, 9);
  });
  it('count as one act once that was answered', () => {
    const [question] = plot.questions;
    const answer = can.did('question.answered', '2026-06-26', { question: question?.key ?? '', stands: [other.id] });
    const settled = fold([...ground, answer, one, other]);
    expect(settled.questions).toEqual([]);
    expect(settled.beds.get(bed.id)?.pouredL).toEqual({ low: 18, likely: 18, high: 18 });
    expect(settled.beds.get(bed.id)?.feeds.map(({ counts }) => counts)).toEqual(['no', 'yes']);
    expect(settled.bottles.get(bottle.id)?.leftL.likely).toBeCloseTo(0.7, 9);
  });
  it('count as two once that was answered', () => {
    const [question] = plot.questions;
    const stands = [one.id, other.id];
    const answer = can.did('question.answered', '2026-06-26', { question: question?.key ?? '', stands });
    const settled = fold([...ground, one, other, answer]);
    expect([settled.questions.length, settled.beds.get(bed.id)?.pouredL.low]).toEqual([0, 38]);
  });
  it('stay a question while two answers disagree', () => {
    const [question] = plot.questions;
    const key = question?.key ?? '';
    const a = can.did('question.answered', '2026-06-26', { question: key, stands: [one.id] });
    const b = rake.did('question.answered', '2026-06-26', { question: key, stands: [other.id] });
    const open = fold([...ground, one, other, a, b]).questions;
    expect(open[0]?.answers).toHaveLength(2);
  });
});

describe('pours that are no twins', () => {
  it('are two on one phone, can by can', () => {
    const plot = fold([...ground, pour(can, '2026-06-24T18:00', 10, 0.2), pour(can, '2026-06-24T18:05', 10, 0.2)]);
    expect(plot.questions).toEqual([]);
    expect(plot.beds.get(bed.id)?.pouredL.low).toBe(20);
  });
  it('are two more than a day apart', () => {
    const plot = fold([...ground, pour(can, '2026-06-24T18:00', 10, 0.2), pour(rake, '2026-06-25T18:01', 10, 0.2)]);
    expect(plot.questions).toEqual([]);
  });
});
