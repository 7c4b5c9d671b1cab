// How the figures of a forecast came about: what a litre of the batch starts from, the numbers of the model that weigh
// most, and what was done with them. The souring room hands its numbers over; nothing is computed here.

import type { Range } from '../quantity/range.ts';
import type { Origin } from '../rules/rule.ts';
import type { Mixture } from '../souring/model/mixture.ts';
import { figures } from '../tables/index.ts';
import type { Input, Working } from './working.ts';

type Line = '4.6' | '4.2' | '4.0';
type MaybeDays = (Range & { readonly openEnded: boolean }) | null;

/** What the workings of one forecast are made from. */
export interface ForecastTrace {
  readonly mixture: Mixture;
  readonly opennessFraction: number;
  readonly meanC: { readonly allDays: number };
  readonly drawsCount: number;
  readonly effectiveDrawsCount: number;
  readonly runDays: number;
  readonly reach: Readonly<Record<Line, MaybeDays>>;
  readonly readyDay: MaybeDays;
  readonly heldDay: MaybeDays;
  readonly plateauPh: Range;
  readonly reachedFraction: Readonly<Record<Line | 'ready' | 'held', number>>;
  readonly days: readonly {
    readonly day: number;
    readonly gasRangeLPerDay: Range;
    readonly ethanolRangeGPerL: Range;
  }[];
}

const FERMENT = figures('ferment');
const MODEL_SOURCES: readonly Origin[] = [
  ...new Set([...FERMENT.values()].flatMap((row) => Object.values(row).flatMap((one) => (one ? [one.source] : [])))),
];
const BY_DRAWS =
  'Runs of the ferment model from many draws over what is not known, weighed by the looks; the 10th, 50th and 90th percentile are shown';
const DOUBTS = [
  'The model is fitted to published series of silage, vegetables and juices, and few of them are pails like this one.',
  'What is not in the model, such as an unseen weedkiller or soap in the vessel, is not in the band.',
] as const;

/** Every figure of a forecast. @arithmetic hands over numbers of souring/model */
export function workForecast(trace: ForecastTrace): readonly Working[] {
  const inputs = inputsOf(trace);
  return [
    ...(['4.6', '4.2', '4.0'] as const).flatMap((line) =>
      workDays(trace, inputs, {
        figure: `reach.${line}`,
        label: `day it passes pH ${line}`,
        formula: `${BY_DRAWS}: the first day of each run at or below pH ${line}`,
        value: trace.reach[line],
        reachedFraction: trace.reachedFraction[line],
      }),
    ),
    ...workDays(trace, inputs, {
      figure: 'readyDay',
      label: 'day from which two readings can show it ready',
      formula: `${BY_DRAWS}: the day each run has stood at or below pH 4.2 for two days`,
      value: trace.readyDay,
      reachedFraction: trace.reachedFraction.ready,
    }),
    ...workDays(trace, inputs, {
      figure: 'heldDay',
      label: 'day from which it counts as held',
      formula: `${BY_DRAWS}: the day the hours of each run at or below pH 4.0, each over the days of hold asked at its warmth, add up to 1`,
      value: trace.heldDay,
      reachedFraction: trace.reachedFraction.held,
      also: ['breidt-caldwell-2011', 'our-caution'],
    }),
    {
      figure: 'plateauPh',
      label: 'lowest pH of the days run',
      unit: '',
      formula: `${BY_DRAWS}: the lowest pH of each run, from the balance of charges of its acids, its buffer and its water`,
      value: trace.plateauPh,
      inputs,
      sources: MODEL_SOURCES,
      doubts: DOUBTS,
    },
    ...workMost(trace, inputs),
  ];
}

interface Dated {
  readonly figure: string;
  readonly label: string;
  readonly formula: string;
  readonly value: MaybeDays;
  readonly reachedFraction: number;
  readonly also?: readonly Origin[];
}

