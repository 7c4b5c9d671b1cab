// What holds a plan back: limits that are used up and have a price, and what one more of a stock, of money or of time
// would do, found by solving once more with one more of it.

import { NUTRIENTS, type Nutrient } from '../need.ts';
import { balanceOf, buysOf, minutesOf, usesOf } from './amounts.ts';
import { bringsGPerKg, type CoverBed, type CoverInput, type CoverSource } from './input.ts';
import type { Change, RowTag } from './model.ts';
import type { Solve } from './program.ts';
import { type Staged, solveStages } from './stages.ts';

type Answer = Extract<Staged, { readonly ok: true }>;

/** What one more does: grams of need it closes over all beds, money and work it saves (below 0: takes). */
export interface OneMore {
  readonly closesG: Readonly<Record<Nutrient, number>>;
  readonly savedCost: number;
  readonly savedMinutes: number;
}

/** A limit that holds the plan. */
export type Bind =
  /** No more P or K on this bed: these sources would still bring something it misses, and may not. */
  | {
      readonly kind: 'room';
      readonly bed: CoverBed;
      readonly nutrient: 'p' | 'k';
      readonly kept: readonly CoverSource[];
    }
  | { readonly kind: 'salt' | 'fresh' | 'coffee'; readonly bed: CoverBed; readonly kept: readonly CoverSource[] }
  | { readonly kind: 'layer'; readonly bed: CoverBed; readonly source: CoverSource; readonly mostKg: number }
  | {
      readonly kind: 'stock';
      readonly source: CoverSource;
      readonly haveKg: number;
      /** One barrow or bucket where the source has one, a kilogram where not. */
      readonly moreKg: number;
      readonly oneMore: OneMore;
    }
  | { readonly kind: 'money' | 'minutes'; readonly most: number; readonly more: number; readonly oneMore: OneMore };

const TINY = 1e-7;

/** Whether a row or a column stands at its upper limit. */
function isFull(value: number, most: number, within = 1e-6): boolean {
  return Number.isFinite(most) && most - value <= within * Math.max(1, Math.abs(most));
}

/** Money and time: a later stage gives the millionth that an earlier one may lose for a little less of them. */
const SPENT_WITHIN = 1e-3;

/** Largest price of one column or row over the stages that matter: a shortfall or money. */
function priced(answer: Answer, side: 'columnPrices' | 'rowPrices', index: number): boolean {
  return (['short', 'cost', 'bought'] as const).some(
    (stage) => Math.abs(answer.solutions.get(stage)?.[side][index] ?? 0) > TINY,
  );
}

/** Rows of the plan that are used up. @arithmetic */
export function fullRows({ model, last }: Answer): readonly { readonly tag: RowTag; readonly index: number }[] {
  return model.rowTags.flatMap((tag, at) => {
    if (tag.kind === 'need' || tag.kind === 'stock') return [];
    const within = tag.kind === 'money' || tag.kind === 'minutes' ? SPENT_WITHIN : undefined;
    const full = isFull(last.rows[at] ?? Number.NaN, model.rows.upper[at] ?? Number.POSITIVE_INFINITY, within);
    return full ? [{ tag, index: at }] : [];
  });
}

/** Sources of which the garden's own is used up, and that cannot be bought. @arithmetic */
export function emptyStocks({
  model,
  last,
}: Answer): readonly { readonly source: CoverSource; readonly index: number }[] {
  return model.columnTags.flatMap((tag, at) =>
    tag.kind === 'own' && isFull(last.columns[at] ?? Number.NaN, model.columns.upper[at] ?? Infinity)
      ? [{ source: tag.source, index: at }]
      : [],
  );
}

/** Sources of which no more can be bought, since one more pack would cost more than there is. @arithmetic */
export function lastPacks({ change }: Answer): ReadonlySet<string> {
  return new Set(change.mostBoughtKg?.keys());
}

