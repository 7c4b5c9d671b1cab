// Every working lists what it takes to redo it: each result again from its own inputs, to the digit shown.

import { describe, expect, it } from 'vitest';
import type { Working } from '#engine/working/working.ts';
import type { Word } from '#tasks/index.ts';
import type { Redo } from './by-hand.ts';
import { redone, shownAsNothing } from './compare.ts';
import { workingsOf } from './gather.ts';
import { canRoom } from './rooms/can.ts';

const ROOMS: Readonly<Partial<Record<Word, readonly Redo[]>>> = {
  can: canRoom,
};
const RUNS = 100;

/** Faults once each, told by figure and by what they come to. */
function faultsOf(workings: readonly Working[], room: readonly Redo[]): readonly string[] {
  const faults = workings.flatMap((working) => {
    const outcome = redone(working, room);
    return [...(outcome.outcome === 'fault' ? [outcome.fault] : []), ...shownAsNothing(working)];
  });
  return [...new Set(faults)].slice(0, 12);
}

/** Ways to redo that no working asked for: they hold nothing. */
function idle(workings: readonly Working[], room: readonly Redo[]): readonly string[] {
  return room.filter(({ figure }) => !workings.some((one) => figure.test(one.figure))).map(({ figure }) => `${figure}`);
}

describe.each(Object.entries(ROOMS) as [Word, readonly Redo[]][])('the workings of %s', (word, room) => {
  it('lead from their inputs to their results', async () => {
    const workings = await workingsOf(word, RUNS);
    expect(faultsOf(workings, room)).toEqual([]);
    expect(workings.length).toBeGreaterThan(RUNS);
    expect(idle(workings, room)).toEqual([]);
  });
});
