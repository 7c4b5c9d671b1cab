// Bottles on the shelf today: litres left, dates to finish them, gas let out, and what was poured against what a round
// wants. Amounts left come from the folded plot; how long a feed keeps is the engine's. What may be poured is the can's.

import { type Keeping, useFirst } from '#engine/bottle/keep.ts';
import { pailFigure } from '#engine/pail/figures.ts';
import { point, type Range, sum } from '#engine/quantity/range.ts';
import type { Ratio } from '#engine/quantity/ratio.ts';
import { usual } from '#engine/scraps/usual.ts';
import type { State } from '#engine/souring/reason.ts';
import { citation } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { type Moment, momentOf } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { Bottle } from '#journal/parts/bottles.ts';
import type { PegName } from '#words/peg-name.ts';
import { pegNameOf } from './batch-name.ts';
import { ROUND_EVERY_DAYS } from './between-feeds.ts';
import { counted } from './counted.ts';
import { onDay } from './dates.ts';
import { roundOf } from './line-round.ts';
import { pegWord } from './peg.ts';

/** What the shelf is asked: the plot, and the local date and time. */
export interface ShelfAsk {
  readonly plot: Plot;
  readonly now: string;
}

/** Days without a vent after which a bottle wants a hand; a bottle that vents by itself is looked at too. @practice our caution, no source */
export const VENT_EVERY_DAYS = 7;
/** Days before the date within which a bottle is used before all others. @practice our caution, no source */
const SOON_DAYS = 14;

/** 'past' = after its date · 'soon' = within a fortnight of it · 'no-date' = not a feed to keep. */
export type Age = 'in-date' | 'soon' | 'past' | 'no-date';

/** The dates of one group of bottles: use it first by `likely`, between `low` and `high`. */
export interface UseFirstDates {
  readonly keeping: Keeping;
  /** Days from the straining. */
  readonly days: Range;
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly daysLeft: number;
  readonly age: Age;
  /** What the dates rest on, as used. */
  readonly ph: number | undefined;
  readonly temperatureC: number;
  readonly temperatureTold: boolean;
  readonly state: State;
}

/** One opened or unopened bottle of a group, fullest first. */
export interface ShelfBottle {
  readonly id: string;
  readonly peg: PegName;
  readonly batch: string;
  readonly label: string | undefined;
  readonly place: string | undefined;
  readonly cap: Body<'bottle.filled'>['cap'];
  readonly material: Body<'bottle.filled'>['material'];
  readonly count: number;
  /** What one holds to the brim. */
  readonly sizeL: number;
  readonly filledL: number;
  readonly leftL: Range;
  /** Litres in each bottle, fullest first, as if they were emptied one after the other. */
  readonly eachL: readonly number[];
  readonly filledOn: string;
  readonly useFirst: UseFirstDates;
  readonly vents: readonly {
    readonly on: string;
    readonly by: string;
    readonly found: Body<'bottle.vented'>['found'];
  }[];
  readonly lastVentedOn: string;
  readonly ventDue: boolean;
}

/** What one round over the beds takes, and how many the shelf holds. */
export interface RoundWant {
  /** Diluted feed on the beds and pots of the next round, litres. */
  readonly dilutedL: number;
  /** Concentrate for that; undefined where there is nothing to pour. */
  readonly concentrateL: number | undefined;
  /** As the can mixes it, matched to the strength aimed at. */
  readonly ratio: Ratio | undefined;
  readonly aimGPerL: number;
  /** Whole rounds that the litres cover before they are past their dates; undefined where that is not known. */
  readonly rounds: number | undefined;
  readonly everyDays: number;
  /** Source of the strength aimed at. */
  readonly source: string;
}

export interface ShelfView {
  readonly bottles: readonly ShelfBottle[];
  readonly leftL: Range;
  /** Litres left that are in date and of a batch neither lost nor unknown. */
  readonly inDateL: number;
  readonly emptied: readonly {
    readonly id: string;
    readonly peg: PegName;
    readonly on: string;
    readonly filledL: number;
  }[];
  readonly round: RoundWant | undefined;
}

/** The bottles that stand, those to be used first at the front. */
export function bottlesStanding({ plot: of, now }: ShelfAsk): readonly ShelfBottle[] {
  const plot = counted(of, now);
  const number = ({ id }: ShelfBottle) => plot.bottles.get(id)?.peg ?? 0;
  return [...plot.bottles.values()]
    .filter(({ emptied }) => emptied === undefined)
    .map((bottle) => shelfBottle(bottle, plot, now))
    .sort((a, b) => compare(a.useFirst.likely, b.useFirst.likely) || number(a) - number(b) || compare(a.id, b.id));
}

/** Litres left in bottles. @arithmetic sum of the ranges */
export function leftIn(bottles: readonly ShelfBottle[]): Range {
  return bottles.length > 0 ? sum(bottles.map(({ leftL }) => leftL)) : point(0);
}

/** The shelf as it stands. */
export function shelf({ plot: of, now }: ShelfAsk): ShelfView {
  const plot = counted(of, now);
  const bottles = bottlesStanding({ plot, now });
  const inDate = bottles.filter(({ useFirst: { age } }) => age === 'in-date' || age === 'soon');
  const inDateL = inDate.reduce((litres, { leftL }) => litres + leftL.likely, 0);
  return {
    bottles,
    leftL: leftIn(bottles),
    inDateL,
    emptied: [...plot.bottles.values()].flatMap(({ id, peg, batch, emptied, filledL }) =>
      emptied === undefined ? [] : [{ id, peg: pegNameOf(plot, batch) ?? peg, on: emptied.on, filledL }],
    ),
    round: roundWant(plot, now, inDate),
  };
}

