// The state of a batch in plain English: the word, the reasons for it, what would change it. Codes come from
// the engine's souring room; nothing is computed here.

import type { Values } from '#engine/rules/rule.ts';
import type { Judgement } from '#engine/souring/judge.ts';
import type { Smell } from '#engine/souring/look.ts';
import type { ChangeCode, ReasonCode, State } from '#engine/souring/reason.ts';
import { figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);
const ph = (values: Values, key: string) => `pH ${figure(n(values, key), 1)}`;
const day = (values: Values, key: string) => `day ${figure(n(values, key), Number.isInteger(n(values, key)) ? 0 : 1)}`;

/** The words for what a nose finds. */
export const smellWords: Readonly<Record<Smell, string>> = {
  grassy: 'grassy',
  sour: 'sour',
  yeasty: 'yeasty',
  vinegar: 'vinegar',
  'butter-gone-off': 'butter gone off',
  ammonia: 'ammonia',
  egg: 'egg',
  sewage: 'sewage',
  'cannot-smell': 'cannot smell',
};

const smell = (values: Values, key: string) => smellWords[values[key] as Smell] ?? String(values[key]);

/** The verdict, one sentence for each state. */
export const stateSentences: Readonly<Record<State, string>> = {
  souring: 'Souring: on its way, not ready.',
  slow: 'Slow, not lost: later than it ought to be, and still on its way.',
  ready: 'Ready.',
  doubtful: 'Doubtful: ask again within 24 hours, and pour nothing until then.',
  lost: 'Lost: pour nothing from it. Layer it into the heap with dry leaves, away from ditches and wells, as your local rules ask.',
  unknown: 'Unknown: nobody can say what it is like now, and that never counts as good.',
};

/** One sentence for each reason. */
export const reasonSentences: Readonly<Record<ReasonCode, (values: Values) => string>> = {
  'coloured-fuzz': (v) =>
    `Coloured fuzz on ${day(v, 'day')}: that is mould. Do not lean over it or stir it up; no spraying from this batch.`,
  'white-fuzz-twice': (v) => `White fuzz came back: seen on ${day(v, 'firstDay')} and again on ${day(v, 'lastDay')}.`,
  'larvae-and-foul': (v) => `Larvae on ${day(v, 'day')}, and a smell of ${smell(v, 'smell')} on ${day(v, 'smellDay')}.`,
  'foul-twice': (v) =>
    `A foul smell twice: ${smell(v, 'firstSmell')} on ${day(v, 'firstDay')}, ${smell(v, 'lastSmell')} on ${day(v, 'lastDay')}.`,
  'foul-and-not-falling': (v) =>
    `A smell of ${smell(v, 'smell')} on ${day(v, 'day')} while it stood at ${ph(v, 'ph')} and did not fall.`,
  climbed: (v) =>
    `It climbed from ${ph(v, 'fromPh')} on ${day(v, 'fromDay')} to ${figure(n(v, 'toPh'), 1)} on ${day(v, 'toDay')}.`,
  'not-readable': () => 'One entry has no usable day or acidity. Correct it, then ask again.',
  'no-acidity': () => 'The acidity was never read. Smell alone does not tell.',
  'no-look': (v) =>
    `No look for ${withUnit(n(v, 'days'), 'days', 0)}; after ${figure(n(v, 'afterDays'), 0)} nothing is known.`,
  'foul-on-old-reading': (v) =>
    `A smell of ${smell(v, 'smell')} on ${day(v, 'day')}, and the last acidity is from ${day(v, 'readingDay')}.`,
  'foul-once': (v) => `A smell of ${smell(v, 'smell')} on ${day(v, 'day')}, once, at ${ph(v, 'ph')}.`,
  'noses-differ': (v) =>
    `Two noses differ: ${smell(v, 'smell')} on ${day(v, 'day')}, and nothing foul within a day of it.`,
  'readers-differ': (v) => `Two people read the same visit apart: ${ph(v, 'onePh')} and ${figure(n(v, 'otherPh'), 1)}.`,
  'climbed-a-little': (v) =>
    `It climbed from ${ph(v, 'fromPh')} on ${day(v, 'fromDay')} to ${figure(n(v, 'toPh'), 1)} on ${day(v, 'toDay')}.`,
  stuck: (v) =>
    `Late, and it has not fallen from ${ph(v, 'fromPh')} since ${day(v, 'fromDay')} (now ${figure(n(v, 'toPh'), 1)}).`,
  'two-low-readings': (v) =>
    `Two readings at 4.2 or below, two days apart or more: ${ph(v, 'firstPh')} on ${day(v, 'firstDay')}, ${figure(n(v, 'lastPh'), 1)} on ${day(v, 'lastDay')}.`,
  'line-passed': (v) =>
    Number.isFinite(n(v, 'lineDay'))
      ? `At ${withUnit(n(v, 'temperatureC'), '°C', 0)} it ought to be at ${ph(v, 'linePh')} by ${day(v, 'lineDay')}; on ${day(v, 'day')} it stood at ${ph(v, 'ph')}. Cold makes it slow.`
      : `How warm it stands is not known, so ${ph(v, 'ph')} on ${day(v, 'day')} counts as late.`,
  falling: (v) =>
    `It falls: ${ph(v, 'fromPh')} on ${day(v, 'fromDay')}, ${figure(n(v, 'toPh'), 1)} on ${day(v, 'toDay')}.`,
  'not-falling-yet': (v) =>
    `It did not fall between ${day(v, 'fromDay')} (${ph(v, 'fromPh')}) and ${day(v, 'toDay')} (${figure(n(v, 'toPh'), 1)}).`,
  'one-reading': (v) => `One visit has read it, ${ph(v, 'ph')}: that shows no direction yet.`,
  'acid-since': (v) =>
    `At 4.0 or below since ${day(v, 'sinceDay')}; held after ${withUnit(n(v, 'holdDays'), 'days', 0)} there, from ${day(v, 'fromDay')}.`,
  'too-cold-to-hold': (v) =>
    Number.isFinite(n(v, 'temperatureC'))
      ? `At ${withUnit(n(v, 'temperatureC'), '°C', 0)} no time of holding is known to be long enough.`
      : 'How warm it stands is not known, so it does not count as held.',
  held: (v) => `Held: at 4.0 or below since ${day(v, 'sinceDay')}, ${withUnit(n(v, 'holdDays'), 'days', 0)} and more.`,
  'white-fuzz-once': (v) => `A white tuft on ${day(v, 'day')}: skim it off and look again in 24 hours.`,
  'flat-white': (v) => `A flat white film on ${day(v, 'day')}: yeast. Skim it, keep air out, read the acidity again.`,
  larvae: (v) => `Larvae on ${day(v, 'day')}: cover it with a cloth under a loose lid.`,
  'reading-is-old': (v) => `The last acidity is ${withUnit(n(v, 'days'), 'days', 0)} old: read it at the next look.`,
  'above-expected': (v) =>
    `Less sour than expected: ${ph(v, 'ph')} on ${day(v, 'day')}, and by the looks before it ${figure(n(v, 'lowPh'), 1)} to ${figure(n(v, 'highPh'), 1)} was to be expected. It may be colder, poorer in sugar or slower to start than was told.`,
  'below-expected': (v) =>
    `Sourer than expected, which is good news if the reading is right: ${ph(v, 'ph')} on ${day(v, 'day')}, and by the looks before it ${figure(n(v, 'lowPh'), 1)} to ${figure(n(v, 'highPh'), 1)} was to be expected. Was the meter rinsed, and set that week?`,
  'buffer-rises': (v) =>
    `Acid goes missing: at ${ph(v, 'ph')} on ${day(v, 'toDay')} the model expects about ${figure(n(v, 'timesFactor'), 1)} times the acid that these plants can hold. That can be an early sign of rotting: smell it, and read it again.`,
};

