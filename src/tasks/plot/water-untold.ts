// Where the water of a batch came from, when nobody said: the acts that put it in, and the same acts with an answer. It is asked
// where it decides, at the can; what follows from the answer is origin.ts.

import { type ActOf, actsOf } from '#journal/act.ts';
import type { Kept } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { standing } from '#journal/standing.ts';
import type { PegName } from '#words/peg-name.ts';
import { pegName } from './batch-name.ts';

type PutIn = 'peg.filled' | 'peg.toppedUp';
type PutInAct = { [K in PutIn]: ActOf<K> }[PutIn];

/** The act as a correction tells it anew. */
export interface WaterSaid {
  readonly act: PutInAct;
  readonly body: Body<PutIn>;
}

/** Ids of the acts that put something into a batch, or into what it was split off or joined with. */
function putInIds(plot: Plot, batch: string, seen = new Set<string>()): ReadonlySet<string> {
  const here = plot.batches.get(batch);
  if (seen.has(batch) || here === undefined) return seen;
  seen.add(batch);
  for (const { id, kind } of here.changes) if (kind === 'toppedUp') seen.add(id);
  for (const from of [here.splitFrom, ...here.joinedFrom]) if (from !== undefined) putInIds(plot, from, seen);
  return seen;
}

/** What is asked: the peg whose water nobody told of, and the acts that put it in. */
export interface WaterUntold {
  readonly peg: PegName;
  readonly acts: readonly PutInAct[];
}

/** Where water was put in without a report and without a word of where it came from: the batch itself, then what it was started with. */
export function waterUntold(plot: Plot, entries: readonly Kept[], batch: string): WaterUntold | undefined {
  const seen = new Set<string>();
  const ask = (id: string): WaterUntold | undefined => {
    const here = plot.batches.get(plot.bottles.get(id)?.batch ?? id);
    if (here === undefined || seen.has(here.id)) return undefined;
    seen.add(here.id);
    const acts = here.contents.waterSources.some(isBlank) ? actsUntold(entries, putInIds(plot, here.id)) : [];
    if (acts.length > 0) return { peg: pegName(plot, here), acts };
    for (const starter of here.contents.starters) {
      const found = ask(starter);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  return ask(batch);
}

function actsUntold(entries: readonly Kept[], ids: ReadonlySet<string>): readonly PutInAct[] {
  const about = entries.filter(({ id, kind, replaces }) => ids.has(id) || (replaces !== undefined && isPutIn(kind)));
  return actsOf(standing(about)).filter(
    (act): act is PutInAct =>
      (act.kind === 'peg.filled' || act.kind === 'peg.toppedUp') &&
      ids.has(act.id) &&
      act.body.water?.some(isUntold) === true,
  );
}

function isPutIn(kind: string): kind is PutIn {
  return kind === 'peg.filled' || kind === 'peg.toppedUp';
}

type Water = NonNullable<Body<PutIn>['water']>[number];

function isUntold({ water, source }: Water): boolean {
  return water === undefined && isBlank(source ?? '');
}

function isBlank(source: string): boolean {
  return source.trim() === '';
}

/** The same acts, with where their water came from; what was told before stays as it was. */
export function waterSaid(acts: readonly PutInAct[], source: string): readonly WaterSaid[] {
  return acts.map((act) => ({
    act,
    body: { ...act.body, water: act.body.water?.map((one) => (isUntold(one) ? { ...one, source } : one)) },
  }));
}
