// Questions that the fold raises where the record says two things: it never chooses by itself. A question has a key
// that stays the same however the entries arrive, and changes when more entries join it, so that an old answer does
// not settle a new question. Sentences stand in words.

import type { Body } from './kinds/index.ts';

export type QuestionKind =
  /** One entry was corrected twice, in different ways: the original is shown. */
  | 'two-corrections'
  /** An entry was corrected by a newer program: the original is shown. */
  | 'correction-not-readable'
  /** An amount's text, read again as it was then, gives another figure than the one kept. */
  | 'amount-differs'
  /** Two devices described one thing differently, and neither saw the other's: the latest is shown. */
  | 'two-descriptions'
  /** Two devices fed one bed within a day: it may be one act told twice. */
  | 'twin-feeds'
  /** Two batches carry one peg number at the same time. */
  | 'same-peg'
  /** More was taken than was there. */
  | 'more-out-than-in'
  /** An act on a batch is dated before the batch was made. */
  | 'before-it-was-made'
  /** A look at a batch is dated after its vessel was emptied. */
  | 'after-it-was-emptied';

export interface Question {
  readonly key: string;
  readonly kind: QuestionKind;
  /** Ids of the entries it is about; an answer names those that stand. */
  readonly about: readonly string[];
  /** What the question's sentence may mention. */
  readonly values: Readonly<Record<string, string | number>>;
  /** Answers that disagree; empty while there is none. */
  readonly answers: readonly (readonly string[])[];
}

/** Every answer given, by the key of its question. */
export type Answers = ReadonlyMap<string, readonly (readonly string[])[]>;

type Asked = Pick<Question, 'kind' | 'about'> & { readonly values?: Question['values'] };

/** The answers of the record: one list of standing ids for each answer. */
export function answersOf(bodies: readonly Body<'question.answered'>[]): Answers {
  const answers = new Map<string, (readonly string[])[]>();
  for (const { question, stands } of bodies) {
    const given = [...new Set(stands)].sort();
    answers.set(question, [...(answers.get(question) ?? []), given]);
  }
  return answers;
}

/** The key by which an answer finds its question. */
export function questionKey(kind: QuestionKind, about: readonly string[]): string {
  const ids = [...new Set(about)].sort();
  return `${kind}:${ids[0] ?? ''}:${ids.length}:${mixed(ids.join('+'))}`;
}

/**
 * What the answers say, where they agree and name only entries of the question; otherwise the question, still open.
 */
export function settle(
  asked: Asked,
  answers: Answers,
): { readonly stands: readonly string[] } | { readonly open: Question } {
  const about = [...new Set(asked.about)].sort();
  const key = questionKey(asked.kind, about);
  const given = (answers.get(key) ?? []).filter((stands) => stands.every((id) => about.includes(id)));
  const [first] = given;
  if (first !== undefined && given.every((stands) => stands.join() === first.join())) return { stands: first };
  return { open: { key, kind: asked.kind, about, values: asked.values ?? {}, answers: given } };
}

/** 64 mixed bits of a text, as two rounds of a multiplying hash; only ever compared, never trusted to be secret. */
export function mixed(value: string): string {
  let a = 0x811c9dc5;
  let b = 0x9e3779b9;
  for (let i = 0; i < value.length; i++) {
    const code = value.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x85ebca6b) ^ (b >>> 13);
  }
  return (a >>> 0).toString(16).padStart(8, '0') + (b >>> 0).toString(16).padStart(8, '0');
}
