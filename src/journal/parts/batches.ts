// Batches through their acts, in the order they were done. An act on a batch that is not here yet waits for the act that
// makes it, whichever arrives or is dated first. Mass balances after every act, whatever was typed: what cannot be is
// told as a question and never mended.

import type { Act, ActOf } from '../act.ts';
import type { Body } from '../kinds/index.ts';
import { type DaysBetween, isBefore, type Moment } from '../moment.ts';
import { type Answers, type Question, settle } from '../question.ts';
import { STEP_ACTS } from '../stages.ts';
import type { Waiting } from '../standing.ts';
import type { Batch, BatchLook, Change, MassSum, Overrode, Straining } from './batch.ts';
import { type Contents, contentsOf, LIQUID_KG_PER_L, litresOf, massOf, NOTHING, share, together } from './contents.ts';

type PegKind =
  | 'peg.filled'
  | 'peg.toppedUp'
  | 'peg.split'
  | 'peg.moved'
  | 'peg.joined'
  | 'peg.spilled'
  | 'peg.looked'
  | 'peg.strained'
  | 'peg.tipped';
export type PegAct = { [K in PegKind]: ActOf<K> }[PegKind];

type Amount = Body<'peg.spilled'>['lost'];
type MassColumn = Exclude<keyof MassSum, 'leftKg'>;

/** A batch while the acts run over it. */
export interface Open {
  readonly id: string;
  readonly peg: number;
  readonly filled: Moment;
  readonly filledBy: string;
  readonly made: Moment;
  readonly splitFrom: string | undefined;
  readonly plan: Body<'peg.filled'>['plan'];
  overrode: readonly Overrode[];
  readonly joinedFrom: string[];
  readonly looks: BatchLook[];
  readonly strainings: Straining[];
  readonly changes: Change[];
  readonly temperatures: { readonly day: number; readonly temperatureC: number }[];
  readonly mass: Record<keyof MassSum, number>;
  vessel: string | undefined;
  vesselName: string | undefined;
  lid: Batch['lid'];
  place: string | undefined;
  contents: Contents;
  tipped: Contents;
  ended: Moment | undefined;
  endedBy: string | undefined;
}

const GRAM_KG = 0.001;

/** What the acts on pegs need from the rest of the fold. */
export interface PegSurroundings {
  /** The lots of the stock that a part may name. */
  readonly lots: ReadonlyMap<string, ActOf<'scraps.weighed'>>;
  readonly lineOf: ReadonlyMap<string, string>;
  readonly days: DaysBetween;
  readonly answers: Answers;
  readonly waiting: Waiting[];
  readonly questions: Question[];
}

/** Every batch after all its acts, by the id of the act that made it; in steps. */
export function* runBatches(
  acts: readonly PegAct[],
  around: PegSurroundings,
): Generator<void, ReadonlyMap<string, Open>> {
  const batches = new Map<string, Open>();
  const held = new Map<string, PegAct[]>();
  const ref = (id: string) => around.lineOf.get(id) ?? id;
  /** A batch the act needs that is not here yet. */
  const missingFor = (act: PegAct): string | undefined => {
    if (act.kind === 'peg.filled') return undefined;
    const batch = ref(act.body.batch);
    if (!batches.has(batch)) return batch;
    const from = act.kind === 'peg.joined' ? ref(act.body.from) : batch;
    return batches.has(from) ? undefined : from;
  };
  for (const [i, act] of acts.entries()) {
    if (i % STEP_ACTS === STEP_ACTS - 1) yield;
    // A queue instead of recursion: a long chain of splits may have waited for one filling.
    const queue: PegAct[] = [act];
    for (const next of queue) {
      const missing = missingFor(next);
      if (missing !== undefined) {
        const others = held.get(missing);
        if (others === undefined) held.set(missing, [next]);
        else others.push(next);
        continue;
      }
      run(next, batches, ref, around);
      const freed = batches.has(next.id) ? held.get(next.id) : undefined;
      if (freed === undefined) continue;
      held.delete(next.id);
      for (const one of freed) queue.push(one);
    }
  }
  for (const [of, list] of held) for (const { id } of list) around.waiting.push({ id, why: 'batch-not-here', of });
  return batches;
}

