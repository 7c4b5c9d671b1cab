// Water that nobody told of: which acts lack the word, and what the answer does to the bed.
import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { kg, litres, recorder } from '../../../test/scenarios/recorder.ts';
import { originOf } from './origin.ts';
import { nextPickAnswers } from './round.ts';
import { waterSaid, waterUntold } from './water-untold.ts';

const rake = recorder();
const parts = [{ material: 'grass-clippings-fresh', mass: kg(1) }];
const bare = { volume: litres(5) };
const origin = (entries: readonly Entry[], batch: string) => {
  const plot = fold(entries);
  const found = plot.batches.get(batch);
  if (found === undefined) throw new Error('no batch');
  return originOf(plot, found);
};

describe('water that nobody told of', () => {
  const filled = rake.did('peg.filled', '2026-06-01', { peg: 7, parts, water: [bare, { ...bare, source: 'tap' }] });
  const more = rake.did('peg.toppedUp', '2026-06-02', { batch: filled.id, water: [bare] });
  const split = rake.did('peg.split', '2026-06-03', { batch: filled.id, peg: 8, taken: litres(2) });
  const other = rake.did('peg.filled', '2026-06-01', { peg: 9, parts, water: [bare] });
  const all = [filled, more, split, other];

  it('is asked of every act that put it in, of the batch it was split off too, and of no other batch', () => {
    for (const batch of [filled.id, split.id])
      expect(waterUntold(fold(all), all, batch)?.acts.map(({ id }) => id)).toEqual([filled.id, more.id]);
  });
  it.each([
    ['tap', 'no', []],
    ['butt', 'possible', ['open-water']],
  ] as const)('answered with "%s" the batch is %s, and no act is asked again', (source, animalOrigin, animalWhy) => {
    expect(origin(all, split.id)).toEqual({ animalOrigin: 'possible', animalWhy: ['water-not-told'] });
    const told = waterSaid(waterUntold(fold(all), all, split.id)?.acts ?? [], source).map(({ act, body }) =>
      rake.corrected(act.entry as Entry & { kind: 'peg.filled' }, act.entry.on, body as never),
    );
    const then = [...all, ...told];
    expect(origin(then, split.id)).toEqual({ animalOrigin, animalWhy });
    expect(waterUntold(fold(then), then, split.id)).toBeUndefined();
  });
  it('is asked of what the batch was started with, once its own is told', () => {
    const tap = [{ ...bare, source: 'tap' }];
    const started = rake.did('peg.filled', '2026-06-20', {
      peg: 10,
      parts,
      water: tap,
      starter: [{ volume: litres(0.2), from: other.id }],
    });
    const then = [...all, started];
    const asked = waterUntold(fold(then), then, started.id);
    expect(asked?.peg).toBe(9);
    expect(asked?.acts.map(({ id }) => id)).toEqual([other.id]);
  });
});

describe('the answers on the next picking', () => {
  const waits = (days: number) => ({ rule: 'eating', level: 'hold', values: { days }, source: 'our-caution' }) as const;
  it('are three, and the days that something waits for', () => {
    expect(nextPickAnswers([])).toEqual(['soon', 'later', 'far']);
    expect(nextPickAnswers([waits(90)])).toEqual(['soon', 'later', 'after-90', 'far']);
    expect(nextPickAnswers([waits(21), waits(120)])).toEqual(['soon', 'later', 'after-21', 'far']);
  });
});
