// What newer tables or formulas moved: each figure kept beside a straining, a bottling or a pour, held against what the
// same function gives today. The only reader of the remark; nothing else is computed from it. Where what was entered
// changed as well, that is said, as a correction of the grower's own is no change of tables.

import { point, type Range } from '#engine/quantity/range.ts';
import { isSameVersion, type Version, version } from '#engine/tables/version.ts';
import type { Entry } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { Feed } from '#journal/parts/feeds.ts';
import { newestBody } from '#journal/upgrade.ts';
import { type ChangeSaid, isMoved, type MovedOf, sayMoved } from '#words/en/figures-shown.ts';
import { pegName } from './batch-name.ts';
import { bottlesOfBatch } from './bottles-of.ts';
import { bottleNow, liquidNow, litresOf, pourNow } from './figures-now.ts';
import type { Figures, FiguresShown, WhatShown } from './figures-shown.ts';
import { lazily } from './lazily.ts';
import { sourcesOf } from './liquid.ts';
import { movedHoldOf, movedHoldOn, wasHeldThen } from './moved-hold.ts';

/** One figure, as it was shown and as it is today; undefined where it is not known any more. */
export interface FigureThen {
  readonly what: WhatShown;
  readonly before: Range;
  readonly now: Range | undefined;
}

/** What was shown with one act. */
export interface ShownThen {
  readonly version: Version;
  /** It came from other tables or formulas than today's. */
  readonly isOlder: boolean;
  /** What the figures are computed from was entered anew since. */
  readonly enteredAnew: boolean;
  readonly figures: readonly FigureThen[];
}

/** One thing whose figures an update moved, in one sentence, with both figures of each nutrient. */
export interface Moved {
  readonly key: string;
  readonly sentence: string;
  readonly figures: readonly FigureThen[];
}

/** Kinds that keep what was shown. */
type Keeping = 'peg.strained' | 'bottle.filled' | 'bed.fed';

interface Shown {
  readonly id: string;
  readonly kept: ShownThen;
}

/** What was shown with an act: kept, not kept as the entry is older than the keeping, or nothing was shown. */
export function shownWith(plot: Plot, act: { readonly id: string; readonly shown: Entry; readonly first: Entry }) {
  const { id, shown, first } = act;
  if (shown.kind !== 'peg.strained' && shown.kind !== 'bottle.filled' && shown.kind !== 'bed.fed') return undefined;
  const body = newestBody(shown) as Body<Keeping>;
  const { figuresShown } = body;
  if (figuresShown !== undefined) return thenOf(figuresShown, figuresToday(plot, id, shown.kind, body));
  // Plain water holds nothing to show; what else has no figures and is of the first version may be older than the keeping.
  const isPlainWater = 'from' in body && body.from.length === 0;
  return first.v === 1 && !isPlainWater ? ('not-kept' as const) : ('none' as const);
}

function figuresToday(plot: Plot, id: string, kind: Keeping, body: unknown): Figures {
  if (kind === 'bed.fed') return pourNow(plot, (body as Body<'bed.fed'>).from);
  const bottle = plot.bottles.get(id);
  if (bottle !== undefined) return bottleNow(plot, bottle);
  const batch = [...plot.batches.values()].find(({ strainings }) => strainings.some((one) => one.id === id));
  return liquidNow(plot, batch);
}

function thenOf(shown: FiguresShown, today: Figures): ShownThen {
  const { tables, model, entered } = shown;
  return {
    version: { tables, model },
    isOlder: !isSameVersion({ tables, model }, version),
    enteredAnew: entered !== today.entered,
    figures: shown.figures.map(({ what, ...before }) => ({
      what,
      before,
      now: today.figures.find((one) => one.what === what),
    })),
  };
}

/** Which batch or bed is asked for; of neither, all of the plot. */
export interface MovedOnly {
  readonly batch?: string | undefined;
  readonly bed?: string | undefined;
  /** With it, what the longer hold moved of that batch or bed is told too. */
  readonly now?: string | undefined;
}

