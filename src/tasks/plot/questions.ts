// The questions of a record, each with the entries it is about and the answers that would settle it. An answer is an
// entry that names those which stand; nothing is dropped by it. Sentences stand in words.

import { bodyAsRead } from '#journal/amounts.ts';
import type { Entry, Kept } from '#journal/entry.ts';
import { isSealed } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import type { Question } from '#journal/question.ts';
import { newestBody } from '#journal/upgrade.ts';
import { deviceTag } from '#words/device-tag.ts';
import { questionSentences, questionWords as words } from '#words/en/questions.ts';
import { pegNameOf } from './batch-name.ts';
import { aheadOfNow } from './clocks.ts';
import { lazily } from './lazily.ts';
import { fieldLabel, sayEntry } from './record.ts';
import { nameOf, valuesSaid } from './record-names.ts';

/** One answer that may be given: its words, and the ids that then stand. */
export interface AnswerOffer {
  readonly text: string;
  readonly stands: readonly string[];
  /** Where the answer is to tell an act anew: what is corrected, and how. */
  readonly correction?: { readonly of: Entry; readonly on: string; readonly body: Body<Kind> };
  /** What to do, where no entry settles it. */
  readonly advice?: string;
}

export interface OpenQuestion {
  readonly key: string;
  readonly sentence: string;
  readonly about: readonly {
    readonly id: string;
    readonly on: string;
    readonly by: string;
    readonly sentence: string;
  }[];
  readonly offers: readonly AnswerOffer[];
  /** Answers were given and disagree. */
  readonly disagrees: boolean;
}

/** Whose clock and which moment a question of clocks is asked from. */
export interface Reader {
  readonly now: string;
  readonly device: string;
}

/** Every open question of the plot; those of clocks, which no fold can know, first. */
export function openQuestions(plot: Plot, entries: readonly Kept[], reader: Reader): readonly OpenQuestion[] {
  const own = entries.filter((kept) => kept.plot === plot.id);
  return [...clockQuestions(plot, own, reader), ...foldQuestions(plot, entries)];
}

/** Most entries that a question of clocks names; the others are counted. */
const MOST_NAMED = 5;

/** Entries that lie ahead of the reader's clock, a question for each device. */
function clockQuestions(plot: Plot, entries: readonly Kept[], { now, device }: Reader): readonly OpenQuestion[] {
  return aheadOfNow(entries, now).map((ahead) => {
    const { length } = ahead.entries;
    const isHere = ahead.device === device;
    return {
      key: `clock-ahead:${ahead.device}`,
      sentence: isHere
        ? words.aheadHere(length, ahead.mostMinutes)
        : words.aheadThere(length, ahead.mostMinutes, deviceTag(ahead.device)),
      about: ahead.entries.slice(0, MOST_NAMED).map((entry) => told(entry, plot)),
      offers: [
        { text: words.thisClock, stands: [], advice: words.thisClockAdvice },
        { text: words.thatClock, stands: [], advice: words.thatClockAdvice },
      ],
      disagrees: false,
    };
  });
}

function told(entry: Entry, plot: Plot): OpenQuestion['about'][number] {
  return { id: entry.id, on: entry.on, by: entry.by, sentence: sayEntry(entry, plot) };
}

function foldQuestions(plot: Plot, entries: readonly Kept[]): readonly OpenQuestion[] {
  if (plot.questions.length === 0) return [];
  const asked = new Set(plot.questions.flatMap(({ about }) => about));
  const byId = new Map<string, Entry>();
  for (const kept of entries) if (asked.has(kept.id) && !isSealed(kept)) byId.set(kept.id, kept);
  return plot.questions.map((question) => {
    // Said for those that are drawn.
    const said = lazily(() => saidOf(question, byId, plot));
    return {
      key: question.key,
      get sentence() {
        return said().sentence;
      },
      get about() {
        return said().about;
      },
      get offers() {
        return said().offers;
      },
      disagrees: question.answers.length > 1,
    };
  });
}

function saidOf(question: Question, byId: ReadonlyMap<string, Entry>, plot: Plot) {
  const about = question.about.flatMap((id) => byId.get(id) ?? []);
  const { bed, thing } = question.values;
  const peg =
    question.kind === 'same-peg'
      ? undefined
      : question.about.map((id) => pegNameOf(plot, plot.bottles.get(id)?.batch ?? id)).find((one) => one !== undefined);
  const values = {
    ...question.values,
    ...(typeof bed === 'string' && { bed: nameOf(bed, plot) }),
    ...(typeof thing === 'string' && { thing: nameOf(thing, plot) }),
    ...(peg !== undefined && { peg }),
  };
  return {
    sentence: questionSentences[question.kind](values),
    about: about.map((entry) => told(entry, plot)),
    offers: offersOf(question, about, plot),
  };
}

/** What a telling says of the field in question, as typed. */
function tellingSaid({ values }: Question, entry: Entry | undefined, plot: Plot): string {
  const said = entry && valuesSaid(newestBody(entry), plot)[String(values.field)];
  return said === undefined ? '' : words.telling(fieldLabel(String(values.field)), said, values.count !== 1);
}

function offersOf(question: Question, entries: readonly Entry[], plot: Plot): readonly AnswerOffer[] {
  const { kind, about, values } = question;
  if (kind === 'two-descriptions') {
    return entries.map((entry) => ({
      text: words.takeTelling(tellingSaid(question, entry, plot), entry.by),
      stands: [entry.id],
    }));
  }
  if (kind === 'amount-differs') {
    const keep = { text: words.keepFigure(values), stands: about };
    const [of] = entries;
    if (of === undefined || values.readValue === undefined) return [keep];
    const body = bodyAsRead(newestBody(of)) as Body<Kind>;
    return [keep, { text: words.takeTyped(values), stands: [], correction: { of, on: of.on, body } }];
  }
  if (kind === 'twin-feeds') {
    const byDevice = new Map<string, Entry[]>();
    for (const entry of entries) byDevice.set(entry.device, [...(byDevice.get(entry.device) ?? []), entry]);
    const tellings = [...byDevice.values()].map((own) => ({
      text: words.only(own[0]?.by ?? ''),
      stands: own.map(({ id }) => id),
    }));
    return [{ text: words.both, stands: about }, ...tellings];
  }
  if (kind === 'two-corrections') {
    const corrections = entries.filter(({ replaces }) => replaces !== undefined && about.includes(replaces));
    const first = entries.find((entry) => !corrections.includes(entry));
    const takes = corrections.map(({ id, by }) => ({ text: words.thisVersion(by), stands: [id] }));
    return first === undefined ? takes : [...takes, { text: words.original, stands: [first.id] }];
  }
  if (kind === 'correction-not-readable') {
    const first = entries.find(({ replaces }) => replaces === undefined || !about.includes(replaces));
    return first === undefined ? [] : [{ text: words.original, stands: [first.id] }];
  }
  return [{ text: words.letStand, stands: about }];
}
