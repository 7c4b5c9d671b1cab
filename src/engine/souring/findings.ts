// The findings behind each word, in the order they are weighed: lost, unknown, doubtful, ready; and what was
// seen that changes no word. judge.ts puts them together.

import { isAtLeast, isShorter } from './days.ts';
import { READY_APART_DAYS, READY_PH } from './lines.ts';
import { isFoul, type Look } from './look.ts';
import { foulAndNotFalling, foulTwice, nosesDiffer, openFoul, whiteFuzz } from './nose.ts';
import { because, type Reason, type ReasonCode } from './reason.ts';
import { type Climb, climbs, lastTwo, type Reading, readersDiffer, runBelow, stuckSince } from './trend.ts';

/** Without a look for this long, nothing is known. */
export const UNKNOWN_AFTER_DAYS = 10;
const READY_DRIFT_PH = 0.1;
const EPSILON_PH = 1e-9;

/** Why the batch is lost; empty while it is not. @practice our caution, no source */
export function lostBecause(known: readonly Look[], readings: readonly Reading[]): readonly Reason<ReasonCode>[] {
  const reasons: Reason<ReasonCode>[] = [];
  const fuzz = known.find((look) => look.surface === 'coloured-fuzz');
  if (fuzz) reasons.push(because('coloured-fuzz', { day: fuzz.day }));
  const white = whiteFuzz(known);
  if (white.length > 1)
    reasons.push(because('white-fuzz-twice', { firstDay: white[0]?.day ?? 0, lastDay: white.at(-1)?.day ?? 0 }));
  const larvae = known.find((look) => look.surface === 'larvae');
  const foul = known.find(isFoul);
  if (larvae && foul)
    reasons.push(because('larvae-and-foul', { day: larvae.day, smell: foul.smell ?? '', smellDay: foul.day }));
  const twice = foulTwice(known);
  if (twice)
    reasons.push(
      because('foul-twice', {
        firstSmell: twice.first.smell ?? '',
        firstDay: twice.first.day,
        lastSmell: twice.last.smell ?? '',
        lastDay: twice.last.day,
      }),
    );
  const bad = foulAndNotFalling(known, readings);
  if (bad)
    reasons.push(
      because('foul-and-not-falling', { smell: bad.look.smell ?? '', day: bad.look.day, ph: bad.reading.ph }),
    );
  const { lost } = climbs(readings);
  if (lost) reasons.push(because('climbed', climbValues(lost)));
  return reasons;
}

/** What unknownBecause weighs: every look, those that can be read, their readings, and today. */
export interface Evidence {
  readonly seen: readonly Look[];
  readonly known: readonly Look[];
  readonly readings: readonly Reading[];
  readonly today: number;
}

/** Why nothing can be said; empty while something can. @practice our caution, no source */
export function unknownBecause({ seen, known, readings, today }: Evidence): readonly Reason<ReasonCode>[] {
  const reasons: Reason<ReasonCode>[] = [];
  if (seen.length > known.length || !Number.isFinite(today)) reasons.push(because('not-readable'));
  const lastReading = readings.at(-1);
  if (lastReading === undefined) reasons.push(because('no-acidity'));
  const lastLook = known.at(-1);
  if (lastLook !== undefined && !isShorter({ fromDay: lastLook.day, toDay: today }, UNKNOWN_AFTER_DAYS))
    reasons.push(because('no-look', { days: today - lastLook.day, afterDays: UNKNOWN_AFTER_DAYS }));
  const foul = openFoul(known) ?? nosesDiffer(known);
  if (foul && lastReading && !isShorter({ fromDay: lastReading.day, toDay: today }, UNKNOWN_AFTER_DAYS))
    reasons.push(
      because('foul-on-old-reading', { smell: foul.smell ?? '', day: foul.day, readingDay: lastReading.day }),
    );
  return reasons;
}

/** Why the batch is in doubt. Standing still is a doubt only once it `mayBeStuck`: a line passed, not yet ready. @practice our caution, no source */
export function doubtfulBecause(
  known: readonly Look[],
  readings: readonly Reading[],
  mayBeStuck: boolean,
): readonly Reason<ReasonCode>[] {
  const reasons: Reason<ReasonCode>[] = [];
  const foul = openFoul(known);
  const { last } = lastTwo(readings);
  if (foul) reasons.push(because('foul-once', { smell: foul.smell ?? '', day: foul.day, ph: last?.ph ?? Number.NaN }));
  const other = foul ? undefined : nosesDiffer(known);
  if (other) reasons.push(because('noses-differ', { smell: other.smell ?? '', day: other.day }));
  const apart = readersDiffer(readings);
  if (apart) reasons.push(because('readers-differ', { onePh: apart.from.ph, otherPh: apart.to.ph }));
  const { doubt } = climbs(readings);
  if (doubt) reasons.push(because('climbed-a-little', climbValues(doubt)));
  const stuck = mayBeStuck && !doubt ? stuckSince(readings) : undefined;
  if (stuck && last)
    reasons.push(because('stuck', { fromPh: stuck.ph, fromDay: stuck.day, toPh: last.ph, toDay: last.day }));
  return reasons;
}

/**
 * Two readings at or below 4.2, two days apart or more, the later not above the earlier by more than 0.1, none above
 * 4.2 between them.
 * @practice our caution, no source
 */
export function readyBecause(readings: readonly Reading[]): Reason<ReasonCode> | undefined {
  const { last } = lastTwo(readings);
  const run = runBelow(readings, READY_PH);
  if (last === undefined || !run.includes(last)) return undefined;
  const first = run.find(
    (reading) =>
      isAtLeast({ fromDay: reading.day, toDay: last.day }, READY_APART_DAYS) &&
      last.ph <= reading.ph + READY_DRIFT_PH + EPSILON_PH,
  );
  return (
    first && because('two-low-readings', { firstPh: first.ph, firstDay: first.day, lastPh: last.ph, lastDay: last.day })
  );
}

/** Things seen that change no word by themselves. @practice our caution, no source */
export function asidesOf(known: readonly Look[]): readonly Reason<ReasonCode>[] {
  const asides: Reason<ReasonCode>[] = [];
  const white = whiteFuzz(known);
  if (white.length === 1) asides.push(because('white-fuzz-once', { day: white[0]?.day ?? 0 }));
  const film = known.findLast((look) => look.surface === 'flat-white');
  if (film) asides.push(because('flat-white', { day: film.day }));
  const larvae = known.findLast((look) => look.surface === 'larvae');
  if (larvae) asides.push(because('larvae', { day: larvae.day }));
  return asides;
}

function climbValues({ from, to }: Climb): Reason<ReasonCode>['values'] {
  return { fromPh: from.ph, fromDay: from.day, toPh: to.ph, toDay: to.day };
}
