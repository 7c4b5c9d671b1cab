// What one act on a bed brings, in grams of each element: in all, and the nitrogen that comes free by a day. A liquid
// carries what its batch's own balance gives; water in the can changes nothing. Sums over acts are ledger.ts.

import type { ElementFate } from '../bottle/liquid.ts';
import type { Element } from '../pail/recipe.ts';
import { capAt, point, product, type Range, scale } from '../quantity/range.ts';
import type { Part } from '../scraps/part.ts';
import { compostPanPercent, freeG, type Pace, panPercent, releasedFraction, tiedUpG } from './available.ts';
import { plain, releaseFigure } from './figures.ts';
import { phosphorusPercent, potassiumPercent } from './oxides.ts';

export const ELEMENTS = ['n', 'p', 'k', 'ca', 'mg'] as const satisfies readonly Element[];

/** Grams by element; an element that is not known is absent, never 0. */
export type Grams = Readonly<Partial<Record<Element, Range>>>;

export type SupplyKind = 'pour' | 'compost' | 'mulch' | 'solids' | 'product' | 'cover-crop';

/** One act on a bed, its amounts resolved. */
export interface Supply {
  readonly kind: SupplyKind;
  /** What it is called: a peg, a material, a product. */
  readonly what: string;
  /** Day it was given, on whatever count of days the whole sum uses. */
  readonly day: number;
  /** All of it. */
  readonly totalG: Grams;
  /** Nothing above this, from the balance of the batch: its high ends. */
  readonly ceilingG?: Grams | undefined;
  /** Share of the nitrogen free over the season, percent; below 0 it is tied up. */
  readonly sharePercent: Range;
  /** Instead of a share: grams tied up by stuff poor in nitrogen. */
  readonly tiedUpG?: Range | undefined;
  readonly pace: Pace;
  /** Dry plant matter that comes with it. */
  readonly dryKg?: Range | undefined;
}

/** Grams in a litre of a liquid, and no more than. */
export interface LiquidGrams {
  readonly gPerL: Grams;
  readonly ceilingGPerL: Readonly<Partial<Record<Element, number>>>;
}

/** A liquid by the balance of its batch; elements nobody knows are left out. @arithmetic hands over numbers of bottle/ */
export function liquidGrams(fates: readonly ElementFate[]): LiquidGrams {
  const known = fates.filter((fate) => fate.known);
  return {
    gPerL: Object.fromEntries(known.map((fate) => [fate.element, fate.gPerL])),
    ceilingGPerL: Object.fromEntries(known.map((fate) => [fate.element, fate.ceilingGPerL])),
  };
}

/**
 * A pour: grams = litres of concentrate · grams in a litre. The water it was thinned with carries nothing.
 *
 * All its nitrogen is counted as free: an upper bound, since most of it is protein.
 * @arithmetic
 */
export function pourSupply(pour: {
  readonly what: string;
  readonly day: number;
  readonly concentrateL: Range;
  readonly liquid: LiquidGrams;
}): Supply {
  const { gPerL, ceilingGPerL } = pour.liquid;
  const grams: Partial<Record<Element, Range>> = {};
  const ceiling: Partial<Record<Element, Range>> = {};
  for (const element of ELEMENTS) {
    const each = gPerL[element];
    if (each === undefined) continue;
    const most = ceilingGPerL[element] ?? each.high;
    ceiling[element] = scale(pour.concentrateL, most);
    // Litres known to the point: the same product without its logarithms.
    const carried =
      pour.concentrateL.low === pour.concentrateL.high
        ? scale(each, pour.concentrateL.likely)
        : product([pour.concentrateL, each]);
    grams[element] = capAt(carried, most * pour.concentrateL.high);
  }
  return {
    kind: 'pour',
    what: pour.what,
    day: pour.day,
    totalG: grams,
    ceilingG: ceiling,
    sharePercent: point(100),
    pace: 'at-once',
  };
}

/** Plant matter given to a bed. */
export interface MatterGiven {
  readonly kind: 'compost' | 'mulch' | 'solids' | 'cover-crop';
  readonly day: number;
  readonly part: Part;
  /** Dug in, or left lying on top. */
  readonly dugIn: boolean;
}

/**
 * Compost, mulch, solids or a cover crop: grams = mass · dry matter · percent · 10.
 *
 * Compost by its C:N. Other matter by percent nitrogen; poorer than the break-even it ties nitrogen up when dug in, and
 * takes next to nothing when left on top. Coffee grounds get no credit in their first season.
 * @source pnw-636 and the other sources of data/release.csv
 */
