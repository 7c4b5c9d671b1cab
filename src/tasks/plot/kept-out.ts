// What may go into no vessel: lots of the stock that are kept out, kinds that the site greys, and scraps from the list
// that nobody can speak for. For every sheet that lists scraps, so that all of them refuse the same.

import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Lot } from '#journal/parts/stock.ts';
import { fillBars } from '#words/en/fill.ts';
import { type ClosedHere, closedHere } from './closed.ts';
import type { FillPart } from './fill.ts';
import { lazily } from './lazily.ts';
import { whyKept } from './scraps.ts';

/** Less than this of a lot is what clings to its bucket. @practice */
export const LEAST_KG = 0.01;

/** Why a lot of the stock may not be chosen. */
export type KeptOut = 'set-aside' | 'compost-only' | 'out' | 'kind-not-known';

/** What of the stock may not be chosen, and what the site keeps out. */
export interface StockKept {
  readonly keptOut: readonly {
    readonly id: string;
    readonly name: string;
    readonly leftKg: number;
    readonly why: KeptOut;
    /** Why, in a sentence by its rule; '' where `why` says it all. */
    readonly says: string;
  }[];
  /** Materials that the site greys, and in which words. */
  readonly closed: ClosedHere;
}

/** What of the stock may go into no vessel, and what the site keeps out: for every sheet that lists scraps. */
export function stockKept(plot: Plot): StockKept {
  const lots = [...plot.lots.values()].filter(({ leftKg }) => leftKg >= LEAST_KG);
  return {
    keptOut: lots.flatMap((lot) => {
      const why = keptOut(lot);
      return why === undefined ? [] : [keptLot(plot, lot, why)];
    }),
    closed: closedHere(plot.facts),
  };
}

/** One lot with its reason, which is looked up for those that are drawn. */
function keptLot(plot: Plot, lot: Lot, why: KeptOut): StockKept['keptOut'][number] {
  const says = lazily(() => whyKept(plot, lot));
  return {
    id: lot.id,
    name: nameOf(lot),
    leftKg: lot.leftKg,
    why,
    get says() {
      return says();
    },
  };
}

/** Why a lot may not go into a vessel; undefined where it may. */
export function keptOut(lot: Lot): KeptOut | undefined {
  if (lot.goes !== 'liquid') return lot.goes;
  const { material: id, analysis } = lot.act.body;
  const known = (id !== undefined && material(id) !== undefined) || analysis?.dryMatter !== undefined;
  return known ? undefined : 'kind-not-known';
}

/** What a lot is called. */
export function nameOf({ act: { body } }: Lot): string {
  return body.name ?? (body.material === undefined ? '' : (material(body.material)?.name ?? body.material));
}

/** Parts that may not go in: lots kept out, kinds the site greys, and scraps nobody can speak for without a bean test. */
export function barredIn(plot: Plot, parts: readonly FillPart[]): readonly string[] {
  const closed = closedHere(plot.facts);
  return parts.flatMap((part) => {
    const lot = part.lot === undefined ? undefined : plot.lots.get(part.lot);
    if (lot !== undefined) return keptOut(lot) === undefined ? [] : [whyKept(plot, lot)];
    const id = part.material;
    if (id !== undefined && closed.ids.has(id) && closed.says !== undefined) return [closed.says];
    const group = id === undefined ? undefined : material(id)?.group;
    if (part.treated === 'no' || !ASKED_GROUPS.includes(group ?? '')) return [];
    return [part.treated === undefined ? fillBars.untold(nameOfPart(part)) : fillBars.notKnown(nameOfPart(part))];
  });
}

/** Groups of the table that weedkiller comes in with. */
const ASKED_GROUPS: readonly string[] = ['clippings', 'hay-straw', 'manure', 'compost'];

function nameOfPart({ name, material: id }: FillPart): string {
  return name || (id === undefined ? '' : (material(id)?.name ?? id));
}
