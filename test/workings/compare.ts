// A working held against what it lists: redone by hand, and both compared as they are shown. What is not redone is said.

import type { Working } from '#engine/working/working.ts';
import { workingWords } from '#words/en/weigh-in.ts';
import { asBand, type Redo } from './by-hand.ts';

/** Far finer than the three digits shown, so that no rounding can hide a difference. */
const SAME = 1e-6;
/** Below half of the eighth decimal nothing is shown. */
const LEAST_SHOWN = 5e-9;
/** Below this an input changes no digit of any figure. */
const LEAST = 1e-7;

/** What came of one working. */
export type Outcome = { readonly outcome: 'same' | 'exempt' } | { readonly outcome: 'fault'; readonly fault: string };

/** One working of a room, redone. */
export function redone(working: Working, room: readonly Redo[]): Outcome {
  const { figure } = working;
  const fitting = room.filter((redo) => redo.figure.test(figure));
  const [redo] = fitting;
  if (redo === undefined || fitting.length > 1)
    return { outcome: 'fault', fault: `${figure} has ${fitting.length} ways to redo it` };
  if ('exempt' in redo) return { outcome: 'exempt' };
  const whole = 'redo' in redo;
  const stated = asBand(working.value);
  try {
    const found = asBand(whole ? redo.redo(working) : redo.redoLikely(working));
    const ends = whole ? (['low', 'likely', 'high'] as const) : (['likely'] as const);
    const off = ends.filter((end) => !agrees(found[end], stated[end]));
    if (off.length === 0) return { outcome: 'same' };
    const told = off.map((end) => `${end} ${stated[end]}, redone ${found[end]}`).join('; ');
    return { outcome: 'fault', fault: `${figure}: ${told}` };
  } catch (cause) {
    return { outcome: 'fault', fault: String(cause) };
  }
}

function agrees(found: number, stated: number): boolean {
  if (found === stated || (Number.isNaN(found) && Number.isNaN(stated))) return true;
  const size = Math.max(Math.abs(found), Math.abs(stated));
  return size < LEAST_SHOWN || Math.abs(found - stated) <= SAME * size;
}

/** Inputs that are something and are shown as nothing: with them nobody could redo the figure. */
function shownAsNothing({ figure, inputs }: Working): readonly string[] {
  return inputs.flatMap(({ label, value, unit }) => {
    if (typeof value === 'string') return [];
    const { likely } = asBand(value);
    const lost = Math.abs(likely) > LEAST && /^-?0(\.0+)?(?!\d|\.)/.test(workingWords.input(likely, unit));
    return lost ? [`${figure}: ${label} is ${likely} and shown as ${workingWords.input(likely, unit)}`] : [];
  });
}

/** Faults once each, told by figure and by what they come to. */
export function faultsOf(workings: readonly Working[], room: readonly Redo[]): readonly string[] {
  const faults = workings.flatMap((working) => {
    const outcome = redone(working, room);
    return [...(outcome.outcome === 'fault' ? [outcome.fault] : []), ...shownAsNothing(working)];
  });
  return [...new Set(faults)].slice(0, 12);
}
