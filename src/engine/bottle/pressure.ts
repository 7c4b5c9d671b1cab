// Pressure of a closed vessel in which sugar turns to gas, and the push of it on a lid. Reason enough never
// to close anything tight; what is said about it stands in rules/vessel.ts.

import { MOLAR_MASS_G } from '../scraps/acid.ts';

/** CO2 dissolved per atmosphere at 25 °C, mol/L/atm. @source sander-2015 carbon dioxide, 3.3-3.4e-4 mol/m3/Pa */
export const CO2_HENRY_MOL_PER_L_ATM = 0.034;
/** Temperature dependence d ln H / d(1/T), K. @source sander-2015 carbon dioxide, 2300-2400 K */
export const CO2_HENRY_SLOPE_K = 2400;

/** Pascals of an atmosphere, exact. @arithmetic definition */
const PA_PER_ATM = 101325;
/** Pascals of a bar, exact. @arithmetic definition */
const PA_PER_BAR = 100000;
/** Gas constant, L·atm/mol/K: 8.314462618 J/mol/K over 101.325 J per L·atm. @arithmetic SI definitions */
const GAS_CONSTANT = 8.314462618 / 101.325;
/** Newtons of a kilogram-force, exact. @arithmetic definition */
const N_PER_KGF = 9.80665;
const KELVIN = 273.15;

/** Who turns the sugar: yeast, bacteria that make acid and gas, bacteria that make acid alone. */
export type GasRoute = 'yeast' | 'heterolactic' | 'homolactic';

/** Moles of CO2 from a mole of hexose. @arithmetic stoichiometry */
export const CO2_MOL_PER_MOL_HEXOSE: Readonly<Record<GasRoute, number>> = { yeast: 2, heterolactic: 1, homolactic: 0 };

/**
 * CO2 that a litre of water takes up per atmosphere of it.
 *
 *   H(T) = 0.034 · exp(2400 (1/T − 1/298.15))   mol/L/atm
 *
 * @range made for 0-40 °C; acid and sugar of the feed lower it by a few per cent
 * @source sander-2015 carbon dioxide
 * @checked published/henry.csv
 */
export function co2HenryMolPerLAtm(temperatureC: number): number {
  return CO2_HENRY_MOL_PER_L_ATM * Math.exp(CO2_HENRY_SLOPE_K * (1 / (temperatureC + KELVIN) - 1 / (25 + KELVIN)));
}

/** Moles of CO2 from sugar by one route. @arithmetic stoichiometry, 180.16 g/mol */
export function co2Mol(sugar: { readonly hexoseG: number; readonly route: GasRoute }): number {
  return (CO2_MOL_PER_MOL_HEXOSE[sugar.route] * sugar.hexoseG) / MOLAR_MASS_G.hexose;
}

/** A closed vessel and the sugar that will turn in it. */
export interface Closed {
  readonly gasRoomL: number;
  readonly liquidL: number;
  readonly hexoseG: number;
  readonly route: GasRoute;
  readonly temperatureC: number;
}

/**
 * Pressure above the air outside once all the sugar has turned, in a vessel that does not give.
 *
 *   P = n / (Vg/(R T) + H Vl)
 *
 * Counts only gas made after closing: gas already dissolved in the liquid and the warming of the air in the
 * gas room come on top.
 * @range gas room 0 and up; liquid more than 0
 * @returns atm above the air outside
 * @source sander-2015 solubility of CO2
 * @checked published/pressure.csv
 */
export function pressureAtm(closed: Closed): number {
  const gasMolPerAtm = closed.gasRoomL / (GAS_CONSTANT * (closed.temperatureC + KELVIN));
  const liquidMolPerAtm = co2HenryMolPerLAtm(closed.temperatureC) * closed.liquidL;
  return co2Mol(closed) / (gasMolPerAtm + liquidMolPerAtm);
}

/** The same pressure in bar. @arithmetic definition */
export function barOfAtm(atm: number): number {
  return (atm * PA_PER_ATM) / PA_PER_BAR;
}

/**
 * Push of that pressure on a round lid, as a weight: P · π d²/4 / g.
 * @returns kgf, the weight of so many kilograms
 * @arithmetic
 * @checked published/pressure.csv
 */
export function forceKgf(lid: { readonly pressureAtm: number; readonly lidDiameterM: number }): number {
  const areaM2 = (Math.PI * lid.lidDiameterM ** 2) / 4;
  return (lid.pressureAtm * PA_PER_ATM * areaM2) / N_PER_KGF;
}
