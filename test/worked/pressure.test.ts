// Henry's law and the pressure of closed vessels, against published constants and hand arithmetic from them.

import { describe, expect, it } from 'vitest';
import { atmOfBar, barOfAtm, co2Mol, forceKgf, type GasRoute, pressureAtm } from '#engine/souring/gas/pressure.ts';
import { sealedAtm } from '#engine/souring/gas/sealed.ts';
import { CO2_MOLAR_MASS_G, henryMolPerLAtm } from '#engine/souring/gas/solubility.ts';
import { num, worked } from '../published/rows.ts';

describe('solubility of CO2', () => {
  it.each(worked('henry.csv').map((row) => [row.case, row] as const))('%s', (_name, row) => {
    const off = Math.abs(henryMolPerLAtm('co2', num(row, 'temperatureC')) - num(row, 'expectedMolPerLAtm'));
    expect(off).toBeLessThanOrEqual(num(row, 'tolerance'));
  });
});

describe('pressure of a closed vessel', () => {
  it.each(worked('pressure.csv').map((row) => [row.case, row] as const))('%s', (_name, row) => {
    const atm = pressureAtm({
      gasRoomL: num(row, 'gasRoomL'),
      liquidL: num(row, 'liquidL'),
      hexoseG: num(row, 'hexoseG'),
      route: row.route as GasRoute,
      temperatureC: num(row, 'temperatureC'),
    });
    expect(Math.abs(atm - num(row, 'expectedAtm'))).toBeLessThanOrEqual(num(row, 'tolerance'));
  });

  it.each(worked('pressure.csv').map((row) => [row.case, row] as const))(
    '%s, read off a course of gas',
    (_name, row) => {
      const hexose = { hexoseG: num(row, 'hexoseG'), route: row.route as GasRoute };
      const temperatureC = num(row, 'temperatureC');
      const liquidL = num(row, 'liquidL');
      const atm = sealedAtm(
        { gasRoomL: num(row, 'gasRoomL'), liquidL, closedAtC: temperatureC, dissolvedCo2GPerL: 0 },
        { madeCo2GPerL: (co2Mol(hexose) * CO2_MOLAR_MASS_G) / liquidL, temperatureC },
      );
      expect(Math.abs(atm - num(row, 'expectedAtm'))).toBeLessThanOrEqual(num(row, 'tolerance'));
    },
  );

  it('makes 0.044 and 0.178 mol of CO2 from 8 g by souring bacteria and 16 g by yeast', () => {
    // 8 / 180.16 × 1 and 16 / 180.16 × 2
    expect(co2Mol({ hexoseG: 8, route: 'heterolactic' })).toBeCloseTo(0.0444, 4);
    expect(co2Mol({ hexoseG: 16, route: 'yeast' })).toBeCloseTo(0.1776, 4);
  });

  it('reads 1 atm as 1.01325 bar', () => {
    expect(barOfAtm(1)).toBeCloseTo(1.01325, 10);
    expect(atmOfBar(1.01325)).toBeCloseTo(1, 10);
  });
});

describe('push on a lid', () => {
  it('is 10.33 t on a square metre at 1 atm, the standard atmosphere in technical units', () => {
    // 101325 Pa / 9.80665 m/s2 = 10332.27 kgf/m2; a lid of 1 m2 is 1.12838 m across
    expect(forceKgf({ pressureAtm: 1, lidDiameterM: Math.sqrt(4 / Math.PI) })).toBeCloseTo(10332.27, 1);
  });

  it('is about 32 kg on a 20 cm lid when yeast turns 4 g of sugar in a 12 L pail with 9 L in it', () => {
    // n = 2 × 4/180.16 = 0.0444 mol; P = 0.0444 / (3/24.06 + 0.0390 × 9) = 0.0444/0.4755 = 0.0934 atm;
    // area = π 0.1² = 0.0314 m2; 0.0934 × 10332 × 0.0314 = 30.3 kgf. "About 32" allows 28 to 36: sugar to ± 10 %.
    const atm = pressureAtm({ gasRoomL: 3, liquidL: 9, hexoseG: 4, route: 'yeast', temperatureC: 20 });
    expect(atm).toBeCloseTo(0.0934, 3);
    const kgf = forceKgf({ pressureAtm: atm, lidDiameterM: 0.2 });
    expect(kgf).toBeGreaterThan(28);
    expect(kgf).toBeLessThan(36);
    expect(kgf).toBeCloseTo(30.3, 0);
  });
});
