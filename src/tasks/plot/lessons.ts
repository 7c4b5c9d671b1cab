// What finished batches teach the next one of the like: which of the plot's batches count, in what order, and what is
// believed after them. A batch counts once it was strained, for batches filled later whose heaviest part is of the same
// group of materials. Setting back is an entry of its own: what was finished before it counts no more.

import type { Range } from '#engine/quantity/range.ts';
import { type Belief, carriedOver, learn } from '#engine/souring/model/learn.ts';
import { type TaughtUnknown, taughtFactor } from '#engine/souring/model/taught.ts';
import { toLearnFrom } from '#engine/souring/odd.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import { type Moment, momentOf } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { PegName } from '#words/peg-name.ts';
import { openSour, runSour, todayOf } from '../sour-open.ts';
import { pegName } from './batch-name.ts';
import { type PegAsk, pegView } from './peg.ts';
import { pegSour, type SourAsk } from './peg-sour.ts';

/** Batches that count at most, the last ones; draws run of each and new stages: enough for a middle and a width. */
const MOST_LESSONS = 6;
export const LESSON_DRAWS = 300;
const LESSON_STAGES = 1;
/** How an entry names every group at once. */
const ALL_GROUPS = 'all';

/** One finished batch and the question about it. */
export interface Lesson {
  readonly batch: string;
  readonly peg: PegName;
  readonly ask: SourAsk;
}

/** What the next batch of a like mix starts from. */
export interface Lessons {
  /** Group of the heaviest part, as the table of materials has it; undefined where it names none. */
  readonly group: string | undefined;
  readonly from: readonly Lesson[];
}

/** The group of materials a batch is led by: that of the heaviest known part. @arithmetic weight by group */
export function leadingGroup({ contents }: Batch): string | undefined {
  const kgOf = new Map<string, number>();
  for (const { material: id, massKg } of contents.parts) {
    const group = id === undefined ? undefined : material(id)?.group;
    if (group !== undefined && massKg > 0) kgOf.set(group, (kgOf.get(group) ?? 0) + massKg);
  }
  const [most] = [...kgOf].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return most?.[0];
}

/** The finished batches a peg may learn from, in the order they were finished. */
export function lessonsFor({ plot, batch, now }: PegAsk): Lessons {
  const group = leadingGroup(batch);
  if (group === undefined) return { group, from: [] };
  const since = setBackAt(plot, group, momentOf(now));
  const finished = [...plot.batches.values()].flatMap((one) => {
    const at = finishedAt(one);
    const counts = one.id !== batch.id && at !== undefined && at.wallMinute <= batch.filled.wallMinute;
    return counts && at.wallMinute > since && leadingGroup(one) === group ? [{ one, at }] : [];
  });
  return {
    group,
    from: finished
      .sort((a, b) => a.at.wallMinute - b.at.wallMinute || a.one.peg - b.one.peg)
      .slice(-MOST_LESSONS)
      .flatMap(({ one, at }) => {
        const asked = pegSour({ plot, batch: one, view: pegView({ plot, batch: one, now: at.on }) });
        return asked.ok ? [{ batch: one.id, peg: pegName(plot, one), ask: asked.ask }] : [];
      }),
  };
}

/** When it was strained empty; a batch that was tipped without straining teaches nothing. */
function finishedAt({ ended, strainings }: Batch): Moment | undefined {
  return strainings.length > 0 ? ended : undefined;
}

/** Minute of the last setting back that concerns a group. */
function setBackAt({ lessonsReset }: Plot, group: string, now: Moment): number {
  return lessonsReset.reduce(
    (last, { body, when }) =>
      (body.group === ALL_GROUPS || body.group === group) && when.dateDay <= now.dateDay
        ? Math.max(last, when.wallMinute)
        : last,
    Number.NEGATIVE_INFINITY,
  );
}

/**
 * What is believed before the next batch of the like: each finished batch learns from its looks, starting from what the
 * ones before it left, and half of what it learned is carried on.
 * @returns undefined where there is nothing to learn from
 * @practice forgetting by half, our caution, no source; the method is learn of model/learn.ts
 */
export function taughtBy(asks: readonly unknown[], draws = LESSON_DRAWS): Belief | undefined {
  let belief: Belief | undefined;
  for (const ask of asks) belief = taughtByOne(ask, belief, draws) ?? belief;
  return belief;
}

/** One step of taughtBy. @practice as taughtBy */
export function taughtByOne(ask: unknown, before: Belief | undefined, draws = LESSON_DRAWS): Belief | undefined {
  const asked = openSour(ask);
  if (!asked.ok || asked.opened.looks.length === 0) return undefined;
  const { opened } = asked;
  const { known, runDays, input } = opened;
  const looks = toLearnFrom(opened.looks, Math.min(todayOf(input, opened.looks), runDays));
  const first = runSour(opened, 0, draws);
  const { belief } = learn({ known, first, looks, days: runDays, prior: before, mostStagesCount: LESSON_STAGES });
  return carriedOver(belief);
}

/** One unknown as the finished batches left it: times what the table says. */
export interface Taught {
  readonly unknown: TaughtUnknown;
  readonly timesFactor: Range;
}

/** What a lesson can be about: the rest belongs to one batch alone. */
const CARRIED: readonly TaughtUnknown[] = ['rate', 'buffer', 'sugar', 'count'];

/** A belief as factors on what the table says. @arithmetic spreads of draws.ts */
export function readTaught(belief: Belief): readonly Taught[] {
  return CARRIED.map((unknown) => ({ unknown, timesFactor: taughtFactor(belief, unknown) }));
}
