// How the figures beside a sour line came about: the days by which a batch ought to have soured, the days it must stay
// sour to count as held, and the mean temperature both run with. souring/lines.ts hands its numbers over.

import { alarmLines, holdDays } from '../souring/lines.ts';
import type { Input, Working } from './working.ts';

/** What the workings of one batch are made from. */
export interface SourLineTrace {
  /** Mean since the filling; not a number where nobody measured. */
  readonly temperatureC: number;
  /** The tellings of temperature, each with its day and how long it stood for. */
  readonly told: readonly { readonly day: number; readonly temperatureC: number; readonly stoodDays: number }[];
  /** Since when it stands at or below pH 4.0; undefined while it does not. */
  readonly acidSinceDay: number | undefined;
}

/** Every figure beside a sour line. @arithmetic hands over numbers of souring/lines */
export function workSourLine(trace: SourLineTrace): readonly Working[] {
  return [...workMean(trace), ...workAlarms(trace), ...workHold(trace)];
}

function temperatureInput({ temperatureC }: SourLineTrace): Input {
  return { label: 'mean temperature', value: temperatureC, unit: '°C' };
}

function workMean(trace: SourLineTrace): readonly Working[] {
  if (trace.told.length === 0) return [];
  return [
    {
      figure: 'temperature.meanC',
      label: 'mean temperature since the filling',
      unit: '°C',
      formula:
        'each temperature × the days it stood for, added up, ÷ all days; the first counts from the start, and before an hour has passed the last alone',
      value: trace.temperatureC,
      inputs: trace.told.flatMap(({ day, temperatureC, stoodDays }) => [
        { label: `told on day ${Math.floor(day)}`, value: temperatureC, unit: '°C' },
        { label: `told on day ${Math.floor(day)}, stood for`, value: stoodDays, unit: 'days' },
      ]),
      sources: ['practice'],
      doubts: ['How warm it was between two looks is not known.'],
    },
  ];
}

function workAlarms(trace: SourLineTrace): readonly Working[] {
  const at20C = alarmLines(20);
  const at12C = alarmLines(12);
  return alarmLines(trace.temperatureC).flatMap(({ ph, days }, i) =>
    Number.isFinite(days)
      ? [
          {
            figure: `alarm.${ph.toFixed(1)}`,
            label: `day by which it ought to be at pH ${ph.toFixed(1)}`,
            unit: 'days',
            formula: 'days at 20 °C × (days at 12 °C ÷ days at 20 °C) to the power of (20 − temperature) ÷ 8',
            value: days,
            inputs: [
              temperatureInput(trace),
              { label: 'days at 20 °C and above', value: at20C[i]?.days ?? Number.NaN, unit: 'days' },
              { label: 'days at 12 °C', value: at12C[i]?.days ?? Number.NaN, unit: 'days' },
            ],
            sources: ['our-caution'],
            doubts: ['Drawn from a fermentation model at 12 and 20 °C, not from a trial of such batches.'],
          },
        ]
      : [],
  );
}

function workHold(trace: SourLineTrace): readonly Working[] {
  const days = holdDays(trace.temperatureC);
  if (!Number.isFinite(days)) return [];
  return [
    {
      figure: 'hold.days',
      label: 'days at pH 4.0 or below before it counts as held',
      unit: 'days',
      formula: '15 days at 20 °C and above, 24 at 15 °C, 39 at 10 °C, straight lines between',
      value: days,
      inputs: [
        temperatureInput(trace),
        ...(trace.acidSinceDay === undefined
          ? []
          : [{ label: 'at 4.0 or below since day', value: trace.acidSinceDay, unit: '' }]),
      ],
      sources: ['breidt-caldwell-2011', 'breidt-2007', 'our-caution'],
      doubts: [
        'Neither source gives days by temperature. The days here are our own reading, on the careful side.',
        'Brines took 3 days at pH 3.2 and 24 at pH 4.6. A straight line gives 15 at pH 4.0, which we take for 20 °C.',
        'From 25 to 10 °C the kill took 5.7 days for 1.4. By that the days grow in the cold, rounded up.',
      ],
    },
  ];
}
