// The demo garden: a season of an invented plot as entries of the record, opened on request in a plot of its own. It is
// made anew each time from fixed numbers, so that two phones show the same.

import type { Entry } from '#journal/entry.ts';
import { harvest, trial, weather } from './beside.ts';
import { DEMO_PLOT, type Diary, diary } from './diary.ts';
import { SET_UP_ON, setUp } from './place.ts';
import { rounds } from './rounds.ts';
import { heapOf, rehearsal, wentOff } from './spring.ts';
import { weighIn } from './stock.ts';
import { goodPail, slowDrum } from './summer.ts';

export { DEMO_PLOT };

/** The day the plot was set up: nothing stands before it. */
export const DEMO_FIRST_DAY = SET_UP_ON;
/** The day the demo opens on: peg 14 is bottled and held, the first round was poured, the tunnel is still due. */
export const DEMO_TODAY = '2026-07-07';
/** The day of the last act. */
export const DEMO_LAST_DAY = '2026-10-24';

/** The garden's entries in the order they were done; with a date, those up to and with it. */
export function gardenEntries(untilOn: string = DEMO_LAST_DAY): readonly Entry[] {
  return season().entries.filter(({ on }) => on.slice(0, 10) <= untilOn);
}

/** The whole season; every act names only what was done before it. */
function season(): Diary {
  const book = diary();
  const place = setUp(book);
  const starter = rehearsal(book, place);
  wentOff(book, place);
  const stock = weighIn(book);
  heapOf(book, stock.rhubarb);
  const bottles = goodPail(book, place, stock, starter);
  slowDrum(book, place);
  rounds(book, place, bottles);
  harvest(book, place);
  weather(book);
  trial(book, place);
  const entries = [...book.entries].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.id < b.id ? -1 : 1));
  return { ...book, entries };
}
