// A vessel filled: what there is to fill it with, whether the weights as they really went in still fit and turn sour,
// and the act itself with its plan beside it. The answer is the word `fit`; how the sheet asks for it is the screen's.

import type { ShapeKind } from '#engine/pail/shape.ts';
import { withStarter } from '#engine/pail/volume.ts';
import type { KeptMass, KeptVolume } from '#engine/quantity/kept.ts';
import { assumedOfAlkalinity, usual } from '#engine/scraps/usual.ts';
import { judgeBatch } from '#engine/souring/judge.ts';
import { alarmLines } from '#engine/souring/lines.ts';
import type { State } from '#engine/souring/reason.ts';
import { material } from '#engine/tables/index.ts';
import type { Working } from '#engine/working/working.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import type { BatchPart } from '#journal/parts/contents.ts';
import { answeredByBeans, type Lot } from '#journal/parts/stock.ts';
import { basinOf } from '#plot/place/basin.ts';
import type { PegName } from '#words/peg-name.ts';
import { explainFit, type FitResult, fit } from '../fit.ts';
import type { Problem } from '../problem.ts';
import { pegName, pegNameOf } from './batch-name.ts';
import { onDay } from './dates.ts';
import { type FillJudged, judgedFill, type Overrode } from './fill-cautions.ts';
import { barredIn, keptOut, LEAST_KG, nameOf, type StockKept, stockKept } from './kept-out.ts';
import { stateAt } from './shelf.ts';

const LEAST_L = 0.05;

/** A lot of the stock that may go in. */
export interface LotOffer {
  readonly id: string;
  readonly material: string | undefined;
  readonly name: string;
  readonly leftKg: number;
  readonly treated: BatchPart['treated'];
}

export interface VesselOffer {
  readonly id: string;
  readonly name: string;
  readonly volumeL: number;
  /** Undefined where nobody told it. */
  readonly gasRoomFraction: number | undefined;
  readonly shape: ShapeKind;
  readonly lid: Body<'peg.filled'>['lid'];
  readonly place: string | undefined;
  /** The peg that stands in it now. */
  readonly peg: PegName | undefined;
}

export interface WaterOffer {
  readonly id: string;
  readonly source: Body<'water.reported'>['source'];
  readonly name: string | undefined;
  readonly alkalinityMeqPerL: number | undefined;
}

/** An earlier batch or a bottle of it, neither lost nor in doubt, that a starter can be taken from. */
export interface StarterOffer {
  readonly id: string;
  readonly peg: PegName;
  readonly leftL: number;
  readonly in: 'bottle' | 'pail';
}

export interface FillOffers extends StockKept {
  readonly vessels: readonly VesselOffer[];
  readonly lots: readonly LotOffer[];
  readonly waters: readonly WaterOffer[];
  readonly starters: readonly StarterOffer[];
  readonly nextPeg: number;
  /** Peg numbers that hang on a vessel now. */
  readonly pegsInUse: readonly number[];
}

/** What there is to fill a vessel with. */
export function fillOffers({ plot, now }: { readonly plot: Plot; readonly now: string }): FillOffers {
  const standing = [...plot.batches.values()].filter(({ ended }) => ended === undefined);
  const used = [...plot.batches.values()].map(({ peg }) => peg);
  const lots = [...plot.lots.values()].filter(({ leftKg }) => leftKg >= LEAST_KG);
  return {
    vessels: vesselsOf(plot),
    lots: lots.filter((lot) => keptOut(lot) === undefined).map(lotOffer),
    ...stockKept(plot),
    waters: plot.waters.map(({ id, body }) => ({
      id,
      source: body.source,
      name: body.name,
      alkalinityMeqPerL: body.alkalinity?.alkalinityMeqPerL,
    })),
    starters: startersOf(plot, now),
    nextPeg: used.reduce((most, peg) => Math.max(most, peg), 0) + 1,
    pegsInUse: standing.map(({ peg }) => peg),
  };
}

