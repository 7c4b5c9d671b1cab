// Several tellings of one thing, field by field: the latest holds. Where two devices told a field differently and neither saw
// the other's, no order of theirs is a choice: it is asked. A telling names those of other devices that it was written over;
// one that names none may be of an older program, and then only some fields are taken to clash.

import { type Answers, type Question, settle } from '../question.ts';
import { canonical } from '../same.ts';

/** A description of a thing that was there already. */
export interface Telling<F extends object = object> {
  readonly id: string;
  /** Id of the version that stands: what was corrected is asked about anew. */
  readonly shown: string;
  readonly device: string;
  readonly thing: string | undefined;
  /** Tellings of other devices that whoever wrote this one saw. */
  readonly over: readonly string[];
  readonly fields: F;
}

/** Which fields of a thing a clash is weighed by. */
export interface Care {
  /** Asked about also where nothing tells what was seen; of other fields that is a new state. */
  readonly asked: readonly string[];
  /** Every choice counts while the question is open. */
  readonly careful: readonly string[];
}

export interface Asking {
  readonly answers: Answers;
  readonly questions: Question[];
  readonly care: Care;
}

export interface LaidOver<F> {
  readonly fields: Partial<F>;
  /** The fields as each other choice of an open question has them, where those differ that are counted with care. */
  readonly mayBe: readonly Partial<F>[];
}

/** The fields of a thing as its later tellings have them, in their order; clashes are asked about, and the latest is shown until then. */
export function laidOver<F extends object>(
  thing: string,
  tellings: readonly Telling<F>[],
  { answers, questions, care: { asked, careful } }: Asking,
): LaidOver<F> {
  const fields: Partial<F> = {};
  const clashes = new Map<string, { readonly live: readonly Telling<F>[]; readonly keys: (keyof F & string)[] }>();
  const keys = new Set(tellings.flatMap((one) => Object.keys(one.fields) as (keyof F & string)[]));
  for (const key of keys) {
    const live = standing(
      tellings.filter((one) => key in one.fields),
      asked.includes(key),
    );
    const last = live.at(-1);
    if (last !== undefined) fields[key] = last.fields[key];
    if (new Set(live.map((one) => canonical(one.fields[key]))).size < 2) continue;
    const ids = live.map(({ id }) => id).join();
    const clash = clashes.get(ids) ?? { live, keys: [] };
    clash.keys.push(key);
    clashes.set(ids, clash);
  }
  let choices: readonly Partial<F>[] = [{}];
  for (const clash of clashes.values()) {
    const values = { thing, field: clash.keys[0] ?? '', count: clash.keys.length };
    const about = clash.live.map(({ shown }) => shown);
    const settled = settle({ kind: 'two-descriptions', about, values }, answers);
    if ('open' in settled) {
      questions.push(settled.open);
      const keys = clash.keys.filter((key) => careful.includes(key));
      const told = distinct(clash.live.map((one) => only(one.fields, keys)));
      choices = choices.flatMap((chosen) => told.map((one) => ({ ...chosen, ...one })));
    } else {
      const chosen = clash.live.filter(({ shown }) => settled.stands.includes(shown)).at(-1);
      for (const key of clash.keys) if (chosen !== undefined) fields[key] = chosen.fields[key];
    }
  }
  const [, ...mayBe] = distinct([fields, ...choices.map((chosen) => ({ ...fields, ...chosen }))]);
  return { fields, mayBe };
}

function distinct<T>(list: readonly T[]): readonly T[] {
  const firsts = new Map<string, T>();
  for (const one of list) {
    const key = canonical(one);
    if (!firsts.has(key)) firsts.set(key, one);
  }
  return [...firsts.values()];
}

function only<F extends object>(fields: F, keys: readonly (keyof F & string)[]): Partial<F> {
  return Object.fromEntries(keys.map((key) => [key, fields[key]])) as Partial<F>;
}

/** Tellings of a field that no other one saw or replaces, in their order. */
function standing<F extends object>(tellings: readonly Telling<F>[], asksOfOlder: boolean): readonly Telling<F>[] {
  const seen = new Set(tellings.flatMap(({ over }) => over));
  const last = lastByDevice(tellings);
  const live = tellings.filter((one) => !seen.has(one.id) && last.get(one.device) === one);
  if (asksOfOlder) return live;
  const known = live.findLastIndex(({ over }) => over.length === 0);
  return live.slice(Math.max(0, known));
}

/** The last of each device. */
export function lastByDevice<T extends { readonly device: string }>(tellings: readonly T[]): ReadonlyMap<string, T> {
  return new Map(tellings.map((one) => [one.device, one]));
}
