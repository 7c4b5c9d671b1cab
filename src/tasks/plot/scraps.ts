// The stock of scraps as its sheet shows it: every lot that is left, the oldest first, where it may go and why, what may
// be done with it, and how long it keeps. Where a lot may go is the journal's; the reasons are the rules' own.

import { plainFigure } from '#engine/quantity/number.ts';
import type { Destination } from '#engine/scraps/part.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import { beansOf } from '#journal/parts/slip-of-lot.ts';
import { type Lot, placeOfLot } from '#journal/parts/stock.ts';
import { decidedSays, unknownKindSays } from '#words/en/scraps-stock.ts';
import { slipOutcomes } from '#words/en/slip.ts';
import type { Caution } from '../caution.ts';
import { lazily } from './lazily.ts';
import { slipView } from './slips.ts';

export interface LotView {
  readonly id: string;
  readonly name: string;
  readonly materialId: string | undefined;
  readonly leftKg: number;
  readonly weighedTyped: string;
  readonly on: string;
  readonly ageDays: number;
  readonly goes: Destination;
  /** What becomes of it and where it goes instead; empty where it may go in. */
  readonly says: readonly string[];
  /** Why, by the rules. */
  readonly cautions: readonly Caution[];
  /** The one sentence that stands beside it where it is greyed; '' where it may go in. */
  readonly why: string;
  /** A bean test may clear it. */
  readonly beanTest: boolean;
  /** A heap may have it. */
  readonly heapMay: boolean;
  readonly treated: 'no' | 'unknown' | 'yes' | undefined;
  /** Days until it spoils; undefined where the table has none, and of a lot that goes in nowhere. Below 0: past. */
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
const USUAL_HEAP = 'the heap';

/** Every lot with something left, the oldest first. */
export function stockView({ plot, today }: { readonly plot: Plot; readonly today: string }): StockView {
  const lots = [...plot.lots.values()]
    .filter((lot) => lot.leftKg >= NOTHING_LEFT_KG)
    .map((lot) => lotView(plot, lot, today))
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

function lotView(plot: Plot, lot: Lot, today: string): LotView {
  const { body, entry } = lot.act;
  const row = body.material === undefined ? undefined : material(body.material);
  const ageDays = momentOf(today).dateDay - lot.act.when.dateDay;
  const spoil = row?.figures.spoilDays;
  const keeps = spoil && lot.goes === 'liquid' && body.condition !== 'frozen' && body.condition !== 'dry';
  const { goes } = lot;
  // The rules are asked for the lots that are drawn.
  const stands = lazily(() => standing(plot, lot));
  return {
    id: lot.id,
    name: nameOf(body),
    materialId: body.material,
    leftKg: lot.leftKg,
    weighedTyped: body.mass.typed,
    on: entry.on,
    ageDays,
    goes,
    get says() {
      return stands().says;
    },
    get cautions() {
      return stands().cautions;
    },
    get why() {
      return stands().why;
    },
    get beanTest() {
      return goes === 'set-aside' && stands().waitsForBeans;
    },
    heapMay: goes === 'liquid' || goes === 'compost-only',
    treated: body.slip?.treated,
    spoilsInDays: keeps ? { low: Math.round(spoil.low - ageDays), high: Math.round(spoil.high - ageDays) } : undefined,
  };
}

function nameOf(body: Body<'scraps.weighed'>): string {
  const row = body.material === undefined ? undefined : material(body.material);
  return body.name ?? row?.name ?? body.material ?? 'scraps without a kind';
}

const OUTCOMES = { liquid: 'in', 'compost-only': 'compost-only', 'set-aside': 'set-aside', out: 'out' } as const;

/** Why a lot stands where it stands: the rules first; then what was decided by hand, or a kind that no table has. */
function standing(plot: Plot, lot: Lot) {
  const { body } = lot.act;
  const { goes } = lot;
  if (goes === 'liquid') return { says: [], cautions: [], why: '', waitsForBeans: false };
  const seen = slipView({ plot, lot: body, on: lot.act.when.on, beans: beansOf(lot.tests) });
  const decided = OUTCOMES[goes] !== seen.outcome;
  const known = body.material === undefined || material(body.material) !== undefined;
  const own = decided ? (known ? decidedSays(slipOutcomes[OUTCOMES[goes]]) : unknownKindSays) : undefined;
  return {
    says: own === undefined ? seen.says : [own],
    cautions: seen.cautions,
    why: own ?? seen.cautions[0]?.text ?? seen.says.join(' '),
    // By hand, or because a rule waits for it: a kind no table has waits for the table.
    waitsForBeans: known && (decided || seen.bean),
  };
}

/** One sentence why a lot may not go into a vessel; '' where it may. */
export function whyKept(plot: Plot, lot: Lot): string {
  return standing(plot, lot).why;
}

/**
 * Why scraps typed by their name may not be topped up with: a plant of the list that stays out, or the name of a lot
 * kept out where no other of that name may go in; undefined where nothing speaks against the name.
 */
export function whyNamedKept(plot: Plot, typed: string): string | undefined {
  const name = typed.trim().toLowerCase();
  if (name === '') return undefined;
  const slip = { whose: 'own', treated: 'no', cameFrom: 'garden' } as const;
  const lot = { name: typed.trim(), mass: { typed: '', massKg: 0 }, slip, condition: 'fresh' } as const;
  const [caution] = slipView({ plot, lot, on: '2000-01-01' }).cautions;
  if (caution !== undefined) return caution.text;
  const named = [...plot.lots.values()].filter(
    (one) => one.leftKg >= NOTHING_LEFT_KG && nameOf(one.act.body).toLowerCase() === name,
  );
  if (named.some(({ goes }) => goes === 'liquid')) return undefined;
  return named[0] && whyKept(plot, named[0]);
}

/** The act that gives the rest of a lot to the heap; undefined where no heap may have it. */
export function lotToHeap(plot: Plot, id: string): Body<'heap.fed'> | undefined {
  const lot = plot.lots.get(id);
  if (lot === undefined || (lot.goes !== 'liquid' && lot.goes !== 'compost-only')) return undefined;
  const { body } = lot.act;
  const massKg = Math.round(lot.leftKg * 1000) / 1000;
  return {
    heap: plot.heapFed.at(-1)?.body.heap ?? USUAL_HEAP,
    ingredients: [
      {
        lot: id,
        ...(body.material !== undefined && { material: body.material }),
        ...(body.name !== undefined && { name: body.name }),
        amount: { typed: `${plainFigure(massKg)} kg`, massKg },
      },
    ],
  };
}

/**
 * Lots in a batch that ought not to be in one, as an entry from elsewhere may have brought them: the record keeps it.
 * Undefined where there is none. A site's rule is left out here: it says what may come in, and this has. A lot whose
 * state nobody wrote down counts as looked at: it went in under somebody's eyes.
 */
export function keptOutIn(
  plot: Plot,
  batch: Batch,
): readonly { readonly name: string; readonly goes: Destination }[] | undefined {
  const found = batch.contents.parts.flatMap(({ lot: id }) => {
    const lot = id === undefined ? undefined : plot.lots.get(id);
    if (lot === undefined) return [];
    const { body } = lot.act;
    const goes = placeOfLot({ ...lot.act, body: { ...body, condition: body.condition ?? 'fresh' } }, lot.tests);
    return goes === 'liquid' ? [] : [{ name: nameOf(body), goes }];
  });
  return found.length > 0 ? found : undefined;
}
