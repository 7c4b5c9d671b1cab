// Questions about odd entries of a look or a temperature, one sentence or two each: what was typed, what it may be,
// and what counts until it is answered. Every entry is kept as it was typed.

import type { Values } from '#engine/rules/rule.ts';
import type { Odd, OddCode } from '#engine/souring/odd.ts';
import { figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);
/** As it was typed, so that the person knows it again. */
const typed = (values: Values, key: string) => String(values[key]);
const day = (values: Values, key: string) => `day ${Number(n(values, key).toFixed(4))}`;
const tool = (values: Values) => (values.strip === true ? 'strip' : 'meter');
const check = (values: Values) =>
  values.strip === true ? 'Read it again with a fresh strip.' : 'Is the meter clean and calibrated? Read it again.';

const questions: Readonly<Record<OddCode, (values: Values) => string>> = {
  'out-of-order': (v) =>
    `${upper(day(v, 'day'))} stands after ${day(v, 'beforeDay')}. Is the day right? It is kept, and the looks are read in the order of their days.`,
  'same-minute': (v) =>
    `Two readings within a minute on ${day(v, 'day')}: pH ${typed(v, 'fromPh')} and pH ${typed(v, 'ph')}. Is it one reading entered twice, or two? Both are kept; the less sour one counts for the word.`,
  'jump-up': (v) =>
    `The ${tool(v)} jumped up from pH ${typed(v, 'fromPh')} on ${day(v, 'fromDay')} to pH ${typed(v, 'ph')} on ${day(v, 'day')}. ${check(v)} It is kept, and the word rests on it until the entry is taken back.`,
  'jump-down': (v) =>
    `The ${tool(v)} fell from pH ${typed(v, 'fromPh')} on ${day(v, 'fromDay')} to pH ${typed(v, 'ph')} on ${day(v, 'day')}. That is more than souring is likely to do. ${check(v)} It is kept, and the word rests on it until the entry is taken back.`,
  'ph-outside': (v) =>
    `pH ${typed(v, 'ph')} on ${day(v, 'day')}: a batch is hardly ever outside ${figure(n(v, 'leastPh'), 0)} to ${figure(n(v, 'mostPh'), 0)}. Was something else meant? It is kept and counts for the word, but teaches the forecast nothing.`,
  'ph-impossible': (v) =>
    `pH ${typed(v, 'ph')} on ${day(v, 'day')}: no liquid has that acidity. Was it the temperature, or a point left out? It is kept, and counts as not read.`,
  'before-filling': (v) =>
    `A look on ${day(v, 'day')}, before the filling. Is the day right? It is kept; it teaches the forecast nothing.`,
  'after-today': (v) =>
    `A look on ${day(v, 'day')}, and today is ${day(v, 'today')}. Is the day right? It is kept, and counts from its day on.`,
  fahrenheit: (v) =>
    `${withUnit(n(v, 'typedC'), '°C')} is too hot for a pail. Was it °F? ${withUnit(n(v, 'typedC'), '°F')} is ${withUnit(n(v, 'asC'), '°C', 0)}. It is kept as typed; until it is answered it is reckoned as ${withUnit(n(v, 'asC'), '°C', 0)}.`,
  'temperature-outside': (v) =>
    `${withUnit(n(v, 'typedC'), '°C')}: a pail that sours hardly ever stands at that. Is it right? It is kept and reckoned as typed.`,
  'low-above-high': (v) =>
    `${upper(day(v, 'day'))} has its low, ${typed(v, 'lowC')}, above its high, ${typed(v, 'highC')}. Were they swapped? They are kept as typed and reckoned the other way round.`,
};

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** The question about one odd entry. */
export function askAbout(odd: Pick<Odd, 'code' | 'values'>): string {
  return questions[odd.code](odd.values);
}

/** Beside the reasons, where the word rests on an entry that is in question. */
export const restsOnOddEntries =
  'At least one reading behind this is in question. It was judged as it was entered: see the questions.';
