// How sour and how salty the can is: the liquor's acids thinned out, the water's alkalinity joined in, and two
// conductivities mixed. The charge balance itself is scraps/acid.ts; what plants bear is limits.ts.

import { asRange, difference, floorAt, point, product, type Range, range, scale, sum } from '../quantity/range.ts';
import { balancePh, type ChargeBalance, chargeSurplus, MOLAR_MASS_G } from '../scraps/acid.ts';
import { usual } from '../scraps/usual.ts';

/**
 * A good batch's liquor when nothing but its pH may be known: acids, plant buffer, and the pH of the plants
 * before any acid, as our fermentation model has them for a well sugared batch of clippings and trimmings.
 * @memory
 */
export const LIQUOR = { lacticGPerL: 5.2, aceticGPerL: 1.8, bufferEqPerLPerPh: 0.0115, startPh: 6.2 } as const;

/** pH of the liquor when it was not measured: a design target of 3.9, up to the 4.2 at which a batch is ready. @memory */
export const UNMEASURED_PH: Range = { low: 3.6, likely: 3.9, high: 4.2 };
/** A meter calibrated that week. @practice */
export const METER_PH = 0.1;
/** How far acids and buffer of one batch stand from another's, as a factor down and up. @memory */
export const LIQUOR_SPREAD: Range = { low: 0.6, likely: 1, high: 1.6 };
/** pH of tap water unless told otherwise. @practice */
export const TAP_PH = usual('water.ph').likely;
/** Relative error of a conductivity pen. @practice */
const PEN: Range = { low: 0.95, likely: 1, high: 1.05 };
/**
 * Salts conduct better the thinner they are, so mixing by volume reads low: potassium chloride from 0.1 to
 * 0.01 mol/L by about a tenth, by more from stronger. The high end allows for it.
 * @memory
 */
const THINNING_FRACTION = 0.15;

/** The water a can is filled with. */
export interface CanWater {
  readonly alkalinityMeqPerL: number;
  readonly ph: number;
  readonly ecDsPerM?: number | undefined;
}

/** One liquor and one water, for one pH. */
export interface OneMixture {
  readonly liquorPh: number;
  /** Acids and buffer as a multiple of LIQUOR. */
  readonly factor: number;
  readonly concentrateFraction: number;
  readonly alkalinityMeqPerL: number;
  readonly waterPh: number;
}

/**
 * pH of one mixture. The liquor's net base is whatever makes it balance at its own pH; then all of it is thinned
 * to its share, and the water brings its alkalinity.
 *
 *   N = L·aL(pm) + A·aA(pm) − B(p0 − pm) − (10^−pm − 10^−p0)
 *   x·[L·aL(p) + A·aA(p) − N − B(p0 − p)] − (1 − x)·K·[f(p) − f(pw)] − (10^−p − 10^−p0) = 0
 *
 * @arithmetic electroneutrality, scraps/acid.ts
 * @checked worked/dilution-ph.csv
 */
export function mixturePh(mixture: OneMixture): number {
  const liquor: ChargeBalance = {
    lacticMolPerL: (mixture.factor * LIQUOR.lacticGPerL) / MOLAR_MASS_G.lactic,
    aceticMolPerL: (mixture.factor * LIQUOR.aceticGPerL) / MOLAR_MASS_G.acetic,
    baseEqPerL: 0,
    bufferEqPerLPerPh: mixture.factor * LIQUOR.bufferEqPerLPerPh,
    startPh: LIQUOR.startPh,
    alkalinityEqPerL: 0,
    waterPh: mixture.waterPh,
  };
  const x = mixture.concentrateFraction;
  return balancePh({
    ...liquor,
    lacticMolPerL: x * liquor.lacticMolPerL,
    aceticMolPerL: x * liquor.aceticMolPerL,
    baseEqPerL: x * chargeSurplus(liquor, mixture.liquorPh),
    bufferEqPerLPerPh: x * liquor.bufferEqPerLPerPh,
    alkalinityEqPerL: (1 - x) * (mixture.alkalinityMeqPerL / 1000),
  });
}

/**
 * pH of the can with its band: the liquor's pH (a meter's ±0.1, or 3.6 to 4.2 when it was not measured) and
 * its strength (0.6 to 1.6 of the usual) vary together.
 * @memory for the band
 */
export function canPh(can: {
  readonly liquorPh: number | undefined;
  readonly concentrateFraction: number;
  readonly water: CanWater;
}): Range {
  const { liquorPh, concentrateFraction, water } = can;
  const ph = liquorPh === undefined ? UNMEASURED_PH : range(liquorPh - METER_PH, liquorPh, liquorPh + METER_PH);
  const fixed = { concentrateFraction, alkalinityMeqPerL: water.alkalinityMeqPerL, waterPh: water.ph };
  const likely = mixturePh({ ...fixed, liquorPh: ph.likely, factor: LIQUOR_SPREAD.likely });
  // A stronger liquor pulls the can towards its own pH, to whichever side that lies: the band holds all four ends.
  const corners = [ph.low, ph.high].flatMap((end) =>
    [LIQUOR_SPREAD.low, LIQUOR_SPREAD.high].map((factor) => mixturePh({ ...fixed, liquorPh: end, factor })),
  );
  return range(Math.min(likely, ...corners), likely, Math.max(likely, ...corners));
}

/** A conductivity with the pen's error. What is not a number stays so: a product would read it as nothing. */
function penned(ecDsPerM: number | Range): Range {
  const read = asRange(ecDsPerM);
  return [read.low, read.likely, read.high].every(Number.isFinite) ? product([read, PEN]) : point(Number.NaN);
}

/** What the concentrate brings to the can, as conductivity: share × batch, higher where it is thinned. */
function broughtEc(can: { readonly batchEcDsPerM: number | Range; readonly concentrateFraction: number }): Range {
  const measured = penned(can.batchEcDsPerM);
  const thinned = range(1, 1, 1 + THINNING_FRACTION * (1 - can.concentrateFraction));
  return scale(product([measured, thinned]), can.concentrateFraction);
}

/**
 * Conductivity of the can, mixed by volume: x·batch + (1 − x)·water.
 * @returns dS/m with the pen's error and the rise on thinning
 * @arithmetic the likely value; the band is from memory
 */
export function canEc(can: {
  readonly batchEcDsPerM: number | Range;
  readonly waterEcDsPerM: number;
  readonly concentrateFraction: number;
}): Range {
  const water = scale(penned(can.waterEcDsPerM), 1 - can.concentrateFraction);
  return sum([broughtEc(can), water]);
}

/**
 * Conductivity that the feed adds to the water: x·(batch − water). Water that is not known takes nothing off.
 * @returns dS/m, not below 0
 * @arithmetic the likely value; the band is from memory
 */
export function addedEc(can: {
  readonly batchEcDsPerM: number | Range;
  readonly waterEcDsPerM: number | undefined;
  readonly concentrateFraction: number;
}): Range {
  const displaced = scale(penned(can.waterEcDsPerM ?? 0), can.concentrateFraction);
  return floorAt(difference(broughtEc(can), displaced), 0);
}
