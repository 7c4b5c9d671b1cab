import { describe, expect, it } from 'vitest';
import { nextSprayHour, type PourHour, pourWindow, type SprayHour, sprayWindow } from '#engine/can/spray-window.ts';
import { judge } from '#engine/rules/rule.ts';
import { pourHourRules, sprayRules } from '#engine/rules/spray.ts';
import { citation } from '#engine/tables/index.ts';
import { nextSprayHourSays, pourAnswer, pourHourCautions, sprayAnswer, sprayCautions } from '#words/en/spray.ts';

const kmPerH = (value: number) => value / 3.6;
/** Ten in the morning by a forecast: light wind, mild, no rain. */
const morning: SprayHour = {
  windMPerS: kmPerH(9),
  temperatureC: 19,
  humidityPercent: 55,
  untilRainH: Number.POSITIVE_INFINITY,
  sinceSunriseH: 4,
  untilSunsetH: 10,
};

/** What the grower is told of an hour: the answer, then each text behind its level and rule. */
function asked(change: Partial<SprayHour>, forecastAgeH?: number) {
  const hour = { ...morning, ...change };
  const found = judge(sprayRules, { hour, forecastAgeH });
  return {
    answer: sprayAnswer(sprayWindow(hour)),
    rules: found.map(({ rule, level }) => `${level} ${rule}`),
    text: found.map(({ rule, values }) => sprayCautions[rule]?.(values) ?? `no text for ${rule}`).join(' '),
    sources: found.map(({ source }) => citation(source)),
  };
}

