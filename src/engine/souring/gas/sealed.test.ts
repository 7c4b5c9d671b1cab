// Pressure behind a lid that lets nothing out, from day to day and on a hot day.

import { describe, expect, it } from 'vitest';
import { dayPast, JAR_BEARS_ATM, mostPressureAtm, pressureByDay, sealedAtm } from './sealed.ts';
import { saturatedCo2GPerL } from './solubility.ts';

const jar = { gasRoomL: 0.2, liquidL: 0.8 };

describe('a closed jar', () => {
  it('warmed from 20 to 35 °C with no more souring rises from 1.12 to 1.60 atm', () => {
    // 0.0444 mol is 2.443 g/L in 0.8 L. 20 °C: 0.0444 / (0.2/24.055 + 0.03901 × 0.8) = 1.124
    // 35 °C: 0.0444 / (0.2/25.286 + 0.02618 × 0.8) = 1.539; the air 0.008874 / 0.008361 − 1 = 0.061 more
    const closed = { ...jar, closedAtC: 20, dissolvedCo2GPerL: 0 };
    expect(sealedAtm(closed, { madeCo2GPerL: 2.443, temperatureC: 20 })).toBeCloseTo(1.12, 2);
    expect(sealedAtm(closed, { madeCo2GPerL: 2.443, temperatureC: 35 })).toBeCloseTo(1.6, 2);
  });

  it('with nothing but air in it gains 5 to 7 % of an atmosphere from 20 to 35 °C, and none at 20', () => {
    // 308.15 / 293.15 = 1.051 for dry gas; air driven out of the water adds about 0.01
    const still = { ...jar, closedAtC: 20, dissolvedCo2GPerL: 0 };
    expect(sealedAtm(still, { madeCo2GPerL: 0, temperatureC: 20 })).toBeCloseTo(0, 10);
    const warm = sealedAtm(still, { madeCo2GPerL: 0, temperatureC: 35 });
    expect(warm).toBeGreaterThan(0.051);
    expect(warm).toBeLessThan(0.07);
  });

  it('counts as much dissolved gas as the liquid can hold when nobody knows, and never more', () => {
    const now = { madeCo2GPerL: 0, temperatureC: 30 };
    const full = sealedAtm({ ...jar, closedAtC: 20, dissolvedCo2GPerL: saturatedCo2GPerL(20) }, now);
    for (const dissolvedCo2GPerL of [undefined, Number.NaN, 40]) {
      expect(sealedAtm({ ...jar, closedAtC: 20, dissolvedCo2GPerL }, now)).toBeCloseTo(full, 10);
    }
    expect(full).toBeGreaterThan(sealedAtm({ ...jar, closedAtC: 20, dissolvedCo2GPerL: 0.5 }, now));
  });
});

describe('pressure by the day', () => {
  const curve = { days: [0, 2, 4, 6], co2GPerL: [0, 1, 2, 2] };

  it('starts at nothing when it is closed on the day it is filled, and follows the warmth', () => {
    const even = pressureByDay({ curve, ...jar, closedOnDay: 0, temperatureC: 20 });
    const hotEnd = pressureByDay({ curve, ...jar, closedOnDay: 0, temperatureC: [20, 20, 20, 35] });
    expect(even[0]?.pressureAtm).toBeCloseTo(0, 10);
    expect(even[3]?.pressureAtm).toBeCloseTo(even[2]?.pressureAtm ?? Number.NaN, 10);
    expect(hotEnd[3]?.pressureAtm).toBeGreaterThan(even[3]?.pressureAtm ?? Number.NaN);
    expect(mostPressureAtm(hotEnd)).toBe(hotEnd[3]?.pressureAtm);
  });

  it('starts at the day of closing, between points too', () => {
    const late = pressureByDay({ curve, ...jar, closedOnDay: 3, temperatureC: 20 });
    expect(late.map(({ day }) => day)).toEqual([3, 4, 6]);
  });

  it('is not known from the point where the gas is not known', () => {
    const gap = pressureByDay({
      curve: { ...curve, co2GPerL: [0, 1, Number.NaN, 2] },
      ...jar,
      closedOnDay: 0,
      temperatureC: 20,
    });
    expect(mostPressureAtm(gap)).toBeNaN();
    expect(dayPast(gap, 100)).toBe(4);
  });
});

describe('the day a pressure is passed', () => {
  const byDay = [
    { day: 0, pressureAtm: 0 },
    { day: 2, pressureAtm: 0.5 },
    { day: 4, pressureAtm: 1.5 },
  ];

  it('lies on the line between two points', () => {
    expect(dayPast(byDay, 1)).toBe(3);
    expect(dayPast(byDay, 0.25)).toBe(1);
  });

  it('is the first day when it is passed from the start, and none when it never is', () => {
    expect(dayPast(byDay, -0.1)).toBe(0);
    expect(dayPast(byDay, 1.5)).toBeUndefined();
  });

  it('takes a jar to bear 1 bar, the low end of what is said', () => {
    expect(JAR_BEARS_ATM).toBeCloseTo(1 / 1.01325, 10);
  });
});
