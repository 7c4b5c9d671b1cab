// The sugar window: the least that lets the batch turn sour with a margin, and the most the acid can use
// before yeast takes the rest. Every term is kept for the working.

import { difference, floorAt, inverse, product, type Range, scale, sum } from '../quantity/range.ts';
import { MOLAR_MASS_G } from '../scraps/acid.ts';
import type { Part } from '../scraps/part.ts';
import { type AcidDemand, acidDemand, protonsPerMol } from './acid-demand.ts';
import { pailFigure } from './figures.ts';
import { liquidL, type Mix } from './recipe.ts';

export interface SugarWindow {
  /** Own sugar of the plants that the bacteria reach, g hexose. */
  readonly ownHexoseG: number;
  readonly ownHexoseBandG: Range;
  /**
   * Hexose that just makes the acid needed, no margin, the sugar product's own buffer included; without that buffer
   * where no amount of the product would do.
   */
  readonly neededHexoseG: number;
  readonly neededHexoseBandG: Range;
  /** Least to add: needed × safety factor − own, not below 0. */
  readonly leastHexoseG: Range;
  /** Most to add. */
  readonly mostHexoseG: number;
  readonly mostHexoseBandG: Range;
  readonly window: 'open' | 'closed';
  /** The same least without the safety factor: the acid just gets what it takes. */
  readonly withoutMarginProductG: Range;
  /**
   * What some amount up to the most can do: sour it with the margin; sour it without one, if the low end is right; not
   * sour it at all.
   */
  readonly reach: 'margin' | 'no margin' | 'none';
  readonly addedHexoseG: number;
  /** At least the likely least is in. */
  readonly enough: boolean;
  /** The most is passed. */
  readonly tooMuch: boolean;
  /** The likely least, weighed as the product; Infinity when no amount of this product would do. */
  readonly asProductG: number;
  /** Least and most, weighed as the product. */
  readonly leastProductG: Range;
  readonly mostProductG: number;
  readonly terms: SugarTerms;
}

/** What the window was made of, for its working. */
export interface SugarTerms {
  readonly demand: AcidDemand;
  readonly protonsPerMol: number;
  readonly acidMol: number;
  readonly liquidL: number;
  /** Hexose for the acid of plants and water alone, before the product's own need. */
  readonly bareHexoseG: Range;
  /** Hexose needed per gram of hexose added, because the product itself must be soured (0 for white sugar). */
  readonly productSelfFraction: number;
}

/** Own sugar of the plants as a band, reach × Σ m d w, g. */
function ownSugar(plants: readonly Part[]): Range {
  const total = sum(plants.map((part) => scale(product([part.dryMatter, part.sugarsGPerKgDm]), part.massKg)));
  return product([floorAt(total, 0), pailFigure('souring', 'ownSugarAccessFraction')]);
}

/** Hexose for so many equivalents of acid, H = 180.16 Q / (protons per mol · Y), as a band. */
function hexoseFor(totalEq: Range, perMol: number): Range {
  return scale(product([totalEq, inverse(pailFigure('souring', 'acidYieldMolPerMol'))]), MOLAR_MASS_G.hexose / perMol);
}

/**
 * Least and most sugar for what is in a vessel.
 *
 *   H = 180.16 · Q / (ā · Y);  S = max(0, SF · H − own);  most = 20 g × V_e
 *
 * A product that must be soured itself (molasses) raises its own need: with c grams of hexose needed per gram
 * added, S = (SF · H − own) / (1 − SF · c); at SF · c ≥ 1 no amount would do and the window is closed.
 * @source leibensperger-pitt-1988 minimum sugar table, from which the safety factor of 2 (1.5-2.5) is derived; it is
 * not checked by that table, and no other publication of such a factor is known to us
 * @deviates solves the product's own buffer exactly where two rounds of iteration are common
 * @checked worked/sugar-dose.csv
 */
export function sugarWindow(mix: Mix): SugarWindow {
  const { plants, water, sugar, targetPh } = mix;
  const safety = pailFigure('souring', 'safetyFactor');
  const yieldMol = pailFigure('souring', 'acidYieldMolPerMol').likely;
  const perMol = protonsPerMol(targetPh, pailFigure('souring', 'lacticShareFraction').likely);
  const demand = acidDemand(mix);
  const own = ownSugar(plants);
  const bare = hexoseFor(demand.totalEq, perMol);

  const perProductG = sugar.product.hexoseGPerKg.likely / 1000;
  const selfEqPerKg = sugar.product.bufferEqPerKgPerPh.likely * Math.max(0, sugar.product.ph - targetPh);
  const productSelfFraction = (MOLAR_MASS_G.hexose * selfEqPerKg) / (perMol * yieldMol) / (1000 * perProductG);
  const least = withOwnNeed(product([safety, bare]), own, safety.likely * productSelfFraction);
  const withoutMargin = withOwnNeed(bare, own, productSelfFraction);

  const liquid = liquidL(plants, water.volumeL);
  const most = pailFigure('souring', 'mostHexoseGPerL');
  const mostHexoseG = most.likely * liquid;
  const isOpen = least.likely <= mostHexoseG;
  const addedHexoseG = sugar.massKg * sugar.product.hexoseGPerKg.likely;
  const selfNeed = Number.isFinite(least.likely) ? least.likely * productSelfFraction : 0;
  const needed = { low: bare.low + selfNeed, likely: bare.likely + selfNeed, high: bare.high + selfNeed };
  return {
    ownHexoseG: own.likely,
    ownHexoseBandG: own,
    neededHexoseG: needed.likely,
    neededHexoseBandG: needed,
    leastHexoseG: least,
    mostHexoseG,
    mostHexoseBandG: scale(most, liquid),
    window: isOpen ? 'open' : 'closed',
    withoutMarginProductG: scaleUp(withoutMargin, 1 / perProductG),
    reach: isOpen ? 'margin' : withoutMargin.low <= mostHexoseG ? 'no margin' : 'none',
    addedHexoseG,
    enough: addedHexoseG >= least.likely,
    tooMuch: !(addedHexoseG <= mostHexoseG),
    asProductG: least.likely / perProductG,
    leastProductG: scaleUp(least, 1 / perProductG),
    mostProductG: mostHexoseG / perProductG,
    terms: {
      demand,
      protonsPerMol: perMol,
      acidMol: demand.totalEq.likely / perMol,
      liquidL: liquid,
      bareHexoseG: bare,
      productSelfFraction,
    },
  };
}

/** Hexose to add where the product itself takes a share of what it brings; without end where it takes all. */
function withOwnNeed(neededG: Range, ownG: Range, selfFraction: number): Range {
  const missing = floorAt(difference(neededG, ownG), 0);
  return selfFraction < 1 ? scale(missing, 1 / (1 - selfFraction)) : scaleUp(missing, Number.POSITIVE_INFINITY);
}

/** 0 stays 0 where nothing is missing; otherwise the ends go with the factor. */
function scaleUp(missingG: Range, factor: number): Range {
  const end = (value: number) => (value > 0 ? value * factor : 0);
  return { low: end(missingG.low), likely: end(missingG.likely), high: end(missingG.high) };
}
