// The cover as a linear programme: kilograms of each source on each bed, and grams still short. Which of its answers is
// wanted, first the least shortfall, then the least cost, then the least work, is stages.ts.

import { NUTRIENTS, type Nutrient } from '../need.ts';
import {
  bringsGPerKg,
  type CoverBed,
  type CoverInput,
  type CoverSource,
  missingG,
  mostGPerKg,
  type Outlook,
} from './input.ts';
import { addRow, noRows, type RowList } from './program.ts';

/** What a column stands for. */
export type ColumnTag =
  | { readonly kind: 'use'; readonly bed: CoverBed; readonly source: CoverSource }
  | { readonly kind: 'short'; readonly bed: CoverBed; readonly nutrient: Nutrient }
  | { readonly kind: 'own' | 'buy'; readonly source: CoverSource };

/** What a row keeps. */
export type RowTag =
  | { readonly kind: 'need'; readonly bed: CoverBed; readonly nutrient: Nutrient }
  | { readonly kind: 'room'; readonly bed: CoverBed; readonly nutrient: 'p' | 'k' }
  | { readonly kind: 'salt' | 'fresh' | 'coffee'; readonly bed: CoverBed }
  | { readonly kind: 'stock'; readonly source: CoverSource }
  | { readonly kind: 'money' }
  | { readonly kind: 'minutes' };

/** Columns with their limits, rows with their terms, and what each stands for. */
export interface CoverModel {
  readonly columns: { readonly lower: readonly number[]; readonly upper: readonly number[] };
  readonly columnTags: readonly ColumnTag[];
  readonly rows: RowList;
  readonly rowTags: readonly RowTag[];
}

/** More than is told: one more of a stock, of money or of minutes; and most that may be bought of a source. */
export interface Change {
  readonly stockKg?: ReadonlyMap<string, number> | undefined;
  readonly money?: number | undefined;
  readonly minutes?: number | undefined;
  readonly mostBoughtKg?: ReadonlyMap<string, number> | undefined;
}

/** A limit as it is kept: not told is none, below 0 or no number is 0. @arithmetic */
export function kept(most: number | undefined): number | undefined {
  return most === undefined ? undefined : most > 0 ? most : 0;
}

/** Whether a price is told; a price that is no number is none. @arithmetic */
export function canBeBought(source: CoverSource): boolean {
  return source.costPerKg !== undefined && source.costPerKg >= 0;
}

/** The limits of a bed that hold sources by what a kilogram brings of something, with that figure. */
function bedLimits(bed: CoverBed): readonly {
  readonly tag: RowTag;
  readonly most: number;
  readonly perKg: (source: CoverSource) => number;
}[] {
  const limits: readonly (readonly [RowTag, number | undefined, (source: CoverSource) => number])[] = [
    [{ kind: 'room', bed, nutrient: 'p' }, bed.roomG?.p, (source) => mostGPerKg(source, 'p')],
    [{ kind: 'room', bed, nutrient: 'k' }, bed.roomG?.k, (source) => mostGPerKg(source, 'k')],
    [{ kind: 'salt', bed }, bed.mostSaltG, ({ perKg }) => ((perKg.saltG ?? -1) >= 0 ? (perKg.saltG ?? 0) : Infinity)],
    [{ kind: 'fresh', bed }, bed.mostFreshKg, ({ fresh }) => (fresh ? 1 : 0)],
    [{ kind: 'coffee', bed }, bed.mostCoffeeKg, ({ coffee }) => (coffee ? 1 : 0)],
  ];
  return limits.flatMap(([tag, told, perKg]) => {
    const most = kept(told);
    return most === undefined ? [] : [{ tag, most, perKg }];
  });
}

/**
 * Most of a source that may lie on a bed: its thickest layer; nothing where it does not go on this bed at all, or where a
 * limit of the bed cannot be kept because what the source brings is not known.
 * @arithmetic
 */
export function mostOnBedKg(bed: CoverBed, source: CoverSource): number {
  if (source.offBeds?.includes(bed.id)) return 0;
  if (bedLimits(bed).some(({ perKg }) => perKg(source) === Number.POSITIVE_INFINITY)) return 0;
  const layer = source.mostKgPerM2 === undefined ? Number.POSITIVE_INFINITY : source.mostKgPerM2 * bed.areaM2;
  return kept(layer) ?? 0;
}

