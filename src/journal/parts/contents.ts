// What is in a vessel by mass and by litres: plants, water, sugar and starter, each added up by name. Shares move when
// a batch is split, joined or spilled. The litres are those of the engine's fill, at its likely displacement; whether
// that fits is the engine's question.

import { bottleFigure } from '#engine/bottle/figures.ts';
import { ASSUMED } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { material } from '#engine/tables/index.ts';
import type { ActOf } from '../act.ts';
import type { Body } from '../kinds/index.ts';

/** Mass of a litre of water. @practice within 0.2 % from 4 to 20 °C */
const WATER_KG_PER_L = 1;
/** Mass of a litre of drained liquid or starter. */
export const LIQUID_KG_PER_L = bottleFigure('liquid', 'densityKgPerL').likely;
/** Room of a sugar that the table does not have: that of white sugar. */
const SUGAR_L_PER_KG = sugarProduct('white-sugar')?.displacementLPerKg ?? Number.NaN;

export interface BatchPart {
  /** Id of the lot of the stock, where it came from there. */
  readonly lot?: string;
  readonly material?: string;
  readonly name?: string;
  readonly treated?: 'no' | 'unknown' | 'yes';
  readonly analysis?: NonNullable<Body<'scraps.weighed'>['analysis']>;
  /** Where a lot of the stock comes from: garden, kitchen, cooked or off the plate. */
  readonly origin?: NonNullable<Body<'scraps.weighed'>['origin']>;
  readonly massKg: number;
}

export interface BatchSugar {
  readonly product: string;
  readonly massKg: number;
}

export interface Contents {
  readonly parts: readonly BatchPart[];
  readonly waterL: number;
  /** Ids of the water reports the water came from. */
  readonly waters: readonly string[];
  /** Where water without a report came from, in the words typed; '' where nobody told. */
  readonly waterSources: readonly string[];
  readonly sugar: readonly BatchSugar[];
  readonly starterL: number;
  /** Ids of the batches and bottles that starter came from; '' where nobody told. */
  readonly starters: readonly string[];
}

/** What an act of filling or topping up names. */
export type PutIn = Pick<Body<'peg.filled'>, 'parts' | 'water' | 'sugar' | 'starter'>;

export const NOTHING: Contents = {
  parts: [],
  waterL: 0,
  waters: [],
  waterSources: [],
  sugar: [],
  starterL: 0,
  starters: [],
};

/** What a part that came from a lot takes over from it. */
function lotAnswers({ body }: ActOf<'scraps.weighed'>): Omit<BatchPart, 'massKg'> {
  return {
    ...(body.material !== undefined && { material: body.material }),
    ...(body.name !== undefined && { name: body.name }),
    ...(body.slip?.treated !== undefined && { treated: body.slip.treated }),
    ...(body.analysis !== undefined && { analysis: body.analysis }),
    ...(body.origin !== undefined && { origin: body.origin }),
  };
}

/** What was put in, as contents; a part that names only its lot takes its material and answers from the stock. */
export function contentsOf(put: PutIn, lots: ReadonlyMap<string, ActOf<'scraps.weighed'>>): Contents {
  const waters = (put.water ?? []).flatMap(({ water }) => (water === undefined ? [] : [water]));
  return {
    parts: (put.parts ?? []).map(({ mass, lot, material, name, treated, analysis }) => {
      const from = lot === undefined ? undefined : lots.get(lot);
      return {
        ...(from !== undefined && lotAnswers(from)),
        ...(lot !== undefined && { lot }),
        ...(material !== undefined && { material }),
        ...(name !== undefined && { name }),
        ...(treated !== undefined && { treated }),
        ...(analysis !== undefined && { analysis }),
        massKg: mass.massKg,
      };
    }),
    waterL: total(put.water, ({ volume }) => volume.volumeL),
    waters: distinct(waters),
    waterSources: distinct(
      (put.water ?? []).flatMap(({ water, source }) => (water === undefined ? [source ?? ''] : [])),
    ),
    sugar: (put.sugar ?? []).map(({ product, mass }) => ({ product, massKg: mass.massKg })),
    starterL: total(put.starter, ({ volume }) => volume.volumeL),
    starters: distinct((put.starter ?? []).map(({ from }) => from ?? '')),
  };
}

/** Two contents as one; the same lot or sugar is added up. @arithmetic */
export function together(a: Contents, b: Contents): Contents {
  return {
    parts: merged(
      [...a.parts, ...b.parts],
      (p) => `${p.lot ?? ''}|${p.material ?? ''}|${p.name ?? ''}|${p.treated ?? ''}`,
    ),
    waterL: a.waterL + b.waterL,
    waters: distinct([...a.waters, ...b.waters]),
    waterSources: distinct([...a.waterSources, ...b.waterSources]),
    sugar: merged([...a.sugar, ...b.sugar], ({ product }) => product),
    starterL: a.starterL + b.starterL,
    starters: distinct([...a.starters, ...b.starters]),
  };
}

/** An even share of everything: a split or a spill takes the mix as it stands. @practice a stirred vessel */
export function share(whole: Contents, fraction: number): Contents {
  return {
    parts: whole.parts.map((part) => ({ ...part, massKg: part.massKg * fraction })),
    waterL: whole.waterL * fraction,
    waters: whole.waters,
    waterSources: whole.waterSources,
    sugar: whole.sugar.map((sugar) => ({ ...sugar, massKg: sugar.massKg * fraction })),
    starterL: whole.starterL * fraction,
    starters: whole.starters,
  };
}

/** Mass of all of it. @arithmetic plants + water · 1 kg/L + sugar + starter · 1.01 kg/L */
export function massOf({ parts, waterL, sugar, starterL }: Contents): number {
  const solids = total(parts, (p) => p.massKg) + total(sugar, (s) => s.massKg);
  return solids + waterL * WATER_KG_PER_L + starterL * LIQUID_KG_PER_L;
}

/**
 * Settled litres of all of it: V = V_water + V_starter + Σ m · displacement.
 * @memory displacements as in pail/volume.ts; a material the table lacks takes the room of soaked plant matter
 */
export function litresOf({ parts, waterL, sugar, starterL }: Contents): number {
  const plants = total(parts, (p) => {
    const known = p.material === undefined ? undefined : material(p.material)?.figures.displacementLPerKg?.likely;
    return p.massKg * (known ?? ASSUMED.displacementLPerKg.likely);
  });
  const sugars = total(sugar, (s) => s.massKg * (sugarProduct(s.product)?.displacementLPerKg ?? SUGAR_L_PER_KG));
  return waterL + starterL + plants + sugars;
}

function distinct(list: readonly string[]): readonly string[] {
  return [...new Set(list)];
}

function total<T>(list: readonly T[] | undefined, of: (item: T) => number): number {
  let sum = 0;
  for (const item of list ?? []) sum += of(item);
  return sum;
}

function merged<T extends { readonly massKg: number }>(list: readonly T[], key: (item: T) => string): readonly T[] {
  const byKey = new Map<string, T>();
  for (const item of list) {
    const before = byKey.get(key(item));
    byKey.set(key(item), before === undefined ? item : { ...before, massKg: before.massKg + item.massKg });
  }
  return [...byKey.values()];
}
