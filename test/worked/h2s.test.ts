// Hydrogen sulphide: its solubility away from 25 °C, and the gas room of a foul bucket, by hand.

import { describe, expect, it } from 'vitest';
import { foulGasPpm, gasRoomPpm, H2S_LIMITS_PPM, sulphideMol } from '#engine/souring/gas/hydrogen-sulphide.ts';
import { henryMolPerLAtm } from '#engine/souring/gas/solubility.ts';
import { num, worked } from '../published/rows.ts';

const cases = worked('h2s.csv');
const of = (kind: string) => cases.filter((row) => row.kind === kind).map((row) => [row.case, row] as const);

describe('solubility of hydrogen sulphide', () => {
  it.each(of('henry'))('%s', (_name, row) => {
    const off = Math.abs(henryMolPerLAtm('hydrogen-sulphide', num(row, 'temperatureC')) - num(row, 'expected'));
    expect(off).toBeLessThanOrEqual(num(row, 'tolerance'));
  });
});

describe('the gas room of a foul closed bucket', () => {
  it.each(of('gas-room'))('%s', (_name, row) => {
    const ppm = gasRoomPpm({
      gasRoomL: num(row, 'gasRoomL'),
      liquidL: num(row, 'liquidL'),
      temperatureC: num(row, 'temperatureC'),
      ph: num(row, 'ph'),
      sulphideMol: num(row, 'sulphideMol'),
    });
    expect(Math.abs(ppm - num(row, 'expected'))).toBeLessThanOrEqual(num(row, 'tolerance'));
  });

  it('takes 2.1 mmol of sulphide from 0.54 kg of dry matter', () => {
    // 540 g × 0.0025 × 0.05 / 32.06 g/mol
    expect(sulphideMol(0.54).likely).toBeCloseTo(0.0021, 4);
  });

  it('passes ten times the line of danger in the worked example, pH below 6', () => {
    const vessel = { gasRoomL: 2, liquidL: 12, temperatureC: 25, dryMatterKg: 0.54 };
    const ppm = foulGasPpm({ ...vessel, ph: 5.9 });
    expect(ppm.likely).toBeGreaterThan(10 * H2S_LIMITS_PPM.danger);
    expect(ppm.low).toBeLessThan(ppm.likely);
    expect(ppm.high).toBeGreaterThan(ppm.likely);
    expect(foulGasPpm({ ...vessel, ph: Number.NaN }).likely).toBeGreaterThan(ppm.likely);
  });
});
