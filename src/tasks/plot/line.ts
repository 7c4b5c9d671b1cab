// Today on the line from scraps to beds: what stands at each stretch, and what of it wants a hand. Amounts come from
// the folded plot; the word for a peg and the dates of the shelf from the tasks beside this one. How it is drawn is
// the screen's; what wants a hand is line-hands.ts, the next round line-round.ts, shapes and sizes line-shapes.ts.

import type { Manner } from '#engine/quantity/format.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { State } from '#engine/souring/reason.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Lot } from '#journal/parts/stock.ts';
import { fileDueDays, type LastFile, unsavedElsewhere } from '#journal/unsaved.ts';
import type { Basin } from '#plot/place/basin.ts';
import type { PegName } from '#words/peg-name.ts';
import { counted } from './counted.ts';
import { fedM2, isTrial } from './fed-area.ts';
import { type Hand, handsOf } from './line-hands.ts';
import { pegsOnLine } from './line-pegs.ts';
import { type Round, roundOf } from './line-round.ts';
import { type Strip, standingBeds, stripsOf, volumeOfScrapsL } from './line-shapes.ts';
import type { PegHand } from './peg.ts';
import { bottlesStanding, leftIn, type ShelfBottle } from './shelf.ts';

/** The record as it is kept on this device, the last file of it that was read back, and the instant by this device's clock. */
export interface Kept {
  readonly entries: readonly { readonly id: string; readonly at: string }[];
  readonly lastFile: LastFile | undefined;
  readonly nowMs: number;
  /** In how many places the browser keeps it. */
  readonly places: 1 | 2;
}

/** What the line is asked: the plot, the local date and time, and how the record is kept; the demo's is not. */
export interface LineAsk {
  readonly plot: Plot;
  readonly now: string;
  readonly kept?: Kept | undefined;
}

/** Scraps in stock: those that may go into a vessel, those set aside, those for the heap alone. */
export interface ScrapsOnLine {
  readonly inKg: number;
  readonly asideKg: number;
  readonly heapOnlyKg: number;
  /** Loose, as they lie. */
  readonly inL: number;
  readonly asideL: number;
  /** Material of the greatest lot that may go in; undefined where it has no table row. */
  readonly material: string | undefined;
  /** Days since the oldest lot set aside was weighed. */
  readonly asideDays: number | undefined;
}

export interface PegOnLine {
  readonly batch: string;
  readonly peg: PegName;
  /** The number alone, as it is drawn. */
  readonly number: number;
  readonly day: number;
  readonly state: State;
  readonly held: boolean;
  readonly nextLookOn: string | undefined;
  readonly lookDue: boolean;
  readonly hand: PegHand | undefined;
  readonly vesselName: string | undefined;
  readonly basin: Basin;
  readonly presentL: number;
  readonly usableL: number;
}

/** One group of bottles filled alike. */
export interface BottlesOnLine {
  readonly id: string;
  readonly peg: PegName;
  readonly leftL: number;
  /** Undefined where it is no feed to keep. */
  readonly useFirstOn: string | undefined;
  readonly past: boolean;
  readonly ventDue: boolean;
  /** What stands in each, L, fullest first; empty ones too. */
  readonly eachL: readonly number[];
  readonly sizeL: number;
}

export interface LineView {
  /** Nothing was told or weighed yet. */
  readonly empty: boolean;
  readonly name: string | undefined;
  readonly today: string;
  readonly scraps: ScrapsOnLine;
  readonly pegs: readonly PegOnLine[];
  readonly bottles: { readonly leftL: Range; readonly groups: readonly BottlesOnLine[] };
  /** The can that the round is poured with: the largest one told; undefined where none was. */
  readonly canL: number | undefined;
  readonly round: Round;
  readonly beds: {
    readonly fedM2: number;
    readonly allM2: number;
    readonly pots: number;
    readonly strips: readonly Strip[];
  };
  readonly heap: { readonly fed: number; readonly lastOn: string | undefined };
  readonly keyholders: number;
  /** Date of the last file that was read back, null where none was, undefined where the record is not kept. */
  readonly lastFileOn: string | null | undefined;
  readonly hands: readonly Hand[];
}