/**
 * The rows and columns of the cover.
 *
 *   need:   Σ brings · kg + short >= missing         for each bed and nutrient that misses some
 *   room:   Σ most it may bring · kg <= room         P and K, by the high end of what a source brings
 *   limits: Σ salt · kg, fresh kg, coffee kg <= most
 *   stock:  Σ kg over beds = own + bought,  own <= have
 *   money:  Σ price · bought <= money;  minutes: Σ minutes · kg <= minutes
 *
 * @arithmetic
 */
export function coverModel(input: CoverInput, outlook: Outlook, change: Change = {}): CoverModel {
  const lower: number[] = [];
  const upper: number[] = [];
  const columnTags: ColumnTag[] = [];
  const rows = noRows();
  const rowTags: RowTag[] = [];
  const column = (tag: ColumnTag, most: number): number => {
    lower.push(0);
    upper.push(most);
    return columnTags.push(tag) - 1;
  };
  const row = (tag: RowTag, limits: readonly [number, number], terms: readonly (readonly [number, number])[]) => {
    addRow(rows, { limits, terms });
    rowTags.push(tag);
  };

  const onBeds = new Map<CoverSource, number[]>(input.sources.map((source) => [source, []]));
  for (const bed of input.beds) {
    const uses: (readonly [CoverSource, number])[] = [];
    for (const source of input.sources) {
      const most = mostOnBedKg(bed, source);
      if (!(most > 0)) continue;
      const at = column({ kind: 'use', bed, source }, most);
      uses.push([source, at]);
      onBeds.get(source)?.push(at);
    }
    for (const nutrient of NUTRIENTS) {
      const grams = missingG(bed, nutrient, outlook);
      const terms = uses.map(([source, at]) => [at, bringsGPerKg(source, nutrient, outlook)] as const);
      const tiesUp = terms.some(([, brings]) => brings < 0);
      if (!(grams > 0 || (grams === 0 && tiesUp))) continue;
      const short = column({ kind: 'short', bed, nutrient }, Number.POSITIVE_INFINITY);
      row({ kind: 'need', bed, nutrient }, [grams, Number.POSITIVE_INFINITY], [...terms, [short, 1]]);
    }
    for (const { tag, most, perKg } of bedLimits(bed)) {
      const terms = uses.map(([source, at]) => [at, perKg(source)] as const).filter(([, factor]) => factor > 0);
      if (terms.length > 0) row(tag, [Number.NEGATIVE_INFINITY, most], terms);
    }
  }

  const prices: (readonly [number, number])[] = [];
  const work: (readonly [number, number])[] = [];
  for (const [source, uses] of onBeds) {
    for (const at of uses) work.push([at, minutesPerKg(source)]);
    const own = column({ kind: 'own', source }, (kept(source.haveKg) ?? 0) + (change.stockKg?.get(source.id) ?? 0));
    const terms: (readonly [number, number])[] = [...uses.map((at) => [at, 1] as const), [own, -1]];
    if (canBeBought(source)) {
      const buy = column({ kind: 'buy', source }, change.mostBoughtKg?.get(source.id) ?? Number.POSITIVE_INFINITY);
      terms.push([buy, -1]);
      prices.push([buy, source.costPerKg ?? 0]);
    }
    row({ kind: 'stock', source }, [0, 0], terms);
  }
  const { money, minutes } = { money: kept(input.limits?.money), minutes: kept(input.limits?.minutes) };
  const none = Number.NEGATIVE_INFINITY;
  if (money !== undefined) row({ kind: 'money' }, [none, money + (change.money ?? 0)], prices);
  if (minutes !== undefined) row({ kind: 'minutes' }, [none, minutes + (change.minutes ?? 0)], work);
  return { columns: { lower, upper }, columnTags, rows, rowTags };
}

/** Work on one kilogram; not told counts as none. @arithmetic look-up */
export function minutesPerKg(source: CoverSource): number {
  return kept(source.minutesPerKg) ?? 0;
}
