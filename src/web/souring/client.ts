// The page's side of the souring worker: a question in, the likely line at once, then a first band, then the whole. One
// worker serves the whole page and is started by the first question; a newer question of a place stops its older one.

import { createEffect, createMemo, createSignal, createUniqueId, onCleanup, untrack } from 'solid-js';
import type { Working } from '#engine/working/working.ts';
import type { Taught } from '#tasks/plot/lessons.ts';
import type { SourResult } from '#tasks/sour.ts';
import { type LikelySour, likelySour } from '#tasks/sour-likely.ts';
import { openSour } from '#tasks/sour-open.ts';
import type { FromWorker, SourJob, Spent, ToWorker } from './messages.ts';

export type { SourJob } from './messages.ts';

/** What is known so far of a question. */
export interface SourSoFar {
  readonly result: SourResult;
  readonly taught: readonly Taught[] | undefined;
  readonly draws: number;
  readonly isWhole: boolean;
  readonly spent: Spent;
}

type Hears = (message: FromWorker) => void;

let worker: Worker | undefined;
const places = new Map<string, Hears>();
let numbers = 0;

function tell(message: ToWorker): void {
  if (worker === undefined) {
    worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => places.get(data.place)?.(data);
    worker.onerror = () => {
      for (const [place, hears] of places) hears({ kind: 'failed', place, number: numbers, why: 'worker' });
    };
  }
  worker.postMessage(message);
}

/**
 * Foretells what a question asks, anew whenever it changes. `job` gives undefined while there is nothing to foretell.
 * An answer stays until the next one about the same thing is there, so that a drawing does not blink.
 *
 * @param about what the question is about, such as a batch; a change of it lets the last answer go
 */
export function foretold(job: () => SourJob | undefined, about: () => string | undefined = () => undefined) {
  const place = createUniqueId();
  const [answer, setAnswer] = createSignal<SourSoFar>();
  const [failed, setFailed] = createSignal<string>();
  const [workings, setWorkings] = createSignal<readonly Working[]>();
  let number = 0;
  let last: string | undefined;

  const text = createMemo(() => JSON.stringify(job() ?? null));
  /** One run on the page's own thread: drawn with the sheet itself, before the worker has begun. */
  const likely = createMemo<LikelySour | undefined>(() => {
    text();
    const asked = untrack(job);
    const opened = asked && openSour(asked.ask);
    return opened?.ok ? likelySour(opened.opened) : undefined;
  });

  places.set(place, (message) => {
    if (message.number !== number && message.kind !== 'failed') return;
    if (message.kind === 'answer') setAnswer(message);
    else if (message.kind === 'workings') setWorkings(message.workings);
    else setFailed(message.why);
  });
  createEffect(() => {
    text();
    const thing = about();
    number = ++numbers;
    const asked = untrack(job);
    if (thing !== last) setAnswer(undefined);
    last = thing;
    setFailed(undefined);
    setWorkings(undefined);
    if (asked === undefined) setAnswer(undefined);
    if (asked !== undefined || worker !== undefined) tell({ kind: 'work', place, job: asked, number });
  });
  onCleanup(() => {
    places.delete(place);
    if (worker !== undefined) tell({ kind: 'work', place, job: undefined, number: ++numbers });
  });

  return {
    likely,
    answer,
    failed,
    workings,
    /** Asks for the workings of the whole answer; they come by `workings`. */
    explain() {
      setWorkings([]);
      tell({ kind: 'explain', place, number });
    },
  };
}
