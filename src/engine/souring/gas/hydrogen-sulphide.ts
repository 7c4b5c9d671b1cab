// Hydrogen sulphide over a foul batch that stood closed: what may stand in its gas room, against the limits for the
// air people breathe. An estimate of a danger, not a measurement; what to do about it stands in rules/gas.ts.

import { product, type Range, scale } from '../../quantity/range.ts';
import { gasFigure } from './figures.ts';
import { type Filled, heldMolPerAtm } from './solubility.ts';

const GAS = 'hydrogen-sulphide';
const PPM = 1e6;
/** Molar mass of sulphur, g/mol. @arithmetic standard atomic weight */
const SULPHUR_MOLAR_MASS_G = 32.06;
const G_PER_KG = 1000;
const PKA = gasFigure(GAS, 'pka').likely;

/**
 * Limits for hydrogen sulphide in air, ppm: recommended for at most 10 minutes; never to be passed at work; the peak of
 * 10 minutes once a shift; immediately dangerous to life or health; where the nose stops smelling it.
 */
export const H2S_LIMITS_PPM = {
  tenMinutes: gasFigure(GAS, 'tenMinuteLimitPpm').likely,
  ceiling: gasFigure(GAS, 'ceilingPpm').likely,
  peak: gasFigure(GAS, 'peakPpm').likely,
  danger: gasFigure(GAS, 'dangerPpm').likely,
  smellFails: gasFigure(GAS, 'smellFailsPpm').low,
} as const;

/** A closed vessel with a foul batch in it. */
export interface FoulVessel extends Filled {
  readonly dryMatterKg: number;
  /** NaN when not known: all of it then counts as gas. */
  readonly ph: number;
}

/**
 * Moles of sulphide from plant matter, dry matter × sulphur in it × share turned.
 * @memory sulphur of plants and the share turned, data/gas.csv
 */
export function sulphideMol(dryMatterKg: number): Range {
  const shares = product([gasFigure(GAS, 'plantSulphurFraction'), gasFigure(GAS, 'turnedFraction')]);
  return scale(shares, (dryMatterKg * G_PER_KG) / SULPHUR_MOLAR_MASS_G);
}

/**
 * Hydrogen sulphide in the gas room from so much sulphide, at rest.
 *
 *   p = n / (Vg/(R T) + H(T) · (1 + 10^(pH − 7.0)) · Vl)
 *
 * @range pH up to 8, where more turns to ions; gas that leaked out is not taken off
 * @returns ppm
 * @source sander-2015 hydrogen sulfide
 * @checked worked/h2s.csv
 */
export function gasRoomPpm(vessel: Filled & { readonly ph: number; readonly sulphideMol: number }): number {
  const ions = Number.isNaN(vessel.ph) ? 0 : 10 ** (vessel.ph - PKA);
  return Math.min(PPM, (PPM * vessel.sulphideMol) / heldMolPerAtm(GAS, vessel, 1 + ions));
}

/** Hydrogen sulphide in the gas room of a foul batch that stood closed, ppm, as a band. @source sander-2015 hydrogen sulfide */
export function foulGasPpm(vessel: FoulVessel): Range {
  const mol = sulphideMol(vessel.dryMatterKg);
  const at = (amountMol: number) => gasRoomPpm({ ...vessel, sulphideMol: amountMol });
  return { low: at(mol.low), likely: at(mol.likely), high: at(mol.high) };
}
