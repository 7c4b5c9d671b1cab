// What is shown today of a straining, a bottling and a pour, by the functions that every sheet asks: a litre of the liquid
// by the balance of its batch, the days a bottle keeps, the grams a pour gave. Used when the act is written, and again
// when a newer table is held against what was shown then.

import { ELEMENTS, type LiquidGrams, pourSupply } from '#engine/ground/supply.ts';
import { point, type Range, sum } from '#engine/quantity/range.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { Bottle } from '#journal/parts/bottles.ts';
import { strainedEntered, strainedOf } from '#plot/batch/strained.ts';
import { liquidOf } from '../ledger-supply.ts';
import {
  digestOf,
  type Figures,
  figureOf,
  givenFigures,
  keepEntered,
  liquidEntered,
  litreFigures,
} from './figures-shown.ts';
import { useFirstDates } from './shelf.ts';

const NONE: Figures = { entered: '', figures: [] };

/** A litre of a batch's liquid; a batch of which nobody told the plants has no figure. */
export function liquidNow(plot: Plot, batch: Batch | undefined): Figures {
  if (batch === undefined || batch.contents.parts.length === 0) return NONE;
  const asked = strainedEntered(plot, batch);
  return { entered: liquidEntered(asked), figures: litreFigures(liquidOf(strainedOf(asked)).gPerL) };
}

/** A litre of what is in the bottles, and the days they keep. */
export function bottleNow(plot: Plot, bottle: Bottle): Figures {
  const litre = liquidNow(plot, plot.batches.get(bottle.batch));
  const keeps = useFirstDates(bottle, plot, bottle.act.when.on);
  return {
    entered: digestOf([litre.entered, keepEntered(keeps)]),
    figures: [...litre.figures, ...figureOf('useFirstDays', keeps.keeping === 'none' ? undefined : keeps.days)],
  };
}

/** A litre of each batch, asked for once: many pours come from one batch. */
export function litresOf(plot: Plot): LitreOf {
  const made = new Map<string, Litre | undefined>();
  return (id) => {
    if (!made.has(id)) {
      const batch = plot.batches.get(id);
      const asked = batch && batch.contents.parts.length > 0 ? strainedEntered(plot, batch) : undefined;
      made.set(id, asked && { entered: liquidEntered(asked), grams: liquidOf(strainedOf(asked)) });
    }
    return made.get(id);
  };
}

interface Litre {
  readonly entered: string;
  readonly grams: LiquidGrams;
}
type LitreOf = (batch: string) => Litre | undefined;

/** What the concentrate of a pour brought; a figure that is not known for all of it is not told. @arithmetic sums */
export function pourNow(plot: Plot, from: Body<'bed.fed'>['from'], litreOf: LitreOf = litresOf(plot)): Figures {
  const each = from.map(({ bottle, batch: direct, volume: { volumeL } }) => {
    const id = (bottle === undefined ? undefined : plot.bottles.get(bottle)?.batch) ?? direct ?? '';
    const litre = litreOf(id);
    if (litre === undefined) return { entered: id, volumeL, grams: {} };
    const supply = pourSupply({ what: '', day: 0, concentrateL: point(volumeL), liquid: litre.grams });
    return { entered: litre.entered, volumeL, grams: supply.totalG };
  });
  const grams = Object.fromEntries(
    ELEMENTS.flatMap((element): readonly (readonly [string, Range])[] => {
      const known = each.flatMap((one) => one.grams[element] ?? []);
      return known.length < each.length || known.length === 0 ? [] : [[element, sum(known)]];
    }),
  );
  return { entered: digestOf(each.map(({ entered, volumeL }) => [entered, volumeL])), figures: givenFigures(grams) };
}
