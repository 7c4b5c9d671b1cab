// Batches run again only where an act touches them. Acts that meet, by a split or a joining, run together; what all others made
// before is taken over, with what they told. The same as one run over all acts, in the same order (batches.ts).

import { asBefore } from '../as-before.ts';
import { STEP_ACTS, type Told } from '../stages.ts';
import { type Open, type PegAct, type PegSurroundings, runBatches } from './batches.ts';

/** Acts that meet, the lots they put in, and what came of them. */
interface Group extends Told {
  readonly acts: readonly PegAct[];
  readonly lots: readonly unknown[];
  readonly batches: ReadonlyMap<string, Open>;
}

/** What a run left: every batch, and what may be taken over by the next one. */
export interface Ran {
  readonly batches: ReadonlyMap<string, Open>;
  readonly groups: ReadonlyMap<string, Group>;
  /** What every group was run with. */
  readonly of: readonly unknown[];
}

export interface RunAround extends PegSurroundings {
  /** The zone that `days` counts in. */
  readonly timeZone: string | undefined;
}

/** Every batch after all its acts, in the order in which one run over all acts makes them; in steps. */
export function* runApart(acts: readonly PegAct[], around: RunAround, last: Ran | undefined): Generator<void, Ran> {
  const of = [around.lineOf, around.answers, around.timeZone];
  const before = last !== undefined && of.every((one, i) => one === last.of[i]) ? last : undefined;
  const groups = new Map<string, Group>();
  let taken = 0;
  for (const [key, own] of groupsOf(acts, around)) {
    const lots = own.flatMap((act) => lotsIn(act, around));
    const old = before?.groups.get(key);
    const group =
      old !== undefined && isSame(old.acts, own) && isSame(old.lots, lots) ? old : yield* ranAnew(own, lots, around);
    groups.set(key, group);
    for (const one of group.waiting) around.waiting.push(one);
    for (const one of group.questions) around.questions.push(one);
    taken += own.length;
    if (taken >= STEP_ACTS) {
      taken = 0;
      yield;
    }
  }
  return { batches: asBefore(last?.batches, inOrder(acts, groups)), groups, of };
}

function* ranAnew(acts: readonly PegAct[], lots: readonly unknown[], around: RunAround): Generator<void, Group> {
  const told: Told = { waiting: [], questions: [] };
  const batches = yield* runBatches(acts, { ...around, ...told });
  return { acts, lots, batches, ...told };
}

function isSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((one, i) => one === b[i]);
}

function lotsIn(act: PegAct, { lots }: PegSurroundings): readonly unknown[] {
  if (act.kind !== 'peg.filled' && act.kind !== 'peg.toppedUp') return [];
  return (act.body.parts ?? []).map(({ lot }) => lots.get(lot ?? ''));
}

/** Acts by the batches that they meet over. */
function groupsOf(acts: readonly PegAct[], { lineOf }: PegSurroundings): ReadonlyMap<string, PegAct[]> {
  const ref = (id: string) => lineOf.get(id) ?? id;
  const met = new Map<string, string>();
  const root = (id: string): string => {
    let at = id;
    for (let next = met.get(at); next !== undefined; next = met.get(at)) at = next;
    // The next one asking has a short way.
    for (let one = id; one !== at; ) {
      const next = met.get(one) ?? at;
      met.set(one, at);
      one = next;
    }
    return at;
  };
  const meet = (one: string, other: string) => {
    const [a, b] = [root(one), root(other)];
    if (a !== b) met.set(b, a);
  };
  for (const act of acts) {
    if (act.kind === 'peg.split') meet(ref(act.body.batch), act.id);
    else if (act.kind === 'peg.joined') meet(ref(act.body.batch), ref(act.body.from));
  }
  const groups = new Map<string, PegAct[]>();
  for (const act of acts) {
    const key = root(act.kind === 'peg.filled' ? act.id : ref(act.body.batch));
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [act]);
    else group.push(act);
  }
  return groups;
}

/** As one run makes them: a batch comes with its own act, or with the one that made what it was split from, if that is later. */
function inOrder(acts: readonly PegAct[], groups: ReadonlyMap<string, Group>): ReadonlyMap<string, Open> {
  const places = new Map<string, number>();
  for (const [i, { id, kind }] of acts.entries()) if (kind === 'peg.filled' || kind === 'peg.split') places.set(id, i);
  const made: { readonly place: number; readonly batch: Open }[] = [];
  for (const { batches } of groups.values()) {
    for (const batch of batches.values()) {
      const place = Math.max(places.get(batch.id) ?? 0, places.get(batch.splitFrom ?? '') ?? 0);
      // What is split from it again asks for this place; a parent is always made first.
      places.set(batch.id, place);
      made.push({ place, batch });
    }
  }
  made.sort((a, b) => a.place - b.place);
  return new Map(made.map(({ batch }) => [batch.id, batch]));
}
