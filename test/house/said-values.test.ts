// Sentences that spell a safety value out, in each language, say the one that counts.

import { describe, expect, it } from 'vitest';
import { bottleFigure } from '#engine/bottle/figures.ts';
import { GERMINATION } from '#engine/can/germination.ts';
import { LONGEST_WAIT_DAYS, RAW_MANURE_DAYS, RAW_SOIL_DAYS, SCHOOL_RAW_DAYS } from '#engine/can/limits.ts';
import { TOO_HOT_C } from '#engine/rules/warmth.ts';
import {
  CHANCE_LIMIT_FRACTION,
  CONTROL_DEFORMED_FRACTION,
  CONTROL_GERMINATED_FRACTION,
} from '#engine/scraps/bioassay.ts';
import { judgeBatch } from '#engine/souring/judge.ts';
import { COLDEST_HOLD_C, HELD_PH, READY_APART_DAYS, READY_PH } from '#engine/souring/lines.ts';
import { LOST_PH, PAD_PH } from '#engine/souring/trend.ts';
import { canCard as canCardDe } from '#words/de/can-card.ts';
import { lookDe } from '#words/de/look.ts';
import { changesDe } from '#words/de/souring.ts';
import { canCard } from '#words/en/can-card.ts';
import { eatingInstead } from '#words/en/eating.ts';
import { look } from '#words/en/look.ts';
import { changeSentences } from '#words/en/souring.ts';
import { codeUnder } from './code.ts';

/** The numbers of a sentence in the order it says them; a comma may stand for the point. */
const numbersOf = (sentence: string | undefined) =>
  [...(sentence ?? '').matchAll(/\d+(?:[.,]\d+)?/g)].map(([one]) => Number(one.replace(',', '.')));
const rounded = (value: number) => Number(value.toFixed(3));

describe.each([
  ['English', { picks: canCard.picks, tooWarm: look.tooWarm(''), changes: changeSentences }],
  ['German', { picks: canCardDe.picks, tooWarm: lookDe.tooWarm(''), changes: changesDe }],
] as const)('what is said in %s', (_, { picks, tooWarm, changes }) => {
  it.each([
    [
      'the answers about the next picking',
      Object.values(picks).join(' '),
      [RAW_SOIL_DAYS, RAW_SOIL_DAYS, SCHOOL_RAW_DAYS, RAW_MANURE_DAYS.otherwise, LONGEST_WAIT_DAYS],
    ],
    ['a place that is too warm', tooWarm, [TOO_HOT_C]],
    ['what makes a batch held', changes['acid-makes-it-held']({}), [HELD_PH, COLDEST_HOLD_C]],
    ['what makes a batch lost', changes['climb-makes-it-lost']({}), [LOST_PH]],
    [
      'what makes a batch ready',
      changes['two-low-readings-make-it-ready']({}),
      [READY_PH, rounded(READY_PH - PAD_PH), 24 * READY_APART_DAYS],
    ],
  ])('of %s is what counts', (_what, sentence, expected) => {
    expect(numbersOf(sentence)).toEqual(expected);
  });
});

describe('what may be done in place of a spray from manure', () => {
  it('names the days of raw manure', () => {
    expect(numbersOf(eatingInstead['eating-animal-on-leaves'])).toEqual([RAW_MANURE_DAYS.touchesSoil]);
  });
});

/** Days to the next look at a batch that is in doubt. */
function settledInDays(): number {
  const looks = [
    { day: 2, ph: 4.5, by: 'meter' },
    { day: 2, smell: 'egg' },
  ] as const;
  const { state, nextLookDay = Number.NaN } = judgeBatch({ looks, temperatureC: 20, today: 2 });
  if (state !== 'doubtful') throw new Error(`a foul word makes it ${state}`);
  return nextLookDay - 2;
}

describe('the English sentences', () => {
  const texts = codeUnder('src/words/en').map(({ text }) => text);
  const spelled = (pattern: RegExp) =>
    texts.flatMap((text) => [...text.matchAll(pattern)].map(([, one]) => Number(one)));

  it.each([
    ['hours between two readings', /(\d+) hours apart/g, 24 * READY_APART_DAYS, 4],
    ['pH of ready', /(?:readings (?:at|of) |')(\d\.\d) (?:or below|ready)/gi, READY_PH, 4],
    ['pH of the hold', /(?:(?<!readings )\bat (?:pH )?(\d\.\d) or below)/gi, HELD_PH, 5],
    ['pH of the hold on the sour line', /'(\d\.\d) (?:for )?held'/g, HELD_PH, 2],
    ['acid-food line', /(\d\.\d) (?:food|or below and a sour smell)/g, bottleFigure('sour-limit', 'ph').likely, 3],
    [
      'control of a bean test that comes up, of 10',
      /(\d+) in 10 of the control came/g,
      10 * CONTROL_GERMINATED_FRACTION,
      1,
    ],
    [
      'control of a bean test that is deformed, of 10',
      /(\d+) in 10 of the control is/g,
      10 * CONTROL_DEFORMED_FRACTION,
      1,
    ],
    ['chance that counts as a difference, of 100', /(\d+) or less counts as/g, 100 * CHANCE_LIMIT_FRACTION, 1],
    [
      'seeds of a cress test that have a root, of 10',
      /(\d+) of 10 must/g,
      GERMINATION.controlGerminatedPercent / 10,
      1,
    ],
    ['hours in which a doubt is to be settled', /(?:within|again in) (\d+) hours/gi, 24 * settledInDays(), 8],
  ])('spell the %s as it counts, wherever they do', (_, pattern, expected, atLeast) => {
    const found = spelled(pattern);
    expect(found.length).toBeGreaterThanOrEqual(atLeast);
    expect(found.filter((one) => one !== rounded(expected))).toEqual([]);
  });
});
