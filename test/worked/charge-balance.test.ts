// The charge balance against hand arithmetic of textbook solutions and one worked batch.
import { describe, expect, it } from 'vitest';
import { balancePh } from '#engine/scraps/acid.ts';
import { num, worked } from '../published/rows.ts';

describe('pH at which the charges balance', () => {
  it.each(worked('charge-balance.csv').map((row) => [row.case, row] as const))('%s', (_, row) => {
    const ph = balancePh({
      lacticMolPerL: num(row, 'lacticMolPerL'),
      aceticMolPerL: num(row, 'aceticMolPerL'),
      baseEqPerL: num(row, 'baseEqPerL'),
      bufferEqPerLPerPh: num(row, 'bufferEqPerLPerPh'),
      startPh: num(row, 'startPh'),
      alkalinityEqPerL: num(row, 'alkalinityEqPerL'),
      waterPh: num(row, 'waterPh'),
    });
    expect(Math.abs(ph - num(row, 'expectedPh'))).toBeLessThanOrEqual(num(row, 'tolerance'));
  });
});
