// The wet bulb against the worked example of its publication and against its equation worked by a separate program.

import { describe, expect, it } from 'vitest';
import { wetBulb } from '#engine/can/wet-bulb.ts';
import { num, worked } from '../published/rows.ts';

describe('the wet bulb', () => {
  for (const row of worked('stull-2011.csv')) {
    it(`agrees with ${row.locator} on ${row.case}`, () => {
      const ours = wetBulb({
        temperatureC: num(row, 'temperatureC'),
        humidityPercent: num(row, 'humidityPercent'),
      }).likely;
      expect(Math.abs(ours - num(row, 'expectedWetBulbC'))).toBeLessThanOrEqual(num(row, 'tolerance'));
    });
  }
});
