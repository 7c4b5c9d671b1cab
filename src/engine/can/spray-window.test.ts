import { describe, expect, it } from 'vitest';
import { nextSprayHour, pourWindow, type SprayHour, sprayWindow } from './spray-window.ts';
import { deltaT } from './wet-bulb.ts';

const kmPerH = (value: number) => value / 3.6;
const fine: SprayHour = {
  windMPerS: kmPerH(8),
  temperatureC: 20,
  humidityPercent: 50,
  untilRainH: Number.POSITIVE_INFINITY,
  sinceSunriseH: 3,
  untilSunsetH: 9,
};
const at = (change: Partial<SprayHour>) => sprayWindow({ ...fine, ...change });

/** Air whose delta-T (`side` likely, or an end of its band) is so many °C to the last digit: halved down to it at many temperatures. */
function airAt(
  deltaTC: number,
  side: 'low' | 'likely',
): { readonly temperatureC: number; readonly humidityPercent: number } {
  for (let temperatureC = 24.9; temperatureC > 12; temperatureC -= 0.01) {
    let [dry, damp] = [5, 99];
    for (let i = 0; i < 60; i += 1) {
      const humidityPercent = (dry + damp) / 2;
      const found = deltaT({ temperatureC, humidityPercent })[side];
      if (found === deltaTC) return { temperatureC, humidityPercent };
      if (found > deltaTC) dry = humidityPercent;
      else damp = humidityPercent;
    }
  }
  throw new Error(`no air has a delta-T of just ${deltaTC} °C`);
}

