// How gas shares itself out between a gas room and a liquid, by Henry's law and the gas law, and how many litres it
// fills when it is out. Pressures are pressure.ts and sealed.ts; the air of a room is room.ts.

import { gasFigure } from './figures.ts';

/** The gases that matter here; air is counted as nitrogen. The names are ids of data/gas.csv. */
export type Gas = 'co2' | 'hydrogen-sulphide' | 'nitrogen';

/** Kelvins at 0 °C, exact. @arithmetic definition */
const KELVIN = 273.15;
/** Where Henry's constants are given, K. @source sander-2015 */
const STANDARD_K = 25 + KELVIN;
/** Gas constant, L·atm/mol/K: 8.314462618 J/mol/K over 101.325 J per L·atm. @arithmetic SI definitions */
const GAS_CONSTANT = 8.314462618 / 101.325;

/** Molar mass of carbon dioxide, g/mol. @arithmetic 12.011 + 2 × 15.999, standard atomic weights */
export const CO2_MOLAR_MASS_G = 44.009;

const HENRY: Readonly<Record<Gas, { readonly molPerLAtm: number; readonly slopeK: number }>> = {
  co2: henryOf('co2'),
  'hydrogen-sulphide': henryOf('hydrogen-sulphide'),
  nitrogen: henryOf('nitrogen'),
};

function henryOf(gas: Gas) {
  return {
    molPerLAtm: gasFigure(gas, 'henryMolPerLAtm').likely,
    slopeK: gasFigure(gas, 'henrySlopeK').likely,
  };
}

/**
 * What a litre of water takes up of a gas per atmosphere of it.
 *
 *   H(T) = H25 · exp(slope · (1/T − 1/298.15))   mol/L/atm
 *
 * @range made for 0-40 °C; acid and sugar of the feed lower it by a few per cent
 * @source sander-2015 carbon dioxide, hydrogen sulfide; sander-2023 nitrogen
 * @checked published/henry.csv, published/h2s.csv
 */
export function henryMolPerLAtm(gas: Gas, temperatureC: number): number {
  const { molPerLAtm, slopeK } = HENRY[gas];
  return molPerLAtm * Math.exp(slopeK * (1 / (temperatureC + KELVIN) - 1 / STANDARD_K));
}

/** A vessel as gas sees it: the room above the liquid, the liquid, how warm both are. */
export interface Filled {
  readonly gasRoomL: number;
  readonly liquidL: number;
  readonly temperatureC: number;
}

/**
 * Moles of a gas that a closed vessel holds, above and in the liquid, per atmosphere of it.
 *
 *   Vg/(R T) + H(T) · factor · Vl
 *
 * @param ionFactor how many times more the liquid holds because the gas turns to ions there; 1 for none
 * @source sander-2015 solubility
 */
export function heldMolPerAtm(gas: Gas, vessel: Filled, ionFactor = 1): number {
  const { gasRoomL, liquidL, temperatureC } = vessel;
  return gasRoomL / (GAS_CONSTANT * (temperatureC + KELVIN)) + henryMolPerLAtm(gas, temperatureC) * ionFactor * liquidL;
}

/** Litres that gas fills at the pressure of the air, V = n R T / 1 atm. @arithmetic gas law */
export function gasVolumeL(gas: { readonly amountMol: number; readonly temperatureC: number }): number {
  return gas.amountMol * GAS_CONSTANT * (gas.temperatureC + KELVIN);
}

/** CO2 a litre holds when nothing but CO2 at the pressure of the air stands over it, g/L. @source sander-2015 carbon dioxide */
export function saturatedCo2GPerL(temperatureC: number): number {
  return henryMolPerLAtm('co2', temperatureC) * CO2_MOLAR_MASS_G;
}
