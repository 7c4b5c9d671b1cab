// What newer tables or formulas moved: each figure kept beside a straining, a bottling or a pour, held against what the
// same function gives today. The only reader of the remark; nothing else is computed from it. Where what was entered
// changed as well, that is said, as a correction of the grower's own is no change of tables.

import { point, type Range } from '#engine/quantity/range.ts';
import { isSameVersion, type Version, version } from '#engine/tables/version.ts';
import type { Entry } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { newestBody } from '#journal/upgrade.ts';
import { type ChangeSaid, isMoved, type MovedOf, sayMoved } from '#words/en/figures-shown.ts';
import { pegName } from './batch-name.ts';
import { bottleNow, liquidNow, litresOf, pourNow } from './figures-now.ts';
import type { Figures, FiguresShown, WhatShown } from './figures-shown.ts';

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

/** All that an update moved, or what it moved of one batch or bed: a batch's liquid, its bottles, the pours on a bed. */
export function movedBy(
  plot: Plot,
  only: { readonly batch?: string | undefined; readonly bed?: string | undefined } = {},
): readonly Moved[] {
  const wants = (key: 'batch' | 'bed', id: string) =>
    only.batch === undefined && only.bed === undefined ? true : only[key] === id;
  const found: Moved[] = [];
  const litreOf = litresOf(plot);
  for (const batch of plot.batches.values()) {
    if (!wants('batch', batch.id)) continue;
    const bottles = [...plot.bottles.values()].filter((bottle) => bottle.batch === batch.id);
    const today = lazily(() => liquidNow(plot, batch));
    const liquid = [
      ...older(
        batch.strainings,
        ({ body }) => body.figuresShown,
        () => today(),
      ),
      ...older(
        bottles,
        ({ act }) => act.body.figuresShown,
        (bottle) => bottleNow(plot, bottle),
      ),
    ];
    const peg = pegName(plot, batch);
    found.push(
      ...movedOf(
        { of: 'liquid', peg },
        `${batch.id} liquid`,
        first(liquid, (what) => what.endsWith('GPerL')),
      ),
      ...movedOf(
        { of: 'bottles', peg },
        `${batch.id} bottles`,
        first(liquid, (what) => what === 'useFirstDays'),
      ),
    );
  }
  for (const bed of plot.beds.values()) {
    if (!wants('bed', bed.id)) continue;
    const pours = older(
      bed.feeds,
      ({ act }) => act.body.figuresShown,
      ({ act }) => pourNow(plot, act.body.from, litreOf),
    );
    const name = bed.facts.name ?? bed.facts.tag ?? '';
    found.push(...movedOf({ of: 'pours', name }, `${bed.id} pours`, summed(pours)));
  }
  return found;
}

/** What was shown with acts by other tables or formulas than today's. */
function older<T extends { readonly id: string }>(
  acts: readonly T[],
  remark: (act: T) => FiguresShown | undefined,
  today: (act: T) => Figures,
): readonly Shown[] {
  return acts.flatMap((act) => {
    const shown = remark(act);
    return shown === undefined || isSameVersion(shown, version)
      ? []
      : [{ id: act.id, kept: thenOf(shown, today(act)) }];
  });
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

function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
