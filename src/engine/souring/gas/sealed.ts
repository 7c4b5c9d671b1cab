// What happens behind a lid that lets nothing out: pressure from day to day as gas is made and the place warms and
// cools, and the day it passes what a vessel may bear. No vessel gives way in this sum; a real one leaks or bursts.

import { gasFigure } from './figures.ts';
import { type GasCurve, onGrid } from './output.ts';
import { atmOfBar } from './pressure.ts';
import { CO2_MOLAR_MASS_G, heldMolPerAtm, saturatedCo2GPerL } from './solubility.ts';

/** Least an ordinary jar may bear above the air outside, atm. @memory data/gas.csv */
export const JAR_BEARS_ATM = atmOfBar(gasFigure('closed-jar', 'mostBar').low);

/** A vessel at the moment it is closed, with air over the liquid. */
export interface Sealed {
  readonly gasRoomL: number;
  readonly liquidL: number;
  readonly closedAtC: number;
  /** CO2 in the liquid at closing; undefined or not known: as much as it can hold, the careful side. */
  readonly dissolvedCo2GPerL?: number | undefined;
}

/** Pressure above the air outside on one day. */
export interface PressureOn {
  readonly day: number;
  readonly pressureAtm: number;
}

/** CO2 in the liquid at closing: as told, at most what it can hold. */
function dissolvedGPerL({ dissolvedCo2GPerL, closedAtC }: Sealed): number {
  const most = saturatedCo2GPerL(closedAtC);
  return dissolvedCo2GPerL !== undefined && dissolvedCo2GPerL < most ? dissolvedCo2GPerL : most;
}

/**
 * Pressure above the air outside, of gas made since closing, of gas dissolved before, and of the air closed in.
 *
 *   P = (dissolved + made) · Vl / 44.01 / (Vg/(R T) + H(T) Vl) + A(T0)/A(T) − 1
 *   A(T) = Vg/(R T) + H_N2(T) Vl    (air counted as nitrogen, in and over the liquid)
 *
 * Counts the gas room as plain air at closing: where gas had pushed the air out it comes to less. Leaves out water
 * vapour (about 0.03 atm from 20 to 35 °C) and the swelling of the liquid, which in a bottle filled to the neck
 * comes on top.
 * @range gas room more than 0
 * @returns atm above the air outside; below 0 when it cools
 * @source sander-2015 carbon dioxide; sander-2023 nitrogen
 * @checked worked/pressure.csv
 */
export function sealedAtm(
  vessel: Sealed,
  now: { readonly madeCo2GPerL: number; readonly temperatureC: number },
): number {
  const filled = { gasRoomL: vessel.gasRoomL, liquidL: vessel.liquidL };
  const warm = { ...filled, temperatureC: now.temperatureC };
  const closing = { ...filled, temperatureC: vessel.closedAtC };
  const amountMol = ((dissolvedGPerL(vessel) + now.madeCo2GPerL) * vessel.liquidL) / CO2_MOLAR_MASS_G;
  const airAtm = heldMolPerAtm('nitrogen', closing) / heldMolPerAtm('nitrogen', warm);
  return amountMol / heldMolPerAtm('co2', warm) + airAtm - 1;
}

/**
 * Pressure from the day of closing to the end of a course, at each point of its grid. What was made before closing
 * and still fits into the liquid counts as dissolved.
 * @param batch temperatureC one for all days, or one for each point of the grid
 * @source sander-2015 carbon dioxide; sander-2023 nitrogen
 */
export function pressureByDay(batch: {
  readonly curve: GasCurve;
  readonly gasRoomL: number;
  readonly liquidL: number;
  readonly closedOnDay: number;
  readonly temperatureC: number | ArrayLike<number>;
}): readonly PressureOn[] {
  const { curve, gasRoomL, liquidL, closedOnDay, temperatureC } = batch;
  const days = Array.from(curve.days);
  const warmth = typeof temperatureC === 'number' ? days.map(() => temperatureC) : temperatureC;
  const before = onGrid(days, curve.co2GPerL, closedOnDay);
  const vessel: Sealed = {
    gasRoomL,
    liquidL,
    closedAtC: onGrid(days, warmth, closedOnDay),
    dissolvedCo2GPerL: before,
  };
  return [closedOnDay, ...days.filter((day) => day > closedOnDay)].map((day) => ({
    day,
    pressureAtm: sealedAtm(vessel, {
      madeCo2GPerL: onGrid(days, curve.co2GPerL, day) - before,
      temperatureC: onGrid(days, warmth, day),
    }),
  }));
}

/** The most of a course; one that is not known makes the most not known. @arithmetic */
export function mostPressureAtm(byDay: readonly PressureOn[]): number {
  return Math.max(...byDay.map((one) => one.pressureAtm));
}

/**
 * The first day a vessel that does not give passes a pressure, on straight lines between the points; undefined when
 * it never does in the days foretold. A pressure that is not known counts as passed.
 * @arithmetic linear interpolation
 */
export function dayPast(byDay: readonly PressureOn[], limitAtm: number): number | undefined {
  const at = byDay.findIndex((one) => !(one.pressureAtm <= limitAtm));
  const one = byDay[at];
  const before = byDay[at - 1];
  if (one === undefined || before === undefined || !(one.pressureAtm > limitAtm)) return one?.day;
  const share = (limitAtm - before.pressureAtm) / (one.pressureAtm - before.pressureAtm);
  return before.day + share * (one.day - before.day);
}
