// Amounts of an entry at the door of the journal: a text that was kept with what it was read with is read again here, the
// one place beside the forms. Where it gives another figure the entry is kept as it came, and the fold asks.

import { asRead, type Differing, type KeptAmount, readAgain } from '#engine/quantity/kept.ts';
import type { Act } from './act.ts';
import { type Answers, type Question, settle } from './question.ts';
import { STEP_ACTS } from './stages.ts';

/** What was found in a body, asked once while the body lives: reading a text costs more than folding its entry. */
const found = new WeakMap<object, readonly Differing[]>();
const NONE: readonly Differing[] = [];

/** Amounts of a body whose text gives another figure than the one kept. */
export function differingIn(body: unknown): readonly Differing[] {
  if (typeof body !== 'object' || body === null) return NONE;
  const before = found.get(body);
  if (before !== undefined) return before;
  const list: Differing[] = [];
  seek(body, list);
  found.set(body, list.length === 0 ? NONE : list);
  return list;
}

function seek(part: object, list: Differing[]): void {
  const own = isAmount(part) ? readAgain(part) : undefined;
  if (own !== undefined) list.push(own);
  else for (const inner of Object.values(part)) if (typeof inner === 'object' && inner !== null) seek(inner, list);
}

/** A body whose amounts have the figures that their texts give. */
export function bodyAsRead<T>(body: T): T {
  if (typeof body !== 'object' || body === null) return body;
  if (Array.isArray(body)) return body.map(bodyAsRead) as T;
  if (isAmount(body)) return asRead(body as KeptAmount) as T;
  return Object.fromEntries(Object.entries(body).map(([key, value]) => [key, bodyAsRead(value)])) as T;
}

function isAmount(value: object): value is KeptAmount {
  return 'typed' in value && 'readWith' in value && ('massKg' in value || 'volumeL' in value || 'areaM2' in value);
}

/** A question for each act that stands and has such an amount; until it is answered the figure that was kept counts. */
export function* askAboutAmounts(acts: readonly Act[], answers: Answers, questions: Question[]): Generator<void, void> {
  for (const [i, { entry }] of acts.entries()) {
    if (i % STEP_ACTS === STEP_ACTS - 1) yield;
    const [first, ...more] = differingIn(entry.body);
    if (first === undefined) continue;
    const { typed, dimension, value, again } = first;
    const values = { typed, dimension, keptValue: value, ...(again && { readValue: again.value }), more: more.length };
    const settled = settle({ kind: 'amount-differs', about: [entry.id], values }, answers);
    if ('open' in settled) questions.push(settled.open);
  }
}
