// What was changed between two cases, and what it does to the days: plain figures for a sentence. A change too small to
// be weighed is none.

import { sugarProduct } from '#engine/scraps/sugar.ts';
import type { Chop } from '#engine/souring/model/chop.ts';
import { material } from '#engine/tables/index.ts';
import type { CaseFigures, CaseInput } from './two-cases.ts';

/** One thing that was changed, from the first case to the second. */
export type CaseChange =
  | { readonly kind: 'warmth'; readonly byC: number }
  | { readonly kind: 'sugar'; readonly byG: number }
  | { readonly kind: 'product'; readonly from: string; readonly to: string }
  | { readonly kind: 'water'; readonly byL: number }
  | { readonly kind: 'scrap'; readonly name: string; readonly byKg: number }
  | { readonly kind: 'chop'; readonly to: Chop }
  | { readonly kind: 'lid'; readonly to: 'loose' | 'vent' | 'tight' };

/** Days from the filling in both cases; null where one does not come to it. */
export interface DaysOfBoth {
  readonly before: number | null;
  readonly after: number | null;
}

export interface CaseDifference {
  readonly changes: readonly CaseChange[];
  readonly sour: DaysOfBoth;
  readonly held: DaysOfBoth;
}

const LEAST_C = 0.05;
const LEAST_KG = 0.0005;
const LEAST_L = 0.005;

/** What differs from the first case to the second, in the order the sheet asks it. */
export function caseDifference(
  before: { readonly input: CaseInput; readonly figures: CaseFigures },
  after: { readonly input: CaseInput; readonly figures: CaseFigures },
): CaseDifference {
  return {
    changes: changesBetween(before.input, after.input),
    sour: { before: before.figures.sourDay, after: after.figures.sourDay },
    held: { before: before.figures.heldDay, after: after.figures.heldDay },
  };
}

/** The things that were changed. */
export function changesBetween(before: CaseInput, after: CaseInput): readonly CaseChange[] {
  const byC = after.temperatureC - before.temperatureC;
  const byKg = (after.sugar?.massKg ?? 0) - (before.sugar?.massKg ?? 0);
  const byL = after.water.volumeL - before.water.volumeL;
  const [from, to] = [before.sugar?.product, after.sugar?.product];
  const lidBefore = before.vessel.lid ?? 'loose';
  const lidAfter = after.vessel.lid ?? 'loose';
  const hasSugar = (before.sugar?.massKg ?? 0) > 0 && (after.sugar?.massKg ?? 0) > 0;
  return [
    ...(Math.abs(byC) >= LEAST_C ? [{ kind: 'warmth', byC } as const] : []),
    ...(from !== undefined && to !== undefined && from !== to && hasSugar
      ? [{ kind: 'product', from: nameOf(from), to: nameOf(to) } as const]
      : []),
    ...(Math.abs(byKg) >= LEAST_KG ? [{ kind: 'sugar', byG: byKg * 1000 } as const] : []),
    ...(Math.abs(byL) >= LEAST_L ? [{ kind: 'water', byL } as const] : []),
    ...scraps(before, after),
    ...(before.chop !== after.chop ? [{ kind: 'chop', to: after.chop } as const] : []),
    ...(lidBefore !== lidAfter ? [{ kind: 'lid', to: lidAfter } as const] : []),
  ];
}

/** Lots of one material count together. */
function scraps(before: CaseInput, after: CaseInput): readonly CaseChange[] {
  const kg = ({ plants }: CaseInput, id: string) =>
    plants.reduce((sum, plant) => sum + (plant.material === id ? plant.massKg : 0), 0);
  const ids = [...new Set([...before.plants, ...after.plants].map((plant) => plant.material))];
  return ids.flatMap((id) => {
    const byKg = kg(after, id) - kg(before, id);
    return Math.abs(byKg) >= LEAST_KG ? [{ kind: 'scrap', name: material(id)?.name ?? id, byKg } as const] : [];
  });
}

function nameOf(product: string): string {
  return sugarProduct(product)?.name ?? product;
}
