// Sentences that spell a safety value out, in each language, say the one that counts.

import { describe, expect, it } from 'vitest';
import { LONGEST_WAIT_DAYS, RAW_MANURE_DAYS, RAW_SOIL_DAYS, SCHOOL_RAW_DAYS } from '#engine/can/limits.ts';
import { TOO_HOT_C } from '#engine/rules/warmth.ts';
import { COLDEST_HOLD_C, HELD_PH, READY_APART_DAYS, READY_PH } from '#engine/souring/lines.ts';
import { LOST_PH, PAD_PH } from '#engine/souring/trend.ts';
import { canCard as canCardDe } from '#words/de/can-card.ts';
import { lookDe } from '#words/de/look.ts';
import { changesDe } from '#words/de/souring.ts';
import { canCard } from '#words/en/can-card.ts';
import { eatingInstead } from '#words/en/eating.ts';
import { look } from '#words/en/look.ts';
import { changeSentences } from '#words/en/souring.ts';

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
