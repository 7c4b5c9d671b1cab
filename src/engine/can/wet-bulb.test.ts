import { describe, expect, it } from 'vitest';
import { deltaT, wetBulb } from './wet-bulb.ts';

/** Wet bulb by the psychrometer equation of WMO-No. 8 at 1013.25 hPa, solved by halving. */
function psychrometer(temperatureC: number, humidityPercent: number): number {
  const saturation = (c: number) => 6.112 * Math.exp((17.62 * c) / (243.12 + c));
  const vapour = (humidityPercent / 100) * saturation(temperatureC);
  let [low, high] = [-40, temperatureC];
  for (let i = 0; i < 60; i += 1) {
    const c = (low + high) / 2;
    const over = saturation(c) - 6.53e-4 * (1 + 0.000944 * c) * 1013.25 * (temperatureC - c) > vapour;
    if (over) high = c;
    else low = c;
  }
  return low;
}

describe('the wet bulb', () => {
  it('holds the value of the psychrometer equation within its band, from 0 to 40 °C and 20 to 95 %', () => {
    for (let temperatureC = 0; temperatureC <= 40; temperatureC += 2) {
      for (let humidityPercent = 20; humidityPercent <= 95; humidityPercent += 5) {
        const { low, high } = wetBulb({ temperatureC, humidityPercent });
        const exact = psychrometer(temperatureC, humidityPercent);
        // 0.05 °C for the cap at the air's own temperature and the constants of the equation
        expect(exact, `${temperatureC} °C, ${humidityPercent} %`).toBeGreaterThanOrEqual(low - 0.05);
        expect(exact, `${temperatureC} °C, ${humidityPercent} %`).toBeLessThanOrEqual(high + 0.05);
      }
    }
  });

  it('is never above the air', () => {
    for (let temperatureC = 0; temperatureC <= 50; temperatureC += 1) {
      expect(wetBulb({ temperatureC, humidityPercent: 99 }).high).toBeLessThanOrEqual(temperatureC);
    }
  });

  it.each([
    [20, 5],
    [20, 99],
    [0, 50],
    [50, 50],
  ])('is known at the very ends of its reach: %d °C and %d %%', (temperatureC, humidityPercent) => {
    expect(wetBulb({ temperatureC, humidityPercent }).likely).toBeLessThan(temperatureC);
  });

  it.each([
    [20, 4.9],
    [20, 99.1],
    [-0.1, 50],
    [50.1, 50],
    [Number.NaN, 50],
    [20, Number.NaN],
  ])('is not known at %d °C and %d %%', (temperatureC, humidityPercent) => {
    expect(wetBulb({ temperatureC, humidityPercent }).likely).toBeNaN();
    expect(deltaT({ temperatureC, humidityPercent }).high).toBeNaN();
  });
});

describe('delta-T', () => {
  it('is what the air stands above its wet bulb: 20 − 13.7 = 6.3 °C at 20 °C and 50 %', () => {
    const found = deltaT({ temperatureC: 20, humidityPercent: 50 });
    expect(found.likely).toBeCloseTo(6.3, 1);
    expect([found.low, found.high]).toEqual([found.likely - 1, found.likely + 1].map((c) => expect.closeTo(c, 9)));
  });

  it('does not fall below 0', () => {
    expect(deltaT({ temperatureC: 20, humidityPercent: 99 }).low).toBeGreaterThanOrEqual(0);
  });
});
