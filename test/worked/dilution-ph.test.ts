// A liquor of pH 3.9 thinned with two tap waters, against a table solved by a separate program.
import { describe, expect, it } from 'vitest';
import { mixturePh } from '#engine/can/strength.ts';
import { num, worked } from '../published/rows.ts';

describe('pH of a can thinned with tap water', () => {
  it.each(worked('dilution-ph.csv').map((row) => [row.case, row.expectedPh, row] as const))(
    '%s is %s',
    (_, __, row) => {
      const ph = mixturePh({
        liquorPh: num(row, 'liquorPh'),
        factor: 1,
        concentrateFraction: 1 / num(row, 'n'),
        alkalinityMeqPerL: num(row, 'alkalinityMeqPerL'),
        waterPh: num(row, 'waterPh'),
      });
      expect(Math.abs(ph - num(row, 'expectedPh'))).toBeLessThanOrEqual(num(row, 'tolerance'));
    },
  );
});