describe('the hour to spray a leaf', () => {
  it('is open on a mild, dry morning in a light wind', () => {
    const said = asked({});
    expect(said.answer).toBe('The spray window is open.');
    expect(said.rules).toEqual(['note spray-window-open']);
  });

  it('is closed in wind over 15 km/h, on the word of a named source', () => {
    const said = asked({ windMPerS: kmPerH(16) });
    expect(said.answer).toBe('The spray window is closed.');
    expect(said.rules).toEqual(['hold spray-windy']);
    expect(said.text).toMatch(/16\skm\/h\. Over 15\skm\/h/);
    expect(said.sources[0]).toContain('Grains Research and Development Corporation 2025');
    expect(asked({ windMPerS: kmPerH(15) }).rules).toEqual(['note spray-window-open']);
  });

  it('is closed at 25 °C and over, by our caution, no source', () => {
    for (const temperatureC of [25, 33]) {
      const said = asked({ temperatureC });
      expect(said.rules.slice(0, 1)).toEqual(['hold spray-hot']);
      expect(said.sources[0]).toBe('our caution, no source');
    }
    expect(asked({ temperatureC: 25 }).text).toMatch(/25\s°C, where leaves are sprayed under 25\s°C/);
  });

  it('is closed when rain is forecast within 6 hours', () => {
    const said = asked({ untilRainH: 5 });
    expect(said.rules).toEqual(['hold spray-rain-soon']);
    expect(said.text).toMatch(/Rain in 5\shours.*6\shours stay dry/);
    expect(asked({ untilRainH: 0 }).text).toMatch(/^Rain now would wash it off/);
    expect(asked({ untilRainH: 6 }).rules).toEqual(['note spray-window-open']);
  });

  it('is closed in still air and near sunrise, where fine drops hang', () => {
    expect(asked({ windMPerS: kmPerH(2) }).rules).toEqual(['hold spray-still-air']);
    const said = asked({ sinceSunriseH: 0.5 });
    expect(said.rules).toEqual(['hold spray-inversion']);
    expect(said.text).toMatch(/1\.5\shours after sunrise.*2\shours before sunset/);
  });

  it('is closed in air too damp or too dry, and cautious near those ends', () => {
    expect(asked({ temperatureC: 12, humidityPercent: 95 }).rules).toEqual(['hold spray-dries-too-slowly']);
    expect(asked({ temperatureC: 24, humidityPercent: 15 }).rules).toEqual(['hold spray-dries-too-fast']);
    expect(asked({ humidityPercent: 100 }).text).toMatch(/^The air is too damp; with delta-T under 2\s°C/);
    expect(asked({ temperatureC: -1 }).rules).toEqual(['hold spray-frost']);
    const near = asked({ temperatureC: 24, humidityPercent: 40 });
    expect(near.rules).toEqual(['caution spray-drying-near-limit', 'note spray-window-open']);
  });

  it('names the next hour that is fit, or what to look for when none is', () => {
    const day = [{ ...morning, windMPerS: kmPerH(22) }, { ...morning, temperatureC: 26 }, morning];
    expect(nextSprayHour(day)).toBe(2);
    expect(nextSprayHourSays('Thu 3 Jun, 10:00')).toBe('Next hour to spray: Thu 3 Jun, 10:00.');
    expect(nextSprayHourSays(undefined)).toMatch(/1\.5\shours after sunrise.*25\s°C.*6\shours stay dry/);
  });

  it('goes by the last forecast when there is no newer one, and says how old it is', () => {
    const said = asked({}, 30);
    expect(said.rules).toEqual(['caution spray-forecast-old', 'note spray-window-open']);
    expect(said.text).toMatch(/30\shours old/);
    expect(asked({}, Number.NaN).text).toContain('of unknown age');
    expect(asked({}, 5).rules).toEqual(['note spray-window-open']);
  });

  it('is not known without any weather, and says what nobody told', () => {
    const said = asked({
      windMPerS: undefined,
      temperatureC: undefined,
      humidityPercent: undefined,
      untilRainH: undefined,
      sinceSunriseH: undefined,
    });
    expect(said.answer).toBe('Whether the spray window is open is not known.');
    expect(said.rules).toEqual(['hold spray-hour-not-known', 'note spray-humidity-not-told']);
    expect(said.text).toContain('the wind, sunrise and sunset, the temperature and the next rain');
  });

  it('may be judged by eye and by the hour, and says which was', () => {
    const byEye = { windMPerS: undefined, airSeen: 'leaves-rustle', temperatureC: undefined } as const;
    const said = asked(byEye);
    expect(said.rules).toEqual([
      'note spray-humidity-not-told',
      'note spray-by-rule-of-thumb',
      'note spray-window-open',
    ]);
    expect(said.text).toContain('no weather was told: the wind and the temperature.');
    expect(asked({ ...byEye, sinceSunriseH: 5 }).rules[0]).toBe('hold spray-past-the-cool-morning');
  });
});

describe('the hour to pour on the soil', () => {
  const pour = (hour: PourHour) => {
    const found = judge(pourHourRules, hour);
    const text = found.map(({ rule, values }) => pourHourCautions[rule]?.(values) ?? '').join(' ');
    return { answer: pourAnswer(pourWindow(hour)), rules: found.map(({ rule }) => rule), text };
  };

  it('is any with moist soil and no heavy rain ahead', () => {
    const said = pour({ soil: 'moist', rainAheadMm: 2 });
    expect([said.answer, said.rules]).toEqual(['A good hour to pour on the soil.', []]);
  });

  it('is none on dry cracked soil, soaked soil or before heavy rain', () => {
    expect(pour({ soil: 'cracked', rainAheadMm: 0 }).text).toContain('The soil is cracked');
    expect(pour({ soil: 'dry', rainAheadMm: 0 }).rules).toEqual(['pour-soil-dry']);
    expect(pour({ soil: 'soaked', rainAheadMm: 0 }).rules).toEqual(['pour-soil-soaked']);
    expect(pour({ soil: 'moist', rainAheadMm: 12 }).text).toMatch(/within 6\shours \(12\smm\)/);
  });

  it('asks for soil and rain that nobody told', () => {
    const said = pour({});
    expect(said.rules).toEqual(['pour-hour-not-known']);
    expect(said.text).toContain('how the soil feels and the next rain');
  });
});
