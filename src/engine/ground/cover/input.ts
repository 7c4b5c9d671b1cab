// What the cover is asked: beds with what they miss, sources with what they bring, and limits. Plain grams; where they
// come from (need, supply, label, stock) is the affair of whoever asks. The programme made of it stands in model.ts.

import type { Range } from '../../quantity/range.ts';
import type { Nutrient } from '../need.ts';

/** One bed over the season. */
export interface CoverBed {
  readonly id: string;
  readonly name: string;
  readonly areaM2: number;
  /** Still missing. Absent or NaN: not known, so nothing is planned for it, and it is told. */
  readonly missingG: Readonly<Partial<Record<Nutrient, Range>>>;
  /** Need of the whole season, by which a shortfall is weighed; the missing grams where it is not told. */
  readonly needG?: Readonly<Partial<Record<Nutrient, number>>> | undefined;
  /** Grams that may still come before it is too much. Absent: not known, so not limited, and it is told. */
  readonly roomG?: Readonly<Partial<Record<'p' | 'k', number>>> | undefined;
  /** Most salt that may still come. */
  readonly mostSaltG?: number | undefined;
  /** Most of fresh, uncomposted material. */
  readonly mostFreshKg?: number | undefined;
  /** Most of coffee grounds. */
  readonly mostCoffeeKg?: number | undefined;
}

export type SourceKind =
  | 'compost'
  | 'clippings-mulch'
  | 'scraps-heap'
  | 'solids'
  | 'legume'
  | 'bought-organic'
  | 'bought-mineral'
  | 'other';

/** What one kilogram brings. Absent: not known; it then counts as nothing brought, and keeps off beds with a limit. */
export interface PerKg {
  /** Plant-available this season; below 0 where it ties nitrogen up. */
  readonly nG?: Range | undefined;
  readonly nTotalG?: number | undefined;
  readonly pG?: Range | undefined;
  readonly kG?: Range | undefined;
  readonly saltG?: number | undefined;
}

/** A unit that hands know: a barrow or a bucket of this material, with its mass. */
export interface SpokenUnit {
  readonly one: string;
  readonly many: string;
  readonly massKg: number;
}

/** A material: what the garden has of it, what more can be bought. */
export interface CoverSource {
  readonly id: string;
  readonly name: string;
  readonly kind: SourceKind;
  readonly perKg: PerKg;
  /** In the garden, now and expected; costs nothing but work. */
  readonly haveKg?: number | undefined;
  /** It can be bought where a price is told. */
  readonly costPerKg?: number | undefined;
  /** Sold in packs of this mass alone. */
  readonly packKg?: number | undefined;
  readonly minutesPerKg?: number | undefined;
  /** Thickest layer, such as 2.5 cm of clippings. */
  readonly mostKgPerM2?: number | undefined;
  /** Not composted: counts against mostFreshKg. */
  readonly fresh?: boolean | undefined;
  /** Coffee grounds: count against mostCoffeeKg. */
  readonly coffee?: boolean | undefined;
  readonly unit?: SpokenUnit | undefined;
  /** Ids of beds it does not go on, whatever they miss. */
  readonly offBeds?: readonly string[] | undefined;
}

export interface CoverInput {
  readonly beds: readonly CoverBed[];
  readonly sources: readonly CoverSource[];
  readonly limits?: { readonly money?: number | undefined; readonly minutes?: number | undefined } | undefined;
  /** Least money, or least bought by mass. */
  readonly aim: 'least-cost' | 'least-purchase';
}

/** Figures a plan is made for: lean takes the low ends of what sources bring and the high ends of what is missing. */
export type Outlook = 'lean' | 'likely' | 'rich';

const BRINGS = { lean: 'low', likely: 'likely', rich: 'high' } as const;
const MISSES = { lean: 'high', likely: 'likely', rich: 'low' } as const;

const perKgKey = { n: 'nG', p: 'pG', k: 'kG' } as const;

/** Grams of a nutrient one kilogram brings; unknown counts as nothing. @arithmetic look-up */
export function bringsGPerKg(source: CoverSource, nutrient: Nutrient, outlook: Outlook): number {
  const grams = source.perKg[perKgKey[nutrient]]?.[BRINGS[outlook]] ?? 0;
  return Number.isFinite(grams) ? grams : 0;
}

/**
 * Grams of P or K one kilogram may bring at most: what its room is kept by.
 * @returns Infinity where it is not known, so that the source keeps off a bed with a limit
 * @arithmetic look-up
 */
export function mostGPerKg(source: CoverSource, nutrient: 'p' | 'k'): number {
  const grams = source.perKg[perKgKey[nutrient]]?.high ?? Number.NaN;
  return grams >= 0 ? grams : Number.POSITIVE_INFINITY;
}

/** Grams of a nutrient a bed misses, never below 0; NaN where they or the bed's area are not known. @arithmetic look-up */
export function missingG(bed: CoverBed, nutrient: Nutrient, outlook: Outlook): number {
  const grams = bed.missingG[nutrient]?.[MISSES[outlook]] ?? Number.NaN;
  return bed.areaM2 > 0 && Number.isFinite(grams) ? Math.max(0, grams) : Number.NaN;
}