function run(act: PegAct, batches: Map<string, Open>, ref: (id: string) => string, around: PegSurroundings): void {
  if (act.kind === 'peg.filled') {
    const batch = opened(act, { contents: contentsOf(act.body, around.lots), column: 'filledKg' });
    batches.set(act.id, batch);
    tookPlace(batch, act.body, 0);
    return;
  }
  const batch = batches.get(ref(act.body.batch));
  if (batch === undefined) return;
  const day = around.days(batch.filled, act.when);
  const isEarly =
    act.when.dateDay < batch.made.dateDay || (act.kind === 'peg.looked' && isBefore(act.when, batch.made));
  if (isEarly) ask('before-it-was-made', [batch.id, act.id], { peg: batch.peg }, around);
  const change = (kind: Change['kind']) => batch.changes.push({ id: act.id, day, kind });
  switch (act.kind) {
    case 'peg.toppedUp': {
      const added = contentsOf(act.body, around.lots);
      batch.mass.toppedUpKg += massOf(added);
      batch.contents = together(batch.contents, added);
      batch.overrode = [...batch.overrode, ...(act.body.overrode ?? [])];
      reopen(batch);
      change('toppedUp');
      break;
    }
    case 'peg.split': {
      const taken = takeOut(batch, act, act.body.taken, 'splitOffKg', around);
      const child = opened(act, { contents: taken, column: 'filledKg', from: batch });
      batches.set(act.id, child);
      tookPlace(child, act.body, day);
      change('split');
      break;
    }
    case 'peg.moved':
      tookPlace(batch, act.body, day);
      change('moved');
      break;
    case 'peg.joined': {
      const from = batches.get(ref(act.body.from));
      if (from === undefined || from === batch) break;
      const taken = takeOut(from, act, act.body.taken, 'joinedAwayKg', around);
      from.changes.push({ id: act.id, day: around.days(from.filled, act.when), kind: 'poured-away' });
      batch.mass.joinedInKg += massOf(taken);
      batch.contents = together(batch.contents, taken);
      batch.overrode = [...batch.overrode, ...from.overrode];
      batch.joinedFrom.push(from.id);
      reopen(batch);
      change('joined');
      break;
    }
    case 'peg.spilled':
      takeOut(batch, act, act.body.lost, 'spilledKg', around);
      change('spilled');
      break;
    case 'peg.tipped':
      batch.tipped = together(batch.tipped, takeOut(batch, act, act.body.lost, 'tippedKg', around));
      change('tipped');
      break;
    case 'peg.looked':
      looked(batch, act, day);
      break;
    case 'peg.strained':
      strained(batch, act, day, around);
      break;
  }
}

interface Opening {
  readonly contents: Contents;
  readonly column: MassColumn;
  readonly from?: Open;
}

function opened(act: ActOf<'peg.filled'> | ActOf<'peg.split'>, { contents, column, from }: Opening): Open {
  const mass: Open['mass'] = {
    filledKg: 0,
    toppedUpKg: 0,
    joinedInKg: 0,
    splitOffKg: 0,
    joinedAwayKg: 0,
    spilledKg: 0,
    strainedKg: 0,
    tippedKg: 0,
    leftKg: 0,
  };
  mass[column] = massOf(contents);
  return {
    id: act.id,
    peg: act.body.peg,
    filled: from?.filled ?? act.when,
    filledBy: from?.filledBy ?? act.by,
    made: act.when,
    splitFrom: from?.id,
    plan: act.kind === 'peg.filled' ? act.body.plan : undefined,
    overrode: act.kind === 'peg.filled' ? (act.body.overrode ?? []) : (from?.overrode ?? []),
    joinedFrom: [],
    // What was seen before the split was seen of this liquid too.
    looks: [...(from?.looks ?? [])],
    strainings: [],
    changes: [],
    temperatures: [...(from?.temperatures ?? [])],
    mass,
    vessel: undefined,
    vesselName: undefined,
    lid: undefined,
    place: undefined,
    contents,
    tipped: NOTHING,
    ended: undefined,
    endedBy: undefined,
  };
}

/** Kilograms in the vessel by the sum of all acts so far. */
export function leftKg({ mass }: Pick<Open, 'mass'>): number {
  const inKg = mass.filledKg + mass.toppedUpKg + mass.joinedInKg;
  return inKg - mass.splitOffKg - mass.joinedAwayKg - mass.spilledKg - mass.strainedKg - mass.tippedKg;
}

