// What water takes up of the gases of a batch, against a compilation of measurements and a table of air.

import { describe, expect, it } from 'vitest';
import { henryMolPerLAtm } from '#engine/souring/gas/solubility.ts';
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
