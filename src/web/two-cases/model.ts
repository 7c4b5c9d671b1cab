// Two cases at work: what is typed, what it reads as, the likely line of each at once, and the spans once more runs are
// in. A touch to one case never reckons the other anew. Figures come from the task.

import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import { caseDifference } from '#tasks/case-difference.ts';
import type { Problem } from '#tasks/problem.ts';
import type { SourResult } from '#tasks/sour-result.ts';
import {
  answerCase,
  CASE_DAYS,
  type CaseAnswer,
  type CaseInput,
  caseBands,
  roomAir,
  roomAirChanges,
  sourInput,
} from '#tasks/two-cases.ts';
import { useDraft } from '../app/draft.ts';
import { foretold } from '../souring/client.ts';
import { laidAsideDraft, leaveFor, putOnTop } from '../weigh-in/kept.ts';
import { lotField, type Trouble, troublesOf } from '../weigh-in/reading.ts';
import { type CasesDraft, casesOf, NO_CASES, takenDraft } from './draft.ts';
import { type CaseReading, readCase, readRoom } from './reading.ts';

/** Rest after a touch before the many runs begin, so that a run of steps begins them once. */
const REST_MS = 180;
const KEPT_ACTS = 60;

type Which = 'before' | 'after';

interface Past {
  readonly draft: CasesDraft;
  readonly act: string;
  readonly typing: string | undefined;
}

export type TwoCases = ReturnType<typeof createTwoCases>;
export type OneCase = ReturnType<typeof createCase>;

export function createTwoCases(takenAct: string) {
  const kept = useDraft<CasesDraft>('two-cases', NO_CASES);
  const handed = laidAsideDraft();
  if (handed !== undefined && JSON.stringify(handed) !== JSON.stringify(kept.draft().base)) {
    kept.change(casesOf(handed, kept.draft()));
  }
  const base = kept.draft().base;
  if (base !== undefined) leaveFor(base);
  const [past, setPast] = createSignal<readonly Past[]>([]);
  const draft = kept.draft;

  function change(act: string, next: (now: CasesDraft) => Partial<CasesDraft>, typing?: string) {
    const before = past();
    if (typing === undefined || before.at(-1)?.typing !== typing) {
      setPast([...before, { draft: draft(), act, typing }].slice(-KEPT_ACTS));
    }
    kept.change(next(draft()));
  }

  const before = createCase(draft, 'before');
  const after = createCase(draft, 'after');
  const difference = createMemo(() => {
    const [a, b] = [before.both(), after.both()];
    return a && b && caseDifference(a, b);
  });
  return {
    draft,
    before,
    after,
    difference,
    room: createMemo(() => readRoom(draft())),
    airChanges: () => (draft().place === 'open' ? undefined : roomAirChanges(draft().airing)),
    change,
    changed: (act: string, next: Partial<CasesDraft['changed']>, typing?: string) =>
      change(act, (now) => ({ changed: { ...now.changed, ...next } }), typing),
    lastAct: () => past().at(-1)?.act,
    takeBack() {
      const last = past().at(-1);
      if (last === undefined) return;
      setPast(past().slice(0, -1));
      kept.change(last.draft);
    },
    /** Hands a case back to the weigh-in, on top of what stands there. */
    take(which: Which) {
      const taken = takenDraft(draft(), which);
      const standsAs = draft().base;
      if (taken === undefined || standsAs === undefined) return;
      putOnTop(standsAs, taken, takenAct);
    },
  };
}

/** One of the two: its reading, the answer of one run, and the spans of many. */
function createCase(draft: Accessor<CasesDraft>, which: Which) {
  const reading = createMemo<CaseReading | undefined>(() => readCase(draft(), which));
  const text = createMemo(() => JSON.stringify(reading()?.input ?? null));
  const asked = createMemo(() => {
    const input = JSON.parse(text()) as CaseInput | null;
    return input === null ? undefined : { input, answered: answerCase(input) };
  });
  const answer = createMemo<CaseAnswer | undefined>(() => {
    const given = asked()?.answered;
    return given?.ok ? given.value : undefined;
  });
  const problems = (): readonly Problem[] => {
    const given = asked()?.answered;
    return given === undefined || given.ok ? [] : given.problems;
  };
  const troubles = createMemo<ReadonlyMap<string, Trouble>>(() => {
    const read = reading();
    const found = problems();
    if (read === undefined) return new Map();
    return found.length === 0
      ? read.troubles
      : new Map([...read.troubles, ...troublesOf(found, read.amounts.weighedLots)]);
  });
  const many = createRuns(text);
  const band = createMemo(() => {
    const result = many.result();
    return result && caseBands(result);
  });
  const fullest = (): SourResult | undefined => many.result() ?? answer()?.likely;
  return {
    which,
    reading,
    answer,
    troubles,
    trouble: (field: string) => troubles().get(field),
    lotTrouble: (key: number) => troubles().get(lotField(key, 'weight')),
    both: () => {
      const [given, question] = [answer(), asked()?.input];
      return given && question && { input: question, figures: given.figures };
    },
    band,
    line: () => many.result()?.band,
    failed: many.failed,
    cautions: () => fullest()?.cautions ?? [],
    air: createMemo(() => {
      const result = fullest();
      const { place, airing } = draft();
      const roomM3 = place === 'open' ? undefined : readRoom(draft()).value;
      return result && roomM3 !== undefined ? roomAir(result, { roomM3, airing }) : undefined;
    }),
    days: CASE_DAYS,
  };
}

/** Many runs of a question, begun once it rests; no result while it is not the present question's. */
function createRuns(text: Accessor<string>) {
  const [resting, setResting] = createSignal<string>('null');
  let timer: ReturnType<typeof setTimeout> | undefined;
  createEffect(() => {
    const now = text();
    clearTimeout(timer);
    timer = setTimeout(() => setResting(now), REST_MS);
  });
  onCleanup(() => clearTimeout(timer));
  const runs = foretold(() => {
    const input = JSON.parse(resting()) as CaseInput | null;
    return input === null ? undefined : { ask: sourInput(input), lessons: [] };
  });
  // The client keeps the last answer until the next is there; here an answer counts only for the question it was for.
  const [answered, setAnswered] = createSignal<{ readonly text: string; readonly result: SourResult }>();
  createEffect(
    on(runs.answer, (so) => {
      if (so !== undefined) setAnswered({ text: resting(), result: so.result });
    }),
  );
  return {
    result: createMemo(() => {
      const found = answered();
      return found?.text === text() ? found.result : undefined;
    }),
    failed: () => runs.failed() !== undefined,
  };
}
