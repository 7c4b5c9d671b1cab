// One peg as it stands at a moment: what is in it, the word for it with its reasons, its readings with what they can
// be trusted to, when it wants to be looked at, and which acts are open. The judgement is the engine's; this file
// hands it the record and puts dates to its days. Sentences are words/en/look.ts and peg.ts.

import type { ShapeKind } from '#engine/pail/shape.ts';
import { type Layer, upToFillLineL } from '#engine/pail/volume.ts';
import type { Values } from '#engine/rules/rule.ts';
import type { Judgement } from '#engine/souring/judge.ts';
import { alarmLines } from '#engine/souring/lines.ts';
import type { Look } from '#engine/souring/look.ts';
import type { ReasonCode, State } from '#engine/souring/reason.ts';
import type { Plot } from '#journal/fold.ts';
import { daysIn, type Moment, momentOf } from '#journal/moment.ts';
import type { Batch, BatchLook } from '#journal/parts/batch.ts';
import type { Bottle } from '#journal/parts/bottles.ts';
import { layersOf } from '#plot/batch/layers.ts';
import { basinOf } from '#plot/place/basin.ts';
import type { PegName } from '#words/peg-name.ts';
import { pegName } from './batch-name.ts';
import { bottlesOfBatch } from './bottles-of.ts';
import { counted } from './counted.ts';
import { onDay } from './dates.ts';
import { type PegReading, seenUntil } from './peg-seen.ts';
import { meanTemperatureC, type Stood, stoodFor, type Told } from './peg-temperature.ts';

/** From here on it is too warm for what sours it. @our-caution */
export const TOO_WARM_C = 35;
const MINUTES_A_DAY = 1440;

/** An alarm line of this batch: above `ph` after that day it is late. */
export interface AlarmPoint {
  readonly ph: number;
  readonly day: number;
  readonly on: string;
}

export type PegAct = 'look' | 'strain' | 'feed' | 'topUp' | 'move' | 'split' | 'join' | 'spill' | 'tip';
/** Why it wants a hand today. */
export type PegHand = 'lost' | 'too-warm' | 'ask-again' | 'look-due';

export interface PegVessel {
  readonly id: string | undefined;
  readonly name: string | undefined;
  /** Undefined where nobody told it. */
  readonly volumeL: number | undefined;
  readonly usableL: number | undefined;
  readonly kind: ShapeKind;
  readonly lid: Batch['lid'];
  readonly place: string | undefined;
}

export interface PegView {
  readonly batch: Batch;
  readonly id: string;
  /** As it is said; the number that hangs on it is the batch's. */
  readonly peg: PegName;
  readonly filledOn: string;
  /** Calendar days since the filling. */
  readonly day: number;
  readonly vessel: PegVessel;
  readonly layers: readonly Layer[];
  /** Mean since the filling, and as last told; undefined where nobody measured. */
  readonly temperature: { readonly meanC: number; readonly lastC: number; readonly told: readonly Stood[] } | undefined;
  readonly judgement: Judgement;
  /** The looks as the judgement took them, and the day it is for: that of the end for one that was emptied. */
  readonly judged: readonly Look[];
  readonly judgedDay: number;
  /** Why, and what would change it (nothing once it is empty), with days as the calendar counts them from the filling. */
  readonly reasons: Judgement['reasons'];
  readonly wouldChange: Judgement['wouldChange'];
  readonly state: State;
  /** Held today; for a strained batch the time in bottles that vent counts. */
  readonly held: boolean;
  /** Date from which it counts as held if nothing turns. */
  readonly heldOn: string | undefined;
  readonly nextLookOn: string | undefined;
  readonly lookDue: boolean;
  readonly hand: PegHand | undefined;
  readonly readings: readonly PegReading[];
  readonly looks: readonly BatchLook[];
  readonly alarm: readonly AlarmPoint[];
  readonly endedOn: string | undefined;
  readonly acts: readonly PegAct[];
  /** What is to be done with a lost batch: pressure let off first where its lid was tight or bulged. */
  readonly disposal: { readonly ventFirst: boolean } | undefined;
}

export interface PegAsk {
  readonly plot: Plot;
  readonly batch: Batch;
  /** Local date, or local date and time, in the plot's zone. */
  readonly now: string;
}

/** The batch of an address: by its id, or by its peg number, as a tag has it; of several the one made last. */
export function batchNamed(plot: Plot, named: string | undefined): Batch | undefined {
  const byId = plot.batches.get(named ?? '');
  return byId ?? [...plot.batches.values()].findLast(({ peg }) => String(peg) === named);
}

