// A souring batch in plain English: when it is likely to be sour and held, what it comes to, what holds it back, what
// the looks say. Numbers come from the engine; nothing is computed here.

import type { Range } from '#engine/quantity/range.ts';
import type { Values } from '#engine/rules/rule.ts';
import type { Brake } from '#engine/souring/brake.ts';
import type { Unknown } from '#engine/souring/model/draws.ts';
import type { BeliefMoved } from '#engine/souring/read-off.ts';
import type { State } from '#engine/souring/reason.ts';
import { besideLimit, figure, withUnit } from '../figures.ts';
import { stateSentences } from './souring.ts';

const n = (values: Values, key: string) => Number(values[key]);

/** One sentence or two for each rule about the warmth of a batch. */
export const sourCautions: Readonly<Record<string, (values: Values) => string>> = {
  'too-hot-to-sour': (v) =>
    Number.isFinite(n(v, 'hottestC'))
      ? `Move it into the shade: ${besideLimit(n(v, 'hottestC'), n(v, 'limitC'), '°C', 0)} is too hot. From about ${besideLimit(n(v, 'limitC'), n(v, 'hottestC'), '°C', 0)} other microbes than those of souring thrive. Look at it every day.`
      : 'How hot it gets is not known. Measure it, and keep it in the shade.',
  'warm-look-daily': (v) =>
    Number.isFinite(n(v, 'meanC'))
      ? `At about ${withUnit(n(v, 'meanC'), '°C', 0)} it turns in days. Look at it every day.`
      : 'How warm it stands is not known. Look at it every day.',
  'too-cold-for-a-hold': (v) =>
    Number.isFinite(n(v, 'meanC'))
      ? `At about ${besideLimit(n(v, 'meanC'), n(v, 'limitC'), '°C', 0)} no time of holding is known to be long enough. Stand it where it is ${besideLimit(n(v, 'limitC'), n(v, 'meanC'), '°C', 0)} or more, or use it on cooked crops only.`
      : 'How warm it stands is not known, so it does not count as held. Use it on cooked crops only.',
};

/** What holds it back, in a sentence. */
export const brakeSentences: Readonly<Record<Brake, string>> = {
  cold: 'Cold holds it back: a warmer place is likely to bring every date forward.',
  warm: 'Heat holds it back: the bacteria that sour it do not bear it. Stand it in the shade.',
  sugar: 'Sugar holds it back: it is likely to run out before the batch is sour enough.',
  dry: 'Dryness holds it back: there is little water for so much plant.',
  acid: 'In the end its own acid stops it, as it ought to.',
};

/** What each unknown is, and which way it has moved. */
const unknownNames: Readonly<Record<Unknown, { readonly more: string; readonly less: string }>> = {
  rate: { more: 'it sours faster than usual', less: 'it sours more slowly than usual' },
  count: { more: 'more souring bacteria came in', less: 'fewer souring bacteria came in' },
  buffer: { more: 'the plants take up more acid', less: 'the plants take up less acid' },
  sugar: { more: 'the plants bring more sugar', less: 'the plants bring less sugar' },
  warmth: { more: 'it stands warmer than told', less: 'it stands colder than told' },
  startPh: { more: 'it began less sour', less: 'it began more sour' },
};

type DaySpan = (Range & { readonly openEnded: boolean }) | null;
type Line = '4.6' | '4.2' | '4.0';

/** What the sentences need of an answer. */
export interface SaidOfSour {
  readonly days: readonly {
    readonly day: number;
    readonly gasRangeLPerDay: Range;
    readonly ethanolRangeGPerL: Range;
    readonly sugarRangeGPerL: Range;
  }[];
  readonly reach: Readonly<Record<Line, DaySpan>>;
  readonly plateauPh: Range;
  readonly heldDay: DaySpan;
  readonly reachedFraction: Readonly<Record<Line | 'ready' | 'held', number>>;
  readonly runDays: number;
  readonly state: State;
  readonly held: boolean;
  readonly nextLookDay?: number;
  readonly reasons: readonly string[];
  readonly wouldChange: readonly string[];
  readonly questions: readonly { readonly text: string }[];
  readonly rescues: readonly { readonly text: string }[];
  readonly looks: readonly unknown[];
  readonly readings: readonly { readonly day: number; readonly ph: number; readonly inBand: boolean | null }[];
  readonly beliefs: readonly BeliefMoved[];
  readonly brake: Brake;
}

