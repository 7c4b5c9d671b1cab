// The stock of scraps as its sheet shows it: every lot that is left, the oldest first, where it may go and how long it
// keeps. Where a lot may go is the journal's; days to spoil are the materials table's.

import type { Destination } from '#engine/scraps/part.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Lot } from '#journal/parts/stock.ts';

export interface LotView {
  readonly id: string;
  readonly name: string;
  readonly materialId: string | undefined;
  readonly leftKg: number;
  readonly weighedTyped: string;
  readonly on: string;
  readonly ageDays: number;
  readonly goes: Destination;
  /** Why it may not go everywhere, one line of the table; '' where nothing is known against it. */
  readonly why: string;
  readonly treated: 'no' | 'unknown' | 'yes' | undefined;
  /** Days until it spoils; undefined where the table has none. Below 0: past. */
  readonly spoilsInDays: { readonly low: number; readonly high: number } | undefined;
}

export interface StockView {
  readonly lots: readonly LotView[];
  readonly usableKg: number;
  readonly setAsideKg: number;
  readonly elsewhereKg: number;
}

/** A lot smaller than this is used up. */
const NOTHING_LEFT_KG = 0.01;

/** Every lot with something left, the oldest first. */
export function stockView({ plot, today }: { readonly plot: Plot; readonly today: string }): StockView {
  const lots = [...plot.lots.values()]
    .filter((lot) => lot.leftKg >= NOTHING_LEFT_KG)
    .map((lot) => lotView(lot, today))
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.id < b.id ? -1 : 1));
  const sum = (places: readonly Destination[]) =>
    lots.filter((lot) => places.includes(lot.goes)).reduce((total, lot) => total + lot.leftKg, 0);
  return {
    lots,
    usableKg: sum(['liquid']),
    setAsideKg: sum(['set-aside']),
    elsewhereKg: sum(['compost-only', 'out']),
  };
}

function lotView(lot: Lot, today: string): LotView {
  const { body, entry } = lot.act;
  const row = body.material === undefined ? undefined : material(body.material);
  const ageDays = momentOf(today).dateDay - lot.act.when.dateDay;
  const spoil = row?.figures.spoilDays;
  const keeps = spoil && body.condition !== 'frozen' && body.condition !== 'dry';
  return {
    id: lot.id,
    name: body.name ?? row?.name ?? 'scraps without a kind',
    materialId: body.material,
    leftKg: lot.leftKg,
    weighedTyped: body.mass.typed,
    on: entry.on,
    ageDays,
    goes: lot.goes,
    why: lot.goes === 'liquid' ? '' : (row?.why ?? ''),
    treated: body.slip?.treated,
    spoilsInDays: keeps ? { low: Math.round(spoil.low - ageDays), high: Math.round(spoil.high - ageDays) } : undefined,
  };
}
