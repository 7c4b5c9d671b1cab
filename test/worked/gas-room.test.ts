// What a batch makes of the air of a room, by hand.

import { describe, expect, it } from 'vitest';
import { gasByDay } from '#engine/souring/gas/output.ts';
import { shutRisePpm } from '#engine/souring/gas/room.ts';
import { CO2_MOLAR_MASS_G, gasVolumeL } from '#engine/souring/gas/solubility.ts';
import { num, worked } from '../published/rows.ts';

describe('gas in a shut room', () => {
  it.each(worked('gas-room.csv').map((row) => [row.case, row] as const))('%s', (_name, row) => {
    const amountMol = num(row, 'co2G') / CO2_MOLAR_MASS_G;
    const gasL = gasVolumeL({ amountMol, temperatureC: num(row, 'temperatureC') });
    expect(Math.abs(gasL - num(row, 'expectedGasL'))).toBeLessThanOrEqual(num(row, 'toleranceL'));
    const percent = shutRisePpm({ gasL, roomM3: num(row, 'roomM3') }) / 10_000;
    expect(Math.abs(percent - num(row, 'expectedPercent'))).toBeLessThanOrEqual(num(row, 'tolerancePercent'));
  });

  it('counts 0.546 L for a gram made in a day at 20 °C', () => {
    // 8.314462618 × 293.15 / 101.325 = 24.055 L/mol; / 44.009 g/mol
    const curve = { days: [0, 1, 2], co2GPerL: [0, 1, 1.5] };
    const [first, second] = gasByDay({ curve, liquidL: 1, temperatureC: 20 });
    expect(first?.gasL).toBeCloseTo(0.5466, 3);
    expect(second?.gasL).toBeCloseTo(0.2733, 3);
  });
});