function vesselsOf(plot: Plot): readonly VesselOffer[] {
  return [...plot.vessels.values()].flatMap((vessel) => {
    const volumeL = vessel.volume?.volumeL;
    if (vessel.gone === true || volumeL === undefined) return [];
    const standing = [...plot.batches.values()].find((one) => one.vessel === vessel.id && one.ended === undefined);
    const name = vessel.name ?? '';
    return [
      {
        id: vessel.id,
        name,
        volumeL,
        gasRoomFraction: vessel.gasRoomFraction,
        shape: basinOf(vessel, 0).shape.kind,
        lid: vessel.lid,
        place: vessel.place,
        peg: pegNameOf(plot, standing?.id),
      },
    ];
  });
}

function lotOffer(lot: Lot): LotOffer {
  const { body } = answeredByBeans(lot.act, lot.tests);
  return { id: lot.id, material: body.material, name: nameOf(lot), leftKg: lot.leftKg, treated: body.slip?.treated };
}

/** Sound feed that a starter can be taken from, the youngest first. */
function startersOf(plot: Plot, now: string): readonly StarterOffer[] {
  const sound = (state: State) => state === 'ready' || state === 'souring';
  const found: (StarterOffer & { readonly minute: number })[] = [];
  for (const bottle of plot.bottles.values()) {
    const batch = plot.batches.get(bottle.batch);
    if (batch === undefined || bottle.emptied !== undefined || !(bottle.leftL.low >= LEAST_L)) continue;
    const at = bottle.strained ?? bottle.act.when;
    if (stateAt(batch, at, plot) !== 'ready') continue;
    const { id, leftL } = bottle;
    found.push({ id, peg: pegName(plot, batch), leftL: leftL.low, in: 'bottle', minute: at.wallMinute });
  }
  for (const batch of plot.batches.values()) {
    if (batch.ended !== undefined || !(batch.presentL >= LEAST_L) || !sound(stateAt(batch, momentOf(now), plot)))
      continue;
    if (stateAt(batch, momentOf(now), plot) !== 'ready') continue;
    const { id, presentL } = batch;
    found.push({ id, peg: pegName(plot, batch), leftL: presentL, in: 'pail', minute: batch.made.wallMinute });
  }
  return found.sort((a, b) => b.minute - a.minute).map(({ minute: _, ...offer }) => offer);
}

/** One lot that goes in: what was planned, and what the scale said. */
export interface FillPart {
  readonly lot?: string | undefined;
  readonly material?: string | undefined;
  readonly name?: string | undefined;
  readonly treated?: BatchPart['treated'];
  readonly plannedKg?: number | undefined;
  readonly actual?: KeptMass | undefined;
}

/** Everything of one filling, planned and actual, in SI beside what was typed. */
export interface FillAsk {
  readonly vessel: {
    readonly id?: string | undefined;
    readonly volumeL: number;
    readonly gasRoomFraction?: number | undefined;
  };
  readonly lid?: Body<'peg.filled'>['lid'];
  readonly parts: readonly FillPart[];
  readonly water: {
    readonly report?: string | undefined;
    readonly source?: string | undefined;
    readonly alkalinityMeqPerL?: number | undefined;
    readonly plannedL?: number | undefined;
    readonly actual?: KeptVolume | undefined;
  };
  readonly sugar?:
    | {
        readonly product: string;
        readonly plannedKg?: number | undefined;
        readonly actual?: KeptMass | undefined;
      }
    | undefined;
  readonly starter?: { readonly from?: string | undefined; readonly volume: KeptVolume } | undefined;
  /** Reasons for passing over stops that are a matter of judgement, by the id of the rule. */
  readonly passed?: Readonly<Record<string, string>> | undefined;
}

export interface FillAnswer extends FillJudged {
  readonly fit: FitResult;
  /** Things not weighed yet that the answer counts as planned. */
  readonly asPlanned: number;
  /** What may not go into any batch, each with its reason: while one is named here nothing is filled. */
  readonly barred: readonly string[];
}