/** A day that fewer than half of the draws come to has no figure, and so no working. */
function workDays(trace: ForecastTrace, inputs: readonly Input[], dated: Dated): readonly Working[] {
  const { value } = dated;
  if (value === null) return [];
  const reached: Input = {
    label: `share of the draws that get there in ${trace.runDays} days`,
    value: dated.reachedFraction,
    unit: '',
  };
  const { low, likely, high } = value;
  return [
    {
      figure: dated.figure,
      label: dated.label,
      unit: 'days',
      formula: dated.formula,
      value: { low, likely, high },
      inputs: [...inputs, reached],
      sources: [...new Set([...MODEL_SOURCES, ...(dated.also ?? [])])],
      doubts: value.openEnded ? [...DOUBTS, 'The late end lies past the days that were run.'] : DOUBTS,
    },
  ];
}

function workMost(trace: ForecastTrace, inputs: readonly Input[]): readonly Working[] {
  const most = trace.days.reduce((a, b) => (b.gasRangeLPerDay.likely > a.gasRangeLPerDay.likely ? b : a));
  const last = trace.days.at(-1) ?? most;
  return [
    {
      figure: `days.${most.day}.gasRangeLPerDay`,
      label: `gas from day ${most.day} to the next, the day of the most`,
      unit: 'L',
      formula: 'CO2 made by each run that day × liquid ÷ molar mass × R × temperature ÷ 1 atm, as percentiles',
      value: most.gasRangeLPerDay,
      inputs: [...inputs, { label: 'liquid', value: trace.mixture.liquidL, unit: 'L' }],
      sources: MODEL_SOURCES,
      doubts: ['Counts all gas as leaving the day it is made; the liquid holds some of it back for a while.'],
    },
    {
      figure: `days.${last.day}.ethanolRangeGPerL`,
      label: `alcohol on day ${last.day}`,
      unit: 'g/L',
      formula: 'Alcohol of yeast, early lactic bacteria and enterobacteria, added up over each run, as percentiles',
      value: last.ethanolRangeGPerL,
      inputs,
      sources: MODEL_SOURCES,
      doubts: DOUBTS,
    },
  ];
}

/** The start of a litre, the warmth, and the numbers of the model that weigh most. */
function inputsOf({
  mixture,
  opennessFraction,
  meanC,
  drawsCount,
  effectiveDrawsCount,
}: ForecastTrace): readonly Input[] {
  return [
    { label: 'sugar of the plants', value: mixture.boundSugarGPerL, unit: 'g/L' },
    { label: 'sugar added', value: mixture.freeSugarGPerL, unit: 'g/L' },
    { label: 'buffer', value: mixture.bufferEqPerLPerPh, unit: 'eq/L and pH' },
    { label: 'pH at the start', value: mixture.startPh, unit: '' },
    { label: 'alkalinity of the water', value: mixture.alkalinityEqPerL * 1000, unit: 'meq/L' },
    { label: 'mean temperature of the liquid', value: meanC.allDays, unit: '°C' },
    { label: 'air at the surface, 0 none to 1 open', value: opennessFraction, unit: '' },
    { label: 'draws run', value: drawsCount, unit: '' },
    { label: 'evenly weighted draws that would say as much', value: effectiveDrawsCount, unit: '' },
    fromTable('early lactic bacteria, fastest growth', '1/h', 'early', 'muPerH'),
    fromTable('late lactic bacteria, fastest growth', '1/h', 'late', 'muPerH'),
    fromTable('late lactic bacteria, most undissociated lactic acid', 'mol/L', 'late', 'lacticMostMolPerL'),
    fromTable('early lactic bacteria at the start, power of ten per g', '', 'early', 'startLog10CountPerG'),
    fromTable('share of plant sugar that bacteria reach', '', 'plant', 'accessFraction'),
  ];
}

/** A figure of the table as an input, with its band and source. */
function fromTable(label: string, unit: string, id: string, quantity: string): Input {
  const figure = FERMENT.get(id)?.[quantity];
  if (figure === undefined) throw new RangeError(`data/ferment.csv has no ${id} ${quantity}`);
  const { low, likely, high, source } = figure;
  return { label, value: low === high ? likely : { low, likely, high }, unit, source };
}
