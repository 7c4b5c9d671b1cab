// Gas from day to day, read off a course of CO2 that only grows: litres that leave the vessel, and the day of the
// most. Who makes the gas is the model's business; what it does in a room is room.ts, in a closed vessel sealed.ts.

import { CO2_MOLAR_MASS_G, gasVolumeL } from './solubility.ts';

/** CO2 made since filling, g per litre of liquid, on a grid of days that rises. */
export interface GasCurve {
  readonly days: ArrayLike<number>;
  readonly co2GPerL: ArrayLike<number>;
}

/** Gas of one day, from `day` to the day after. */
export interface DayOfGas {
  readonly day: number;
  readonly gasL: number;
}

/**
 * A column of the grid at any day, on straight lines between its points; its ends beyond them.
 * @returns NaN for a day that is not known and for an empty grid
 * @arithmetic linear interpolation
 */
export function onGrid(days: ArrayLike<number>, column: ArrayLike<number>, day: number): number {
  const last = days.length - 1;
  if (last < 0 || Number.isNaN(day)) return Number.NaN;
  let i = 0;
  while (i < last && (days[i + 1] ?? Number.NaN) <= day) i++;
  const from = days[i] ?? Number.NaN;
  const here = column[i] ?? Number.NaN;
  if (i === last || day <= from) return here;
  const share = (day - from) / ((days[i + 1] ?? Number.NaN) - from);
  return here + share * ((column[i + 1] ?? Number.NaN) - here);
}

/**
 * Litres of gas made on each whole day of a course.
 *
 *   V = (G(d+1) − G(d)) · liquid / 44.01 · R T / 1 atm
 *
 * All of it counts as leaving the day it is made. In truth a litre holds back up to 1.7 g of it at 20 °C and lets
 * it go later, so the first days are counted high; for the air of a room that is the careful side.
 * @range whole days the course covers; a day only begun is left out
 * @arithmetic gas law
 * @checked worked/gas-room.csv
 */
export function gasByDay(batch: {
  readonly curve: GasCurve;
  readonly liquidL: number;
  readonly temperatureC: number;
}): readonly DayOfGas[] {
  const { days, co2GPerL } = batch.curve;
  const first = days[0] ?? 0;
  const whole = Math.floor((days[days.length - 1] ?? first) - first + 1e-9);
  return Array.from({ length: whole }, (_, i) => {
    const day = first + i;
    const madeGPerL = onGrid(days, co2GPerL, day + 1) - onGrid(days, co2GPerL, day);
    const amountMol = (madeGPerL * batch.liquidL) / CO2_MOLAR_MASS_G;
    return { day, gasL: gasVolumeL({ amountMol, temperatureC: batch.temperatureC }) };
  });
}

/** The day of the most gas; one that is not known counts as the most; undefined where there is none. @arithmetic */
export function mostGas(byDay: readonly DayOfGas[]): DayOfGas | undefined {
  return byDay.reduce<DayOfGas | undefined>(
    (most, one) => (most !== undefined && !(one.gasL > most.gasL) && !Number.isNaN(one.gasL) ? most : one),
    undefined,
  );
}
