// What was seen of a batch up to a date, and what the engine judges of it. All that was ever seen is put together and judged
// once for a batch: lists of many years ask for the word of every batch, and most of them do not change any more.

import { type Judgement, judgeBatch } from '#engine/souring/judge.ts';
import type { Look, ReadBy } from '#engine/souring/look.ts';
import type { State } from '#engine/souring/reason.ts';
import type { Moment } from '#journal/moment.ts';
import type { Batch, BatchLook } from '#journal/parts/batch.ts';

/** How far a reading can be trusted, either way. @practice a cheap meter set that week; a strip of half-pH pads */
export const READING_ERROR_PH: Readonly<Record<ReadBy, number>> = { meter: 0.1, strip: 0.3 };

/** One reading of the acidity, as it is drawn. */
export interface PegReading {
  readonly id: string;
  readonly day: number;
  readonly on: string;
  readonly ph: number;
  readonly errorPh: number;
  readonly by: ReadBy;
  readonly typed: string;
  /** Whoever read it. */
  readonly who: string;
}

/** For which day of the batch it is judged, and its mean temperature; not a number where nobody told one. */
export interface JudgedFor {
  readonly day: number;
  readonly meanC: number;
}

export interface Seen {
  readonly looks: readonly BatchLook[];
  /** Looks whose date cannot be. */
  readonly doubtful: readonly BatchLook[];
  readonly readings: readonly PegReading[];
  /** The looks as the judgement takes them. */
  readonly judged: readonly Look[];
  /** The last day of a look or a reading; 0 without one. */
  readonly lastDay: number;
  /**
   * The judgement. Looks whose date cannot be count where they make the word worse, each by itself and all together, and
   * never where they would make it better.
   */
  readonly judge: (of: JudgedFor) => Judgement;
  /** The judgement without looks whose date cannot be. */
  readonly judgeSure: (of: JudgedFor) => Judgement;
}

const wholes = new WeakMap<Batch, { readonly untilDay: number; readonly seen: Seen }>();

/** What was seen of a batch up to the date of a moment. */
export function seenUntil(batch: Batch, { dateDay }: Moment): Seen {
  const whole = wholes.get(batch) ?? { untilDay: lastDateOf(batch), seen: seenOf(batch, Number.POSITIVE_INFINITY) };
  wholes.set(batch, whole);
  return whole.untilDay <= dateDay ? whole.seen : seenOf(batch, dateDay);
}

function dateOf({ against, when }: BatchLook): number {
  return (against?.from ?? when).dateDay;
}

/** The last date by which anything of a batch is judged. */
function lastDateOf({ looks, doubtful, strainings }: Batch): number {
  let last = Number.NEGATIVE_INFINITY;
  for (const list of [looks, strainings]) for (const { when } of list) last = Math.max(last, when.dateDay);
  for (const look of doubtful) last = Math.max(last, dateOf(look));
  return last;
}

function seenOf(batch: Batch, dateDay: number): Seen {
  const looks = batch.looks.filter(({ when }) => when.dateDay <= dateDay);
  const doubtful = batch.doubtful.filter((look) => dateOf(look) <= dateDay);
  const strained = batch.strainings.filter(({ when }) => when.dateDay <= dateDay);
  const readings = readingsOf(looks, strained);
  const judged = [...looks.flatMap(looksOf), ...strained.flatMap(strainedLook)];
  const judge = (more: readonly BatchLook[], { day, meanC }: JudgedFor) => {
    const until = more.flatMap(looksOf).map((look) => ({ ...look, day: Math.min(look.day, day) }));
    return judgeBatch({ looks: [...judged, ...until], temperatureC: meanC, today: day });
  };
  const judgeSure = (of: JudgedFor) => judge([], of);
  const judgeAll = (of: JudgedFor) => {
    if (doubtful.length === 0) return judgeSure(of);
    const alone = doubtful.map((look) => judge([{ ...look, day: of.day }], of));
    return worstOf([judgeSure(of), ...alone, judge(doubtful, of)]);
  };
  return {
    looks,
    doubtful,
    readings,
    judged,
    lastDay: Math.max(0, ...looks.map(({ day }) => day), ...readings.map(({ day }) => day)),
    judge: forTheSame(judgeAll),
    judgeSure,
  };
}

/** What was judged last, where it is asked for the same again: that of a batch that has ended, nearly always. */
function forTheSame(judge: (of: JudgedFor) => Judgement): (of: JudgedFor) => Judgement {
  let last: (JudgedFor & { readonly judgement: Judgement }) | undefined;
  return ({ day, meanC }) => {
    if (last === undefined || last.day !== day || !Object.is(last.meanC, meanC))
      last = { day, meanC, judgement: judge({ day, meanC }) };
    return last.judgement;
  };
}

/** The worst word first; ready and sour long enough is the best. */
const WORST: readonly State[] = ['lost', 'unknown', 'doubtful', 'slow', 'souring', 'ready'];

/** Of several judgements of one batch the one that opens least. */
function worstOf([first, ...more]: readonly [Judgement, ...Judgement[]]): Judgement {
  const rank = ({ state, held }: Judgement) => WORST.indexOf(state) * 2 + Number(held);
  return more.reduce((worst, one) => (rank(one) < rank(worst) ? one : worst), first);
}

/** A look as the judgement takes it; a reading by somebody else is that person's, the nose stays the signer's. */
function looksOf({ day, by, body: { acidity, smell, surface, readBy } }: BatchLook): readonly Look[] {
  const rest: Look = { day, who: by, ...(smell && { smell }), ...(surface && { surface }) };
  if (acidity === undefined) return [rest];
  const read = { ph: acidity.ph, by: acidity.by };
  return readBy === undefined || readBy === by ? [{ ...rest, ...read }] : [rest, { day, who: readBy, ...read }];
}

function strainedLook({ day, by, body: { acidity } }: Batch['strainings'][number]): readonly Look[] {
  return acidity === undefined ? [] : [{ day, who: by, ph: acidity.ph, by: acidity.by }];
}

function readingsOf(looks: readonly BatchLook[], strained: Batch['strainings']): readonly PegReading[] {
  return [...looks, ...strained]
    .flatMap(({ id, day, when, by, body }): readonly PegReading[] => {
      const { acidity } = body;
      if (acidity === undefined) return [];
      const who = 'readBy' in body ? (body.readBy ?? by) : by;
      const errorPh = READING_ERROR_PH[acidity.by];
      return [{ id, day, on: when.on, ph: acidity.ph, errorPh, by: acidity.by, typed: acidity.typed, who }];
    })
    .sort((a, b) => a.day - b.day);
}
