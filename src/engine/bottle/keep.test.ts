// How long a bottle may stand: two schools as the two ends, and nothing for a batch that is not sour.

import { describe, expect, it } from 'vitest';
import { tenfoldDays, useFirst } from './keep.ts';

const bottle = { finalPh: 3.7, temperatureC: 20, sound: true };

describe('tenfold fall of the living bacteria', () => {
  it('passes through the figures at 4, 20 and 30 °C', () => {
    expect([4, 20, 30].map(tenfoldDays)).toEqual([30, 10, 4]);
  });

  it('is no slower colder than 4 °C and goes on falling above 30 °C', () => {
    expect(tenfoldDays(-5)).toBe(30);
    // a factor 0.4 for each 10 °C, as from 20 to 30
    expect(tenfoldDays(40)).toBeCloseTo(1.6, 10);
  });
});

describe('use-first days', () => {
  it('span the fading of the bacteria and the next summer at pH 4.0 or below', () => {
    const { days, keeping } = useFirst(bottle);
    expect(keeping).toBe('keeps');
    expect(days.low).toBe(20);
    expect(days.high).toBe(365);
    expect(days.likely).toBeCloseTo(Math.sqrt(20 * 365), 10);
  });

  it('are never more in a warmer place', () => {
    for (let temperatureC = 0; temperatureC < 45; temperatureC++) {
      const here = useFirst({ ...bottle, temperatureC }).days;
      const warmer = useFirst({ ...bottle, temperatureC: temperatureC + 1 }).days;
      expect(warmer.low).toBeLessThanOrEqual(here.low);
      expect(warmer.likely).toBeLessThanOrEqual(here.likely);
    }
  });

  it('are short between pH 4.0 and 4.6', () => {
    expect(useFirst({ ...bottle, finalPh: 4.2 })).toMatchObject({
      keeping: 'short',
      days: { low: 0, likely: 10, high: 20 },
    });
  });

  it('are none above 4.6, without a pH, and for a batch that is lost or unknown', () => {
    for (const none of [{ finalPh: 4.7 }, { finalPh: Number.NaN }, { sound: false }]) {
      expect(useFirst({ ...bottle, ...none })).toMatchObject({ keeping: 'none', days: { high: 0 } });
    }
  });
});
