// Several tellings of one thing, field by field: the latest holds. Where two devices told a field differently and neither saw
// the other's, no order of theirs is a choice: it is asked. A telling names those of other devices that it was written over;
// one that names none may be of an older program, and then only two names are taken to clash.

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

/** The fields of a thing as its later tellings have them, in their order; clashes are asked about, and the latest is shown until then. */
export function laidOver<F extends object>(
  thing: string,
  tellings: readonly Telling<F>[],
  answers: Answers,
  questions: Question[],
): Partial<F> {
  const fields: Partial<F> = {};
  const clashes = new Map<string, { readonly live: readonly Telling<F>[]; readonly keys: (keyof F & string)[] }>();
  const keys = new Set(tellings.flatMap((one) => Object.keys(one.fields) as (keyof F & string)[]));
  for (const key of keys) {
    const live = standing(
      tellings.filter((one) => key in one.fields),
      key === 'name',
    );
    const last = live.at(-1);
    if (last !== undefined) fields[key] = last.fields[key];
    if (new Set(live.map((one) => canonical(one.fields[key]))).size < 2) continue;
    const ids = live.map(({ id }) => id).join();
    const clash = clashes.get(ids) ?? { live, keys: [] };
    clash.keys.push(key);
    clashes.set(ids, clash);
  }
  for (const clash of clashes.values()) {
    const values = { thing, field: clash.keys[0] ?? '', count: clash.keys.length };
    const about = clash.live.map(({ shown }) => shown);
    const settled = settle({ kind: 'two-descriptions', about, values }, answers);
    if ('open' in settled) questions.push(settled.open);
    else {
      const chosen = clash.live.filter(({ shown }) => settled.stands.includes(shown)).at(-1);
      for (const key of clash.keys) if (chosen !== undefined) fields[key] = chosen.fields[key];
    }
  }
  return fields;
}

/** Tellings of a field that no other one saw or replaces, in their order. */
function standing<F extends object>(tellings: readonly Telling<F>[], isName: boolean): readonly Telling<F>[] {
  const seen = new Set(tellings.flatMap(({ over }) => over));
  const last = lastByDevice(tellings);
  const live = tellings.filter((one) => !seen.has(one.id) && last.get(one.device) === one);
  if (isName) return live;
  const known = live.findLastIndex(({ over }) => over.length === 0);
  return live.slice(Math.max(0, known));
}

/** The last of each device. */
export function lastByDevice<T extends { readonly device: string }>(tellings: readonly T[]): ReadonlyMap<string, T> {
  return new Map(tellings.map((one) => [one.device, one]));
}
