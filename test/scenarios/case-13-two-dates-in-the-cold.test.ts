import { describe, expect, it } from 'vitest';
import { saySour } from '#words/en/sour.ts';
import { expectOf } from './pail-at.ts';

describe('a pail at a mean of 12 °C, looked ahead 60 days', () => {
  const cold = expectOf({ temperatureC: 12, days: 60 });
  const warm = expectOf({ temperatureC: 20, days: 60 });

  it('is told two dates, sour and held, each as a span of days', () => {
    const [sour, held] = saySour(cold);
    expect(sour).toMatch(/^Sour \(pH 4\.2\): likely about day \d+ \((day \d+ to day \d+|from day \d+.*)\)\.$/);
    expect(held).toMatch(/^Held: likely about day \d+ \((day \d+ to day \d+|from day \d+.*)\)\.$/);
    expect(cold.heldDay?.likely).toBeGreaterThan(cold.reach['4.2']?.likely ?? Number.NaN);
  });

  it('is told both dates sooner once it is moved to 20 °C', () => {
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(warm.reach['4.2']?.[end]).toBeLessThan(cold.reach['4.2']?.[end] ?? Number.NaN);
    }
    expect(warm.heldDay?.low).toBeLessThan(cold.heldDay?.low ?? Number.NaN);
    expect(warm.heldDay?.likely).toBeLessThan(cold.heldDay?.likely ?? Number.NaN);
  });

  it('has no constant between the two dates: the colder it stands, the further apart they lie', () => {
    const between = expectOf({ temperatureC: 16, days: 60 });
    const gap = ({ reach, heldDay }: typeof cold) => (heldDay?.likely ?? Number.NaN) - (reach['4.2']?.likely ?? 0);
    expect(gap(warm)).toBeLessThan(gap(between));
    expect(gap(between)).toBeLessThan(gap(cold));
  });

  it('sees the hold of a cold batch out, however few days were asked', () => {
    expect(expectOf({ temperatureC: 12, days: 7 }).heldDay?.likely).toBeGreaterThan(7);
  });
});
