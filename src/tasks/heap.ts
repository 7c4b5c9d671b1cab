// The word `heap`: a mix that composts, what is left of it, and what the published rules on heat say of its log. Call
// and result; the same for form and command line. The schema stands in heap-input.ts.

import type * as z from 'zod/mini';
import { type Cooling, coolingOf } from '#engine/heap/cooling.ts';
import { ACCEPTABLE, type Limits, PREFERRED, within } from '#engine/heap/figures.ts';
import { coffeePercentOf, type HeapPlan, type HeapRow, planHeap } from '#engine/heap/heap.ts';
import { massOfVolume, resolveIngredient, volumeOfMass, type Weighed } from '#engine/heap/ingredient.ts';
import { daysOf, sinceFed } from '#engine/heap/log.ts';
import { type Verdict, verdictsOf } from '#engine/heap/sanitation.ts';
import type { Kind } from '#engine/heap/solve.ts';
import { type TurningAdvice, turningOf } from '#engine/heap/turning.ts';
import { point, type Range } from '#engine/quantity/range.ts';
import { heapLookRules, heapMixRules } from '#engine/rules/heap.ts';
import { judge } from '#engine/rules/rule.ts';
import { material } from '#engine/tables/index.ts';
import { workHeap } from '#engine/working/heap.ts';
import type { Working } from '#engine/working/working.ts';
import { heapCautions, sayWhy } from '#words/en/heap.ts';
import { type Caution, spoken, unreadCaution } from './caution.ts';
import { type HeapInput, heapSchema } from './heap-input.ts';
import { type Problem, read } from './problem.ts';

export { heapSchema } from './heap-input.ts';

/** Where a figure of the mix lies. */
export type Fit = 'preferred' | 'acceptable' | 'outside' | 'not-known';

export interface HeapMass {
  /** Id of the table where it is of the table, otherwise its name. */
  readonly material: string;
  readonly name: string;
  readonly massKg: number;
  readonly massKgRange: Range;
  /** It was to be found. */
  readonly found: boolean;
  /** Loose volume; null where nobody knows how loosely it lies. */
  readonly volumeL: Range | null;
  readonly container?: { readonly of: string; readonly litresEach: number; readonly count: Range };
}

/** What a log comes to. */
export interface Heat {
  readonly verdicts: readonly Verdict[];
  readonly cooling: Cooling | null;
  readonly turning: TurningAdvice;
  /** Day of the last feeding after the heap was built; the days count from there. */
  readonly fedDay: number | null;
}

/** The contract's answer; null stands for "not known". */
export interface HeapResult {
  readonly masses: readonly HeapMass[];
  readonly cn: number | null;
  readonly cnRange: Range | null;
  /** Of the masses, without the water to be added. */
  readonly moisturePercent: number;
  readonly moisturePercentRange: Range;
  readonly waterL: number;
  readonly moistureWithWaterPercent: number;
  readonly feasible: boolean;
  readonly why: string;
  /** How the masses were found. */
  readonly solved: Kind;
  readonly lies: { readonly cn: Fit; readonly moisture: Fit };
  /** Ways out where the goals conflict; null where they do not. */
  readonly conflict: {
    readonly atCn: { readonly moisturePercent: number; readonly massesKg: readonly number[] } | null;
    readonly atMoisture: { readonly cn: number | null; readonly massesKg: readonly number[] } | null;
    readonly partners: readonly {
      readonly material: string;
      readonly massKg: number;
      readonly massesKg: readonly number[];
    }[];
    readonly waterOffL: number | null;
    /** Whether a heap still works with the nearest mix. */
    readonly workable: boolean;
  } | null;
  readonly dryToAdd: readonly { readonly material: string; readonly name: string; readonly massKg: number }[];
  readonly massKg: Range;
  readonly volumeL: Range | null;
  readonly left: {
    readonly carbonKg: Range;
    readonly nitrogenKg: Range;
    readonly potassiumKg: Range | null;
    readonly dryKg: Range;
    readonly massKg: Range;
    readonly volumeL: Range | null;
    readonly cn: Range | null;
  };
  readonly heat?: Heat;
  /** Rows whose C:N nobody knows. */
  readonly withoutCn: readonly string[];
  readonly cautions: readonly Caution[];
}