/** Litres in the vessel: what is left by mass, at the litres per kilogram of what was put in. @arithmetic */
export function presentL(batch: Pick<Open, 'mass' | 'contents'>): number {
  const contentsKg = massOf(batch.contents);
  return contentsKg > 0 ? Math.max(0, (leftKg(batch) / contentsKg) * litresOf(batch.contents)) : 0;
}

/** Nothing is left in it: the first act that left nothing counts. */
function end(batch: Open, { id, when }: PegAct): void {
  if (batch.ended !== undefined) return;
  batch.ended = when;
  batch.endedBy = id;
}

/** Something was put in again. */
function reopen(batch: Open): void {
  batch.ended = undefined;
  batch.endedBy = undefined;
}

/** Takes an amount, or all there is, out of a batch as an even share; the column keeps where it went. */
function takeOut(
  batch: Open,
  act: PegAct,
  amount: Amount | undefined,
  column: MassColumn,
  around: PegSurroundings,
): Contents {
  const left = leftKg(batch);
  const contentsKg = massOf(batch.contents);
  const kgPerL = contentsKg > 0 ? contentsKg / litresOf(batch.contents) : LIQUID_KG_PER_L;
  const wanted =
    amount === undefined ? Math.max(0, left) : 'massKg' in amount ? amount.massKg : amount.volumeL * kgPerL;
  batch.mass[column] += wanted;
  checkLeft(batch, act, around);
  if (amount === undefined || Math.abs(leftKg(batch)) < GRAM_KG) end(batch, act);
  if (!(contentsKg > 0)) return NOTHING;
  const fraction = Math.min(1, wanted / contentsKg);
  const taken = share(batch.contents, fraction);
  batch.contents = share(batch.contents, 1 - fraction);
  return taken;
}

function strained(batch: Open, act: ActOf<'peg.strained'>, day: number, around: PegSurroundings): void {
  const { drained, solids, rest } = act.body;
  const solidsKg = solids?.massKg ?? 0;
  const offKg = drained.volumeL * LIQUID_KG_PER_L + solidsKg;
  const before = leftKg(batch);
  const emptied = rest === 'nothing';
  batch.mass.strainedKg += emptied ? before : offKg;
  if (emptied) end(batch, act);
  batch.strainings.push({
    id: act.id,
    day,
    when: act.when,
    by: act.by,
    drainedL: drained.volumeL,
    solidsKg,
    unexplainedKg: emptied ? before - offKg : undefined,
    body: act.body,
  });
  checkLeft(batch, act, around);
}

function looked(batch: Open, act: ActOf<'peg.looked'>, day: number): void {
  const { id, when, by, device, body } = act;
  batch.looks.push({ id, day, when, by, device, batch: batch.id, body });
  if (body.temperatureC !== undefined) batch.temperatures.push({ day, temperatureC: body.temperatureC });
}

function tookPlace(batch: Open, told: Body<'peg.moved'> | Body<'peg.filled'> | Body<'peg.split'>, day: number): void {
  batch.vessel = told.vessel ?? (told.vesselName === undefined ? batch.vessel : undefined);
  batch.vesselName = told.vesselName ?? (told.vessel === undefined ? batch.vesselName : undefined);
  batch.lid = told.lid ?? batch.lid;
  batch.place = told.place ?? batch.place;
  if ('temperatureC' in told && told.temperatureC !== undefined) {
    batch.temperatures.push({ day, temperatureC: told.temperatureC });
  }
}

function checkLeft(batch: Open, act: PegAct, around: PegSurroundings): void {
  const left = leftKg(batch);
  if (left >= -GRAM_KG) return;
  ask('more-out-than-in', [batch.id, act.id], { peg: batch.peg, overKg: -left }, around);
}

function ask(
  kind: Question['kind'],
  about: readonly string[],
  values: Question['values'],
  around: PegSurroundings,
): void {
  const settled = settle({ kind, about, values }, around.answers);
  if ('open' in settled) around.questions.push(settled.open);
}

/** Whether an act is one on a peg. */
export function isPegAct(act: Act): act is PegAct {
  return act.kind.startsWith('peg.');
}
