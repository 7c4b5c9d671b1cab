// The sour line of a peg as its drawing takes it: figures from the task, names from the keyholder's words.

import type { PegReading, PegView } from '#tasks/plot/peg.ts';
import type { LookWords } from '#words/en/look.ts';
import type { SourLinePicture } from '../drawings/sour-line.tsx';

/** Readings, limits, alarm line and their names. */
export function sourPicture(view: PegView, words: LookWords, today: string): SourLinePicture {
  const said = (one: PegReading) => `${words.date(one.on, today)}, ${words.line.error(one.ph, one.errorPh)}`;
  return {
    readings: view.readings.map((one) => ({
      day: one.day,
      ph: one.ph,
      errorPh: one.errorPh,
      text: words.ph(one.ph),
      on: words.date(one.on, today),
      by: words.line.by(one.by, one.who),
      error: words.line.error(one.ph, one.errorPh),
    })),
    alarm: view.alarm,
    lastDay: Math.max(
      view.endedOn === undefined ? view.day + 1 : 0,
      view.judgement.nextLookDay ?? 0,
      ...view.alarm.map(({ day }) => day + 1),
    ),
    alternative: words.line.alternative(view.peg, view.readings.map(said)),
    words: {
      ph: words.line.ph,
      day: words.line.day,
      late: words.line.late,
      limits: words.line.limits,
      table: words.line.table,
      caption: words.line.caption(view.peg),
    },
  };
}
