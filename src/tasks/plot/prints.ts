// What stands on paper: a tag for every bottle and standing pail, the card of the plot's cans for the shed wall, and the
// shed sheet. Facts of the other tasks, put together; where a batch gives no dose, none is printed.

import { pour } from '#engine/can/pour.ts';
import type { Ratio } from '#engine/quantity/ratio.ts';
import type { State } from '#engine/souring/reason.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { PegName } from '#words/peg-name.ts';
import { pegName } from './batch-name.ts';
import { counted } from './counted.ts';
import { onDay } from './dates.ts';
import { type Liquid, liquidsOf, usualLiquid } from './liquid.ts';
import { type PegView, standingPegs } from './peg.ts';
import { type PickBed, pickList } from './pick.ts';
import { cansOf, fillsFor, keyholderOf, toolsOf } from './pour.ts';
import { inWalkingOrder } from './round.ts';
import { bottlesStanding, type ShelfBottle, VENT_EVERY_DAYS } from './shelf.ts';
import { strengthFor } from './strength.ts';

export interface PrintAsk {
  readonly plot: Plot;
  readonly now: string;
  /** Whose spoons. */
  readonly tag?: string | undefined;
}

/** Plants named on a tag; the rest are "and more". */
const MOST_PLANTS = 2;

/** One tag: it hangs on a bottle, or on the vessel of a peg that stands. */
export interface Tag {
  readonly of: 'bottle' | 'vessel';
  readonly batch: string;
  readonly peg: number;
  /** The same with what tells it apart, where two batches carry it. */
  readonly said: PegName;
  /** Plants in it, the heaviest first: an id of the materials table, or a name. */
  readonly plants: readonly { readonly material: string | undefined; readonly name: string | undefined }[];
  readonly morePlants: boolean;
  readonly filledOn: string;
  readonly strainedOn: string | undefined;
  readonly litres: number;
  readonly state: State;
  readonly held: boolean;
  /** Undefined where nothing is poured from it, or it is no feed to keep. */
  readonly useFirstOn: string | undefined;
  readonly ratio: Ratio | undefined;
  readonly ventOn: string | undefined;
  /** Tags of beds that are eaten raw: never on their leaves. */
  readonly rawBeds: readonly string[];
}

/** A tag for every bottle with something in it, then for every peg that stands. */
export function tagsOf({ plot: of, now }: PrintAsk): readonly Tag[] {
  const plot = counted(of, now);
  const rawBeds = rawBedsOf(plot);
  const liquids = new Map(liquidsOf(plot, now).map((liquid) => [liquid.id, liquid]));
  const ofBottles = bottlesStanding({ plot, now }).flatMap((bottle) => {
    const batch = plot.batches.get(bottle.batch);
    const liquid = liquids.get(bottle.id);
    if (batch === undefined) return [];
    const tag = bottleTag({ plot, bottle, batch, liquid, rawBeds });
    return bottle.eachL.filter((litres) => litres > 0).map((litres) => ({ ...tag, litres }));
  });
  const ofPegs = standingPegs(plot, now).map((view) => vesselTag(plot, view, rawBeds));
  return [...ofBottles, ...ofPegs];
}

/** The tag of every bottle of a group. */
function bottleTag(of: {
  readonly plot: Plot;
  readonly bottle: ShelfBottle;
  readonly batch: Batch;
  readonly liquid: Liquid | undefined;
  readonly rawBeds: readonly string[];
}): Omit<Tag, 'litres'> {
  const { plot, bottle, batch, liquid, rawBeds } = of;
  const feeds = liquid?.state === 'ready';
  return {
    of: 'bottle',
    ...whatIsIn(plot, batch),
    strainedOn: batch.strainings.at(-1)?.when.on.slice(0, 10),
    state: liquid?.state ?? 'unknown',
    held: liquid?.held ?? false,
    useFirstOn: feeds && bottle.useFirst.keeping !== 'none' ? bottle.useFirst.likely : undefined,
    ratio: feeds ? strengthFor({ kind: 'matched' }, liquid.plantsGPerL)?.ratio : undefined,
    ventOn: onDay(momentOf(bottle.lastVentedOn).dateDay + VENT_EVERY_DAYS),
    rawBeds,
  };
}