export type Filled =
  | { readonly ok: true; readonly value: FillAnswer }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The answer of `fit` with the weights as they went in; what is not weighed yet counts as planned. The starter counts
 * as water that takes up no acid: its own acid is left out, so that sugar is rather over- than under-asked.
 */
export function fillAnswer(plot: Plot, ask: FillAsk): Filled {
  const answer = fit(questionOf(plot, ask));
  if (!answer.ok) return answer;
  return {
    ok: true,
    value: {
      fit: {
        ...answer.value,
        layers: withStarter(answer.value.layers, starterOf(ask)),
        // `fit` is asked with what water and starter take up together, so that it knows nothing of what was told.
        assumed: [...assumedOfAlkalinity(ask.water.alkalinityMeqPerL), ...answer.value.assumed],
      },
      asPlanned: asPlanned(ask),
      ...judgedFill(plot, ask, answer.value),
      barred: barredIn(plot, ask.parts),
    },
  };
}

/** The workings of the answer. */
export function explainFill(plot: Plot, ask: FillAsk): readonly Working[] {
  return explainFit(questionOf(plot, ask));
}

function questionOf(plot: Plot, ask: FillAsk): unknown {
  const waterL = ask.water.actual?.volumeL ?? ask.water.plannedL ?? 0;
  const starterL = starterOf(ask);
  const volumeL = waterL + starterL;
  const alkalinityMeqPerL = ask.water.alkalinityMeqPerL ?? usual('water.alkalinityMeqPerL').likely;
  const { lid } = ask;
  const sugarKg = ask.sugar && (ask.sugar.actual?.massKg ?? ask.sugar.plannedKg ?? 0);
  return {
    vessel: {
      volumeL: ask.vessel.volumeL,
      gasRoom: ask.vessel.gasRoomFraction,
      // A vessel without any lid is as open as one under a loose lid.
      ...(lid === undefined ? {} : { lid: lid === 'none' ? 'loose' : lid }),
    },
    plants: ask.parts.flatMap((part) => {
      const massKg = part.actual?.massKg ?? part.plannedKg;
      return massKg === undefined ? [] : [{ ...portionOf(plot, part), massKg }];
    }),
    water: { volumeL, alkalinityMeqPerL: volumeL > 0 ? (alkalinityMeqPerL * waterL) / volumeL : alkalinityMeqPerL },
    ...(ask.sugar === undefined ? {} : { sugar: { product: ask.sugar.product, massKg: sugarKg } }),
  };
}

/** What `fit` takes of a part; a lot of the stock brings its kind, its analysis and its answer about weedkiller. */
function portionOf(plot: Plot, part: FillPart) {
  const lot = part.lot === undefined ? undefined : plot.lots.get(part.lot)?.act.body;
  const id = part.material ?? lot?.material;
  const name = part.name ?? lot?.name;
  // A lot answers for itself, beans included; a part without one by what was asked on the sheet.
  const stock = part.lot === undefined ? undefined : plot.lots.get(part.lot);
  const treated = stock ? answeredByBeans(stock.act, stock.tests).body.slip?.treated : part.treated;
  return {
    ...(lot?.analysis ?? {}),
    ...(id === undefined ? {} : { material: id }),
    ...(name === undefined ? {} : { name }),
    ...(treated === undefined ? {} : { treated }),
  };
}

function starterOf({ starter }: FillAsk): number {
  return starter?.volume.volumeL ?? 0;
}

function asPlanned({ parts, water, sugar }: FillAsk): number {
  const waits = (actual: unknown, planned: number | undefined) =>
    actual === undefined && planned !== undefined ? 1 : 0;
  const plants = parts.reduce((count, part) => count + waits(part.actual, part.plannedKg), 0);
  return plants + waits(water.actual, water.plannedL) + (sugar ? waits(sugar.actual, sugar.plannedKg) : 0);
}

