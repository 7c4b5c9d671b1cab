// The weather as typed and as read from a file: units, and every problem at its field.
import { describe, expect, it } from 'vitest';
import { readForecastFile } from './forecast-file.ts';
import { readWeather } from './weather.ts';
import { readWeatherFigure } from './weather-figures.ts';

const today = '2026-06-26';
const read = (typed: Record<string, string>, units: 'metric' | 'us' = 'metric') =>
  readWeather(typed, { now: `${today}T09:00`, units });

describe('a figure of the weather', () => {
  // mile 1609.344 m, nautical mile 1852 m, inch 25.4 mm, °C = (°F − 32) / 1.8
  it.each([
    ['12 km/h', 'wind', 12 / 3.6],
    ['10 mph', 'wind', 4.4704],
    ['5 m/s', 'wind', 5],
    ['10 kn', 'wind', 18_520 / 3600],
    ['10 kt', 'wind', 18_520 / 3600],
    ['10 knots', 'wind', 18_520 / 3600],
    ['36 kmh', 'wind', 10],
    ['36 kph', 'wind', 10],
    ['1 cm', 'rain', 10],
    ['55 %', 'humidity', 55],
    ['55 percent', 'humidity', 55],
    ['40 %', 'cloud', 40],
    ['40 percent', 'cloud', 40],
    ['77 °F', 'temperature', 25],
    ['-3,5 C', 'temperature', -3.5],
    ['0.5 in', 'rain', 12.7],
    ['3 mm', 'rain', 3],
  ] as const)('%s is read', (text, quantity, value) => {
    const found = readWeatherFigure(text, quantity);
    expect(found.ok && found.value).toBeCloseTo(value, 9);
  });
  it.each([
    ['12', 'wind', 'unit-missing'],
    ['12 bft', 'wind', 'unit-unknown'],
    ['windy', 'wind', 'not-a-number'],
    ['1,200 mm', 'rain', 'in'],
    ['900 km/h', 'wind', 'out-of-range'],
  ] as const)('%s is not', (text, quantity, message) => {
    const found = readWeatherFigure(text, quantity);
    if (message === 'in') expect(found).toEqual({ ok: true, value: 1.2 });
    else expect(found).toMatchObject({ ok: false, message });
  });
});

describe('the weather as typed', () => {
  it('is one entry of today and tomorrow', () => {
    const found = read({ '0.highC': '21', '0.windMPerS': '18 km/h', '1.rainMm': '0', issuedAt: '2026-06-26T06:00' });
    expect(found).toEqual({
      ok: true,
      body: {
        what: 'forecast',
        issuedAt: '2026-06-26T06:00',
        days: [
          { on: '2026-06-26', highC: 21, windMPerS: 5 },
          { on: '2026-06-27', rainMm: 0 },
        ],
      },
    });
  });
  it('tells every problem at its field', () => {
    const found = read({ '0.windMPerS': '18', '1.highC': 'warm', '1.sunrise': 'six', issuedAt: 'this morning' });
    if (found.ok) throw new Error('it was read');
    expect([...found.troubles.keys()].sort()).toEqual(['0.windMPerS', '1.highC', '1.sunrise', 'issuedAt']);
    expect(found.troubles.get('0.windMPerS')).toBe('"18" has no unit; allowed: km/h, mph, m/s, kn.');
  });
  it('refuses a low over the high, and nothing at all', () => {
    const crossed = read({ '0.lowC': '20', '0.highC': '10' });
    expect(!crossed.ok && crossed.troubles.has('0.highC')).toBe(true);
    expect(read({}).ok).toBe(false);
  });
  it('asks for the unit of a bare figure where two are in use', () => {
    expect(read({ '0.highC': '77' }, 'us').ok).toBe(false);
    const found = read({ '0.highC': '77 F' }, 'us');
    expect(found.ok && found.body.days[0]?.highC).toBe(25);
  });
});

describe('a forecast file', () => {
  const good =
    'time,temperature (°F),wind (mph),rain (in),humidity (%),model\n2026-06-26T14:00,77,10,0.5,60,x\n2026-06-26 15:00,68,,0,,x\n';
  it('is read by the units in its header, and says what it left out', () => {
    const found = readForecastFile(good);
    expect(found).toMatchObject({
      ok: true,
      hours: 2,
      ignored: ['model'],
      body: {
        what: 'forecast',
        days: [
          {
            on: '2026-06-26',
            hours: [
              { hour: 14, temperatureC: 25, windMPerS: 4.4704, rainMm: 12.7, humidityPercent: 60 },
              { hour: 15, temperatureC: 20, rainMm: 0 },
            ],
          },
        ],
      },
    });
    // Two hours are no day: its low, high and rain stay untold.
    expect(found.ok && found.body.days[0]).not.toHaveProperty('rainMm');
  });
  it('of a whole day tells its low, its high and its rain', () => {
    const lines = Array.from(
      { length: 24 },
      (_, hour) => `2026-06-26T${String(hour).padStart(2, '0')}:00;${hour},5;0,5`,
    );
    const found = readForecastFile(`time;temperature (°C);rain (mm)\n${lines.join('\n')}`);
    expect(found.ok && found.body.days[0]).toMatchObject({ lowC: 0.5, highC: 23.5, rainMm: 12 });
  });
  it.each([
    ['an empty text', '', 'No column "time"'],
    ['a header without time', 'hour,wind (km/h)\n1,2', 'No column "time" in "hour, wind (km/h)"'],
    ['no weather in the header', 'time,moon\n2026-06-26T14:00,full', 'Nothing of the weather'],
    [
      'a column without a unit',
      'time,wind\n2026-06-26T14:00,4',
      'Column "wind" tells no unit known here; allowed in its name: km/h',
    ],
    [
      'a value that is none',
      'time,wind (km/h)\n2026-06-26T14:00,fresh',
      'Line 2, wind (km/h): "fresh" is not a number',
    ],
    ['a time with a zone', 'time,wind (km/h)\n2026-06-26T14:00Z,4', 'Line 2, time: "2026-06-26T14:00Z"'],
    ['half an hour', 'time,wind (km/h)\n2026-06-26T14:30,4', 'Line 2, time'],
    [
      'an hour told twice',
      'time,wind (km/h)\n2026-06-26T14:00,4\n2026-06-26T14:00,5',
      'Line 3, time: "2026-06-26T14:00" stands twice',
    ],
    ['a header alone', 'time,wind (km/h)', 'No hours'],
    [
      'humidity over 100',
      'time,humidity (%)\n2026-06-26T14:00,140',
      'Line 2, humidity (%): "140" cannot be; allowed: 0 to 100',
    ],
    ['quotes left open', 'time,wind (km/h)\n"2026', 'no table of values'],
  ])('with %s is refused with the reason', (_, text, said) => {
    const found = readForecastFile(text);
    expect(found.ok ? '' : found.problems.join(' ')).toContain(said);
  });
});
