// What a shop offers, as typed on the sheet of the cover: name, label, how it lets go, price of a pack. A row left wholly
// empty is no row; every trouble stands at its field.

import type { CoverInput } from '#engine/ground/cover/input.ts';
import { readFigure } from '#engine/quantity/number.ts';
import { parseAmount } from '#engine/quantity/parse.ts';
import { coverSheet as words } from '#words/en/cover-sheet.ts';
import type { ShopFeed } from './cover-sources.ts';
import type { Troubles } from './form.ts';

/** One offer as typed. */
export interface OfferTyped {
  readonly name: string;
  readonly n: string;
  readonly p2o5: string;
  readonly k2o: string;
  /** '' where it was not told. */
  readonly release: 'at-once' | 'slow' | '';
  readonly pack: string;
  readonly price: string;
}

export interface OffersRead {
  readonly feeds: readonly ShopFeed[];
  /** By `<row>.<field>`. */
  readonly troubles: Troubles;
}

export const EMPTY_OFFER: OfferTyped = { name: '', n: '', p2o5: '', k2o: '', release: '', pack: '', price: '' };
const MOST_PERCENT = 100;

/** Reads every row; rows with a trouble are told and not offered. */
export function readOffers(rows: readonly OfferTyped[]): OffersRead {
  const troubles = new Map<string, { readonly sentence: string }>();
  const feeds = rows.flatMap((row, i): readonly ShopFeed[] => {
    if (Object.values(row).every((text) => text.trim() === '')) return [];
    const before = troubles.size;
    const trouble = (field: keyof OfferTyped, sentence: string) => {
      troubles.set(`${i}.${field}`, { sentence });
      return Number.NaN;
    };
    const percent = (field: 'n' | 'p2o5' | 'k2o') => {
      const value = figureOf(row[field]);
      const fits = value !== undefined && value >= 0 && value <= MOST_PERCENT;
      return fits ? value : trouble(field, words.badPercent(row[field]));
    };
    const name = row.name.trim();
    if (name === '') trouble('name', words.noName);
    const label = { nPercent: percent('n'), p2o5Percent: percent('p2o5'), k2oPercent: percent('k2o') };
    const sum = label.nPercent + label.p2o5Percent + label.k2oPercent;
    if (sum > MOST_PERCENT) trouble('n', words.badSum(sum));
    const pack = parseAmount(row.pack.trim(), { dimension: 'mass' });
    const packKg = pack.ok && pack.value > 0 ? pack.value : trouble('pack', words.badPack(row.pack));
    const price = figureOf(row.price);
    const packCost = price !== undefined && price >= 0 ? price : trouble('price', words.badPrice(row.price));
    if (troubles.size > before) return [];
    return [
      { id: `offer-${i}`, name, ...label, release: row.release === '' ? 'untold' : row.release, packKg, packCost },
    ];
  });
  return { feeds, troubles };
}

/** A figure alone; '' is none. */
function figureOf(text: string): number | undefined {
  const read = readFigure(text.trim());
  return read.ok && read.rest.trim() === '' ? read.value : undefined;
}

/** What may be spent, as typed: money, time, and how long one bucket takes. */
export interface LimitsTyped {
  readonly money: string;
  readonly minutes: string;
  readonly bucketMinutes: string;
}

export interface LimitsRead {
  readonly limits: NonNullable<CoverInput['limits']>;
  readonly bucketMinutes: number | undefined;
  readonly troubles: Troubles;
}

/** Nothing typed is no limit; a limit on time counts only where it is told how long a bucket takes. */
export function readLimits(typed: LimitsTyped): LimitsRead {
  const troubles = new Map<string, { readonly sentence: string }>();
  const of = (field: keyof LimitsTyped, least: number) => {
    const text = typed[field].trim();
    if (text === '') return undefined;
    const value = figureOf(text);
    if (value !== undefined && value >= least) return value;
    troubles.set(field, { sentence: words.badLimit[field](text) });
    return undefined;
  };
  const [money, minutes, bucketMinutes] = [of('money', 0), of('minutes', 0), of('bucketMinutes', 0.1)];
  if (minutes !== undefined && bucketMinutes === undefined && !troubles.has('bucketMinutes')) {
    troubles.set('bucketMinutes', { sentence: words.noBucketMinutes });
  }
  const counts = minutes !== undefined && bucketMinutes !== undefined;
  return {
    limits: { ...(money !== undefined && { money }), ...(counts && { minutes }) },
    bucketMinutes,
    troubles,
  };
}
