// The hour to spray or to pour in, and the cress test.

import { adviceStrength, type Dishes, GERMINATION, readGermination, toldApart } from '#engine/can/germination.ts';
import { sprayFigure } from '#engine/can/spray-figures.ts';
import { pourWindow, type SprayHour, sprayWindow } from '#engine/can/spray-window.ts';
import { deltaT } from '#engine/can/wet-bulb.ts';
import { sprayRules } from '#engine/rules/spray.ts';
import { answers, speaks, type Value } from './value.ts';

const caution = { source: 'our-caution' } as const;
const manual = (locator: string) => ({ source: 'grdc-spray-manual-2025', locator }) as const;
const recalled = { source: 'grdc-spray-manual-drying', locator: 'module 10' } as const;

/** A still-cool dry morning with a steady wind. */
const good: SprayHour = {
  windMPerS: 10 / 3.6,
  temperatureC: 18,
  untilRainH: 24,
  sinceSunriseH: 3,
  untilSunsetH: 8,
};
const hour = (change: SprayHour) => sprayWindow({ ...good, ...change }).reasons.join();
const wind = (kmPerH: number) => hour({ windMPerS: kmPerH / 3.6 });

/** The humidity at which air of 20 °C stands so far above its wet bulb; that formula is held by worked/stull-2011. */
function humidityAt(deltaTC: number): number {
  let [low, high] = [5, 99];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (deltaT({ temperatureC: 20, humidityPercent: middle }).likely > deltaTC) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
const drying = (deltaTC: number) => hour({ temperatureC: 20, humidityPercent: humidityAt(deltaTC) });
const nearLimit = (deltaTC: number) =>
  sprayWindow({ ...good, temperatureC: 20, humidityPercent: humidityAt(deltaTC) }).dryingNearLimit;

export const sprayValues: readonly Value[] = [
  {
    name: 'least wind for a spray',
    at: 'data/spray.csv wind.leastKmPerH',
    stated: '3 km/h',
    ...recalled,
    step: 0.2,
    holds: answers(wind, [2.9, 'still-air'], [3, ''], [3.1, '']),
  },
  {
    name: 'most wind for a spray',
    at: 'data/spray.csv wind.mostKmPerH',
    stated: '15 km/h',
    ...recalled,
    holds: answers(wind, [14.9, ''], [15, ''], [15.1, 'windy']),
  },
  {
    name: 'hours after sunrise in which an air layer is to be expected',
    at: 'data/spray.csv inversion.afterSunriseH',
    stated: '1.5 hours',
    ...manual('10.8: about one hour; half an hour more is our caution'),
    holds: answers((sinceSunriseH: number) => hour({ sinceSunriseH }), [1.49, 'inversion'], [1.5, ''], [1.51, '']),
  },
  {
    name: 'hours before sunset in which an air layer is to be expected',
    at: 'data/spray.csv inversion.beforeSunsetH',
    stated: '2 hours',
    ...manual('10.8: one to two hours; the longer'),
    step: 0.2,
    holds: answers((untilSunsetH: number) => hour({ untilSunsetH }), [1.9, 'inversion'], [2, ''], [2.1, '']),
  },
  {
    name: 'wind of a whole night that leaves no air layer',
    at: 'data/spray.csv inversion.stirringKmPerH',
    stated: 'over 11 km/h',
    ...manual('10.8'),
    holds: answers(
      (kmPerH: number) => hour({ sinceSunriseH: 0.5, leastNightWindMPerS: kmPerH / 3.6 }),
      [10.9, 'inversion'],
      [11, 'inversion'],
      [11.1, ''],
    ),
  },
  {
    name: 'rise of warmth after which an air layer is gone',
    at: 'data/spray.csv inversion.risenC',
    stated: '6 °C',
    ...manual('10.8'),
    holds: answers((risenC: number) => hour({ sinceSunriseH: 0.5, risenC }), [5.9, 'inversion'], [6, ''], [6.1, '']),
  },
  {
    name: 'warmth from which nothing is sprayed or poured',
    at: 'data/spray.csv warmth.belowC',
    stated: 'under 25 °C',
    ...caution,
    holds: answers(
      (temperatureC: number) => [
        hour({ temperatureC }),
        pourWindow({ soil: 'moist', rainAheadMm: 0, temperatureC }).answer,
      ],
      [24.9, ['', 'open']],
      [25, ['hot', 'closed']],
      [25.1, ['hot', 'closed']],
    ),
  },
  {
    name: 'frost in which nothing is sprayed',
    at: 'data/spray.csv warmth.aboveC',
    stated: 'over 0 °C',
    ...caution,
    holds: answers((temperatureC: number) => hour({ temperatureC }), [-0.1, 'frost'], [0, 'frost'], [0.1, '']),
  },
  {
    name: 'dry hours after a spray',
    at: 'data/spray.csv rain.dryH',
    stated: '6 hours',
    ...caution,
    holds: answers((untilRainH: number) => hour({ untilRainH }), [5.9, 'rain-soon'], [6, ''], [6.1, '']),
  },
  {
    name: 'delta-T below which a spray dries too slowly',
    at: 'data/spray.csv delta-t.leastC',
    stated: '2 °C',
    ...recalled,
    step: 0.1,
    holds: answers(drying, [1.99, 'dries-too-slowly'], [2.01, '']),
  },
  {
    name: 'delta-T from which a spray is near its limit',
    at: 'data/spray.csv delta-t.mostC',
    stated: '8 °C',
    ...recalled,
    step: 0.1,
    holds: answers(nearLimit, [7.99, false], [8.01, true]),
  },
  {
    name: 'delta-T above which a spray dries too fast',
    at: 'data/spray.csv delta-t.cautionMostC',
    stated: '10 °C',
    ...recalled,
    step: 0.1,
    holds: answers(drying, [9.99, ''], [10.01, 'dries-too-fast']),
  },
  {
    name: 'cool hours of the morning, where no warmth was told',
    at: 'data/spray.csv morning.mostAfterSunriseH',
    stated: '4 hours after sunrise',
    ...caution,
    holds: answers(
      (sinceSunriseH: number) => hour({ temperatureC: undefined, sinceSunriseH }),
      [3.9, ''],
      [4, ''],
      [4.1, 'hot-by-the-hour'],
    ),
  },
  {
    name: 'age from which a forecast is old',
    at: 'data/spray.csv forecast.oldH',
    stated: '6 hours',
    ...caution,
    holds: answers(
      (forecastAgeH: number) => speaks(sprayRules, 'spray-forecast-old')({ hour: good, forecastAgeH }),
      [5.9, false],
      [6, true],
      [6.1, true],
    ),
  },
  {
    name: 'rain ahead that washes a feed on',
    at: 'data/spray.csv heavy-rain.leastMm',
    stated: '10 mm',
    ...caution,
    holds: answers(
      (rainAheadMm: number) => pourWindow({ soil: 'moist', rainAheadMm }).answer,
      [9.9, 'open'],
      [10, 'closed'],
      [10.1, 'closed'],
    ),
  },
  {
    name: 'hours ahead in which that rain counts',
    at: 'data/spray.csv heavy-rain.withinH',
    stated: '6 hours',
    ...caution,
    holds: answers((quantity: string) => sprayFigure('heavy-rain', quantity).likely, ['withinH', 6]),
  },
  // Beaufort 0 and 1, 2, 3 and 4 in km/h, by what is seen of the air
  ...(
    [
      ['still', 0, 5, 'still-air'],
      ['leaves-rustle', 6, 11, ''],
      ['twigs-move', 12, 19, 'windy'],
      ['branches-move', 20, 28, 'windy'],
    ] as const
  ).flatMap(([airSeen, low, high, reasons]) =>
    (['low', 'high'] as const).map(
      (end): Value => ({
        name: `wind where the air is seen as ${airSeen}, ${end === 'low' ? 'the least' : 'the most'}`,
        at: `data/spray.csv air-${airSeen}.windKmPerH ${end}`,
        stated: `${end === 'low' ? low : high} km/h`,
        source: 'wmo-8',
        locator: 'Beaufort scale',
        holds: answers(
          (seen: typeof airSeen) => {
            const band = sprayFigure(`air-${seen}`, 'windKmPerH');
            return [band.low, band.high, hour({ windMPerS: undefined, airSeen: seen })];
          },
          [airSeen, [low, high, reasons]],
        ),
      }),
    ),
  ),
];

const water: Dishes = { sownCount: 30, germinatedCount: 30, meanRootMm: 20 };
/** An index of so many percent: all seeds germinated, roots so much of 20 mm. */
const index = (percent: number): Dishes => ({ ...water, meanRootMm: percent / 5 });
const found = (sample: Dishes, control = water) => {
  const { faults, class: one } = readGermination(sample, control);
  return one ?? faults.join();
};
const zucconi = { source: 'zucconi-1981' } as const;
const memory = { source: 'memory' } as const;

export const cressValues: readonly Value[] = [
  {
    name: 'germination index under which a feed harms',
    at: 'data/spray.csv germination-class.harmPercent',
    stated: '50 %',
    source: 'radhouani-composts',
    locator: 'abstract',
    holds: answers((percent: number) => found(index(percent)), [49.9, 'harmful'], [50, 'doubtful'], [50.1, 'doubtful']),
  },
  {
    name: 'germination index over which no harm is seen',
    at: 'data/spray.csv germination-class.passPercent',
    stated: '80 %',
    source: 'picon-toro-2012',
    locator: 'abstract',
    holds: answers((percent: number) => found(index(percent)), [79.9, 'doubtful'], [80, 'doubtful'], [80.1, 'no-harm']),
  },
  {
    name: 'germination index of the water alone',
    at: 'data/spray.csv germination-class.waterPercent',
    stated: '100 %',
    ...zucconi,
    holds: answers(
      (percent: number) => found(index(percent)),
      [99.9, 'no-harm'],
      [100, 'no-harm'],
      [100.1, 'above-water'],
    ),
  },
  {
    name: 'germination of the control, the least',
    at: 'data/spray.csv germination-control.germinatedPercent',
    stated: '80 %',
    ...memory,
    holds: answers(
      (germinatedCount: number) => {
        const control = { sownCount: 1000, germinatedCount, meanRootMm: 20 };
        return found(control, control);
      },
      [799, 'control-did-not-germinate'],
      [800, 'no-harm'],
      [801, 'no-harm'],
    ),
  },
  {
    name: 'roots of the control, the least',
    at: 'data/spray.csv germination-control.rootMm',
    stated: '15 mm',
    ...memory,
    holds: answers(
      (meanRootMm: number) => found({ ...water, meanRootMm }, { ...water, meanRootMm }),
      [14.9, 'control-roots-short'],
      [15, 'no-harm'],
      [15.1, 'no-harm'],
    ),
  },
  {
    name: 'germination indices that are told apart',
    at: 'data/spray.csv germination-noise.apartPercent',
    stated: 'more than 25 points',
    ...memory,
    holds: answers((percent: number) => toldApart(percent, 100), [74.9, true], [75, false], [75.1, false]),
  },
  {
    name: 'margin under the strongest feed that passed',
    at: 'data/spray.csv germination-advice.marginFactor',
    stated: 'half as strong',
    ...caution,
    holds: answers(
      (n: number) => {
        const advice = adviceStrength([{ n, sample: index(95) }], water);
        return advice.found ? advice.n : advice.why;
      },
      [40, 80],
    ),
  },
  ...(['dishCount', 'seedsPerDishCount'] as const).map(
    (key): Value => ({
      name: key === 'dishCount' ? 'dishes of a strength' : 'seeds of a dish',
      at: `data/spray.csv germination-layout.${key}`,
      stated: key === 'dishCount' ? '3' : '10',
      ...memory,
      // three dishes of ten seeds
      holds: answers(
        (sownCount: number) => found({ sownCount, germinatedCount: sownCount, meanRootMm: 18 }),
        [29, 'too-few-seeds'],
        [30, 'no-harm'],
        [31, 'no-harm'],
      ),
    }),
  ),
  {
    name: 'water on the paper of a dish',
    at: 'data/spray.csv germination-layout.waterMl',
    stated: '5 mL',
    ...memory,
    holds: answers((key: 'waterMl') => GERMINATION[key], ['waterMl', 5]),
  },
];