export function matterSupply({ kind, day, part, dugIn }: MatterGiven): Supply {
  const dryKg = scale(part.dryMatter, part.massKg);
  const grams: Partial<Record<Element, Range>> = {};
  for (const [element, percent] of [
    ['n', part.nPercentDm],
    ['p', part.pPercentDm],
    ['k', part.kPercentDm],
    ['ca', part.caPercentDm],
    ['mg', part.mgPercentDm],
  ] as const) {
    if (percent !== undefined) grams[element] = product([dryKg, scale(percent, 10)]);
  }
  const given = { kind, what: part.name, day, totalG: grams, dryKg };
  const nPercentDm = part.nPercentDm?.likely;
  if (kind === 'compost') return { ...given, sharePercent: compostPanPercent(part.cn?.likely), pace: 'compost' };
  if (part.id === 'coffee-grounds') {
    return { ...given, sharePercent: plain(releaseFigure('coffee-grounds', 'panPercent')), pace: 'fresh' };
  }
  if (nPercentDm === undefined) return { ...given, sharePercent: point(0), pace: 'fresh' };
  const poor = nPercentDm < releaseFigure('fresh-1-5', 'nPercentDm').likely;
  if (poor && !dugIn) {
    return { ...given, sharePercent: plain(releaseFigure('mulch', 'leftOnTopPercent')), pace: 'fresh' };
  }
  if (nPercentDm < 100 * releaseFigure('tie-up', 'breakEvenNFraction').likely) {
    const tied = tiedUpG({ dryKg: dryKg.likely, nPercentDm });
    return { ...given, sharePercent: point(0), tiedUpG: tied, pace: 'fresh' };
  }
  return { ...given, sharePercent: panPercent(nPercentDm), pace: 'fresh' };
}

/** A product by its label. */
export interface ProductGiven {
  readonly name: string;
  readonly day: number;
  readonly massKg: number;
  readonly nPercent: number;
  readonly p2o5Percent: number;
  readonly k2oPercent: number;
  /** 'slow' for meals and pellets that have to rot first; 'untold' where nobody read the label for it. */
  readonly release: 'at-once' | 'slow' | 'untold';
}

/**
 * A bought product: N as on the label, P and K out of the oxides; grams = kg · percent · 10.
 *
 * Where it is not told whether it dissolves or rots, it counts as what rots, and its high end is all of it at once.
 * @arithmetic the label; @source pnw-636 for what has to rot first
 */
export function productSupply(given: ProductGiven): Supply {
  const grams = (percent: number) => point(given.massKg * percent * 10);
  const rots = given.release !== 'at-once';
  return {
    kind: 'product',
    what: given.name,
    day: given.day,
    totalG: {
      n: grams(given.nPercent),
      p: grams(phosphorusPercent(given.p2o5Percent)),
      k: grams(potassiumPercent(given.k2oPercent)),
    },
    sharePercent: rots ? panPercent(given.nPercent) : point(100),
    pace: given.release === 'slow' ? 'fresh' : given.release,
  };
}

/**
 * Nitrogen of one act that has come free after so many degree days, grams; below 0 it is tied up. Undefined where the
 * act's nitrogen is not known. Never more than the act brought.
 * @arithmetic share and release of available.ts
 */
export function freeNitrogenG(supply: Supply, degreeDays: Range): Range | undefined {
  const total = supply.totalG.n;
  if (total === undefined) return undefined;
  if (supply.pace === 'untold') {
    // One thing is not known, not two: either it rots, or all of it is there at once.
    const rotted = freeNitrogenG({ ...supply, pace: 'fresh' }, degreeDays);
    return rotted && { ...rotted, high: total.high };
  }
  const released = releasedFraction(supply.pace, degreeDays);
  if (supply.tiedUpG !== undefined) {
    const tied = product([supply.tiedUpG, released]);
    return { low: -tied.high, likely: -tied.likely, high: -tied.low };
  }
  if (supply.pace === 'at-once' && supply.sharePercent.low === 100) return total;
  return freeG({ totalG: total, sharePercent: supply.sharePercent, releasedFraction: released });
}

/** What came free between two moments of one act: end by end, put in order. @arithmetic */
export function stepOf(beforeG: Range, afterG: Range): Range {
  const ends = [afterG.low - beforeG.low, afterG.high - beforeG.high];
  const likely = afterG.likely - beforeG.likely;
  return { low: Math.min(likely, ...ends), likely, high: Math.max(likely, ...ends) };
}

/**
 * Grams of phosphorus, potassium, calcium or magnesium that are still bound in stuff that rots, after so many degree days.
 *
 *   left = total · (1 − released)
 *
 * They come free as the stuff rots, at the pace of its nitrogen. What dissolves at once leaves nothing.
 * @practice our own: no source here gives these elements a pace of their own
 */
export function leftG(totalG: Range, pace: Pace, degreeDays: Range): Range {
  const { low, likely, high } = releasedFraction(pace, degreeDays);
  return { low: totalG.low * (1 - high), likely: totalG.likely * (1 - likely), high: totalG.high * (1 - low) };
}
