import { describe, expect, it } from 'vitest';
import { coolingOf } from './cooling.ts';
import { daysOf } from './log.ts';
import { turningOf } from './turning.ts';

const fall = (tauDays: number, topC = 60, airC = 15, count = 8) =>
  daysOf(Array.from({ length: count }, (_, day) => ({ day, coreC: airC + (topC - airC) * Math.exp(-day / tauDays) })));

describe('the fall of the core temperature', () => {
  it.each([2, 4, 7, 14])('gives back the %d days of a curve drawn by Newton’s law', (tauDays) => {
    expect(coolingOf(fall(tauDays), 15)?.tauDays).toBeCloseTo(tauDays, 6);
  });

  it('is told within a tenth from readings rounded to a degree', () => {
    const rounded = fall(7).map((one) => ({ ...one, coreC: Math.round(one.coreC ?? 0) }));
    const tau = coolingOf(rounded, 15)?.tauDays ?? 0;
    expect(Math.abs(tau - 7)).toBeLessThan(0.7);
  });

  it('is not told from three readings, from a rise, or from a core as cool as the air', () => {
    expect(coolingOf(fall(7, 60, 15, 3), 15)).toBeUndefined();
    expect(coolingOf(daysOf([20, 30, 40, 50, 60].map((coreC, day) => ({ day, coreC }))), 15)).toBeUndefined();
    expect(coolingOf(fall(7, 16), 15)).toBeUndefined();
  });

  it('is fitted from the last turning on', () => {
    const after = fall(3).map((one) => ({ ...one, day: one.day + 20, turned: one.day === 0 }));
    expect(coolingOf([...fall(14), ...after], 15)?.tauDays).toBeCloseTo(3, 6);
  });
});

describe('turning', () => {
  const at = (coreC: number, day = 0, turned = false) => ({ day, coreC, turned });
  const of = (log: Parameters<typeof daysOf>[0], more = {}) => turningOf({ days: daysOf(log), ...more });

  it('is called for over 66 °C, and not at 66 °C', () => {
    expect(of([at(67)])).toMatchObject({ turn: true, reasons: ['too-hot'] });
    expect(of([at(66)])).toMatchObject({ turn: false, reasons: [] });
  });
  it('is called for when a hot core has cooled, three days after the last time', () => {
    expect(of([at(60, 0, true), at(42, 3)]).reasons).toEqual(['cooled']);
    expect(of([at(60, 0, true), at(42, 2)]).reasons).toEqual([]);
    expect(of([at(30), at(42, 9)]).reasons).toEqual([]);
  });
  it('is called for by a foul smell, ammonia, and a wet or dry handful', () => {
    expect(of([], { smell: 'egg' }).reasons).toEqual(['foul']);
    expect(of([], { smell: 'ammonia' }).reasons).toEqual(['ammonia']);
    expect(of([], { feel: 'wet' }).reasons).toEqual(['wet']);
    expect(of([], { feel: 'dry' }).reasons).toEqual(['dry']);
    expect(of([], { smell: 'earthy', feel: 'right' }).turn).toBe(false);
  });
});
