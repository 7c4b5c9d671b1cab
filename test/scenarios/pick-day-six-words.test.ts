// Pick day asks nobody to read more than six words a line: bed, crop, answer, and the last feed under them, on every day
// of the demo garden. A word is a run of letters; a date's day and a count are figures.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { onDay } from '#tasks/plot/dates.ts';
import { type PickBed, pickList } from '#tasks/plot/pick.ts';
import { pick } from '#words/en/pick.ts';

const MOST = 6;
const words = (text: string) => text.match(/\p{L}+/gu)?.length ?? 0;

/** The two lines of a bed as the sheet puts them together. */
function lines(bed: PickBed, today: string): readonly string[] {
  const answer = bed.answer === 'wait' ? pick.wait(bed.tillOn ?? '', today) : pick[bed.answer];
  return [
    [bed.tag ?? bed.name, answer, bed.crop ?? pick.noCrop].join(' '),
    bed.last === undefined ? pick.neverFed : pick.ago(bed.last),
  ];
}

/** 20 560 days after 1 January 1970 is 17 April 2026, the day before the demo begins (date -d @$((20560*86400))). */
const days = Array.from({ length: 200 }, (_, i) => onDay(20_560 + i));

describe('the lines of pick day', () => {
  it('have six words at most, on every day of the demo garden', () => {
    const plot = fold(gardenEntries(days.at(-1)));
    const long = days.flatMap((today) =>
      pickList({ plot, now: `${today}T11:00` })
        .flatMap((bed) => lines(bed, today))
        .filter((line) => words(line) > MOST)
        .map((line) => `${today}: ${line}`),
    );
    expect([...new Set(long)]).toEqual([]);
  });

  it('hold every answer there is in the days looked at', () => {
    const plot = fold(gardenEntries(days.at(-1)));
    const answers = new Set(days.flatMap((on) => pickList({ plot, now: `${on}T11:00` }).map(({ answer }) => answer)));
    expect([...answers].sort()).toEqual(['cook', 'pick', 'wait']);
  });

  it('say the answer in the words agreed', () => {
    expect([pick.pick, pick.cook, pick.wait('2026-07-18', '2026-07-06')]).toEqual([
      'Pick',
      'Cook',
      'Wait till 18\u00a0July',
    ]);
    expect(pick.wait('2027-01-03', '2026-12-20')).toBe('Wait till 3\u00a0Jan 2027');
  });
});
