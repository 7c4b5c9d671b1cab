// The plot's own facts and the things on it: each description tells what it changes, and the latest telling of a field
// holds. A thing goes by the id of the entry that first described it. Feeds, picks and contents are joined elsewhere.

import type { ByKind } from '../act.ts';
import type { Body } from '../kinds/index.ts';
import type { Waiting } from '../standing.ts';

/** What is known of the plot itself; a field nobody told is absent. */
export type PlotFacts = Readonly<Partial<Body<'plot.described'>>>;
export type VesselFacts = Readonly<Partial<Omit<Body<'vessel.described'>, 'vessel'>>> & { readonly id: string };
export type CanFacts = Readonly<Partial<Omit<Body<'can.described'>, 'can'>>> & { readonly id: string };
export type BedFacts = Readonly<Partial<Omit<Body<'bed.described'>, 'bed'>>> & { readonly id: string };

export interface Described {
  readonly facts: PlotFacts;
  readonly beds: ReadonlyMap<string, BedFacts>;
  readonly vessels: ReadonlyMap<string, VesselFacts>;
  readonly cans: ReadonlyMap<string, CanFacts>;
}

/** Field by field over the acts in order; a description of a thing that is not here waits. */
export function described(by: ByKind, lineOf: ReadonlyMap<string, string>, waiting: Waiting[]): Described {
  const ref = (id: string | undefined) => (id === undefined ? undefined : (lineOf.get(id) ?? id));
  let facts: PlotFacts = {};
  for (const { body } of by('plot.described')) facts = { ...facts, ...told(body) };
  const beds = by('bed.described').map(({ id, body }) => ({ id, body, thing: ref(body.bed) }));
  const vessels = by('vessel.described').map(({ id, body }) => ({ id, body, thing: ref(body.vessel) }));
  const cans = by('can.described').map(({ id, body }) => ({ id, body, thing: ref(body.can) }));
  return {
    facts,
    beds: things(beds, waiting, ({ bed: _, ...rest }) => rest),
    vessels: things(vessels, waiting, ({ vessel: _, ...rest }) => rest),
    cans: things(cans, waiting, ({ can: _, ...rest }) => rest),
  };
}

interface Telling<B> {
  readonly id: string;
  readonly thing: string | undefined;
  readonly body: B;
}

/** First tellings make the things; later ones are laid over them in order, also where they are dated earlier. */
function things<B extends object, F extends object>(
  tellings: readonly Telling<B>[],
  waiting: Waiting[],
  own: (body: B) => F,
): ReadonlyMap<string, F & { readonly id: string }> {
  const made = new Map<string, F & { readonly id: string }>();
  for (const { id, thing, body } of tellings) if (thing === undefined) made.set(id, { ...told(own(body)), id });
  for (const { id, thing, body } of tellings) {
    if (thing === undefined) continue;
    const before = made.get(thing);
    if (before === undefined) waiting.push({ id, why: 'thing-not-here', of: thing });
    else made.set(thing, { ...before, ...told(own(body)) });
  }
  return made;
}

/** The fields that say something. */
function told<T extends object>(body: T): T {
  return Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined)) as T;
}
