// The sour line of a peg as its drawing takes it: figures from the tasks, names from the keyholder's words.

import type { PegView } from '#tasks/plot/peg.ts';
import type { Coming, PegForecast } from '#tasks/plot/peg-forecast.ts';
import type { PegReading } from '#tasks/plot/peg-seen.ts';
import type { LikelySour, SourResult } from '#tasks/sour.ts';
import type { LookWords } from '#words/en/look.ts';
import type { DrawnSpan, SourLinePicture } from '../drawings/sour-line.tsx';

/** What is foretold of it so far. */
export interface Foretold {
  readonly likely: LikelySour | undefined;
  /** The answer whose band is drawn, and that whose dates are told: the same, but for the sheet right after a look. */
  readonly band: SourResult | undefined;
  readonly forecast: PegForecast | undefined;
  /** Whether the band stands on all draws, or on the first of them. */
  readonly isWhole: boolean;
  /** Whether a forecast is to come at all: room is kept for what it will say. */
  readonly comes: boolean;
}

interface Asked {
  readonly view: PegView;
  readonly words: LookWords;
  readonly today: string;
  readonly temperature: (temperatureC: number) => string;
  readonly foretold: Foretold;
  /** Only the last reading shows where it was expected: the sheet right after a look. */
  readonly bracketed: boolean;
}

/** Days of paper at least where a forecast is drawn, and past today. */
const PAPER_DAYS = 14;
const AHEAD_DAYS = 6;
/** A reading and its expectation are of one moment within this. */
const SAME_DAY = 0.001;

/** Readings, limits, alarm line, what is expected, and their names. */
export function sourPicture(asked: Asked): SourLinePicture {
  const { view, words, today, foretold, temperature } = asked;
  const { line } = words;
  const stands = view.endedOn === undefined;
  const beside = foretold.forecast?.readings ?? [];
  const expectedOf = (one: PegReading) =>
    beside.find(({ day, by, ph }) => Math.abs(day - one.day) < SAME_DAY && by === one.by && ph === one.ph)
      ?.expectedPh ?? undefined;
  const now = view.endedOn === undefined ? view.judgedDay : undefined;
  const likelyNow = foretold.band?.band.find(({ day }) => day >= view.judgedDay)?.ph;
  const said = (one: PegReading) => `${words.date(one.on, today)}, ${line.error(one.ph, one.errorPh)}`;
  return {
    readings: view.readings.map((one) => {
      const expected = expectedOf(one);
      return {
        day: one.day,
        ph: one.ph,
        errorPh: one.errorPh,
        text: words.ph(one.ph),
        on: words.date(one.on, today),
        by: line.by(one.by, one.who),
        error: line.error(one.ph, one.errorPh),
        expected: expected && {
          low: expected.low,
          high: expected.high,
          text: line.between(expected.low, expected.high),
        },
      };
    }),
    likely: foretold.likely?.days ?? [],
    band: (foretold.band?.band ?? []).map(({ day, ph }) => ({ day, low: ph.low, likely: ph.likely, high: ph.high })),
    stands: foretold.band === undefined ? 'line' : foretold.isWhole ? 'whole' : 'first',
    bracketed: asked.bracketed,
    spans: foretold.comes ? spansOf(asked) : [],
    warmth: foretold.comes ? (foretold.band?.temperatureC ?? []) : [],
    today: now,
    toldUntil: Math.floor(view.judgedDay) + 1,
    keepsWarmth: foretold.comes,
    alarm: view.alarm,
    lastDay: Math.max(
      stands ? view.day + 1 : 0,
      foretold.comes ? PAPER_DAYS : 0,
      foretold.comes && stands ? view.day + AHEAD_DAYS : 0,
      view.judgement.nextLookDay ?? 0,
      ...view.alarm.map(({ day }) => day + 1),
    ),
    alternative:
      line.alternative(view.peg, view.readings.map(said)) +
      (likelyNow === undefined ? '' : line.expectedToo(likelyNow.low, likelyNow.high)),
    words: {
      ...line,
      caption: line.caption(view.peg),
      expectedCaption: line.expectedCaption(view.peg),
      degrees: temperature,
      dayName: words.day,
      betweenC: (lowC, highC) => line.betweenC(temperature(lowC), temperature(highC)),
    },
  };
}

/** Ready and held, as far as they are still to come. */
function spansOf({ view, words, today, foretold }: Asked): readonly DrawnSpan[] {
  const { line } = words;
  const names = [
    ...(view.state === 'ready' || view.state === 'lost' ? [] : (['ready'] as const)),
    ...(view.held || view.state === 'lost' ? [] : (['held'] as const)),
  ];
  const date = (on: string) => words.date(on, today);
  const drawn = (name: string, coming: Coming | undefined, untilOn: string): DrawnSpan => {
    const span = coming?.span;
    if (span === undefined) return { text: line.spanNot(name, date(untilOn)), days: undefined };
    const text = span.openEnded
      ? line.spanFrom(name, date(span.fromOn))
      : line.span(name, date(span.fromOn), date(span.toOn));
    return { text, days: { from: span.fromDay, to: span.toDay, openEnded: span.openEnded } };
  };
  return names.map((name) =>
    foretold.forecast === undefined
      ? { text: line.spanWaits(line.spans[name]), days: undefined }
      : drawn(line.spans[name], foretold.forecast[name], foretold.forecast.untilOn),
  );
}
