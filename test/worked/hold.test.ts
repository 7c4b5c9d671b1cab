// The days of the hold, worked from two publications by hand. Typed from them: a five-log kill of Escherichia coli
// O157:H7 in fermented brines of pH 3.2 and 4.6 (breidt-caldwell-2011, abstract), and in acidified cucumbers at 10 and
// 25 °C (breidt-2007, abstract). Our reading is the straight line between the brines, taken for 20 °C, and the same
// factor a degree between the two temperatures.

import { expect, it } from 'vitest';
import { holdDays } from '#engine/souring/lines.ts';

const BRINES = [
  { ph: 3.2, days: 3 },
  { ph: 4.6, days: 24 },
] as const;
const ACIDIFIED = [
  { temperatureC: 10, days: 5.7 },
  { temperatureC: 25, days: 1.4 },
] as const;
/** The longest of fermented juice of pH 3.9, over its acids and temperatures. */
const JUICE_LONGEST_DAYS = 16;

/** Days at pH 4.0 on the straight line between the brines: 3 + 21 × 0.8 / 1.4. */
const [sour, mild] = BRINES;
const atPh4 = sour.days + ((4 - sour.ph) / (mild.ph - sour.ph)) * (mild.days - sour.days);
/** How much longer it takes at a temperature than at 20 °C. */
const [cold, warm] = ACIDIFIED;
const slower = (temperatureC: number) =>
  (cold.days / warm.days) ** ((20 - temperatureC) / (warm.temperatureC - cold.temperatureC));

it('is 15 days at 20 °C: the straight line between the brines at pH 4.0', () => {
  expect(atPh4).toBeCloseTo(15, 9);
  expect(holdDays(20)).toBe(15);
});

it.each([
  [15, 23.95, 24],
  [10, 38.25, 39],
])('at %d °C follows the fall of the kill from 25 to 10 °C: %d days, rounded up', (temperatureC, worked, asked) => {
  expect(atPh4 * slower(temperatureC)).toBeCloseTo(worked, 2);
  expect(holdDays(temperatureC)).toBe(asked);
});

it('is nowhere between shorter than the curve, nor longer than by a twelfth', () => {
  for (let tenths = 100; tenths <= 200; tenths++) {
    const curve = atPh4 * slower(tenths / 10);
    expect(holdDays(tenths / 10)).toBeGreaterThanOrEqual(curve - 1e-9);
    expect(holdDays(tenths / 10)).toBeLessThan((13 / 12) * curve);
  }
});

it('gives no credit above 20 °C, though the kill is faster there', () => {
  expect(holdDays(25)).toBe(15);
  expect(atPh4 * slower(25)).toBeLessThan(10);
});

it('takes more in the cold than the longest that fermented juice of pH 3.9 took at any temperature', () => {
  for (const temperatureC of [10, 15]) expect(holdDays(temperatureC)).toBeGreaterThan(JUICE_LONGEST_DAYS);
});
