// What noses and eyes say together: foul words, two people who differ, white and coloured fuzz, larvae.
// Smell alone never overrules acidity, nor acidity a foul smell: judge.ts weighs the two.

import { isAtLeast, isAtMost } from './days.ts';
import { hasNose, isFoul, type Look, VISIT_DAYS, visits } from './look.ts';
import { againstLine, falls, lastTwo, type Reading } from './trend.ts';

/** Foul words this far apart are two findings, not one. */
const TWICE_DAYS = 0.5;
/** Noses within a day of each other are compared. */
const DIFFER_DAYS = 1;
/** A foul smell above this acidity, not falling, is the end of a batch. */
const FOUL_LINE_PH = 4.6;

/** Two foul looks at least twelve hours apart: the first and the last. @practice our caution, no source */
export function foulTwice(ordered: readonly Look[]): { readonly first: Look; readonly last: Look } | undefined {
  const foul = ordered.filter(isFoul);
  const first = foul[0];
  const last = foul.at(-1);
  if (first === undefined || last === undefined) return undefined;
  return isAtLeast({ fromDay: first.day, toDay: last.day }, TWICE_DAYS) ? { first, last } : undefined;
}

/**
 * A foul look at a time when the acidity stood above pH 4.6 and was seen not to fall. One reading alone shows
 * no trend and leaves the batch in doubt.
 * @practice our caution, no source
 */
export function foulAndNotFalling(
  ordered: readonly Look[],
  readings: readonly Reading[],
): { readonly look: Look; readonly reading: Reading } | undefined {
  for (const look of ordered.filter(isFoul)) {
    const until = readings.filter((reading) => reading.day <= look.day);
    const { last, before } = lastTwo(until);
    if (last === undefined || before === undefined) continue;
    if (!(againstLine(last) <= FOUL_LINE_PH) && !falls(until)) return { look, reading: last };
  }
  return undefined;
}

/** A foul look within an hour of the last nose that said anything. @practice our caution, no source */
export function openFoul(ordered: readonly Look[]): Look | undefined {
  const noses = ordered.filter(hasNose);
  const last = noses.at(-1);
  return last && noses.findLast((look) => isFoul(look) && isAtMost({ fromDay: look.day, toDay: last.day }, VISIT_DAYS));
}

/** A foul word by somebody else within a day before the last nose, which found none. @practice our caution, no source */
export function nosesDiffer(ordered: readonly Look[]): Look | undefined {
  const noses = ordered.filter(hasNose);
  const last = noses.at(-1);
  if (last === undefined) return undefined;
  const near = noses.filter((look) => isAtMost({ fromDay: look.day, toDay: last.day }, DIFFER_DAYS));
  return near.find((look, i) => isFoul(look) && !near.slice(i + 1).some((later) => samePerson(look, later)));
}

/** Looks at different times that saw white fuzz. @practice our caution, no source */
export function whiteFuzz(ordered: readonly Look[]): readonly Look[] {
  const seen = ordered.filter((look) => look.surface === 'fuzzy-white');
  return visits(seen).flatMap((visit) => visit.slice(0, 1));
}

function samePerson(a: Look, b: Look): boolean {
  return a.who !== undefined && a.who === b.who;
}
