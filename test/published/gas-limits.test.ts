// The limits for the air people breathe, as published, and what a batch makes of the air of a room, by hand.

import { describe, expect, it } from 'vitest';
import { H2S_LIMITS_PPM } from '#engine/souring/gas/hydrogen-sulphide.ts';
import { gasByDay } from '#engine/souring/gas/output.ts';
import { CO2_LIMITS_PPM, shutRisePpm } from '#engine/souring/gas/room.ts';
import { CO2_MOLAR_MASS_G, gasVolumeL, henryMolPerLAtm } from '#engine/souring/gas/solubility.ts';
import { num, rows } from './rows.ts';

const HELD: Readonly<Record<string, Readonly<Record<string, number>>>> = { co2: CO2_LIMITS_PPM, h2s: H2S_LIMITS_PPM };

describe('limits for the air people breathe', () => {
  it.each(rows('gas-limits.csv').map((row) => [`${row.gas}: ${row.case}`, row] as const))('%s', (_name, row) => {
    expect(HELD[row.gas ?? '']?.[row.limit ?? '']).toBe(num(row, 'expectedPpm'));
  });
});

describe('gas in a shut room', () => {
  it.each(rows('gas-room.csv').map((row) => [row.case, row] as const))('%s', (_name, row) => {
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

describe('solubility of air, as nitrogen', () => {
  // Journal of Research of the National Bureau of Standards 77A(1) 133 (1973), table 3: mole fraction per bar at 1 bar,
  // times moles of water in a litre (999.70, 997.05, 994.03 g/L over 18.015), times 1.01325 bar per atm.
  it.each([
    [10, 14.89e-6, 999.7],
    [25, 11.61e-6, 997.05],
    [35, 10.23e-6, 994.03],
  ])('at %s °C is within 3 % of the published table: one slope stands for all temperatures', (at, perBar, gPerL) => {
    const published = ((perBar * gPerL) / 18.015) * 1.01325;
    expect(Math.abs(henryMolPerLAtm('nitrogen', at) / published - 1)).toBeLessThan(0.03);
  });
});
