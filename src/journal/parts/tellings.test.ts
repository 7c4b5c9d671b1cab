// Two devices that describe one thing differently without having seen each other are asked about, in whatever order their
// entries come; one device, a telling over another's, and a correction are choices and never asked.

import { describe, expect, it } from 'vitest';
import { openQuestions } from '#tasks/plot/questions.ts';
import { recorder } from '../../../test/scenarios/recorder.ts';
import type { Entry, Kept } from '../entry.ts';
import { fold } from '../fold.ts';

const rake = recorder({ by: 'Rake', device: 'phone-1', seed: 1 });
const fork = recorder({ by: 'Fork', device: 'phone-2', seed: 2 });
const bed = rake.did('bed.described', '2026-05-01', { name: 'Long', crop: 'kale' });
const north = rake.did('bed.described', '2026-06-01', { bed: bed.id, name: 'North' });
const front = fork.did('bed.described', '2026-06-02', { bed: bed.id, name: 'Front' });
const nameIn = (entries: readonly Kept[]) => fold(entries).beds.get(bed.id)?.facts.name;
const asks = (entries: readonly Kept[]) => fold(entries).questions.map(({ kind }) => kind);

/** Every order of a few entries. */
function orders(entries: readonly Entry[]): readonly (readonly Entry[])[] {
  if (entries.length < 2) return [entries];
  return entries.flatMap((one) => orders(entries.filter((other) => other !== one)).map((rest) => [one, ...rest]));
}

describe('two renamings of one bed', () => {
  it('are a question in any order, with both names to take, and the later one is shown until then', () => {
    for (const list of orders([bed, north, front])) {
      expect([asks(list), nameIn(list)]).toEqual([['two-descriptions'], 'Front']);
      expect(asks([...list, ...list])).toEqual(['two-descriptions']);
    }
    const [question] = openQuestions(fold([bed, north, front]), [bed, north, front], {
      now: '2026-12-31',
      device: '',
    });
    expect(question?.sentence).toContain('neither saw the other');
    expect(question?.offers.map(({ text }) => text).sort()).toEqual([
      'Take the one by Fork, Name: Front',
      'Take the one by Rake, Name: North',
    ]);
  });
  it('are settled by an answer, whichever way it goes', () => {
    const [question] = openQuestions(fold([bed, north, front]), [bed, north, front], {
      now: '2026-12-31',
      device: '',
    });
    for (const name of ['North', 'Front']) {
      const stands = [...(question?.offers.find(({ text }) => text.endsWith(name))?.stands ?? [])];
      const answered = rake.did('question.answered', '2026-06-03', { question: question?.key ?? '', stands });
      for (const list of orders([bed, north, front, answered])) expect([asks(list), nameIn(list)]).toEqual([[], name]);
    }
  });
  it('are none where both say the same, or one device told both', () => {
    const same = fork.did('bed.described', '2026-06-02', { bed: bed.id, name: 'North' });
    const again = rake.did('bed.described', '2026-06-05', { bed: bed.id, name: 'South' });
    expect([asks([bed, north, same]), asks([again, bed, north]), nameIn([again, bed, north])]).toEqual([
      [],
      [],
      'South',
    ]);
  });
  it('are none where the second was written over the first, even by a clock that runs behind', () => {
    for (const on of ['2026-06-02', '2026-05-20']) {
      const knowing = fork.did('bed.described', on, { bed: bed.id, name: 'Front', over: [north.id] });
      for (const list of orders([bed, north, knowing])) expect([asks(list), nameIn(list)]).toEqual([[], 'Front']);
    }
  });
  it('are none any more once somebody who saw both names it anew', () => {
    const east = rake.did('bed.described', '2026-06-09', { bed: bed.id, name: 'East', over: [front.id] });
    expect([asks([bed, north, front, east]), nameIn([east, front, north, bed])]).toEqual([[], 'East']);
  });
  it('are none where a name is corrected or taken back', () => {
    const corrected = fork.corrected(north, '2026-06-01', { bed: bed.id, name: 'Front' });
    expect([asks([bed, north, corrected]), nameIn([bed, corrected, north])]).toEqual([[], 'Front']);
    expect(asks([bed, north, front, rake.withdrew(north)])).toEqual([]);
  });
  it('are asked anew where one of them is corrected after the answer', () => {
    const [question] = fold([bed, north, front]).questions;
    const answered = rake.did('question.answered', '2026-06-03', { question: question?.key ?? '', stands: [north.id] });
    const corrected = fork.corrected(front, '2026-06-02', { bed: bed.id, name: 'Pond end' });
    expect(asks([bed, north, front, answered, corrected])).toEqual(['two-descriptions']);
  });
});

describe('other facts of one thing', () => {
  const kale = rake.did('bed.described', '2026-06-01', { bed: bed.id, crop: 'kale', over: [front.id] });
  const beans = fork.did('bed.described', '2026-06-02', { bed: bed.id, crop: 'beans' });
  const unseen = fork.did('bed.described', '2026-06-02', { bed: bed.id, crop: 'beans', over: [north.id] });
  it('of a program that names nothing are a new state, as from one season to the next', () => {
    expect([asks([bed, front, kale, beans]), fold([bed, front, kale, beans]).beds.get(bed.id)?.crop]).toEqual([
      [],
      'beans',
    ]);
  });
  it('are a question where it can be known that neither saw the other', () => {
    expect(asks([bed, front, north, kale, unseen])).toContain('two-descriptions');
  });
  it('are a question for vessels and cans as well', () => {
    const pail = rake.did('vessel.described', '2026-05-01', { name: 'pail' });
    const can = rake.did('can.described', '2026-05-01', { name: 'can' });
    const entries = [rake, fork].flatMap((who, i) => [
      who.did('vessel.described', '2026-06-01', { vessel: pail.id, name: `pail ${i}` }),
      who.did('can.described', '2026-06-01', { can: can.id, name: `can ${i}` }),
    ]);
    expect(asks([pail, can, ...entries])).toEqual(['two-descriptions', 'two-descriptions']);
  });
  it('told by 20,000 devices are one question, in time', () => {
    const id = (n: number) => `017f22e2-79b0-7000-8000-${n.toString(16).padStart(12, '0')}`;
    const crowd = Array.from(
      { length: 20_000 },
      (_, n): Entry => ({
        ...north,
        id: id(n),
        device: `d${n}`,
        body: { bed: bed.id, name: `n${n}` },
      }),
    );
    expect(asks([bed, ...crowd])).toEqual(['two-descriptions']);
  });
});
