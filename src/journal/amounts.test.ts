// Amounts at the door: old ones are never read again, new ones with what they were read with alone, and a difference is a
// question that loses neither the figure nor the text. An older program seals what it could not read whole.

import { describe, expect, it } from 'vitest';
import { keptVolume } from '#engine/quantity/kept.ts';
import { parseAmount } from '#engine/quantity/parse.ts';
import { READER } from '#engine/quantity/read-with.ts';
import { openQuestions } from '#tasks/plot/questions.ts';
import { litres, recorder } from '../../test/scenarios/recorder.ts';
import type { Entry } from './entry.ts';
import { fold } from './fold.ts';
import { type KindTable, kinds } from './kinds/index.ts';
import { readEntry } from './read.ts';
import { correct } from './write.ts';

const { did } = recorder();
const can = (volume: { typed: string; volumeL: number; readWith?: object | undefined }) =>
  did('can.described', '2026-05-01', { name: 'can', kind: 'can', volume: volume as ReturnType<typeof keptVolume> });
const asks = (entry: Entry) => fold([entry]).questions;
const typedAs = (typed: string, wanted: object) => {
  const read = parseAmount(typed, { dimension: 'volume', ...wanted });
  if (!read.ok) throw new Error(read.problem.message);
  return keptVolume(read);
};

describe('the door of the journal', () => {
  it('reads no text again that came without what it was read with, however odd it is', () => {
    expect(asks(can({ typed: 'ten', volumeL: 7 }))).toEqual([]);
    expect(asks(can({ typed: '1,250 L', volumeL: 1.25 }))).toEqual([]);
  });
  it.each([
    ['1,250', { bareUnit: 'L', style: 'comma' }, 1.25],
    ['1,250', { bareUnit: 'L', style: 'point' }, 1250],
    ['2 gal', { gallon: 'imperial' }, 9.09218],
    ['6 tbsp', { spoon: 'au' }, 0.12],
  ])('reads "%s" with its own settings: %j', (typed, wanted, litresRead) => {
    const entry = can(typedAs(typed, wanted));
    expect(entry.body).toMatchObject({ volume: { typed, volumeL: litresRead } });
    expect(asks(entry)).toEqual([]);
  });
  it('keeps what differs as it came and asks, with both figures and an answer for each', () => {
    const entry = can({ ...typedAs('2 gal', { gallon: 'imperial' }), volumeL: 7.57 });
    const plot = fold([entry]);
    expect(plot.cans.get(entry.id)?.volume?.volumeL).toBe(7.57);
    const [question] = openQuestions(plot, [entry], { now: '2026-12-31', device: '' });
    expect(question?.sentence).toContain('You entered “2 gal”, and 7.57\u00a0L is kept beside it.');
    expect(question?.sentence).toContain('Read again, that is 9.09218\u00a0L.');
    const [keep, take] = question?.offers ?? [];
    const stamp = {
      plot: entry.plot,
      by: 'Rake',
      device: 'phone-2',
      nowMs: Date.UTC(2026, 5, 1),
      random: new Uint8Array(10),
    };
    const kept = did('question.answered', '2026-05-02', {
      question: question?.key ?? '',
      stands: [...(keep?.stands ?? [])],
    });
    expect(fold([entry, kept]).questions).toEqual([]);
    expect(fold([kept, entry]).cans.get(entry.id)?.volume?.volumeL).toBe(7.57);
    if (take?.correction === undefined) throw new Error('nothing to take');
    const taken = correct(take.correction.of, take.correction, stamp);
    if (!taken.ok) throw new Error('refused');
    const after = fold([taken.entry, entry]);
    expect([after.questions, after.cans.get(entry.id)?.volume]).toMatchObject([
      [],
      { typed: '2 gal', volumeL: 9.09218 },
    ]);
  });
  it.each([
    ['1,250', { bareUnit: 'L', style: 'comma' }, { style: 'point' }],
    ['2 gal', { gallon: 'imperial' }, { gallon: 'us' }],
    ['2', { bareUnit: 'L' }, { unitShown: 'mL' }],
  ])('asks where what "%s" was read with was changed', (typed, wanted, changed) => {
    const kept = typedAs(typed, wanted);
    expect(asks(can({ ...kept, readWith: { ...kept.readWith, ...changed } })).map(({ kind }) => kind)).toEqual([
      'amount-differs',
    ]);
  });
  it('asks about a text that is no amount, and offers to keep the figure alone', () => {
    const entry = can({ typed: 'some', volumeL: 5, readWith: { reader: READER } });
    const [question] = openQuestions(fold([entry]), [entry], { now: '2026-12-31', device: '' });
    expect(question?.sentence).toContain('Read again, that is no amount.');
    expect(question?.offers).toHaveLength(1);
  });
  it('does not read again what another edition of the reader read', () => {
    expect(asks(can({ typed: 'ten', volumeL: 5, readWith: { reader: READER + 1 } }))).toEqual([]);
  });
});

describe('a program of before', () => {
  const before: KindTable = {
    ...kinds,
    'can.described': { newest: kinds['can.described'].older?.[1] ?? kinds['can.described'].newest, v: 1 },
  };
  it('seals a typed amount to the letter, and reads whatever has none', () => {
    const typed = can(typedAs('2 gal', { gallon: 'us' }));
    expect([typed.v, readEntry(typed, undefined, before).state]).toEqual([2, 'sealed']);
    const plain = can(litres(10));
    expect([plain.v, readEntry(plain, undefined, before).state]).toEqual([1, 'known']);
  });
  it('never wrote what came later: under its version that is refused', () => {
    const typed = can(typedAs('2 gal', { gallon: 'us' }));
    expect(readEntry({ ...typed, v: 1 }).state).toBe('damaged');
  });
});