/** "day 3 (2 to 5)"; a late end that was not seen is said to be later still. */
function span({ low, likely, high, openEnded }: NonNullable<DaySpan>): string {
  const [from, middle, to] = [figure(low, 0), figure(likely, 0), figure(high, 0)];
  if (openEnded) return `about day ${middle} (from day ${from}, perhaps later than day ${to})`;
  return from === to ? `about day ${middle}` : `about day ${middle} (day ${from} to day ${to})`;
}

/** A share of the draws in words that no one takes for a promise. */
function inTen(fraction: number): string {
  const tenths = Math.round(fraction * 10);
  if (tenths <= 0) return 'fewer than 1 in 10 draws';
  if (tenths >= 10) return 'nearly all draws';
  return `about ${tenths} in 10 draws`;
}

function saidOf(what: string, days: DaySpan, fraction: number, runDays: number): string {
  if (days === null) return `${what}: not likely within ${figure(runDays, 0)} days (${inTen(fraction)} get there).`;
  return `${what}: likely ${span(days)}.`;
}

const ranged = ({ low, high }: Range, unit: string, decimals: number) =>
  figure(low, decimals) === figure(high, decimals)
    ? withUnit(high, unit, decimals)
    : `${figure(low, decimals)} to ${withUnit(high, unit, decimals)}`;

/** What to expect of the batch, sentence by sentence. */
export function sayForecast(said: SaidOfSour): readonly string[] {
  const { days, runDays, reachedFraction } = said;
  const last = days.at(-1);
  const most = days.reduce((a, b) => (b.gasRangeLPerDay.likely > a.gasRangeLPerDay.likely ? b : a));
  return [
    saidOf('Sour (pH 4.2)', said.reach['4.2'], reachedFraction['4.2'], runDays),
    saidOf('Held', said.heldDay, reachedFraction.held, runDays),
    `It is likely to come down to about pH ${figure(said.plateauPh.likely, 1)} (${figure(said.plateauPh.low, 1)} to ${figure(said.plateauPh.high, 1)}).`,
    brakeSentences[said.brake],
    `Most gas: about ${ranged(most.gasRangeLPerDay, 'L', 1)} from day ${figure(most.day, 0)} to the next.`,
    ...(last === undefined
      ? []
      : [
          `On day ${figure(last.day, 0)} about ${ranged(last.ethanolRangeGPerL, 'g/L', 1)} of alcohol and ${ranged(last.sugarRangeGPerL, 'g/L', 1)} of sugar are likely in it: not a drink, and it can still gas.`,
        ]),
    'These spans are where 8 in 10 draws of the model fall. Germs are not foretold, and what nobody weighed or measured is not in them.',
  ];
}

/** What the looks have taught: readings outside their band, and what is now believed. */
export function sayLearned(said: Pick<SaidOfSour, 'readings' | 'beliefs'>): readonly string[] {
  const judged = said.readings.filter(({ inBand }) => inBand !== null);
  if (judged.length === 0) return [];
  const off = judged.filter(({ inBand }) => inBand === false);
  const names = off.map(({ day, ph }) => `pH ${figure(ph, 1)} on day ${figure(day)}`).join(', ');
  const moved = said.beliefs.flatMap(({ unknown, from, to }) => {
    if (to.likely >= from.high) return [unknownNames[unknown].more];
    return to.likely <= from.low ? [unknownNames[unknown].less] : [];
  });
  return [
    `${judged.length - off.length} of ${judged.length} readings fell where the forecast before them had them.`,
    ...(off.length > 0 ? [`Outside: ${names}.`] : []),
    ...(moved.length > 0 ? [`The looks suggest that ${moved.join(', and ')}.`] : []),
  ];
}

/** What could help, least effort first. */
function sayWaysOut({ rescues, state }: Pick<SaidOfSour, 'rescues' | 'state'>): readonly string[] {
  if (rescues.length === 0) return [];
  return [...(state === 'lost' ? [] : ['What could help, least effort first:']), ...rescues.map(({ text }) => text)];
}

/** The whole answer in sentences: the word first where there is a look, then what to expect. */
export function saySour(said: SaidOfSour): readonly string[] {
  const next = said.nextLookDay;
  const ready = said.state === 'ready' && !said.held ? ' Not held yet: no crop eaten raw.' : '';
  const word =
    said.looks.length === 0
      ? []
      : [
          stateSentences[said.state] + ready,
          ...said.reasons,
          ...said.wouldChange,
          ...(next === undefined ? [] : [`Next look: day ${figure(next, Number.isInteger(next) ? 0 : 1)}.`]),
        ];
  const over = said.state === 'lost';
  return [
    ...word,
    ...said.questions.map(({ text }) => `Question: ${text}`),
    ...sayWaysOut(said),
    ...(over ? [] : sayForecast(said)),
    ...(over ? [] : sayLearned(said)),
  ];
}
