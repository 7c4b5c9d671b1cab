// Questions that the record raises where it says two things: one sentence for each, and the answers a person can give.

import { plainFigure } from '#engine/quantity/number.ts';
import { withUnit } from '../figures.ts';
import { sayAhead } from './files.ts';

type Values = Readonly<Record<string, string | number>>;
const num = (value: string | number | undefined) => (typeof value === 'number' ? value : Number.NaN);

/** A figure of an amount, with all the digits that tell it from another. */
const ofAmount = ({ dimension }: Values, value: string | number | undefined) =>
  `${plainFigure(Number(num(value).toPrecision(6)))}\u00a0${dimension === 'mass' ? 'kg' : dimension === 'volume' ? 'L' : 'm²'}`;

/** What each question asks. */
export const questionSentences = {
  'two-corrections': () =>
    'One entry was corrected twice, in different ways. Until this is answered the first entry counts.',
  'correction-not-readable': () =>
    'An entry was corrected by a newer program. Until this is answered the first entry counts.',
  'amount-differs': (v: Values) => {
    const read =
      v.readValue === undefined ? 'Read again, that is no amount.' : `Read again, that is ${ofAmount(v, v.readValue)}.`;
    return `You entered “${v.typed}”, and ${ofAmount(v, v.keptValue)} is kept beside it. ${read} Until you answer, ${ofAmount(v, v.keptValue)} counts.`;
  },
  'two-descriptions': (v: Values) =>
    `Two devices described ${v.thing} differently, and neither saw the other’s. Until you answer, the later one counts.`,
  'twin-feeds': (v: Values) =>
    `Twin entries: two devices fed bed ${v.bed} within a day, ${withUnit(num(v.oneL), 'L')} and ${withUnit(num(v.otherL), 'L')}. Was it one act told twice? Until this is answered the smaller one counts perhaps.`,
  'same-peg': (v: Values) =>
    `Peg ${v.peg} hangs on two vessels at once. Both stand and are told apart; correct the number of one of them.`,
  'more-out-than-in': (v: Values) => {
    const over = v.overKg === undefined ? withUnit(num(v.overL), 'L') : withUnit(num(v.overKg), 'kg');
    return `${v.peg === undefined ? 'From a lot' : `From peg ${v.peg}`} more was taken than was there: ${over} too much. Correct the entry that is wrong, or let it stand.`;
  },
  'before-it-was-made': (v: Values) =>
    `An act on peg ${v.peg} is dated before the peg was filled. Correct one of the dates, or let it stand.`,
  'after-it-was-emptied': (v: Values) =>
    `A check of peg ${v.peg} is dated after its vessel was emptied. What is bad in it counts, what is good does not. Correct the date, or let it stand.`,
} as const;

const entriesOf = (count: number) => `${count}\u00a0${count === 1 ? 'entry' : 'entries'}`;
const meanwhile = 'Until then what is bad in them counts, and nothing else.';

/** Words around the questions. */
export const questionWords = {
  heading: 'Questions',
  note: 'The record says two things; a person who was there settles it. Every entry stays readable.',
  both: 'Both happened',
  only: (by: string) => `One act: ${by} has it right`,
  thisVersion: (by: string) => `Take the one by ${by}`,
  original: 'Leave the first entry',
  letStand: 'Let it stand',
  telling: (field: string, value: string, more: boolean) => `${field}: ${value}${more ? ' and more' : ''}`,
  takeTelling: (telling: string, by: string) => `Take the one by ${by}, ${telling}`,
  keepFigure: (v: Values) => (v.more === 0 ? `Keep ${ofAmount(v, v.keptValue)}` : 'Keep the figures of this entry'),
  takeTyped: (v: Values) =>
    v.more === 0 ? `Take ${ofAmount(v, v.readValue)}, as entered` : 'Take all amounts of this entry as entered',
  aheadHere: (count: number, minutes: number) =>
    `${entriesOf(count)} made on this phone lie up to ${sayAhead(minutes)} ahead of its clock. ${meanwhile}`,
  aheadThere: (count: number, minutes: number, phone: string) =>
    `${entriesOf(count)} from another phone (${phone}) lie up to ${sayAhead(minutes)} ahead of this phone’s clock. Is this phone’s clock wrong, or that one’s? ${meanwhile}`,
  thisClock: 'This phone’s clock',
  thisClockAdvice: 'Set date and time on this phone, then load this page again.',
  thatClock: 'That phone’s clock, or a date typed wrong',
  thatClockAdvice: 'Set the clock of that phone. Then correct the dates of these entries in the list below.',
  disagree: 'Two answers to this disagree; answer it anew, or take one of them back below.',
} as const;
