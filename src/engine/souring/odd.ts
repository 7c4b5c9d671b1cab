// Entries that look like a slip: times out of order, one reading entered twice, a meter that jumps, °F typed as °C.
// Each is asked about and kept as it was typed; nothing here corrects or drops an entry. What the judgement and the
// forecast may rest on meanwhile is told by `toJudge`, `toLearnFrom` and `reckoned`.

import type { Values } from '../rules/rule.ts';
import { isAtMost } from './days.ts';
import { inOrder, type Look } from './look.ts';
import type { Warmth } from './model/temperature.ts';

export type OddCode =
  | 'out-of-order'
  | 'same-minute'
  | 'jump-up'
  | 'jump-down'
  | 'ph-outside'
  | 'ph-impossible'
  | 'before-filling'
  | 'after-today'
  | 'fahrenheit'
  | 'temperature-outside'
  | 'low-above-high';

/** One entry to ask about: where it stands in the input, what was typed, what its sentence needs. */
export interface Odd {
  readonly code: OddCode;
  /** Path of the field, such as `looks[2].ph`. */
  readonly about: string;
  readonly value: Values[string];
  readonly values: Values;
}

const MINUTE_DAYS = 1 / (24 * 60);
const EPSILON = 1e-9;
/** Readings this far apart on neighbouring visits are asked about; a fall only where it was quick or ends too low. */
const JUMP_PH = 2;
const QUICK_DAYS = 2;
const TOO_LOW_PH = 3;
/** Readings of a souring batch lie between these. */
const LEAST_PH = 2;
const MOST_PH = 10;
/** Above this a pail is not, short of an accident: more likely degrees Fahrenheit. */
const MOST_C = 45;
const MOST_LIKELY_F = 130;
const LEAST_C = -5;

const outsidePh = (ph: number) => !(ph >= LEAST_PH && ph <= MOST_PH);
const impossiblePh = (ph: number) => !(ph >= 0 && ph <= 14);

/** Looks to ask about, in the order they were typed. @practice our caution, no source */
export function oddLooks(looks: readonly Look[], today: number): readonly Odd[] {
  return looks.flatMap((look, i) => [
    ...oddTime(looks, i, today),
    ...oddPh(look, `looks[${i}].ph`),
    ...oddNeighbour(looks, i),
  ]);
}

function oddTime(looks: readonly Look[], index: number, today: number): readonly Odd[] {
  const look = looks[index] as Look;
  const about = `looks[${index}].day`;
  const odds: Odd[] = [];
  const before = looks[index - 1];
  if (before !== undefined && look.day < before.day - EPSILON)
    odds.push({ code: 'out-of-order', about, value: look.day, values: { day: look.day, beforeDay: before.day } });
  if (!(look.day >= 0)) odds.push({ code: 'before-filling', about, value: look.day, values: { day: look.day } });
  if (look.day > today) odds.push({ code: 'after-today', about, value: look.day, values: { day: look.day, today } });
  return odds;
}

function oddPh(look: Look, about: string): readonly Odd[] {
  if (look.ph === undefined || !outsidePh(look.ph)) return [];
  const values = { ph: look.ph, day: look.day, leastPh: LEAST_PH, mostPh: MOST_PH };
  return [{ code: impossiblePh(look.ph) ? 'ph-impossible' : 'ph-outside', about, value: look.ph, values }];
}

/** The reading before this one in time: an earlier day, or the same moment and typed before. */
function neighbourOf(looks: readonly Look[], index: number): Look | undefined {
  const { day } = looks[index] as Look;
  let found: Look | undefined;
  looks.forEach((other, j) => {
    if (other.ph === undefined) return;
    const earlier = other.day < day || (other.day === day && j < index);
    if (earlier && (found === undefined || other.day >= found.day)) found = other;
  });
  return found;
}

/** Whether a reading is back where the one before its neighbour was: the jump away is asked about once, at the neighbour. */
function comesBack(looks: readonly Look[], look: Look, before: Look): boolean {
  const earlier = neighbourOf(looks, looks.indexOf(before));
  if (look.ph === undefined || before.ph === undefined || earlier?.ph === undefined) return false;
  return Math.abs(before.ph - earlier.ph) >= JUMP_PH - EPSILON && Math.abs(look.ph - earlier.ph) < JUMP_PH;
}

