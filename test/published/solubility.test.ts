// What water takes up of the gases of a batch, against a compilation of measurements and a table of air.

import { describe, expect, it } from 'vitest';
import { henryMolPerLAtm } from '#engine/souring/gas/solubility.ts';
import { between, type Given, hold } from './held.ts';
import { num, published } from './rows.ts';

describe('solubility of carbon dioxide', () => {
  it.each(published('henry.csv').map((row) => [row.case, row] as const))('%s', (_name, row) => {
    const off = Math.abs(henryMolPerLAtm('co2', num(row, 'temperatureC')) - num(row, 'expectedMolPerLAtm'));
    expect(off).toBeLessThanOrEqual(num(row, 'tolerance'));
  });
});

describe('solubility of hydrogen sulphide', () => {
  it.each(published('h2s.csv').map((row) => [row.case, row] as const))('%s', (_name, row) => {
    const off = henryMolPerLAtm('hydrogen-sulphide', num(row, 'temperatureC')) - num(row, 'expectedMolPerLAtm');
    expect(Math.abs(off)).toBeLessThanOrEqual(num(row, 'tolerance'));
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

describe('constants of the compilation', () => {
  // Reviews (type L) of sander-2015 for carbon dioxide and hydrogen sulphide, of sander-2023 for nitrogen: mol/m3/Pa, times
  // 101.325 for mol/L/atm; and the slope d ln H over d(1/T), in K: least, most frequent and most of the reviews.
  it.each<[gas: string, constant: Given, slope: Given]>([
    ['co2', between(3.3e-4, 3.4e-4), { low: 2300, likely: 2400, high: 2400 }],
    ['hydrogen-sulphide', between(1.0e-3, 1.0e-3), { low: 2000, likely: 2100, high: 2200 }],
    ['nitrogen', between(6.4e-6, 6.5e-6), { low: 1200, likely: 1300, high: 1600 }],
  ])('%s', (gas, constant, slope) => {
    const perAtm = (value = Number.NaN) => 101.325 * value;
    const { low, likely, high } = constant;
    hold('gas', gas, 'henryMolPerLAtm', { low: perAtm(low), likely: perAtm(likely), high: perAtm(high) });
    hold('gas', gas, 'henrySlopeK', slope);
  });
});
