// The plot's own facts and the things on it: each description tells what it changes, and the latest telling of a field
// holds. A thing goes by the id of the entry that first described it. Feeds, picks and contents are joined elsewhere.

import type { ActOf, ByKind } from '../act.ts';
import type { Body } from '../kinds/index.ts';
import type { Answers, Question } from '../question.ts';
import type { Waiting } from '../standing.ts';
import { type Care, laidOver, lastByDevice, type Telling } from './tellings.ts';

/** What is known of the plot itself; a field nobody told is absent. */
export type PlotFacts = Readonly<Partial<Body<'plot.described'>>>;
export type VesselFacts = Readonly<Partial<Omit<Body<'vessel.described'>, 'vessel' | 'over'>>> & {
  readonly id: string;
};
export type CanFacts = Readonly<Partial<Omit<Body<'can.described'>, 'can' | 'over'>>> & { readonly id: string };
export type BedFacts = Readonly<Partial<Omit<Body<'bed.described'>, 'bed' | 'over'>>> & { readonly id: string };
/** A thing has one name, whoever tells it; any other fact may be its new state. */
const USUAL: Care = { asked: ['name'], careful: [] };
/** So has a bed one way of being eaten from. While two tellings of these clash the bed counts as each of them: they decide what may be fed, and picked. */
const OF_BEDS: Care = { asked: ['name', 'eaten', 'feed'], careful: ['crop', 'eaten', 'feed'] };

export interface Described {
  readonly facts: PlotFacts;
  readonly beds: ReadonlyMap<string, BedFacts>;
  /** The facts of a bed as they are by each other choice of an open question about what is eaten from it. */
  readonly bedsMayBe: ReadonlyMap<string, readonly BedFacts[]>;
  readonly vessels: ReadonlyMap<string, VesselFacts>;
  readonly cans: ReadonlyMap<string, CanFacts>;
  readonly tellings: Tellings;
}

/** The last telling of each device about a bed, vessel or can, by the id of the thing; the one that made it is not among them. */
export type Tellings = ReadonlyMap<string, readonly { readonly id: string; readonly device: string }[]>;

interface Around {
  readonly lineOf: ReadonlyMap<string, string>;
  readonly answers: Answers;
  readonly waiting: Waiting[];
  readonly questions: Question[];
}

/** Field by field over the acts in order; a description of a thing that is not here waits, and two that clash are asked about. */
export function described(by: ByKind, around: Around): Described {
  const ref = (id: string | undefined) => (id === undefined ? undefined : (around.lineOf.get(id) ?? id));
  let facts: PlotFacts = {};
  for (const { body } of by('plot.described')) facts = { ...facts, ...told(body) };
  const tellings = new Map<string, readonly { readonly id: string; readonly device: string }[]>();
  const of = <F extends object>(
    acts: readonly ThingAct[],
    own: (body: ThingAct['body']) => { readonly thing: string | undefined; readonly rest: F },
    { care, mayBe }: Careful<F> = { care: USUAL, mayBe: new Map() },
  ) => {
    const list = acts.map(({ id, device, body, entry }): Telling<F> => {
      const { thing, rest } = own(body);
      return { id, shown: entry.id, device, thing: ref(thing), over: body.over ?? [], fields: told(rest) };
    });
    return things(list, { ...around, care, mayBe, tellings });
  };
  const bedsMayBe = new Map<string, readonly BedFacts[]>();
  const ofBed = (body: ThingAct['body']) => {
    const { bed, over: _, ...rest } = body as Body<'bed.described'>;
    return { thing: bed, rest };
  };
  return {
    facts,
    beds: of(by('bed.described'), ofBed, { care: OF_BEDS, mayBe: bedsMayBe }),
    bedsMayBe,
    vessels: of(by('vessel.described'), (body) => {
      const { vessel, over: _, ...rest } = body as Body<'vessel.described'>;
      return { thing: vessel, rest };
    }),
    cans: of(by('can.described'), (body) => {
      const { can, over: _, ...rest } = body as Body<'can.described'>;
      return { thing: can, rest };
    }),
    tellings,
  };
}

interface Careful<F> {
  readonly care: Care;
  /** Takes what each other choice makes of a thing. */
  readonly mayBe: Map<string, readonly (F & { readonly id: string })[]>;
}

type ThingAct = ActOf<'bed.described'> | ActOf<'vessel.described'> | ActOf<'can.described'>;

/** First tellings make the things; later ones are laid over them in order, also where they are dated earlier. */
function things<F extends object>(
  list: readonly Telling<F>[],
  {
    answers,
    waiting,
    questions,
    care,
    mayBe,
    tellings,
  }: Around &
    Careful<F> & { readonly tellings: Map<string, readonly { readonly id: string; readonly device: string }[]> },
): ReadonlyMap<string, F & { readonly id: string }> {
  const made = new Map<string, F & { readonly id: string }>();
  const later = new Map<string, Telling<F>[]>();
  for (const { id, thing, fields } of list) if (thing === undefined) made.set(id, { ...fields, id });
  for (const telling of list) {
    const { id, thing } = telling;
    if (thing === undefined) continue;
    if (!made.has(thing)) waiting.push({ id, why: 'thing-not-here', of: thing });
    else {
      const own = later.get(thing);
      if (own === undefined) later.set(thing, [telling]);
      else own.push(telling);
    }
  }
  for (const [thing, own] of later) {
    const before = made.get(thing);
    if (before !== undefined) {
      const laid = laidOver(thing, own, { answers, questions, care });
      made.set(thing, { ...before, ...laid.fields, id: thing });
      if (laid.mayBe.length > 0)
        mayBe.set(
          thing,
          laid.mayBe.map((fields) => ({ ...before, ...fields, id: thing })),
        );
    }
    tellings.set(
      thing,
      [...lastByDevice(own).values()].map(({ id, device }) => ({ id, device })),
    );
  }
  return made;
}

/** The fields that say something. */
function told<T extends object>(body: T): T {
  return Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined)) as T;
}