describe('the spray window', () => {
  it('is open when all is told and within its limits', () => {
    const found = sprayWindow(fine);
    expect([found.answer, found.reasons, found.notTold]).toEqual(['open', [], []]);
    expect(found.deltaTC?.likely).toBeCloseTo(6.3, 1);
  });

  it.each<[string, Partial<SprayHour>, Partial<SprayHour>, string]>([
    ['wind over 15 km/h', { windMPerS: kmPerH(15.1) }, { windMPerS: kmPerH(15) }, 'windy'],
    ['wind under 3 km/h', { windMPerS: kmPerH(2.9) }, { windMPerS: kmPerH(3) }, 'still-air'],
    ['25 °C', { temperatureC: 25 }, { temperatureC: 24.9 }, 'hot'],
    ['rain within 6 h', { untilRainH: 5.9 }, { untilRainH: 6 }, 'rain-soon'],
    ['the first 1.5 h after sunrise', { sinceSunriseH: 1.4 }, { sinceSunriseH: 1.5 }, 'inversion'],
    ['the last 2 h before sunset', { untilSunsetH: 1.9 }, { untilSunsetH: 2 }, 'inversion'],
    // 15 °C, 90 %: delta-T 1.16; 80 %: about 2.3
    [
      'air too damp',
      { temperatureC: 15, humidityPercent: 90 },
      { temperatureC: 15, humidityPercent: 75 },
      'dries-too-slowly',
    ],
    // 24 °C and 20 %: over 10
    [
      'air too dry',
      { temperatureC: 24, humidityPercent: 20 },
      { temperatureC: 24, humidityPercent: 40 },
      'dries-too-fast',
    ],
  ])('is closed by %s, and open just beside it', (_, closed, open, reason) => {
    expect([at(closed).answer, at(closed).reasons]).toEqual(['closed', [reason]]);
    expect([at(open).answer, at(open).reasons]).toEqual(['open', []]);
  });

  it('is open at a delta-T of just 2 °C and of just 10 °C', () => {
    for (const deltaTC of [2, 10]) {
      const found = at(airAt(deltaTC, 'likely'));
      expect([found.deltaTC?.likely, found.answer]).toEqual([deltaTC, 'open']);
    }
  });

  it('leaves fog and the driest air for beyond 5 and 99 %, where the formula ends; frost and heat close by themselves', () => {
    expect(at({ temperatureC: -5, humidityPercent: 99 }).reasons).toEqual(['frost']);
    expect(at({ temperatureC: -5, humidityPercent: 99.1 }).reasons).toEqual(['frost', 'dries-too-slowly']);
    expect(at({ temperatureC: 55, humidityPercent: 5 }).reasons).toEqual(['hot']);
    expect(at({ temperatureC: 55, humidityPercent: 4.9 }).reasons).toEqual(['hot', 'dries-too-fast']);
  });

  it('is closed in frost, in fog and in air drier than the formula reaches', () => {
    expect(at({ temperatureC: 0 }).reasons).toContain('frost');
    expect(at({ temperatureC: -5 }).reasons).toEqual(['frost']);
    expect(at({ humidityPercent: 100 }).reasons).toEqual(['dries-too-slowly']);
    expect(at({ humidityPercent: 4 }).reasons).toEqual(['dries-too-fast']);
    expect(at({ temperatureC: 60, humidityPercent: 50 }).answer).toBe('closed');
  });

  it('is never open once anything told is known to be past a limit, whatever else is told or not', () => {
    const past: readonly Partial<SprayHour>[] = [
      { windMPerS: kmPerH(16) },
      { windMPerS: kmPerH(1) },
      { temperatureC: 26 },
      { untilRainH: 2 },
      { untilSunsetH: 1 },
    ];
    const keys = Object.keys(fine) as (keyof SprayHour)[];
    for (const change of past) {
      for (let untold = 0; untold < 2 ** keys.length; untold += 1) {
        const kept = Object.fromEntries(
          keys
            .filter((key, i) => key in change || Math.floor(untold / 2 ** i) % 2 === 0)
            .map((key) => [key, fine[key]]),
        );
        expect(sprayWindow({ ...kept, ...change }).answer).not.toBe('open');
      }
    }
  });

  it('names every reason that closes it', () => {
    const found = at({ windMPerS: kmPerH(20), temperatureC: 31, untilRainH: 1, untilSunsetH: -1 });
    expect(found.reasons).toEqual(['windy', 'inversion', 'hot', 'rain-soon']);
  });

  it('is not closed near sunrise under cloud, after a windy night, or once it has warmed by 6 °C', () => {
    const early = { sinceSunriseH: 0.5 };
    expect(at(early).answer).toBe('closed');
    expect(at({ ...early, overcast: true }).answer).toBe('open');
    expect(at({ ...early, leastNightWindMPerS: kmPerH(11.1) }).answer).toBe('open');
    expect(at({ ...early, leastNightWindMPerS: kmPerH(11) }).answer).toBe('closed');
    expect(at({ ...early, risenC: 6 }).answer).toBe('open');
    expect(at({ ...early, risenC: Number.NaN }).answer).toBe('closed');
    // what the night before was like says nothing of the evening
    expect(at({ untilSunsetH: 1, leastNightWindMPerS: kmPerH(12) }).answer).toBe('closed');
  });

  it.each(['windMPerS', 'temperatureC', 'untilRainH', 'sinceSunriseH', 'untilSunsetH'] as const)(
    'is never open while %s is missing or not a number, unless a rule of thumb stands in',
    (key) => {
      for (const missing of [undefined, Number.NaN]) {
        const found = at({ [key]: missing });
        if (found.byThumb.includes('temperature')) expect(key).toBe('temperatureC');
        else expect(found.answer).toBe('unknown');
      }
    },
  );

  it('is not closed by humidity that nobody told, and says so', () => {
    const found = at({ humidityPercent: undefined });
    expect([found.answer, found.notTold, found.deltaTC]).toEqual(['open', ['humidity'], undefined]);
  });

  it('warns near the ends of delta-T: over 8, or where the error of the sum crosses a limit', () => {
    // 24 °C: 40 % gives 8.3; 50 % gives 6.9
    expect(at({ temperatureC: 24, humidityPercent: 40 }).dryingNearLimit).toBe(true);
    expect(at({ temperatureC: 15, humidityPercent: 75 }).dryingNearLimit).toBe(true);
    expect(at({}).dryingNearLimit).toBe(false);
  });

  it('warns only beyond a likely 8 °C, and below 2 °C at the low end of the band: at both itself it does not', () => {
    expect(at(airAt(8, 'likely')).dryingNearLimit).toBe(false);
    expect(at(airAt(8.0625, 'likely')).dryingNearLimit).toBe(true);
    expect(at(airAt(2, 'low')).dryingNearLimit).toBe(false);
    expect(at(airAt(1.9375, 'low')).dryingNearLimit).toBe(true);
  });

  it('says that the hour of the day stood in for an air layer that nobody saw', () => {
    expect(at({ untilSunsetH: 1 })).toMatchObject({ reasons: ['inversion'], byThumb: ['sun'] });
    expect(at({ sinceSunriseH: 0.5 })).toMatchObject({ reasons: ['inversion'], byThumb: ['sun'] });
    expect(at({ sinceSunriseH: 3 })).toMatchObject({ reasons: [], byThumb: ['sun'] });
    expect(at({ sinceSunriseH: 0.5, overcast: true }).byThumb).toEqual([]);
  });

  it('goes by what the air does where no wind was told, and says so', () => {
    const seen = (airSeen: SprayHour['airSeen']) => at({ windMPerS: undefined, airSeen });
    expect([seen('leaves-rustle').answer, seen('leaves-rustle').byThumb]).toEqual(['open', ['wind', 'sun']]);
    expect(seen('still').reasons).toEqual(['still-air']);
    expect(seen('twigs-move').reasons).toEqual(['windy']);
    expect(seen('branches-move').reasons).toEqual(['windy']);
  });

  it('takes only the morning for cool where no temperature was told', () => {
    const untold = (sinceSunriseH: number) => at({ temperatureC: undefined, sinceSunriseH });
    expect([untold(4).answer, untold(4).byThumb]).toEqual(['open', ['sun', 'temperature']]);
    expect(untold(4.1).reasons).toEqual(['hot-by-the-hour']);
  });

  it('is not known where nothing was told', () => {
    const found = sprayWindow({});
    expect([found.answer, found.notTold]).toEqual(['unknown', ['wind', 'sun', 'temperature', 'rain', 'humidity']]);
  });

  it('is found as the first open hour of a row', () => {
    const windy = { ...fine, windMPerS: kmPerH(30) };
    expect(nextSprayHour([windy, {}, fine, fine])).toBe(2);
    expect(nextSprayHour([windy, {}])).toBeUndefined();
  });
});

describe('the pour window', () => {
  it('is open on moist soil without heavy rain ahead', () => {
    expect(pourWindow({ soil: 'moist', rainAheadMm: 9.9 })).toEqual({
      answer: 'open',
      reasons: [],
      windy: false,
      notTold: [],
    });
  });

  it.each([
    ['dry', 0, 'soil-dry'],
    ['cracked', 0, 'soil-dry'],
    ['soaked', 0, 'soil-soaked'],
    ['moist', 10, 'heavy-rain-soon'],
  ] as const)('is closed on %s soil with %d mm ahead', (soil, rainAheadMm, reason) => {
    const found = pourWindow({ soil, rainAheadMm });
    expect([found.answer, found.reasons]).toEqual(['closed', [reason]]);
  });

  it('is not known while soil or rain was not told, and closed by what is known', () => {
    expect(pourWindow({})).toEqual({ answer: 'unknown', reasons: [], windy: false, notTold: ['soil', 'rain'] });
    expect(pourWindow({ soil: 'moist', rainAheadMm: Number.NaN }).answer).toBe('unknown');
    expect(pourWindow({ soil: 'cracked' }).answer).toBe('closed');
  });
});