/** What hangs on the vessel with the peg, and where it stands. */
export interface FillTag {
  readonly peg: number;
  readonly vesselName?: string | undefined;
  readonly place?: string | undefined;
  readonly temperatureC?: number | undefined;
  /** Stops passed over with a reason. */
  readonly overrode?: readonly Overrode[] | undefined;
}

/** The act: what went in as weighed, with the plan beside it. Nothing that was not weighed is in it. */
export function fillBody(ask: FillAsk, tag: FillTag): Body<'peg.filled'> {
  const { water, sugar, starter, lid, vessel } = ask;
  const parts = ask.parts.flatMap(({ lot, material: id, name, treated, actual }) =>
    actual === undefined
      ? []
      : [
          {
            ...(lot !== undefined && { lot }),
            ...(id !== undefined && { material: id }),
            ...(name !== undefined && name !== '' && { name }),
            ...(treated !== undefined && { treated }),
            mass: actual,
          },
        ],
  );
  const plan = planOf(ask);
  return {
    peg: tag.peg,
    ...(vessel.id !== undefined && { vessel: vessel.id }),
    ...(vessel.id === undefined && tag.vesselName !== undefined && { vesselName: tag.vesselName }),
    ...(lid !== undefined && { lid }),
    ...(tag.place !== undefined && { place: tag.place }),
    ...(tag.temperatureC !== undefined && { temperatureC: tag.temperatureC }),
    ...(parts.length > 0 && { parts }),
    ...(water.actual !== undefined && {
      water: [
        {
          volume: water.actual,
          ...(water.report !== undefined && { water: water.report }),
          ...(water.source !== undefined && { source: water.source }),
        },
      ],
    }),
    ...(sugar?.actual !== undefined && { sugar: [{ product: sugar.product, mass: sugar.actual }] }),
    ...(starter !== undefined && {
      starter: [{ volume: starter.volume, ...(starter.from !== undefined && { from: starter.from }) }],
    }),
    ...(plan !== undefined && { plan }),
    ...(tag.overrode !== undefined && tag.overrode.length > 0 && { overrode: [...tag.overrode] }),
  };
}

function planOf({ parts, water, sugar }: FillAsk): Body<'peg.filled'>['plan'] {
  const planned = parts.flatMap(({ name, material: id, plannedKg }) => {
    const called = name || (id && (material(id)?.name ?? id)) || '';
    return plannedKg === undefined || called === '' ? [] : [{ name: called, massKg: plannedKg }];
  });
  const plan = {
    ...(planned.length > 0 && { parts: planned }),
    ...(water.plannedL !== undefined && { waterL: water.plannedL }),
    ...(sugar?.plannedKg !== undefined && { sugarKg: sugar.plannedKg }),
  };
  return Object.keys(plan).length > 0 ? plan : undefined;
}

/** One day of the first looks, and the line the acidity ought to have passed by then. */
export interface FirstLook {
  readonly on: string;
  readonly day: number;
  readonly belowPh: number | undefined;
}

/**
 * The days of the first looks: the day of filling, the next by the rule of the looks, and the days by which the batch
 * ought to be below 5.0 and 4.6.
 * @practice our caution, no source
 */
export function firstLooks(filledOn: string, temperatureC: number | undefined): readonly FirstLook[] {
  const from = momentOf(filledOn).dateDay;
  const warmth = temperatureC ?? Number.NaN;
  // Fresh scraps in water stand near this; what the rule then asks is the same for any batch that has just begun.
  const begun = judgeBatch({ looks: [{ day: 0, ph: 6, smell: 'grassy' }], temperatureC: warmth, today: 0 });
  const days = new Map<number, number | undefined>([
    [0, undefined],
    [Math.ceil(begun.nextLookDay ?? 1), undefined],
  ]);
  for (const { days: lineDays, ph } of alarmLines(warmth))
    if (Number.isFinite(lineDays)) days.set(Math.ceil(lineDays), ph);
  return [...days].sort(([a], [b]) => a - b).map(([day, belowPh]) => ({ on: onDay(from + day), day, belowPh }));
}
