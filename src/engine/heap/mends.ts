// What to do about goals that conflict: which goal gives when the other is met, what could be added so that both are
// met, and how much water would have to be drained or dried off. The nearest mix itself is solve.ts.

import { ACCEPTABLE, within } from './figures.ts';
import { type Ingredient, resolveIngredient } from './ingredient.ts';
import { dryingKg, type PerKg, perKg } from './mix.ts';
import { type Known, kindOf, meetingMasses, metBy, missOf, type Question, type Solution } from './solve.ts';

/** So far inside the edge, so that rounding does not put the mix outside. @practice */
const INSIDE = { cn: 0.2, moisturePercent: 0.2 } as const;
/** Dry or mild things most gardens come by, asked in this order. @practice */
const PARTNERS = ['finished-compost', 'cardboard', 'dry-leaves', 'straw', 'hay-grass', 'wood-chips'] as const;
/** Kinds that dry a wet mix: those that bring carbon, and those that do not. @practice */
const DRYING = { rich: ['dry-leaves', 'straw', 'cardboard', 'wood-chips'], poor: ['hay-grass', 'finished-compost'] };

/** One thing more in the heap, with which every goal is met. */
export interface Partner {
  readonly ingredient: Ingredient;
  readonly massKg: number;
  /** Masses of the rows that were sought, with it. */
  readonly massesKg: readonly number[];
}

export interface Mends {
  /** The mix that meets C:N alone, and the one that meets moisture alone; undefined where not even that can be. */
  readonly cnAlone: Solution | undefined;
  readonly moistureAlone: Solution | undefined;
  readonly partners: readonly Partner[];
  /** Water to drain or dry off so that the mix that meets C:N meets moisture too; undefined where none need go. */
  readonly waterOffKg: number | undefined;
  /** Whether the nearest mix lies where a heap still works. */
  readonly workable: boolean;
}

/**
 * Ways out where the goals cannot all be met.
 * @source cornell-right-mix the same two equations, with one row more
 */
export function mendsOf(question: Question, nearest: Solution, has: readonly (string | undefined)[]): Mends {
  const { goals } = question;
  const alone = (only: Question['goals']) => meetingMasses({ ...question, goals: only });
  const both = goals.cn !== undefined && goals.moisturePercent !== undefined;
  const cnAlone = both ? alone({ cn: goals.cn }) : undefined;
  const moistureAlone = both ? alone({ moisturePercent: goals.moisturePercent }) : undefined;
  return {
    cnAlone,
    moistureAlone,
    partners: partnersOf(question, has),
    waterOffKg: cnAlone && waterOff(question, cnAlone),
    workable: isWorkable(nearest),
  };
}

/** Whether a heap still works with this mix. @source composting-handbook chapter 4 table 4.2 */
export function isWorkable(mix: { readonly cn: number; readonly moisturePercent: number }): boolean {
  return within(mix.cn, ACCEPTABLE.cn) && within(mix.moisturePercent, ACCEPTABLE.moisturePercent);
}

/**
 * The nearest mix with which a heap still works, where the least squares miss that too: the goals give way until the
 * mix stands on the edge of what works. Undefined where no amounts do.
 * @source composting-handbook chapter 4 table 4.2
 */
export function nearestWorkable(question: Question): Solution | undefined {
  const { cn, moisturePercent } = ACCEPTABLE;
  const edges: readonly Question['goals'][] = [
    { moisturePercent: moisturePercent.most - INSIDE.moisturePercent },
    { moisturePercent: moisturePercent.least + INSIDE.moisturePercent },
    { cn: cn.least + INSIDE.cn },
    { cn: cn.most - INSIDE.cn },
    { cn: cn.most - INSIDE.cn, moisturePercent: moisturePercent.most - INSIDE.moisturePercent },
    { cn: cn.least + INSIDE.cn, moisturePercent: moisturePercent.most - INSIDE.moisturePercent },
  ];
  const found = edges.flatMap((goals) => meetingMasses({ ...question, goals }) ?? []).filter(isWorkable);
  const { goals, sought } = question;
  const [first] = found.toSorted((a, b) => missOf(a, goals) - missOf(b, goals));
  return first && { ...first, ...metBy(first, goals), kind: kindOf(sought.length, goals) };
}

function partnersOf(question: Question, has: readonly (string | undefined)[]): readonly Partner[] {
  const knownKg = question.known.reduce((sum, row) => sum + row.massKg, 0);
  const found = PARTNERS.filter((id) => !has.includes(id)).flatMap((id): readonly Partner[] => {
    const ingredient = resolveIngredient({ material: id });
    const more = { contents: perKg(ingredient), leastKg: 0, mostKg: 3 * knownKg };
    const tried = meetingMasses({ ...question, sought: [...question.sought, more] });
    const massKg = tried?.massesKg.at(-1) ?? 0;
    return tried && massKg > 0 ? [{ ingredient, massKg, massesKg: tried.massesKg.slice(0, -1) }] : [];
  });
  return found.toSorted((a, b) => a.massKg - b.massKg).slice(0, 2);
}

function waterOff({ known, sought, goals }: Question, { massesKg }: Solution): number | undefined {
  const rows = [...known, ...sought.map(({ contents }, j) => ({ massKg: massesKg[j] ?? 0, contents }))];
  const massKg = rows.reduce((sum, row) => sum + row.massKg, 0);
  const dryKg = rows.reduce((sum, row) => sum + row.massKg * row.contents.dryFraction, 0);
  const goal = (goals.moisturePercent ?? 0) / 100;
  const off = massKg - dryKg - (goal / (1 - goal)) * dryKg;
  return off > 0 && off <= massKg - dryKg ? off : undefined;
}

/** What would dry a mix that is too wet, and how much of it by itself. */
export interface Drying {
  readonly ingredient: Ingredient;
  readonly massKg: number;
}

/**
 * Dry matter to add to a mix that is too wet: kinds that bring carbon while C:N is below its goal, milder ones above.
 * @source cornell-right-mix second ingredient to reach a moisture
 */
export function dryingOf(
  rows: readonly Known[],
  goal: { readonly moisturePercent: number; readonly cn: number; readonly mixCn: number },
): readonly Drying[] {
  const ids = goal.mixCn > goal.cn ? DRYING.poor : DRYING.rich;
  return ids.flatMap((id) => {
    const ingredient = resolveIngredient({ material: id });
    const contents: PerKg = perKg(ingredient);
    const massKg = dryingKg(rows, goal.moisturePercent, contents);
    return massKg === undefined ? [] : [{ ingredient, massKg }];
  });
}