function shelfBottle(bottle: Bottle, plot: Plot, now: string): ShelfBottle {
  const { body } = bottle.act;
  const sizeL = Math.max(body.size?.volumeL ?? 0, body.filled.volumeL);
  const sinceVentDays = momentOf(now).dateDay - bottle.lastVented.dateDay;
  return {
    id: bottle.id,
    peg: pegNameOf(plot, bottle.batch) ?? bottle.peg,
    batch: bottle.batch,
    label: body.label,
    place: body.place,
    cap: body.cap,
    material: body.material,
    count: bottle.count,
    sizeL,
    filledL: bottle.filledL,
    leftL: bottle.leftL,
    eachL: eachOf(bottle.leftL.likely, bottle.count, body.filled.volumeL),
    filledOn: bottle.act.when.on,
    useFirst: useFirstDates(bottle, plot, now),
    vents: bottle.vents.map(({ when, by, body: { found } }) => ({ on: when.on, by, found })),
    lastVentedOn: bottle.lastVented.on,
    ventDue: sinceVentDays >= VENT_EVERY_DAYS,
  };
}

/** Litres in each bottle where one is emptied before the next is opened. @arithmetic */
function eachOf(leftL: number, count: number, fullL: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => Math.min(fullL, Math.max(0, leftL - i * fullL)));
}

/** The dates of a group of bottles, from the straining its liquid came from. */
export function useFirstDates(bottle: Bottle, plot: Plot, now: string): UseFirstDates {
  const batch = plot.batches.get(bottle.batch);
  const from = bottle.strained ?? bottle.act.when;
  const then = batch && pegWord({ plot, batch, now: from.on });
  const state = then?.state ?? 'unknown';
  const ph = batch && phAt(batch, from);
  const told = bottle.act.body.temperatureC ?? then?.temperature?.meanC;
  const temperatureC = told ?? usual('bottle.temperatureC').likely;
  const found = useFirst({
    finalPh: ph ?? Number.NaN,
    temperatureC,
    sound: state !== 'lost' && state !== 'unknown',
  });
  const likelyDay = from.dateDay + Math.floor(found.days.likely);
  const daysLeft = likelyDay - momentOf(now).dateDay;
  return {
    keeping: found.keeping,
    days: found.days,
    low: onDay(from.dateDay + Math.floor(found.days.low)),
    likely: onDay(likelyDay),
    high: onDay(from.dateDay + Math.floor(found.days.high)),
    daysLeft,
    age: found.keeping === 'none' ? 'no-date' : daysLeft < 0 ? 'past' : daysLeft <= SOON_DAYS ? 'soon' : 'in-date',
    ph,
    temperatureC,
    temperatureTold: told !== undefined,
    state,
  };
}

/** The word for a batch as it stood at a moment: what was bottled then stays what it was. */
export function stateAt(batch: Batch, at: Moment, plot: Plot): State {
  return pegWord({ plot, batch, now: at.on }).state;
}

/** Acidity at straining as read then, else as last read before it; the higher of the two counts. */
function phAt(batch: Batch, at: Moment): number | undefined {
  const strained = batch.strainings.findLast(({ when }) => when.wallMinute <= at.wallMinute)?.body.acidity?.ph;
  const looked = batch.looks.findLast(
    ({ when, body }) => body.acidity !== undefined && when.wallMinute <= at.wallMinute,
  )?.body.acidity?.ph;
  return strained ?? looked;
}

/**
 * The next round over the beds as the can pours it, and how many such rounds the shelf holds.
 * @arithmetic litres of feed × share of concentrate
 */
function roundWant(plot: Plot, now: string, bottles: readonly ShelfBottle[]): RoundWant | undefined {
  const { dueL, dueConcentrateL: concentrateL, ratio, on = now } = roundOf(plot, now);
  if (!(dueL > 0)) return undefined;
  const aim = pailFigure('strength', 'leafStrengthGPerL');
  return {
    dilutedL: dueL,
    concentrateL,
    ratio,
    aimGPerL: aim.likely,
    rounds:
      concentrateL !== undefined && concentrateL > 0
        ? roundsInTime(bottles, concentrateL, momentOf(on).dateDay - momentOf(now).dateDay)
        : undefined,
    everyDays: ROUND_EVERY_DAYS,
    source: citation(aim.source),
  };
}

/**
 * Whole rounds that can be poured before the bottles are past their dates: one on the first day and one every fortnight
 * after it, each from the bottles of the nearest date.
 * @arithmetic litres left in date on each day, less what the rounds before it took
 */
function roundsInTime(bottles: readonly ShelfBottle[], concentrateL: number, firstDays: number): number {
  const left = bottles.map(({ leftL, useFirst: { daysLeft } }) => ({ litres: leftL.likely, daysLeft }));
  for (let rounds = 0; ; rounds++) {
    const inDate = left.filter(({ daysLeft }) => daysLeft >= firstDays + rounds * ROUND_EVERY_DAYS);
    let wanted = concentrateL;
    for (const bottle of inDate) {
      const poured = Math.min(wanted, bottle.litres);
      bottle.litres -= poured;
      wanted -= poured;
    }
    // Litres are sums: what is short by less than a drop is no shortage.
    if (wanted > 1e-9) return rounds;
  }
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a === b ? 0 : 1;
}
