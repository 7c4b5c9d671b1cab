// What lay on a bed and must be waited for like a pour: solids of a batch, compost of a heap with manure that no rule on
// heat was met for, manure itself. Clippings, plants alone and bought feed ask for no wait here; compost of which nobody
// told the heap is spoken of where it is written down.

import type { AnimalOrigin } from '#engine/can/eating.ts';
import { material } from '#engine/tables/index.ts';
import type { ActOf } from '#journal/act.ts';
import type { Plot } from '#journal/fold.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { isGivenNow } from './counted.ts';
import { onDay } from './dates.ts';
import { type HeapView, heapView } from './heap.ts';
import { sourceAt } from './liquid.ts';
import type { OriginWhy } from './origin.ts';

/** A dressing that may have left something of animals, or of a batch that was not held, on a bed. */
export interface DressedWait {
  readonly id: string;
  readonly what: 'solids' | 'compost' | 'mulch';
  readonly dateDay: number;
  readonly by: string;
  readonly held: boolean;
  /** Undefined where it is not known what it was. */
  readonly animalOrigin: AnimalOrigin | undefined;
  readonly animalWhy: readonly OriginWhy[];
}

type Left = Pick<DressedWait, 'held' | 'animalOrigin' | 'animalWhy'>;
const MANURE: Left = { held: false, animalOrigin: 'yes', animalWhy: ['manure'] };
const ANIMAL_GROUPS: readonly (string | undefined)[] = ['manure', 'animal'];
const NO_VOLUME = { typed: '', volumeL: 0 };

/** Dressings of a bed up to a day that ask for a wait, in the order they were put on. */
export function dressedWaits(plot: Plot, bed: Bed, today: number): readonly DressedWait[] {
  return bed.dressings
    .filter(({ when }) => when.dateDay <= today)
    .flatMap((act): readonly DressedWait[] => {
      const { what } = act.body;
      if (what === 'product' || what === 'cover-crop') return [];
      const left = leftBy(plot, act, today);
      return left === undefined ? [] : [{ id: act.id, what, dateDay: act.when.dateDay, by: act.by, ...left }];
    });
}

function leftBy(plot: Plot, { body, when }: ActOf<'bed.dressed'>, today: number): Left | undefined {
  const named = body.material ?? (body.lot === undefined ? undefined : plot.lots.get(body.lot)?.act.body.material);
  if (ANIMAL_GROUPS.includes(named === undefined ? undefined : material(named)?.group)) return MANURE;
  if (body.what === 'solids') return ofSolids(plot, body.batch, when.on, today);
  return body.heap === undefined
    ? undefined
    : ofHeap(plot, body.heap, { on: when.on.slice(0, 10), today: onDay(today) });
}

/** Solids carry what their batch carried; of an unnamed batch nothing is known. */
function ofSolids(plot: Plot, batch: string | undefined, on: string, today: number): Left {
  const from = batch === undefined ? undefined : { batch, volume: NO_VOLUME };
  const then = from && sourceAt(plot, from, on);
  const now = from && sourceAt(plot, from, onDay(today));
  if (then === undefined) return { held: false, animalOrigin: undefined, animalWhy: [] };
  const held = then.held && now !== undefined && now.state !== 'lost';
  return { held, animalOrigin: then.animalOrigin, animalWhy: then.animalWhy };
}

/**
 * Compost of a heap as it stood when it was put on: nothing to wait for where plants alone went in, or where its log met
 * one of the published rules on heat.
 * @source cfr-7-205-203 (c)(2)
 */
function ofHeap(
  plot: Plot,
  heap: string,
  { on, today }: { readonly on: string; readonly today: string },
): Left | undefined {
  const view = heapView({ plot, heap, today: on });
  if (view === undefined) return { held: false, animalOrigin: undefined, animalWhy: [] };
  // What lies ahead may have been in it already, and after the heat.
  const fedAhead = plot.heapFed.some((act) => act.body.heap === heap && isGivenNow(act));
  const asItIs = fedAhead ? heapView({ plot, heap, today }) : undefined;
  if (asItIs !== undefined) return leftOf(asItIs);
  return view.verdicts.some(({ met }) => met) ? undefined : leftOf(view);
}

/** What a heap leaves where no rule on heat speaks for it. */
function leftOf(view: HeapView): Left | undefined {
  if (view.rows.some(({ material: one }) => ANIMAL_GROUPS.includes(one?.group))) return MANURE;
  const isKnown = view.notCounted.length === 0 && view.rows.every(({ material: one }) => one !== undefined);
  return isKnown ? undefined : { held: false, animalOrigin: 'possible', animalWhy: ['scraps-not-named'] };
}