/** Uses that lie as thick as they may. @arithmetic */
export function fullLayers({ model, last }: Answer): readonly {
  readonly bed: CoverBed;
  readonly source: CoverSource;
  readonly mostKg: number;
  readonly index: number;
}[] {
  return model.columnTags.flatMap((tag, at) => {
    const mostKg = model.columns.upper[at] ?? Number.POSITIVE_INFINITY;
    return tag.kind === 'use' && isFull(last.columns[at] ?? Number.NaN, mostKg)
      ? [{ bed: tag.bed, source: tag.source, mostKg, index: at }]
      : [];
  });
}

/**
 * Every limit that holds the plan. Limits of a bed by their price in the solver's answer; a stock, money and time by
 * solving anew with one more, since a price may stand at 0 where several limits meet.
 * @arithmetic the difference of two plans
 */
export function bindsOf(input: CoverInput, solve: Solve, answer: Answer): readonly Bind[] {
  const left = balanceOf(input, usesOf(answer), 'likely');
  const base = { left, cost: costOf(answer), minutes: minutesOf(usesOf(answer)) };
  const oneMore = (change: Change): OneMore | undefined => {
    const more = solveStages(input, solve, { outlook: 'likely', change: { ...answer.change, ...change } });
    if (!more.ok) return undefined;
    const after = balanceOf(input, usesOf(more), 'likely');
    const total = (of: typeof after, nutrient: Nutrient) =>
      of.reduce((sum, one) => (one.nutrient === nutrient ? sum + one.leftG : sum), 0);
    const closes = (nutrient: Nutrient) => total(base.left, nutrient) - total(after, nutrient);
    const closesG = { n: closes('n'), p: closes('p'), k: closes('k') };
    const savedCost = base.cost - costOf(more);
    const shortBy = (answer.values.get('short') ?? 0) - (more.values.get('short') ?? 0);
    const helps = shortBy > 1e-5 || savedCost > 1e-4 || (shortBy > -1e-5 && Math.max(...Object.values(closesG)) > 1e-2);
    return helps ? { closesG, savedCost, savedMinutes: base.minutes - minutesOf(usesOf(more)) } : undefined;
  };

  const binds: Bind[] = [];
  for (const { tag, index } of fullRows(answer)) {
    if (tag.kind === 'money' || tag.kind === 'minutes') {
      const more = oneMore({ [tag.kind]: 1 });
      if (more)
        binds.push({ kind: tag.kind, most: answer.model.rows.upper[index] ?? Number.NaN, more: 1, oneMore: more });
    } else if (tag.kind !== 'need' && tag.kind !== 'stock' && priced(answer, 'rowPrices', index)) {
      const kept = keptOff(answer, index, tag.bed);
      binds.push(tag.kind === 'room' ? { ...tag, kept } : { kind: tag.kind, bed: tag.bed, kept });
    }
  }
  for (const { bed, source, mostKg, index } of fullLayers(answer)) {
    if (priced(answer, 'columnPrices', index)) binds.push({ kind: 'layer', bed, source, mostKg });
  }
  for (const { source } of emptyStocks(answer)) {
    const moreKg = source.unit !== undefined && source.unit.massKg > 0 ? source.unit.massKg : 1;
    const more = oneMore({ stockKg: new Map([[source.id, moreKg]]) });
    // What the garden has none of is no stock that ran out, unless it is a material that cannot be bought.
    const haveKg = Math.max(0, source.haveKg ?? 0);
    if (more && haveKg > 0) binds.push({ kind: 'stock', source, haveKg, moreKg, oneMore: more });
  }
  return binds;
}

/** Money by weight: whole packs come after, and would hide what one more does. */
function costOf(answer: Answer): number {
  return buysOf(answer).reduce((sum, { usedKg, source }) => sum + usedKg * (source.costPerKg ?? 0), 0);
}

/** Sources of a row that bring this bed something it still misses or that is bought in their place. */
function keptOff({ model }: Answer, index: number, bed: CoverBed): readonly CoverSource[] {
  const { starts, columns } = model.rows;
  return columns.slice(starts[index], starts[index + 1]).flatMap((at) => {
    const tag = model.columnTags[at];
    if (tag?.kind !== 'use' || tag.bed !== bed) return [];
    return NUTRIENTS.some((nutrient) => bringsGPerKg(tag.source, nutrient, 'likely') > 0) ? [tag.source] : [];
  });
}