type Answer =
  | { readonly ok: true; readonly value: HeapResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

type RowTold = HeapInput['ingredients'][number];

/** A row as told, its mass by weight, by volume, or to be found. */
export function heapRow(told: RowTold): HeapRow {
  const ingredient = resolveIngredient(told);
  if (told.massKg === null) return { ingredient, find: { leastKg: told.leastKg, mostKg: told.mostKg } };
  const bulk = ingredient.bulkKgPerM3;
  const massKg =
    told.volume === undefined || bulk === undefined
      ? point(told.massKg ?? Number.NaN)
      : massOfVolume({ volumeL: told.volume.count * told.volume.litresEach, bulkKgPerM3: bulk });
  return { ingredient, massKg };
}

/** Loose litres of a row: as told by barrows and buckets, or from its mass. */
function litresOf(told: RowTold | undefined, row: Weighed): Range | undefined {
  if (told?.volume) return point(told.volume.count * told.volume.litresEach);
  return volumeOfMass(row.ingredient, row.massKg);
}

function massOf(told: RowTold | undefined, row: Weighed): HeapMass {
  const { ingredient, massKg } = row;
  return {
    material: ingredient.id ?? ingredient.name,
    name: ingredient.name,
    massKg: massKg.likely,
    massKgRange: massKg,
    found: told?.massKg === null,
    volumeL: litresOf(told, row) ?? null,
    ...(told?.volume && {
      container: { of: told.volume.of, litresEach: told.volume.litresEach, count: point(told.volume.count) },
    }),
  };
}

function fitOf(value: number | undefined, name: 'cn' | 'moisturePercent'): Fit {
  if (value === undefined || !Number.isFinite(value)) return 'not-known';
  const inside = (limits: Limits) => within(value, limits);
  return inside(PREFERRED[name]) ? 'preferred' : inside(ACCEPTABLE[name]) ? 'acceptable' : 'outside';
}

/** A figure that may be no number, as the contract gives it. */
function known(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

function conflictOf({ mends }: HeapPlan): HeapResult['conflict'] {
  if (mends === undefined) return null;
  const { cnAlone, moistureAlone, partners, waterOffKg, workable } = mends;
  return {
    atCn: cnAlone ? { moisturePercent: cnAlone.moisturePercent, massesKg: cnAlone.massesKg } : null,
    atMoisture: moistureAlone ? { cn: known(moistureAlone.cn), massesKg: moistureAlone.massesKg } : null,
    partners: partners.map(({ ingredient, massKg, massesKg }) => ({
      material: ingredient.id ?? ingredient.name,
      massKg,
      massesKg,
    })),
    waterOffL: waterOffKg ?? null,
    workable,
  };
}

function heatOf(log: HeapInput['log'], mix: HeapPlan['mix']): Heat | undefined {
  if (log === undefined) return undefined;
  const entries = log.entries.map((one) => ({
    day: one.day,
    coreC: one.temperatureC,
    edgeC: one.edgeC,
    hotH: one.hotHours,
    turned: one.turned,
    fed: one.fed,
  }));
  const days = daysOf(entries);
  const startCn = log.startCn ?? mix.cn?.likely;
  return {
    verdicts: verdictsOf({ entries, method: log.method, startCn, curedDays: log.curedDays }),
    cooling: (log.airC === undefined ? undefined : coolingOf(days, log.airC)) ?? null,
    turning: turningOf({ days, feel: log.moisture, smell: log.smell }),
    fedDay: sinceFed(days).fedDay ?? null,
  };
}

function cautionsOf(input: HeapInput, plan: HeapPlan, heat: Heat | undefined): readonly Caution[] {
  const { mix, rows } = plan;
  const ingredients = plan.rows.map(({ ingredient }) => ingredient);
  const litres = (row: Weighed) => litresOf(input.ingredients[rows.indexOf(row)], row)?.likely;
  const findings = [
    ...judge(heapMixRules, {
      ingredients,
      cn: mix.cn?.likely,
      moisturePercent: plan.moistureWithWaterPercent,
      coffeePercent: coffeePercentOf(rows, litres),
      withoutCn: mix.withoutCn,
    }),
    ...(heat
      ? judge(heapLookRules, {
          advice: heat.turning,
          smell: input.log?.smell,
          logged: true,
          fedDay: heat.fedDay ?? undefined,
          manure: ingredients.every(({ id }) => id !== undefined)
            ? ingredients.some(({ group }) => group === 'manure' || group === 'animal')
            : undefined,
          volumeM3: mix.volumeL && mix.volumeL.likely / 1000,
        })
      : []),
  ];
  return spoken(findings, heapCautions);
}

/** A mix that composts: any input in, the contract's answer or all its problems out. */
export function heap(input: unknown): Answer {
  const checked = read(heapSchema as z.ZodMiniType<HeapInput>, input);
  if (!checked.ok) return checked;
  const told = checked.value;
  const plan = planHeap(told.ingredients.map(heapRow), told.target ?? {});
  const { mix, mends, solution } = plan;
  const heat = heatOf(told.log, mix);
  const { left } = plan;
  return {
    ok: true,
    value: {
      masses: plan.rows.map((row, i) => massOf(told.ingredients[i], row)),
      cn: mix.cn?.likely ?? null,
      cnRange: mix.cn ?? null,
      moisturePercent: mix.moisturePercent.likely,
      moisturePercentRange: mix.moisturePercent,
      waterL: plan.waterL,
      moistureWithWaterPercent: plan.moistureWithWaterPercent,
      feasible: plan.feasible,
      why: whyOf(plan, told),
      solved: solution.kind,
      lies: { cn: fitOf(mix.cn?.likely, 'cn'), moisture: fitOf(plan.moistureWithWaterPercent, 'moisturePercent') },
      conflict: conflictOf(plan),
      dryToAdd: plan.dryToAdd.map(({ ingredient, massKg }) => ({
        material: ingredient.id ?? ingredient.name,
        name: ingredient.name,
        massKg,
      })),
      massKg: mix.massKg,
      volumeL: mix.volumeL ?? null,
      left: {
        carbonKg: left.carbonKg,
        nitrogenKg: left.nitrogenKg,
        potassiumKg: left.potassiumKg ?? null,
        dryKg: left.dryKg,
        massKg: left.massKg,
        volumeL: left.volumeL ?? null,
        cn: left.cn ?? null,
      },
      ...(heat ? { heat } : {}),
      withoutCn: mix.withoutCn,
      cautions: [...cautionsOf(told, plan, heat), ...unreadCaution(checked.unread)],
    },
  };

  function whyOf({ goals, waterL, feasible }: HeapPlan, { ingredients }: HeapInput): string {
    return sayWhy({
      kind: solution.kind,
      met: feasible,
      goals,
      soughtNames: ingredients.flatMap((row) =>
        row.massKg === null ? [row.name ?? nameOf(row.material) ?? 'this row'] : [],
      ),
      waterL,
      workable: mends?.workable ?? feasible,
      cnAlone: mends?.cnAlone,
      moistureAlone: mends?.moistureAlone,
      partners: mends?.partners ?? [],
      waterOffL: mends?.waterOffKg,
      acceptable: ACCEPTABLE,
    });
  }
}

function nameOf(id: string | undefined): string | undefined {
  return id === undefined ? undefined : material(id)?.name;
}

/** The workings of every figure of the answer; none when the input has problems. */
export function explainHeap(input: unknown): readonly Working[] {
  const checked = read(heapSchema as z.ZodMiniType<HeapInput>, input);
  if (!checked.ok) return [];
  const told = checked.value;
  return workHeap(planHeap(told.ingredients.map(heapRow), told.target ?? {}));
}
