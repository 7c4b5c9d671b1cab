// How each figure of gas came about: litres a day, pressure behind a lid, the air of a room, the gas room of a foul
// batch. The souring room hands its numbers over; nothing is computed here.

import type { Range } from '../quantity/range.ts';
import type { Origin } from '../rules/rule.ts';
import { gasFigure } from '../souring/gas/figures.ts';
import type { FoulVessel } from '../souring/gas/hydrogen-sulphide.ts';
import type { DayOfGas } from '../souring/gas/output.ts';
import { type GasInRoom, OUTSIDE_PPM } from '../souring/gas/room.ts';
import type { PressureOn } from '../souring/gas/sealed.ts';
import { CO2_MOLAR_MASS_G } from '../souring/gas/solubility.ts';
import type { Input, Working } from './working.ts';

/** A figure of the table as an input, with its band and source. */
function fromTable(label: string, unit: string, id: string, quantity: string): Input {
  const { low, likely, high, source } = gasFigure(id, quantity);
  return { label, value: low === high ? likely : { low, likely, high }, unit, source };
}

function sourcesOf(inputs: readonly Input[]): readonly Origin[] {
  return [...new Set(inputs.flatMap(({ source }) => (source === undefined ? [] : [source])))];
}

function working(one: Omit<Working, 'sources'>): Working {
  return { ...one, sources: sourcesOf(one.inputs) };
}

/** Litres of gas on the day of the most. @arithmetic hands over numbers of souring/gas/output.ts */
export function workGasByDay(batch: {
  readonly most: DayOfGas;
  readonly madeCo2GPerL: number;
  readonly liquidL: number;
  readonly temperatureC: number;
}): Working {
  return working({
    figure: 'gas.mostLPerDay',
    label: 'gas on the day of the most',
    unit: 'L',
    formula: 'CO2 made that day × liquid ÷ molar mass × R × temperature ÷ 1 atm',
    value: batch.most.gasL,
    inputs: [
      { label: 'day', value: batch.most.day, unit: 'd' },
      { label: 'CO2 made from that day to the next', value: batch.madeCo2GPerL, unit: 'g/L' },
      { label: 'liquid', value: batch.liquidL, unit: 'L' },
      { label: 'molar mass of CO2', value: CO2_MOLAR_MASS_G, unit: 'g/mol' },
      { label: 'temperature', value: batch.temperatureC, unit: '°C' },
    ],
    doubts: ['counts all gas as leaving the day it is made; the liquid holds some of it back for a while'],
  });
}

/** Pressure behind a lid that lets nothing out. @arithmetic hands over numbers of souring/gas/sealed.ts */
export function workSealed(vessel: {
  readonly at: PressureOn;
  readonly madeCo2GPerL: number;
  readonly dissolvedCo2GPerL: number;
  readonly gasRoomL: number;
  readonly liquidL: number;
  readonly closedAtC: number;
  readonly temperatureC: number;
}): Working {
  return working({
    figure: 'gas.sealedAtm',
    label: 'pressure if nothing could get out',
    unit: 'atm above the air outside',
    formula: 'gas ÷ (gas room ÷ (R × temperature) + solubility × liquid) + air closed in, warmed − 1',
    value: vessel.at.pressureAtm,
    inputs: [
      { label: 'day', value: vessel.at.day, unit: 'd' },
      { label: 'CO2 made since closing', value: vessel.madeCo2GPerL, unit: 'g/L' },
      { label: 'CO2 dissolved at closing', value: vessel.dissolvedCo2GPerL, unit: 'g/L' },
      { label: 'gas room', value: vessel.gasRoomL, unit: 'L' },
      { label: 'liquid', value: vessel.liquidL, unit: 'L' },
      { label: 'temperature at closing', value: vessel.closedAtC, unit: '°C' },
      { label: 'temperature then', value: vessel.temperatureC, unit: '°C' },
      fromTable('solubility at 25 °C', 'mol/L/atm', 'co2', 'henryMolPerLAtm'),
      fromTable('its change with temperature', 'K', 'co2', 'henrySlopeK'),
      fromTable('solubility of air, as nitrogen', 'mol/L/atm', 'nitrogen', 'henryMolPerLAtm'),
    ],
    doubts: ['water vapour and the swelling of the liquid are not counted', 'a real vessel gives, leaks or bursts'],
  });
}

/** CO2 in the air of a room. @arithmetic hands over numbers of souring/gas/room.ts */
export function workRoom(air: {
  readonly room: GasInRoom & { readonly totalGasL: number };
  readonly mostPpm: number;
}): Working {
  return working({
    figure: 'gas.roomPpm',
    label: 'CO2 in the air of the room, at most',
    unit: 'ppm',
    formula: 'air outside + the lesser of gas a day ÷ (changes of air × room) and all the gas ÷ room',
    value: air.mostPpm,
    inputs: [
      { label: 'gas a day', value: air.room.gasLPerDay, unit: 'L/d' },
      { label: 'gas of the whole batch', value: air.room.totalGasL, unit: 'L' },
      { label: 'room', value: air.room.roomM3, unit: 'm³' },
      { label: 'changes of air an hour', value: air.room.airChangesPerH, unit: '' },
      { label: 'air outside', value: OUTSIDE_PPM, unit: 'ppm', source: gasFigure('co2', 'outsidePpm').source },
      fromTable('limit over a working day', 'ppm', 'co2', 'dayLimitPpm'),
      fromTable('limit for 15 minutes', 'ppm', 'co2', 'shortLimitPpm'),
      fromTable('immediately dangerous to life or health', 'ppm', 'co2', 'dangerPpm'),
    ],
    doubts: ['as if the air were well mixed: where it stands still more gathers near the floor'],
  });
}

/** Hydrogen sulphide over a foul batch. @arithmetic hands over numbers of souring/gas/hydrogen-sulphide.ts */
export function workFoulGas(foul: { readonly vessel: FoulVessel; readonly ppm: Range }): Working {
  const { vessel } = foul;
  return working({
    figure: 'gas.hydrogenSulphidePpm',
    label: 'hydrogen sulphide in the gas room, if foul and closed',
    unit: 'ppm',
    formula:
      'dry matter × sulphur × share turned ÷ 32.06 ÷ (gas room ÷ (R × temperature) + solubility × (1 + 10^(pH − pKa)) × liquid)',
    value: foul.ppm,
    inputs: [
      { label: 'dry matter', value: vessel.dryMatterKg, unit: 'kg' },
      { label: 'gas room', value: vessel.gasRoomL, unit: 'L' },
      { label: 'liquid', value: vessel.liquidL, unit: 'L' },
      { label: 'temperature', value: vessel.temperatureC, unit: '°C' },
      { label: 'pH', value: vessel.ph, unit: '' },
      fromTable('sulphur in the dry matter', '', 'hydrogen-sulphide', 'plantSulphurFraction'),
      fromTable('share of it turned', '', 'hydrogen-sulphide', 'turnedFraction'),
      fromTable('solubility at 25 °C', 'mol/L/atm', 'hydrogen-sulphide', 'henryMolPerLAtm'),
      fromTable('its change with temperature', 'K', 'hydrogen-sulphide', 'henrySlopeK'),
      fromTable('pKa', '', 'hydrogen-sulphide', 'pka'),
      fromTable('ceiling at work', 'ppm', 'hydrogen-sulphide', 'ceilingPpm'),
      fromTable('immediately dangerous to life or health', 'ppm', 'hydrogen-sulphide', 'dangerPpm'),
    ],
    doubts: ['the share turned is a guess', 'what leaked out through the lid is not taken off'],
  });
}