/** The word for a batch at a moment and what it rests on: what a list of many asks, without the rest of a peg's sheet. */
export interface PegWord {
  readonly at: Moment;
  readonly looks: readonly BatchLook[];
  /** Looks whose date cannot be. */
  readonly doubtful: readonly BatchLook[];
  readonly readings: readonly PegReading[];
  readonly ended: Moment | undefined;
  readonly temperature: PegView['temperature'];
  readonly judged: readonly Look[];
  readonly judgedDay: number;
  readonly judgement: Judgement;
  readonly state: State;
  readonly held: boolean;
  readonly heldOn: string | undefined;
}

/** The word for a batch at a moment; what is dated after that day is left out. */
export function pegWord({ plot, batch, now }: PegAsk): PegWord {
  const at = momentOf(now);
  const days = daysIn(plot.facts.timeZone);
  const seen = seenUntil(batch, at);
  const { looks, doubtful, readings, judged, lastDay } = seen;
  // A look of today counts today, whatever hour another phone wrote down.
  const today = Math.max(days(batch.filled, at), lastDay);
  const ended = batch.ended !== undefined && batch.ended.dateDay <= at.dateDay ? batch.ended : undefined;
  const endedDay = ended && days(batch.filled, ended);
  const judgedDay = endedDay === undefined ? today : Math.min(today, Math.max(endedDay, lastDay));
  const bottles = bottlesOfBatch(plot, batch.id);
  const temperature = temperatureOf(batch, endedDay === undefined ? [] : bottledAt(bottles, endedDay), today);
  const meanC = temperature?.meanC ?? Number.NaN;
  const judgement = seen.judge({ day: judgedDay, meanC });
  const surely = batch.presentUntilDay;
  const { state, heldFromDay } = judgement;
  const vents = bottles.length > 0 && bottles.every(({ act }) => act.body.cap !== 'screw');
  const held =
    (judgement.held && (surely === undefined || seen.judgeSure({ day: Math.min(judgedDay, surely), meanC }).held)) ||
    ((ended !== undefined || surely !== undefined) && vents && state === 'ready' && today >= (heldFromDay ?? Infinity));
  const heldOn = heldFromDay === undefined ? undefined : dateOfDay(batch.filled, heldFromDay);
  return { at, looks, doubtful, readings, ended, temperature, judged, judgedDay, judgement, state, held, heldOn };
}

/** A peg at a moment; what is dated after that day is left out. */
export function pegView(ask: PegAsk): PegView {
  const { plot, batch } = ask;
  const word = pegWord(ask);
  const { at, looks, doubtful, readings, ended, temperature, judged, judgedDay, judgement, state, held, heldOn } = word;
  const nextLookOn =
    ended === undefined && judgement.nextLookDay !== undefined
      ? laterOf(dateOfDay(batch.filled, judgement.nextLookDay), onDay(at.dateDay))
      : undefined;
  const lookDue = nextLookOn !== undefined && nextLookOn <= onDay(at.dateDay);
  const lost = state === 'lost' && ended === undefined;
  return {
    batch,
    id: batch.id,
    peg: pegName(plot, batch),
    filledOn: batch.filled.on,
    day: at.dateDay - batch.filled.dateDay,
    vessel: vesselOf(plot, batch),
    layers: layersOf(batch),
    temperature,
    judgement,
    judged,
    judgedDay,
    reasons: reasonsOf(judgement, held).map((one) => ({ ...one, values: onCalendar(one.values, batch.filled) })),
    wouldChange:
      ended === undefined
        ? judgement.wouldChange.map((one) => ({ ...one, values: onCalendar(one.values, batch.filled) }))
        : [],
    state,
    held,
    heldOn,
    nextLookOn,
    lookDue,
    hand: ended === undefined ? handOf({ state, lookDue, lastC: temperature?.lastC }) : undefined,
    readings,
    looks: withDoubtful(batch, looks, doubtful),
    alarm: alarmLines(temperature?.meanC ?? Number.NaN)
      .filter((line) => Number.isFinite(line.days))
      .map((line) => ({ ph: line.ph, day: line.days, on: dateOfDay(batch.filled, line.days) })),
    endedOn: ended?.on,
    acts: actsFor(state, ended !== undefined),
    disposal: lost
      ? { ventFirst: batch.lid === 'tight' || [...looks, ...doubtful].some(({ body }) => body.lidBulged === true) }
      : undefined,
  };
}

