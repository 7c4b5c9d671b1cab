// How far a place has got. Every write bears a number drawn by chance, the same in both places, and a place keeps the sum of
// the numbers it took: two places with one sum took the same writes, in whatever order, and hold the same.

import type { Database, WriteTx } from './tables.ts';

export const STATE = '~writes';
/** Facts that a place keeps of itself: they never go over to the other. No fact of a caller's is named so. */
export const isOwn = (name: string) => name.startsWith('~');
/** Sums are taken within this, so that they stay exact: 52 bits, and two of them are below 2^53. @arithmetic */
const WITHIN = 2 ** 52;

export interface State {
  /** Writes so far; the place with more of them has the newer facts. */
  readonly count: number;
  /** Sum of the numbers drawn; undefined in a place that an older program wrote to last. */
  readonly sum: number | undefined;
  /** How often everything was forgotten: facts of an earlier era are not taken from the other place. */
  readonly era: number;
}

/** A number for one write. */
export function drawWrite(): number {
  const [low = 0, high = 0] = crypto.getRandomValues(new Uint32Array(2));
  return (high % 2 ** 20) * 2 ** 32 + low;
}

/** What a forgetting knows the facts of an era by. */
export const birthOfFacts = (era: number) => `facts.${era}`;

/** A state from its fact; an older program kept the count alone, and the oldest none. */
export function stateFrom(fact: unknown): State {
  if (typeof fact === 'object' && fact !== null) return fact as State;
  return { count: Number(fact) || 0, sum: undefined, era: 0 };
}

export async function stateOf(db: Database): Promise<State> {
  return stateFrom(await db.get('facts', STATE));
}

export async function stateIn(tx: WriteTx): Promise<State> {
  return stateFrom(await tx.objectStore('facts').get(STATE));
}

/** Whether two places took the same writes. */
export function sameState(a: State, b: State): boolean {
  return a.sum !== undefined && a.sum === b.sum && a.era === b.era && a.count === b.count;
}

/** Counts a write, inside it. */
export async function countWrite(tx: WriteTx, drawn: number): Promise<void> {
  const { count, sum, era } = await stateIn(tx);
  // A place of an older program has no sum until it was united: its first sum would say what it cannot know.
  const known = sum ?? (count === 0 ? 0 : undefined);
  const next: State = { count: count + 1, sum: known === undefined ? undefined : (known + drawn) % WITHIN, era };
  await tx.objectStore('facts').put(next, STATE);
}

/** The facts of a place were forgotten: what it keeps from now on is of a new era. */
export async function beginEra(tx: WriteTx, state: State): Promise<void> {
  await tx.objectStore('facts').put({ ...state, era: state.era + 1 }, STATE);
}
