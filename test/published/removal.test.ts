// What a harvest carries away, held against a second published table, and the nitrogen need against its own.

import { describe, expect, it } from 'vitest';
import { cropOf } from '#engine/ground/crops.ts';
import { nitrogenTargetGPerM2 } from '#engine/ground/need.ts';
import { phosphorusPercent, potassiumPercent } from '#engine/ground/oxides.ts';
import { num, published, type Row } from './rows.ts';

/** Two tables of other kinds, soils and trims agree within a fifth, and the band holds the other; what does not says why. */
const WITHIN = 0.2;

const crop = (id: string) => {
  const found = cropOf(id);
  if (found === undefined) throw new Error(`no crop ${id}`);
  return found;
};

describe('what a harvest carries away', () => {
  /** Pounds of an element or its oxide in a harvest of so many US tons of 2,000 lb, g/kg. */
  const printedGPerKg = (row: Row) => {
    const percent = { n: 100, p2o5: phosphorusPercent(100), k2o: potassiumPercent(100) }[row.printedAs as 'n'];
    return (num(row, 'printedLb') / (num(row, 'usTons') * 2000)) * 10 * percent;
  };

  it.each(published('removal.csv'))('$case: $printedLb lb in $usTons US tons $verdict', (row) => {
    const { nGPerKg, pGPerKg, kGPerKg } = crop(row.crop ?? '');
    const found = { n: nGPerKg, p: pGPerKg, k: kGPerKg }[row.element as 'n' | 'p' | 'k'];
    if (found === undefined) throw new Error(`no ${row.element} of ${row.crop}`);
    const printed = printedGPerKg(row);
    const agrees =
      Math.abs(found.likely / printed - 1) <= WITHIN && found.low <= printed && printed <= found.high
        ? 'agrees'
        : 'differs';
    expect(agrees).toBe(row.verdict);
    expect(row.why === '').toBe(agrees === 'agrees');
  });
});

describe('the nitrogen need', () => {
  it('is that of the ordinance at its own harvest: kale 200 kg/ha at 400 dt/ha', () => {
    expect(nitrogenTargetGPerM2(crop('kale'))?.likely).toBe(20);
    expect(nitrogenTargetGPerM2(crop('kale'), 4)?.likely).toBeCloseTo(20, 9);
  });

  it('moves by 20 kg/ha for a harvest 20 % larger or smaller, by 40 for cabbage', () => {
    expect(nitrogenTargetGPerM2(crop('kale'), 4.8)?.likely).toBeCloseTo(22, 9);
    expect(nitrogenTargetGPerM2(crop('kale'), 3.2)?.likely).toBeCloseTo(18, 9);
    expect(nitrogenTargetGPerM2(crop('cabbage'), 5.6)?.likely).toBeCloseTo(22, 9); // 26 − 4
  });
});