/** The looks as they are listed; a reading at straining is listed as such. */
function withDoubtful(batch: Batch, looks: readonly BatchLook[], doubtful: readonly BatchLook[]): readonly BatchLook[] {
  if (doubtful.length === 0) return looks;
  const strained = new Set(batch.strainings.map(({ id }) => id));
  return [...looks, ...doubtful.filter(({ id }) => !strained.has(id))].sort(
    (a, b) => a.when.wallMinute - b.when.wallMinute,
  );
}

/** Every peg that still stands at a moment, in the order they were made. */
export function standingPegs(of: Plot, now: string): readonly PegView[] {
  const plot = counted(of, now);
  const { dateDay } = momentOf(now);
  const stands = ({ made, ended }: Batch) =>
    made.dateDay <= dateDay && !(ended !== undefined && ended.dateDay <= dateDay);
  return [...plot.batches.values()].filter(stands).map((batch) => pegView({ plot, batch, now }));
}

function temperatureOf(batch: Batch, bottled: readonly Told[], untilDay: number): PegView['temperature'] {
  const told = [...batch.temperatures, ...bottled].filter(({ day }) => day <= untilDay);
  const lastC = told.at(-1)?.temperatureC;
  return lastC === undefined
    ? undefined
    : { meanC: meanTemperatureC(told, untilDay), lastC, told: stoodFor(told, untilDay) };
}

/** The shelf goes on where the pail ended; of several places the coolest counts. @our-caution */
function bottledAt(bottles: readonly Bottle[], day: number): readonly Told[] {
  const told = bottles.flatMap(({ act }) => act.body.temperatureC ?? []);
  return told.length === 0 ? [] : [{ day, temperatureC: Math.min(...told) }];
}

function vesselOf(plot: Plot, batch: Batch): PegVessel {
  const facts = batch.vessel === undefined ? undefined : plot.vessels.get(batch.vessel);
  const volumeL = facts?.volume?.volumeL;
  return {
    id: batch.vessel,
    name: facts?.name ?? batch.vesselName,
    volumeL,
    usableL: volumeL === undefined ? undefined : upToFillLineL({ volumeL, gasRoomFraction: facts?.gasRoomFraction }),
    kind: basinOf(facts, batch.presentL).shape.kind,
    lid: batch.lid ?? facts?.lid,
    place: batch.place ?? facts?.place,
  };
}

interface Situation {
  readonly state: State;
  readonly lookDue: boolean;
  readonly lastC: number | undefined;
}

function handOf({ state, lookDue, lastC }: Situation): PegHand | undefined {
  if (state === 'lost') return 'lost';
  if (lastC !== undefined && lastC >= TOO_WARM_C) return 'too-warm';
  if (!lookDue) return undefined;
  return state === 'doubtful' ? 'ask-again' : 'look-due';
}

/** Nothing is fed, strained or mixed from a lost batch; nothing is fed unless it is ready. */
function actsFor(state: State, ended: boolean): readonly PegAct[] {
  if (ended) return state === 'ready' ? ['feed'] : [];
  if (state === 'lost') return ['look', 'tip', 'move', 'spill'];
  const rest: readonly PegAct[] = ['topUp', 'move', 'split', 'join', 'spill', 'tip'];
  return state === 'ready' ? ['look', 'strain', 'feed', ...rest] : ['look', 'strain', ...rest];
}

/** The date on which a day since a moment falls; parts of a day count from the moment's own time. @arithmetic */
export function dateOfDay(from: Moment, day: number): string {
  return onDay(Math.floor((from.wallMinute + day * MINUTES_A_DAY) / MINUTES_A_DAY));
}

/** Advice on tending it: of no use to a lost batch. */
const TENDING: readonly ReasonCode[] = ['larvae', 'flat-white', 'white-fuzz-once'];

/** The judgement's reasons; where the time in bottles made it held since, they say so. */
function reasonsOf({ state, reasons }: Judgement, held: boolean): Judgement['reasons'] {
  return reasons
    .filter(({ code }) => state !== 'lost' || !TENDING.includes(code))
    .map((one) => (held && one.code === 'acid-since' ? { ...one, code: 'held' as const } : one));
}

/** Hours are for the judgement; a grower counts days on the calendar. */
function onCalendar(values: Values, filled: Moment): Values {
  const day = (value: number) =>
    Math.floor((filled.wallMinute + value * MINUTES_A_DAY) / MINUTES_A_DAY) - filled.dateDay;
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      /(?:^d|D)ay$/.test(name) && typeof value === 'number' ? day(value) : value,
    ]),
  );
}

function laterOf(a: string, b: string): string {
  return a > b ? a : b;
}
