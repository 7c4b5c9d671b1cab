// What is foretold of a peg, on its sheet, in plain English: what to expect, the gas, the ways to save it, what finished
// batches taught. Figures and dates come from the task; nothing is computed here but units.

import type { Range } from '#engine/quantity/range.ts';
import type { LidKind } from '#engine/souring/gas/lid.ts';
import { figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { lidSentences } from './gas.ts';
import { brakeSentences } from './sour.ts';

type Brake = keyof typeof brakeSentences;
type Taught = 'rate' | 'count' | 'buffer' | 'sugar';

export const sourSheet = {
  expectHeading: 'What to expect',
  gasHeading: 'Gas, lid and room',
  rescueHeading: 'What can still help',
  rescueNote:
    'Least effort first. These days are what a model expects, and it can be wrong: the next reading tells more.',
  lessonsHeading: 'What finished batches taught',
  questionsHeading: 'To ask again',
  setBack: 'Set back to the table',
  setBackNote: 'Batches finished so far then teach no more. Their records stay, and it can be taken back.',
  waits: 'Being worked out.',
  failed: 'What to expect could not be worked out here. The readings and the word for the peg do not need it.',
  none: {
    'nothing-in-it': 'Nothing of it stands in the vessel any more, so nothing is foretold.',
    'no-plants': 'No scraps were weighed in, so nothing is foretold.',
    'no-warmth':
      'How warm it stands was never told, so nothing is foretold. Tell it with the next look, or type in the weather.',
  },
  fromWeather: 'Nobody measured how warm it stands; the weather that was typed in stands for it.',
  vesselUntold: 'How large its vessel is was not told: taken as three quarters full.',
  changedMix: 'It was topped up: the forecast takes all of it as there from the start.',
  spans: 'Spans are where 8 in 10 draws of the model fall. Germs are not foretold.',
} as const;

const between = ({ low, high }: Range, unit: string, decimals: number) =>
  figure(low, decimals) === figure(high, decimals)
    ? withUnit(high, unit, decimals)
    : `${figure(low, decimals)} to ${withUnit(high, unit, decimals)}`;

/** "at most 1.2 L" where the low end is as good as nothing. */
const upTo = (range: Range, unit: string, decimals: number) =>
  range.low < 0.5 * 10 ** -decimals
    ? `at most ${withUnit(range.high, unit, decimals)}`
    : `about ${between(range, unit, decimals)}`;

/** How far it comes down, and what holds it back. */
export function sayExpected(said: {
  readonly plateauPh: Range | undefined;
  readonly brake: Brake | undefined;
}): readonly string[] {
  const { plateauPh, brake } = said;
  return [
    ...(plateauPh === undefined ? [] : [`It is likely to come down to pH\u00a0${between(plateauPh, '', 1)}.`]),
    ...(brake === undefined ? [] : [brakeSentences[brake]]),
  ];
}

/** Litres of gas, what its lid means, and how small a room it may not stand in. */
export function sayGasOf(said: {
  readonly todayL: Range | undefined;
  readonly most: { readonly on: string; readonly gasL: Range; readonly past: boolean } | undefined;
  readonly lid: LidKind;
  readonly roomM3: number | undefined;
  readonly limitPpm: number;
}): readonly string[] {
  const { todayL, most, lid, roomM3, limitPpm } = said;
  return [
    ...(todayL === undefined ? [] : [`Gas today: ${upTo(todayL, 'L', 1)}.`]),
    ...(most === undefined || most.past ? [] : [`Most of it about ${most.on}: ${upTo(most.gasL, 'L', 1)} in a day.`]),
    lidSentences[lid],
    ...(roomM3 === undefined || !Number.isFinite(roomM3)
      ? ['Keep a window or a door open where it stands.']
      : [
          `In a room of less than ${withUnit(roomM3, 'm³', roomM3 < 10 ? 1 : 0)} whose air is renewed once a day, its carbon dioxide could pass the ${figure(limitPpm, 0)}\u00a0ppm that workplaces allow over a day. It lies low: keep a door or window open.`,
        ]),
  ];
}

const taughtNames: Readonly<Record<Taught, readonly [more: string, less: string, open: string]>> = {
  rate: [
    'It sours faster than the table says',
    'It sours more slowly than the table says',
    'Whether it sours faster or more slowly than the table says is not known yet',
  ],
  buffer: [
    'The plants take up more acid than the table says',
    'The plants take up less acid than the table says',
    'Whether the plants take up more or less acid than the table says is not known yet',
  ],
  sugar: [
    'The plants bring more sugar of their own',
    'The plants bring less sugar of their own',
    'Whether the plants bring more or less sugar than the table says is not known yet',
  ],
  count: [
    'More souring bacteria come in with them',
    'Fewer souring bacteria come in with them',
    'Whether more or fewer souring bacteria come in than the table says is not known yet',
  ],
};
/** One lesson: more or less than the table says where its whole band says so, and how many times. */
export function sayTaught({ unknown, timesFactor }: { readonly unknown: Taught; readonly timesFactor: Range }): string {
  const { low, likely, high } = timesFactor;
  const [more, less, open] = taughtNames[unknown];
  const word = low > 1 ? more : high < 1 ? less : open;
  return `${word}: about ${figure(likely, 1)} times, from ${figure(low, 1)} to ${figure(high, 1)}.`;
}

/** "From peg 13." */
export function taughtFrom(pegs: readonly PegName[]): string {
  const named = pegs.map((peg) => String(peg));
  const list = named.length < 2 ? (named[0] ?? '') : `${named.slice(0, -1).join(', ')} and ${named.at(-1)}`;
  return `From ${pegs.length === 1 ? 'peg' : 'pegs'} ${list}, finished before this one was filled. Half of what each taught is kept for the next.`;
}
