// The workings of gas: what they list is enough to redo the figure by hand.

import { describe, expect, it } from 'vitest';
import { foulGasPpm } from '../souring/gas/hydrogen-sulphide.ts';
import { gasByDay } from '../souring/gas/output.ts';
import { mostPpm } from '../souring/gas/room.ts';
import { sealedAtm } from '../souring/gas/sealed.ts';
import { workFoulGas, workGasByDay, workRoom, workSealed } from './gas.ts';
import type { Working } from './working.ts';

/** The likely value of an input, by its label. */
function input({ inputs }: Working, label: string): number {
  const value = inputs.find((one) => one.label === label)?.value;
  return typeof value === 'object' ? value.likely : Number(value);
}

const R = 8.314462618 / 101.325;
const warm = (at25: number, slopeK: number, temperatureC: number) =>
  at25 * Math.exp(slopeK * (1 / (temperatureC + 273.15) - 1 / 298.15));

describe('the working of gas by the day', () => {
  it('leads to its litres', () => {
    const [most] = gasByDay({ curve: { days: [0, 1], co2GPerL: [0, 0.8] }, liquidL: 9, temperatureC: 22 });
    const working = workGasByDay({
      most: most ?? { day: 0, gasL: Number.NaN },
      madeCo2GPerL: 0.8,
      liquidL: 9,
      temperatureC: 22,
    });
    const mol =
      (input(working, 'CO2 made from that day to the next') * input(working, 'liquid')) /
      input(working, 'molar mass of CO2');
    expect(working.value).toBeCloseTo(mol * R * (input(working, 'temperature') + 273.15), 8);
  });
});

describe('the working of a closed vessel', () => {
  it('leads to its pressure, within 0.02 atm without the air that water gives off', () => {
    const vessel = { gasRoomL: 3, liquidL: 9, closedAtC: 18, dissolvedCo2GPerL: 0.4 };
    const now = { madeCo2GPerL: 1.1, temperatureC: 30 };
    const working = workSealed({ ...vessel, ...now, at: { day: 6, pressureAtm: sealedAtm(vessel, now) } });
    const then = input(working, 'temperature then');
    const held =
      input(working, 'gas room') / (R * (then + 273.15)) +
      warm(input(working, 'solubility at 25 °C'), input(working, 'its change with temperature'), then) *
        input(working, 'liquid');
    const co2 = ((1.1 + 0.4) * input(working, 'liquid')) / 44.009 / held;
    const air = (then + 273.15) / (input(working, 'temperature at closing') + 273.15) - 1;
    expect(Math.abs(Number(working.value) - co2 - air)).toBeLessThan(0.02);
    expect(working.sources).toEqual(['sander-2015', 'sander-2023']);
  });
});

describe('the working of a room', () => {
  it('leads to its ppm', () => {
    const room = { gasLPerDay: 12, roomM3: 4, airChangesPerH: 0.5, totalGasL: 60 };
    const working = workRoom({ room, mostPpm: mostPpm(room) });
    const settles =
      (input(working, 'gas a day') / 24 / 1000 / input(working, 'room') / input(working, 'changes of air an hour')) *
      1e6;
    expect(working.value).toBeCloseTo(input(working, 'air outside') + settles, 8);
    expect(working.sources).toContain('niosh-1994');
  });
});

describe('the working of a foul gas room', () => {
  it('leads to its likely ppm', () => {
    const vessel = { gasRoomL: 2, liquidL: 12, temperatureC: 25, dryMatterKg: 0.54, ph: 6 };
    const working = workFoulGas({ vessel, ppm: foulGasPpm(vessel) });
    const mol =
      (input(working, 'dry matter') *
        1000 *
        input(working, 'sulphur in the dry matter') *
        input(working, 'share of it turned')) /
      32.06;
    const held =
      input(working, 'gas room') / (R * 298.15) +
      input(working, 'solubility at 25 °C') *
        (1 + 10 ** (input(working, 'pH') - input(working, 'pKa'))) *
        input(working, 'liquid');
    const { value } = working;
    expect(typeof value === 'object' ? value.likely : value).toBeCloseTo((mol / held) * 1e6, 6);
  });
});
