// The feed there is to pour: every group of bottles and every drained batch with something left, each with its peg, the
// word for it as peg.ts has it, the plants that went into a litre, and what animals may have left in it (origin.ts).
// Whether a bed may get it is round.ts.

import type { Range } from '#engine/quantity/range.ts';
import type { State } from '#engine/souring/reason.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import { daysIn } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { PegName } from '#words/peg-name.ts';
import { pegName } from './batch-name.ts';
import { isHeldByEarlierRule } from './moved-hold.ts';
import { type Origin, originOf } from './origin.ts';
import { type PegWord, pegWord } from './peg.ts';

/** Less than this is a wet bottle. @practice */
const LEAST_L = 0.01;

/** The word for a liquid at a moment. */
export interface LiquidState {
  readonly state: State;
  readonly held: boolean;
  /** Local date from which it counts as held, where that clock runs. */
  readonly heldOn?: string;
}

/** One thing to pour from. */
export interface Liquid extends LiquidState, Origin {
  /** Id of the bottle group or of the batch. */
  readonly id: string;
  readonly kind: 'bottle' | 'batch';
  readonly batch: string;
  readonly peg: PegName;
  readonly leftL: Range;
  readonly ph: number | undefined;
  readonly ecDsPerM: number | undefined;
  readonly meshMm: number | undefined;
  /** Grams of plants for each litre of the batch's liquid; undefined where no plants were told. */
  readonly plantsGPerL: number | undefined;
}

/** Everything with something left in it, bottles first, the oldest peg first. */
export function liquidsOf(plot: Plot, now: string): readonly Liquid[] {
  const found: Liquid[] = [];
  for (const bottle of plot.bottles.values()) {
    const batch = plot.batches.get(bottle.batch);
    if (batch === undefined || bottle.emptied !== undefined || bottle.leftL.high < LEAST_L) continue;
    found.push({ id: bottle.id, kind: 'bottle', leftL: bottle.leftL, ...facts(plot, batch, now) });
  }
  for (const batch of plot.batches.values()) {
    const { leftL } = batch.liquid;
    if (batch.strainings.length === 0 || leftL < LEAST_L) continue;
    found.push({
      id: batch.id,
      kind: 'batch',
      leftL: { low: leftL, likely: leftL, high: leftL },
      ...facts(plot, batch, now),
    });
  }
  const number = (one: Liquid) => plot.batches.get(one.batch)?.peg ?? 0;
  return found.sort((a, b) => Number(a.kind === 'batch') - Number(b.kind === 'batch') || number(a) - number(b));
}

function facts(plot: Plot, batch: Batch, now: string) {
  const strained = batch.strainings.at(-1)?.body;
  return {
    batch: batch.id,
    peg: pegName(plot, batch),
    ...judged(pegWord({ plot, batch, now })),
    ...originOf(plot, batch),
    ph: strained?.acidity?.ph ?? last(batch, ({ acidity }) => acidity?.ph),
    ecDsPerM: saltiest([
      strained?.ecDsPerM ?? last(batch, ({ ecDsPerM }) => ecDsPerM),
      ...batch.doubtful.map(({ body }) => body.ecDsPerM),
    ]),
    meshMm: strained?.meshMm,
    plantsGPerL: plantsGPerL(batch),
  };
}

/** Salt that a look of an impossible date read counts where it is more. */
function saltiest(read: readonly (number | undefined)[]): number | undefined {
  const known = read.filter((one) => one !== undefined);
  return known.length === 0 ? undefined : Math.max(...known);
}

function last<T>(batch: Batch, of: (body: Batch['looks'][number]['body']) => T | undefined): T | undefined {
  return batch.looks.map(({ body }) => of(body)).findLast((value) => value !== undefined);
}

/** What one would take without being asked: a held batch before one that is only ready, the oldest peg first. */
export function usualLiquid(liquids: readonly Liquid[]): Liquid | undefined {
  return liquids.find(({ held }) => held) ?? liquids.find(({ state }) => state === 'ready') ?? liquids[0];
}

interface Source {
  readonly bottle?: string | undefined;
  readonly batch?: string | undefined;
}

/** What was poured from, as it stood at a moment. */
export interface SourceState extends LiquidState, Origin {
  readonly peg: PegName;
  /** It was held by the rule that was asked before the hold grew; nothing is judged by it. */
  readonly heldByEarlierRule: boolean;
}

/** The word for a source at a moment. */
export type StateOf = (source: Source, at: string) => SourceState | undefined;

/** The word for what was poured from a bottle or a batch, as it stood at a moment; nothing for a source not here. */
export function sourceAt(plot: Plot, source: Source, at: string): SourceState | undefined {
  const bottle = source.bottle === undefined ? undefined : plot.bottles.get(source.bottle);
  const batch = plot.batches.get(bottle?.batch ?? source.batch ?? '');
  if (batch === undefined) return undefined;
  const word = pegWord({ plot, batch, now: at });
  const heldByEarlierRule = isHeldByEarlierRule(word, daysIn(plot.facts.timeZone)(batch.filled, word.at));
  return { peg: pegName(plot, batch), ...judged(word), heldByEarlierRule, ...originOf(plot, batch) };
}

/** The same for many pours, each source and moment asked once: a season's feeds come from a few pegs on a few dates. */
export function sourcesOf(plot: Plot): StateOf {
  const known = new Map<string, SourceState | undefined>();
  return (source, at) => {
    const key = `${source.bottle ?? ''} ${source.batch ?? ''} ${at}`;
    if (!known.has(key)) known.set(key, sourceAt(plot, source, at));
    return known.get(key);
  };
}

function judged({ state, held, heldOn }: PegWord): LiquidState {
  return { state, held, ...(state === 'ready' && heldOn !== undefined && { heldOn }) };
}

/**
 * Grams of plants in a litre of liquid: plants / (water + starter + the plants' own water).
 *
 * Plants whose dry matter nobody knows bring no water here: the litre then seems stronger, and the can gets less.
 * @arithmetic
 */
function plantsGPerL({ contents: { parts, waterL, starterL } }: Batch): number | undefined {
  let plantsKg = 0;
  let liquidL = waterL + starterL;
  for (const part of parts) {
    plantsKg += part.massKg;
    const table = part.material === undefined ? undefined : material(part.material)?.figures.dryMatter?.likely;
    liquidL += part.massKg * (1 - (part.analysis?.dryMatter ?? table ?? 1));
  }
  return plantsKg > 0 && liquidL > 0 ? (1000 * plantsKg) / liquidL : undefined;
}