function vesselTag(plot: Plot, { batch, state, held }: PegView, rawBeds: readonly string[]): Tag {
  return {
    of: 'vessel',
    ...whatIsIn(plot, batch),
    strainedOn: undefined,
    litres: batch.presentL,
    state,
    held,
    useFirstOn: undefined,
    ratio: undefined,
    ventOn: undefined,
    rawBeds,
  };
}

function whatIsIn(
  plot: Plot,
  batch: Batch,
): Pick<Tag, 'batch' | 'peg' | 'said' | 'plants' | 'morePlants' | 'filledOn'> {
  const plants = [...batch.contents.parts].sort((a, b) => b.massKg - a.massKg);
  return {
    batch: batch.id,
    peg: batch.peg,
    said: pegName(plot, batch),
    plants: plants.slice(0, MOST_PLANTS).map(({ material, name }) => ({ material, name })),
    morePlants: plants.length > MOST_PLANTS,
    filledOn: batch.filled.on.slice(0, 10),
  };
}

/** Beds that are eaten raw, and those of which nobody told. */
function rawBedsOf(plot: Plot): readonly string[] {
  return inWalkingOrder(plot)
    .filter(({ eaten }) => eaten !== 'cooked' && eaten !== 'not-eaten')
    .map(({ facts }) => facts.tag ?? facts.name ?? '');
}

/** One can of the card. */
export interface CardCan {
  readonly id: string;
  readonly name: string;
  readonly typed: string | undefined;
  readonly volumeL: number;
  readonly concentrateMl: number;
  /** Full jugs of it, and what goes to the mark after them. */
  readonly fills: ReturnType<typeof fillsFor>;
}

/** The card for the shed wall: the liquid that is in use, and what each can takes of it. */
export interface CanWallCard {
  readonly liquid: { readonly peg: PegName; readonly batch: string; readonly held: boolean } | undefined;
  readonly ratio: Ratio | undefined;
  readonly jugMl: number;
  readonly cans: readonly CardCan[];
  readonly rawBeds: readonly string[];
}

/** Cans on the card: what the plot owns, the smallest first. */
const MOST_CANS = 3;

export function canWallCard({ plot: of, now, tag }: PrintAsk): CanWallCard {
  const plot = counted(of, now);
  const liquid = usualLiquid(liquidsOf(plot, now));
  const usable = liquid?.state === 'ready' ? liquid : undefined;
  const ratio = usable && strengthFor({ kind: 'matched' }, usable.plantsGPerL)?.ratio;
  const { spoon } = keyholderOf(plot, tag ?? '');
  const { jugMl } = toolsOf(plot);
  const cans = cansOf(plot).flatMap(({ id, name, typed, volumeL }) => {
    if (volumeL === undefined || ratio === undefined) return [];
    const { dose } = pour({ strength: { kind: 'ratio', ratio }, canL: volumeL, way: 'soil', spoon: spoon ?? null });
    if (dose === undefined) return [];
    const { concentrateMl } = dose.perCan;
    return [{ id, name, typed, volumeL, concentrateMl, fills: fillsFor({ volumeMl: concentrateMl, toolMl: jugMl }) }];
  });
  return {
    liquid: usable && { peg: usable.peg, batch: usable.batch, held: usable.held },
    ratio,
    jugMl,
    cans: cans.slice(-MOST_CANS),
    rawBeds: rawBedsOf(plot),
  };
}

/** The sheet for the shed door. */
export interface ShedSheet {
  readonly name: string | undefined;
  readonly poisonLine: string | undefined;
  readonly children: boolean;
  readonly pegs: readonly PegView[];
  readonly bottles: readonly ShelfBottle[];
  readonly picks: readonly PickBed[];
}

export function shedSheet({ plot: of, now }: PrintAsk): ShedSheet {
  const plot = counted(of, now);
  return {
    name: plot.facts.name,
    poisonLine: plot.facts.poisonLine,
    children: plot.facts.present?.includes('children') === true,
    pegs: standingPegs(plot, now),
    bottles: bottlesStanding({ plot, now }),
    picks: pickList({ plot, now }),
  };
}
