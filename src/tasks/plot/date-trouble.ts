// Whether a date that was typed here can be: never after now, and a check of a vessel only between its filling and its
// emptying. Every form that writes a date asks here, and says what comes back at its field. What comes from another
// phone is never refused: it is counted on the careful side (counted.ts).

import type { Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { isBefore, type Moment, momentOf } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import { dateTroubles as words } from '#words/en/dates.ts';
import { nameOf } from './record-names.ts';

export interface DateAsk {
  /** The date as typed, or date and time; one that the calendar has. */
  readonly on: string;
  /** Local date and time now, in the plot's zone. */
  readonly now: string;
  /** The act that is dated, where it is one on a vessel. */
  readonly act?: { readonly line: string; readonly kind: Kind; readonly body: object };
  readonly plot?: Plot;
}

/** What is wrong, and at which of the two fields. */
export interface DateTrouble {
  readonly at: 'date' | 'time';
  readonly sentence: string;
}

/** What is wrong with a date typed here; undefined where nothing is. */
export function dateTrouble({ on, now, act, plot }: DateAsk): DateTrouble | undefined {
  const today = now.slice(0, 10);
  if (on.slice(0, 10) > today) return { at: 'date', sentence: words.ahead(today) };
  if (on.length > 10 && on > now) return { at: 'time', sentence: words.aheadToday(now) };
  const sentence = act && plot && ofVessel({ when: momentOf(on), today }, act, plot);
  return sentence === undefined ? undefined : { at: 'date', sentence };
}

interface Typed {
  readonly when: Moment;
  readonly today: string;
}

/** A check outside its batch's time in the vessel; or, the other way round, a filling or emptying that a check contradicts. */
function ofVessel({ when, today }: Typed, act: NonNullable<DateAsk['act']>, plot: Plot): string | undefined {
  if (act.kind === 'peg.looked') {
    const batch = plot.batches.get((act.body as Body<'peg.looked'>).batch);
    if (batch === undefined) return undefined;
    const { filled, ended } = batch;
    const name = nameOf(batch.id, plot);
    const begin = name.charAt(0).toUpperCase() + name.slice(1);
    if (isBefore(when, filled)) return words.beforeFilling(begin, filled.on, today);
    return ended !== undefined && isBefore(ended, when) ? words.afterEmptying(begin, ended.on, today) : undefined;
  }
  const first = act.kind === 'peg.filled' ? plot.batches.get(act.line)?.looks[0]?.when : undefined;
  if (first !== undefined && isBefore(first, when)) return words.filledAfterCheck(first.on, today);
  const last = emptiedBy(act.line, plot)?.looks.at(-1)?.when;
  return last !== undefined && isBefore(when, last) ? words.emptiedBeforeCheck(last.on, today) : undefined;
}

function emptiedBy(act: string, plot: Plot): Batch | undefined {
  return [...plot.batches.values()].find(({ endedBy }) => endedBy === act);
}
