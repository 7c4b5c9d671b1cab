// What is foretold of one peg for its sheets: the question made from the record, its answer as it comes in, put on the
// calendar. Right after a look the band is the one of the looks before it.

import { createMemo } from 'solid-js';
import { type Lessons, lessonsFor } from '#tasks/plot/lessons.ts';
import type { PegView } from '#tasks/plot/peg.ts';
import { type PegForecast, pegForecast } from '#tasks/plot/peg-forecast.ts';
import { type PegSour, pegSour, type SourAsk } from '#tasks/plot/peg-sour.ts';
import type { Record } from '../app/record.ts';
import type { Foretold } from '../look/picture.ts';
import { foretold, type SourJob } from './client.ts';

/** Follows a peg; with the day of a look just taken, the band is that of the looks before it. */
export function foretellPeg(record: Record, view: () => PegView | undefined, lookDay: () => number | undefined) {
  const sour = createMemo<PegSour | undefined>(() => {
    const seen = view();
    return seen && pegSour({ plot: record.plot(), batch: seen.batch, view: seen });
  });
  const lessons = createMemo<Lessons | undefined>(() => {
    const seen = view();
    return seen && lessonsFor({ plot: record.plot(), batch: seen.batch, now: record.now() });
  });
  const job = (looks?: SourAsk['looks']): SourJob | undefined => {
    const asked = sour();
    if (asked?.ok !== true) return undefined;
    const ask = looks === undefined ? asked.ask : { ...asked.ask, looks };
    return { ask, lessons: lessons()?.from.map((one) => one.ask) ?? [] };
  };
  const before = (): SourJob | undefined => {
    const day = lookDay();
    const asked = sour();
    return day === undefined || asked?.ok !== true ? undefined : job(asked.ask.looks?.filter((one) => one.day < day));
  };
  const batch = () => view()?.id;
  const whole = foretold(() => job(), batch);
  const earlier = foretold(before, batch);
  const forecast = createMemo<PegForecast | undefined>(() => {
    const [seen, answer] = [view(), whole.answer()];
    return seen && answer && pegForecast(seen, answer.result);
  });
  const drawn = createMemo<Foretold>(() => ({
    likely: whole.likely(),
    band: lookDay() === undefined ? whole.answer()?.result : earlier.answer()?.result,
    forecast: forecast(),
    isWhole: (lookDay() === undefined ? whole : earlier).answer()?.isWhole === true,
    comes: sour()?.ok === true && whole.failed() === undefined,
  }));
  return { sour, lessons, foretold: drawn, forecast, answer: whole.answer, failed: whole.failed, whole };
}

export type PegForetold = ReturnType<typeof foretellPeg>;