/** The line as it stands at a local date and time. */
export function lineView({ plot: of, now, kept }: LineAsk): LineView {
  const plot = counted(of, now);
  const today = now.slice(0, 10);
  const pegs = pegsOnLine(plot, now);
  const bottles = bottlesStanding({ plot, now });
  const groups = bottles.map(bottlesOnLine);
  const round = roundOf(plot, now);
  const beds = standingBeds(plot);
  const cans = [...plot.cans.values()].filter((can) => can.gone !== true && (can.kind ?? 'can') === 'can');
  const canL = cans.reduce((most, { volume }) => Math.max(most, volume?.volumeL ?? 0), 0);
  const inTrial = ({ id }: { readonly id: string }) => isTrial(plot, id);
  return {
    empty: isEmpty(plot),
    name: plot.facts.name,
    today,
    scraps: scrapsOnLine([...plot.lots.values()], today),
    pegs,
    bottles: { leftL: leftIn(bottles), groups },
    canL: canL > 0 ? canL : undefined,
    round,
    beds: {
      fedM2: beds.filter((bed) => !inTrial(bed)).reduce((areaM2, bed) => areaM2 + fedM2(bed), 0),
      allM2: beds.reduce((areaM2, { facts }) => areaM2 + (facts.area?.areaM2 ?? 0), 0),
      pots: beds.reduce((count, { facts }) => count + (facts.pots?.count ?? 0), 0),
      strips: stripsOf(plot),
    },
    heap: { fed: plot.heapFed.length, lastOn: plot.heapFed.at(-1)?.when.on.slice(0, 10) },
    keyholders: plot.facts.keyholders?.length ?? 0,
    lastFileOn: kept === undefined ? undefined : (kept.lastFile?.on ?? null),
    hands: handsOf({ plot, pegs, groups, round, fileDue: kept !== undefined && isFileDue(kept) }),
  };
}

/** Whether entries have stood on this device alone for long enough to say so. */
function isFileDue({ entries, lastFile, nowMs, places }: Kept): boolean {
  return unsavedElsewhere(entries, { file: lastFile, nowMs, dueDays: fileDueDays(places) }).isDue;
}

/** The units a keyholder reads in; metric where they told none. */
export function mannerOf(plot: Plot, tag: string): Manner {
  return plot.facts.keyholders?.find((one) => one.tag === tag)?.units ?? 'metric';
}

/** Nothing that the line could show: no bed, vessel, scraps, batch. */
function isEmpty({ beds, vessels, lots, batches, cans }: Plot): boolean {
  return beds.size + vessels.size + lots.size + batches.size + cans.size === 0;
}

function scrapsOnLine(lots: readonly Lot[], today: string): ScrapsOnLine {
  const left = lots.filter(({ leftKg }) => leftKg > 0);
  const going = (goes: Lot['goes']) => left.filter((lot) => lot.goes === goes);
  const massKg = (of: readonly Lot[]) => of.reduce((sumKg, { leftKg }) => sumKg + leftKg, 0);
  const [into, aside] = [going('liquid'), going('set-aside')];
  const greatest = into.reduce<Lot | undefined>(
    (most, lot) => (lot.leftKg > (most?.leftKg ?? 0) ? lot : most),
    undefined,
  );
  const oldest = aside[0]?.act.when.dateDay;
  return {
    inKg: massKg(into),
    asideKg: massKg(aside),
    heapOnlyKg: massKg(going('compost-only')),
    inL: volumeOfScrapsL(into),
    asideL: volumeOfScrapsL(aside),
    material: greatest?.act.body.material,
    asideDays: oldest === undefined ? undefined : momentOf(today).dateDay - oldest,
  };
}

function bottlesOnLine({ id, peg, leftL, eachL, sizeL, useFirst, ventDue }: ShelfBottle): BottlesOnLine {
  const useFirstOn = useFirst.keeping === 'none' ? undefined : useFirst.likely;
  return { id, peg, leftL: leftL.likely, useFirstOn, past: useFirst.age === 'past', ventDue, eachL, sizeL };
}
