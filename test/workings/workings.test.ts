// Every working lists what it takes to redo it: each result again from its own inputs, to the digit shown.

import { describe, expect, it } from 'vitest';
import type { Working } from '#engine/working/working.ts';
import type { Word } from '#tasks/index.ts';
import { workingWords } from '#words/en/weigh-in.ts';
import type { Redo } from './by-hand.ts';
import { faultsOf, redone } from './compare.ts';
import { workingsOf } from './gather.ts';
import { forecast } from './rooms/beside.ts';
import { canRoom } from './rooms/can.ts';
import { fitRoom } from './rooms/fit.ts';
import { heapRoom } from './rooms/heap.ts';
import { ledgerRoom } from './rooms/ledger.ts';
import { strainRoom } from './rooms/strain.ts';
import { waterRoom } from './rooms/water.ts';

const ROOMS: Readonly<Partial<Record<Word, readonly Redo[]>>> = {
  can: canRoom,
  fit: fitRoom,
  water: waterRoom,
  strain: strainRoom,
  heap: heapRoom,
  beds: ledgerRoom,
  sour: forecast,
};
const RUNS = 100;
/** A forecast is many runs of a model: fewer inputs are drawn of it. */
const RUNS_OF: Readonly<Partial<Record<Word, number>>> = { sour: 2 };

/** Ways to redo that no working asked for: they hold nothing. */
function idle(workings: readonly Working[], room: readonly Redo[]): readonly string[] {
  return room.filter(({ figure }) => !workings.some((one) => figure.test(one.figure))).map(({ figure }) => `${figure}`);
}

describe.each(Object.entries(ROOMS) as [Word, readonly Redo[]][])('the workings of %s', (word, room) => {
  it('lead from their inputs to their results', async () => {
    const runs = RUNS_OF[word] ?? RUNS;
    const workings = await workingsOf(word, runs);
    expect(faultsOf(workings, room)).toEqual([]);
    expect(workings.length).toBeGreaterThan(runs);
    expect(idle(workings, room)).toEqual([]);
  });
});

describe('a working that cannot be redone', () => {
  const good: Working = {
    figure: 'totalL',
    label: 'litres for the bed',
    unit: 'L',
    formula: 'area × depth',
    value: 12.4,
    inputs: [
      { label: 'area', value: 6.2, unit: 'm²' },
      { label: 'depth poured', value: 2, unit: 'L/m²' },
    ],
    sources: [],
    doubts: [],
  };
  const outcome = (working: Partial<Working>) => redone({ ...good, ...working }, canRoom).outcome;

  it('is found by a result one digit off, an input not listed, an input in words, a figure nobody redoes', () => {
    expect(outcome({})).toBe('same');
    expect(outcome({ value: 12.5 })).toBe('fault');
    expect(outcome({ value: { low: 12.4, likely: 12.4, high: 12.5 } })).toBe('fault');
    expect(outcome({ inputs: good.inputs.slice(1) })).toBe('fault');
    expect(outcome({ inputs: [...good.inputs.slice(1), { label: 'area', value: 'about 6', unit: 'm²' }] })).toBe(
      'fault',
    );
    expect(outcome({ figure: 'totalKg' })).toBe('fault');
  });

  it('lists a share of 1 in 200 as more than nothing', () => {
    expect(workingWords.input(1 / 200, '')).toBe('0.00500');
    expect(workingWords.input(0.0115, 'eq/L/pH')).toBe('0.0115\u00a0eq/L/pH');
  });
});