function oddNeighbour(looks: readonly Look[], index: number): readonly Odd[] {
  const look = looks[index] as Look;
  const before = neighbourOf(looks, index);
  if (look.ph === undefined || before?.ph === undefined) return [];
  const about = `looks[${index}].ph`;
  const values = { ph: look.ph, day: look.day, fromPh: before.ph, fromDay: before.day, strip: look.by !== 'meter' };
  const odds: Odd[] = [];
  if (isAtMost({ fromDay: before.day, toDay: look.day }, MINUTE_DAYS))
    odds.push({ code: 'same-minute', about, value: look.ph, values });
  if (outsidePh(look.ph) || outsidePh(before.ph) || comesBack(looks, look, before)) return odds;
  const fell = before.ph - look.ph;
  const quick = isAtMost({ fromDay: before.day, toDay: look.day }, QUICK_DAYS);
  if (-fell >= JUMP_PH - EPSILON) odds.push({ code: 'jump-up', about, value: look.ph, values });
  else if (fell >= JUMP_PH - EPSILON && (quick || look.ph < TOO_LOW_PH))
    odds.push({ code: 'jump-down', about, value: look.ph, values });
  return odds;
}

/** Looks as they may be judged: an acidity that no liquid has is no number. @practice our caution, no source */
export function toJudge(looks: readonly Look[]): readonly Look[] {
  return looks.map((look) => (look.ph !== undefined && impossiblePh(look.ph) ? { ...look, ph: Number.NaN } : look));
}

/**
 * Looks that may teach the forecast: within its days, readings outside 2-10 without their acidity, and the same
 * reading twice within a minute once.
 * @practice our caution, no source
 */
export function toLearnFrom(looks: readonly Look[], today: number): readonly Look[] {
  const kept: Look[] = [];
  for (const look of inOrder(looks)) {
    if (!(look.day >= 0 && look.day <= today)) continue;
    const { ph, ...rest } = look;
    const one: Look = ph === undefined || outsidePh(ph) ? rest : look;
    const twin = kept.some(
      (other) =>
        other.ph === one.ph && other.by === one.by && isAtMost({ fromDay: other.day, toDay: one.day }, MINUTE_DAYS),
    );
    kept.push(twin ? rest : one);
  }
  return kept;
}

function looksLikeF(typedC: number): boolean {
  return typedC > MOST_C && typedC <= MOST_LIKELY_F;
}

/** Degrees as they are reckoned until the question is answered: the colder reading of one that looks like °F. @arithmetic (F − 32) · 5/9 */
export function reckonedC(typedC: number): number {
  return looksLikeF(typedC) ? ((typedC - 32) * 5) / 9 : typedC;
}

/** A warmth as it is reckoned: °F read as such, low and high in order. @arithmetic */
export function reckoned(warmth: Warmth): Warmth {
  if (typeof warmth === 'number') return reckonedC(warmth);
  return warmth.map(([day, lowC, highC]) => {
    const [low, high] = [reckonedC(lowC), reckonedC(highC)];
    return [day, Math.min(low, high), Math.max(low, high)] as const;
  });
}

/** Temperatures to ask about. @practice our caution, no source */
export function oddWarmth(warmth: Warmth): readonly Odd[] {
  if (typeof warmth === 'number') return oddC(warmth, 'temperatureC');
  return warmth.flatMap(([day, lowC, highC], i) => {
    const about = `temperatureC[${i}]`;
    const swapped: readonly Odd[] =
      reckonedC(lowC) > reckonedC(highC)
        ? [{ code: 'low-above-high', about, value: lowC, values: { day, lowC, highC } }]
        : [];
    return [...oddC(lowC, `${about}[1]`), ...oddC(highC, `${about}[2]`), ...swapped];
  });
}

function oddC(typedC: number, about: string): readonly Odd[] {
  if (looksLikeF(typedC))
    return [{ code: 'fahrenheit', about, value: typedC, values: { typedC, asC: reckonedC(typedC) } }];
  if (!(typedC >= LEAST_C && typedC <= MOST_C))
    return [{ code: 'temperature-outside', about, value: typedC, values: { typedC } }];
  return [];
}
