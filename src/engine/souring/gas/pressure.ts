// Pressure of a closed vessel in which sugar turns to gas, and the push of it on a lid. Reason enough never
// to close anything tight; what is said about it stands in rules/vessel.ts. A whole course of gas is sealed.ts.

import { MOLAR_MASS_G } from '../../scraps/acid.ts';
import { type Filled, heldMolPerAtm } from './solubility.ts';

/** Pascals of an atmosphere, exact. @arithmetic definition */
const PA_PER_ATM = 101325;
/** Pascals of a bar, exact. @arithmetic definition */
const PA_PER_BAR = 100000;
/** Newtons of a kilogram-force, exact. @arithmetic definition */
const N_PER_KGF = 9.80665;

/** Who turns the sugar: yeast, bacteria that make acid and gas, bacteria that make acid alone. */
export type GasRoute = 'yeast' | 'heterolactic' | 'homolactic';

/** Moles of CO2 from a mole of hexose. @arithmetic stoichiometry */
export const CO2_MOL_PER_MOL_HEXOSE: Readonly<Record<GasRoute, number>> = { yeast: 2, heterolactic: 1, homolactic: 0 };

/** Moles of CO2 from sugar by one route. @arithmetic stoichiometry, 180.16 g/mol */
export function co2Mol(sugar: { readonly hexoseG: number; readonly route: GasRoute }): number {
  return (CO2_MOL_PER_MOL_HEXOSE[sugar.route] * sugar.hexoseG) / MOLAR_MASS_G.hexose;
}

/** A closed vessel and the sugar that will turn in it. */
export interface Closed extends Filled {
  readonly hexoseG: number;
  readonly route: GasRoute;
}

/**
 * Pressure above the air outside once all the sugar has turned, in a vessel that does not give.
 *
 *   P = n / (Vg/(R T) + H Vl)
 *
 * Counts only gas made after closing: gas already dissolved in the liquid and the warming of the air in the
 * gas room come on top (sealed.ts).
 * @range gas room 0 and up; liquid more than 0
 * @returns atm above the air outside
 * @source sander-2015 solubility of CO2
 * @checked worked/pressure.csv
 */
export function pressureAtm(closed: Closed): number {
  return co2Mol(closed) / heldMolPerAtm('co2', closed);
}

/** The same pressure in bar. @arithmetic definition */
export function barOfAtm(atm: number): number {
  return (atm * PA_PER_ATM) / PA_PER_BAR;
}

/** The same pressure in atmospheres. @arithmetic definition */
export function atmOfBar(bar: number): number {
  return (bar * PA_PER_BAR) / PA_PER_ATM;
}

/**
 * Push of that pressure on a round lid, as a weight: P · π d²/4 / g.
 * @returns kgf, the weight of so many kilograms
 * @arithmetic
 * @checked worked/pressure.csv
 */
export function forceKgf(lid: { readonly pressureAtm: number; readonly lidDiameterM: number }): number {
  const areaM2 = (Math.PI * lid.lidDiameterM ** 2) / 4;
  return (lid.pressureAtm * PA_PER_ATM * areaM2) / N_PER_KGF;
}
