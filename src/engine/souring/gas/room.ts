// CO2 in the air of a cupboard or shed where a batch gasses, against the limits set for workplaces; how much air or
// room would keep below one. The limits are made for healthy grown-ups at work, not for children or the sick.

import { gasFigure } from './figures.ts';

const PPM = 1e6;
const L_PER_M3 = 1000;
const H_PER_DAY = 24;

/** Limits for CO2 in air, ppm: a working day of 8 hours; 15 minutes; immediately dangerous to life or health. */
export const CO2_LIMITS_PPM = {
  day: gasFigure('co2', 'dayLimitPpm').likely,
  short: gasFigure('co2', 'shortLimitPpm').likely,
  danger: gasFigure('co2', 'dangerPpm').likely,
} as const;

/** CO2 of the air outside, ppm. @memory data/gas.csv */
export const OUTSIDE_PPM = gasFigure('co2', 'outsidePpm').likely;

/** A batch, or several, in a room. */
export interface GasInRoom {
  readonly gasLPerDay: number;
  readonly roomM3: number;
  /** How often in an hour the air of the room is renewed: 0 shut tight. */
  readonly airChangesPerH: number;
}

/**
 * Rise of CO2 after so many hours, from the air of outside, well mixed.
 *
 *   rise = G/(A V) · (1 − e^(−A t));   G t / V where no air is renewed
 *
 * CO2 is heavier than air and lies low where the air stands still: near the floor it can be more.
 * @range made for a rise of a few per cent; time Infinity for where it settles
 * @returns ppm above the air outside, at most 1,000,000
 * @arithmetic mass balance of a mixed room
 * @checked worked/gas-room.csv
 */
export function risePpm(room: GasInRoom, timeH: number): number {
  const perHPpm = (gasM3PerH(room) * PPM) / room.roomM3;
  if (perHPpm === 0) return 0;
  const { airChangesPerH } = room;
  const heldH = airChangesPerH === 0 ? timeH : -Math.expm1(-airChangesPerH * timeH) / airChangesPerH;
  return Math.min(PPM, perHPpm * heldH);
}

/** Cubic metres of gas that come into the room in an hour. */
function gasM3PerH(room: { readonly gasLPerDay: number }): number {
  return room.gasLPerDay / L_PER_M3 / H_PER_DAY;
}

/**
 * Most CO2 in the air of a room: where it settles on the day of the most gas, and never more than all the gas of the
 * batch would make with the room shut. The air outside is counted.
 * @param room gasLPerDay of the day of the most; totalGasL of the whole batch
 * @arithmetic mass balance of a mixed room
 */
export function mostPpm(room: GasInRoom & { readonly totalGasL: number }): number {
  const rise = Math.min(risePpm(room, Number.POSITIVE_INFINITY), shutRisePpm({ ...room, gasL: room.totalGasL }));
  return Math.min(PPM, OUTSIDE_PPM + rise);
}

/**
 * Rise from gas let go into a room all at once, or with the room shut.
 * @returns ppm above the air before
 * @arithmetic volume of gas over volume of room
 * @checked worked/gas-room.csv
 */
export function shutRisePpm(room: { readonly gasL: number; readonly roomM3: number }): number {
  return Math.min(PPM, ((room.gasL / L_PER_M3) * PPM) / room.roomM3);
}

/** Fewest renewals of air an hour that keep a room at a limit, the air outside counted. @arithmetic mass balance of a mixed room */
export function leastAirChangesPerH(room: Omit<GasInRoom, 'airChangesPerH'>, limitPpm: number): number {
  return (gasM3PerH(room) * PPM) / (limitPpm - OUTSIDE_PPM) / room.roomM3;
}

/** Smallest room that stays at a limit with its air renewed so often. @arithmetic mass balance of a mixed room */
export function leastRoomM3(room: Omit<GasInRoom, 'roomM3'>, limitPpm: number): number {
  if (room.gasLPerDay === 0) return 0;
  return (gasM3PerH(room) * PPM) / (limitPpm - OUTSIDE_PPM) / room.airChangesPerH;
}
