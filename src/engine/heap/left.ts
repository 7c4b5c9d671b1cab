// What is left of a heap at the end: carbon, nitrogen, potassium, dry matter, volume and C:N, as bands. Losses are
// those of garden and farm heaps; whoever weighs the compost knows better.

import { inverse, product, type Range, scale } from '../quantity/range.ts';
import { heapFigure } from './figures.ts';
import type { Weighed } from './ingredient.ts';
import { type Mix, perKg } from './mix.ts';

export interface Left {
  readonly carbonKg: Range;
  readonly nitrogenKg: Range;
  /** What went in of it, of which that is left. */
  readonly nitrogenInKg: Range;
  /** Undefined where the potassium of a row is not known. */
  readonly potassiumKg: Range | undefined;
  readonly dryKg: Range;
  /** Wet mass at the dry matter of finished compost. */
  readonly massKg: Range;
  readonly volumeL: Range | undefined;
  readonly cn: Range | undefined;
}

/** Share that stays, the ends turned round. */
function stays(quantity: string): Range {
  const { low, likely, high } = heapFigure('losses', quantity);
  return { low: 1 - high, likely: 1 - likely, high: 1 - low };
}

/**
 * What is left at the end.
 *
 *   C = C0 (1 − c);  N = N0 (1 − n);  K = K0 (1 − k);  dry matter = DM0 − 1.8 · C lost;  V = V0 · share left
 *
 * 1.8 is organic matter over its carbon. Nothing left is ever more than what went in.
 * @range bands of the losses and of what went in, taken as independent
 * @source rynk-1992 losses while composting
 */
export function leftOf(rows: readonly Weighed[], mix: Mix, dryMatter: Range): Left {
  const carbon0 = mix.carbonKg;
  const spread = relative(mix.dryKg);
  const carbonKg = capped(product([scale(spread, carbon0), stays('carbonFraction')]), spread.high * carbon0);
  const nitrogen0 = nitrogenOf(rows);
  const nitrogenKg = capped(product([nitrogen0, stays('nitrogenFraction')]), nitrogen0.high);
  const potassium0 = potassiumOf(rows);
  const organic = heapFigure('carbon', 'organicPerCarbonFactor').likely;
  const lost = heapFigure('losses', 'carbonFraction');
  const dryLeft = (lostFraction: number) =>
    mix.dryKg.likely > 0 ? Math.max(0, 1 - (organic * lostFraction * carbon0) / mix.dryKg.likely) : 0;
  const dryShare = { low: dryLeft(lost.high), likely: dryLeft(lost.likely), high: dryLeft(lost.low) };
  const dryKg = capped(product([mix.dryKg, dryShare]), mix.dryKg.high);
  const counted = rows.every(({ ingredient }) => ingredient.cn !== undefined);
  return {
    carbonKg,
    nitrogenKg,
    nitrogenInKg: nitrogen0,
    potassiumKg: potassium0 && capped(product([potassium0, stays('potassiumFraction')]), potassium0.high),
    dryKg,
    massKg: product([dryKg, inverse(dryMatter)]),
    volumeL: mix.volumeL && product([mix.volumeL, heapFigure('losses', 'volumeLeftFraction')]),
    cn: mix.cn && counted ? product([mix.cn, stays('carbonFraction'), inverse(stays('nitrogenFraction'))]) : undefined,
  };
}

/**
 * What compost holds, percent of its dry matter: nitrogen, potassium where known. Undefined where the dry matter left may
 * be nothing.
 *
 *   percent = 100 · kilograms left / dry matter left
 *
 * @range held below what any compost can carry: 15 %
 * @arithmetic bands taken as independent, so wider than they are
 */
export function contentPercentDm({
  nitrogenKg,
  potassiumKg,
  dryKg,
}: Left): { readonly n: Range; readonly k: Range | undefined } | undefined {
  if (!(dryKg.low > 0 && nitrogenKg.low > 0)) return undefined;
  const percent = (kg: Range) => capped(scale(product([kg, inverse(dryKg)]), 100), MOST_PERCENT);
  return { n: percent(nitrogenKg), k: potassiumKg && potassiumKg.low > 0 ? percent(potassiumKg) : undefined };
}

const MOST_PERCENT = 15;

function relative(band: Range): Range {
  if (!(band.likely > 0)) return { low: 0, likely: 1, high: 1 };
  return { low: band.low / band.likely, likely: 1, high: band.high / band.likely };
}

function capped({ low, likely, high }: Range, most: number): Range {
  return { low: Math.min(low, most), likely: Math.min(likely, most), high: Math.min(high, most) };
}

/** Nitrogen put in; a row whose own nitrogen is not known counts by its carbon and C:N, or not at all. */
function nitrogenOf(rows: readonly Weighed[]): Range {
  const bands = rows.map(({ ingredient, massKg }) => {
    const { nPercentDm, dryMatter, carbonTaken } = ingredient;
    if (nPercentDm === undefined || carbonTaken) return scale(massKg, perKg(ingredient).nitrogenFraction);
    return scale(product([massKg, dryMatter, nPercentDm]), 0.01);
  });
  return summed(bands);
}

function potassiumOf(rows: readonly Weighed[]): Range | undefined {
  const bands = rows.map(({ ingredient: { kPercentDm, dryMatter }, massKg }) =>
    kPercentDm === undefined ? undefined : scale(product([massKg, dryMatter, kPercentDm]), 0.01),
  );
  return bands.every((one) => one !== undefined) ? summed(bands) : undefined;
}

function summed(bands: readonly Range[]): Range {
  let [down, up, likely] = [0, 0, 0];
  for (const one of bands) {
    likely += one.likely;
    down += (one.likely - one.low) ** 2;
    up += (one.high - one.likely) ** 2;
  }
  return { low: Math.max(0, likely - Math.sqrt(down)), likely, high: likely + Math.sqrt(up) };
}