/** One sentence for each thing that would change the word. */
export const changeSentences: Readonly<Record<ChangeCode, (values: Values) => string>> = {
  'two-low-readings-make-it-ready': () =>
    'Two readings at 4.2 or below (3.7 by strip), 48 hours apart, would make it ready.',
  'line-makes-it-slow': (v) =>
    `A reading above ${figure(n(v, 'linePh'), 1)} after ${day(v, 'lineDay')} would make it slow.`,
  'foul-word-makes-it-doubtful': () => 'A foul smell would make it doubtful; a second one, lost.',
  'climb-makes-it-lost': () => 'A climb of more than 0.3 would make it lost.',
  'time-makes-it-held': (v) => `Staying at 4.0 or below until ${day(v, 'fromDay')} would make it held.`,
  'acid-makes-it-held': () =>
    'Only time at pH 4.0 or below, in a place of 10 °C or more, makes it held. Until then: cooked crops only.',
  'second-nose-decides': () => 'A second nose within 24 hours decides: foul again and it is lost.',
  'second-reading-decides': () => 'A second reading within 24 hours decides.',
  'reading-makes-it-known': () => 'A look with an acidity reading would make it known again.',
  'reading-in-band-answers': () => 'A next reading within the expected band would answer what is odd about this one.',
  'nothing-brings-it-back': () =>
    'No later look brings it back; a wrong entry has to be taken back by whoever made it.',
};

/** The verdict in plain sentences: the word, its reasons, what would change it, the next look. */
export function sayState(judged: Judgement): readonly string[] {
  const next = judged.nextLookDay;
  return [
    stateSentences[judged.state] +
      (judged.state === 'ready' && !judged.held ? ' Not held yet: no crop eaten raw.' : ''),
    ...judged.reasons.map(({ code, values }) => reasonSentences[code](values)),
    ...judged.wouldChange.map(({ code, values }) => changeSentences[code](values)),
    ...(next === undefined ? [] : [`Next look: ${day({ next }, 'next')}.`]),
  ];
}