/** All that an update moved, or what it moved of one batch or bed: a batch's liquid, its bottles, the pours on a bed. */
export function movedBy(plot: Plot, only: MovedOnly = {}): readonly Moved[] {
  const steps = movedInSteps(plot, only);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/** The same in steps of one batch or one pour each: a record of many years takes seconds, and a page goes on meanwhile. */
export function* movedInSteps(plot: Plot, only: MovedOnly = {}): Generator<void, readonly Moved[]> {
  const found: Moved[] = [];
  const isAll = only.batch === undefined && only.bed === undefined;
  for (const batch of isAll ? plot.batches.values() : oneOf(plot.batches, only.batch)) {
    found.push(...movedOfBatch(plot, batch));
    if (!isAll && only.now !== undefined) found.push(...holdSaid(batch.id, movedHoldOf(plot, batch, only.now)));
    yield;
  }
  const litreOf = litresOf(plot);
  const states = sourcesOf(plot);
  for (const bed of isAll ? plot.beds.values() : oneOf(plot.beds, only.bed)) {
    const pours: Shown[] = [];
    const rightThen: Feed[] = [];
    for (const feed of bed.feeds) {
      const shown = olderOf(feed.id, feed.act.body.figuresShown, () => pourNow(plot, feed.act.body.from, litreOf));
      if (shown !== undefined) pours.push(shown);
      const tells = !isAll && only.now !== undefined && feed.counts !== 'no';
      if (tells && wasHeldThen(feed.act, only.now, states)) rightThen.push(feed);
      yield;
    }
    const name = bed.facts.name ?? bed.facts.tag ?? '';
    found.push(...movedOf({ of: 'pours', name }, `${bed.id} pours`, summed(pours)));
    found.push(...holdSaid(bed.id, movedHoldOn(rightThen)));
  }
  return found;
}

function holdSaid(of: string, sentence: string | undefined): readonly Moved[] {
  return sentence === undefined ? [] : [{ key: `${of} hold`, sentence, figures: [] }];
}

function oneOf<T>(things: ReadonlyMap<string, T>, id: string | undefined): readonly T[] {
  const one = id === undefined ? undefined : things.get(id);
  return one === undefined ? [] : [one];
}

/** The liquid of a batch, by its strainings and its bottles, and how long its bottles keep. */
function movedOfBatch(plot: Plot, batch: Batch): readonly Moved[] {
  const today = lazily(() => liquidNow(plot, batch));
  const liquid = [
    ...batch.strainings.flatMap(({ id, body }) => olderOf(id, body.figuresShown, today) ?? []),
    ...bottlesOfBatch(plot, batch.id).flatMap(
      (bottle) => olderOf(bottle.id, bottle.act.body.figuresShown, () => bottleNow(plot, bottle)) ?? [],
    ),
  ];
  if (liquid.length === 0) return [];
  const peg = pegName(plot, batch);
  const litre = first(liquid, (what) => what.endsWith('GPerL'));
  const keeps = first(liquid, (what) => what === 'useFirstDays');
  return [
    ...movedOf({ of: 'liquid', peg }, `${batch.id} liquid`, litre),
    ...movedOf({ of: 'bottles', peg }, `${batch.id} bottles`, keeps),
  ];
}

/** What was shown with an act by other tables or formulas than today's. */
function olderOf(id: string, shown: FiguresShown | undefined, today: () => Figures): Shown | undefined {
  return shown === undefined || isSameVersion(shown, version) ? undefined : { id, kept: thenOf(shown, today()) };
}

interface Together extends Pick<ShownThen, 'enteredAnew' | 'figures'> {
  readonly version: Version | undefined;
}

/** Each figure as it was shown first: a liquid is one, however often it was shown. */
function first(shown: readonly Shown[], counts: (what: WhatShown) => boolean): Together {
  const seen = new Map<WhatShown, FigureThen>();
  for (const { kept } of shown)
    for (const figure of kept.figures) if (counts(figure.what) && !seen.has(figure.what)) seen.set(figure.what, figure);
  return { ...headOf(shown), figures: [...seen.values()] };
}

/** Pours added up: their ends rest on the same figures, so they add straight. @arithmetic */
function summed(shown: readonly Shown[]): Together {
  const sums = new Map<WhatShown, FigureThen>();
  for (const { kept } of shown) {
    for (const { what, before, now } of kept.figures) {
      const was = sums.get(what) ?? { what, before: point(0), now: point(0) };
      const isKnown = was.now !== undefined && now !== undefined;
      sums.set(what, { what, before: straight(was.before, before), now: isKnown ? straight(was.now, now) : undefined });
    }
  }
  return { ...headOf(shown), figures: [...sums.values()] };
}

function straight(a: Range, b: Range): Range {
  return { low: a.low + b.low, likely: a.likely + b.likely, high: a.high + b.high };
}

function headOf(shown: readonly Shown[]): Pick<Together, 'version' | 'enteredAnew'> {
  return { version: shown[0]?.kept.version, enteredAnew: shown.some(({ kept }) => kept.enteredAnew) };
}

function movedOf(of: MovedOf, key: string, { version: shownBy, enteredAnew, figures }: Together): readonly Moved[] {
  const moved = figures.filter(({ what, before, now }) => isMoved(what, before, now));
  if (shownBy === undefined || moved.length === 0) return [];
  const changes = moved.map(changeOf);
  return [{ key, sentence: sayMoved({ of, changes, shownBy, now: version, enteredAnew }), figures: moved }];
}

/** How a figure changed. @arithmetic percent = 100 (now − before) / before */
function changeOf({ what, before, now }: FigureThen): ChangeSaid {
  const byPercent =
    now === undefined || !(before.likely > 0) ? undefined : (100 * (now.likely - before.likely)) / before.likely;
  return { what, before, now, byPercent };
}
