// Two cases before filling in plain English: what was changed and what it is likely to do, and the figures as they stand
// side by side. Figures come from the task; nothing is computed here but how they are said.

import { besideLimit, counted, figure, withUnit } from '../figures.ts';
import { shortName } from './weigh-in.ts';

type Chop = 'coarse' | 'chopped' | 'fine';
type Lid = 'loose' | 'vent' | 'tight';

/** One thing that was changed. */
export type SaidChange =
  | { readonly kind: 'warmth'; readonly byC: number }
  | { readonly kind: 'sugar'; readonly byG: number }
  | { readonly kind: 'product'; readonly from: string; readonly to: string }
  | { readonly kind: 'water'; readonly byL: number }
  | { readonly kind: 'scrap'; readonly name: string; readonly byKg: number }
  | { readonly kind: 'chop'; readonly to: Chop }
  | { readonly kind: 'lid'; readonly to: Lid };

interface Days {
  readonly before: number | null;
  readonly after: number | null;
}

const NUMBERS = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const CHOPPING: Readonly<Record<Chop, string>> = {
  coarse: 'tearing it coarse',
  chopped: 'chopping it to 1\u00a0to 3\u00a0cm',
  fine: 'cutting it fine',
};
const UNDER: Readonly<Record<Lid, string>> = {
  loose: 'a lid laid on loose',
  vent: 'a lid that lets gas out',
  tight: 'a tight lid',
};
/** Days nearer than this are said to be the same: the model is not finer. */
const SAME_DAYS = 0.5;
/** More changes than this are counted, not named. */
const MOST_NAMED = 3;

const moreOf = (by: number) => (by > 0 ? 'more' : 'less');
const mass = (kg: number) => (kg < 0.9995 ? withUnit(kg * 1000, 'g', 0) : withUnit(kg, 'kg'));

function sayChange(change: SaidChange): string {
  switch (change.kind) {
    case 'warmth': {
      const by = Math.abs(change.byC);
      const whole = Math.abs(by - Math.round(by)) < 0.05;
      const count = whole ? (NUMBERS[Math.round(by)] ?? figure(by, 0)) : figure(by, 1);
      return `${count} ${count === 'one' ? 'degree' : 'degrees'} ${change.byC > 0 ? 'warmer' : 'colder'}`;
    }
    case 'sugar':
      return `${mass(Math.abs(change.byG) / 1000)} ${moreOf(change.byG)} sugar`;
    case 'product':
      return `${shortName(change.to)} in place of ${shortName(change.from)}`;
    case 'water':
      return `${withUnit(Math.abs(change.byL), 'L')} ${moreOf(change.byL)} water`;
    case 'scrap':
      return `${mass(Math.abs(change.byKg))} ${moreOf(change.byKg)} ${shortName(change.name)}`;
    case 'chop':
      return CHOPPING[change.to];
    case 'lid':
      return UNDER[change.to];
  }
}

/** "eight degrees warmer and 50 g more sugar", and whether more than one thing does it. */
function subject(changes: readonly SaidChange[]): { readonly text: string; readonly many: boolean } {
  if (changes.length > MOST_NAMED)
    return { text: `these ${NUMBERS[changes.length] ?? changes.length} changes together`, many: true };
  const said = changes.map(sayChange);
  const last = said.pop() ?? '';
  return { text: said.length > 0 ? `${said.join(', ')} and ${last}` : last, many: said.length > 0 };
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const days = (by: number) => (Math.round(by) <= 1 ? 'a day' : counted(Math.round(by), 'day'));
/** Under ten days the half of a day is told as well. */
const halves = (on: number) => figure(on < 10 ? Math.round(on * 2) / 2 : Math.round(on));
const day = (on: number) => `day\u00a0${halves(on)}`;

/** What the changes are likely to do, in one sentence or two. */
export function sayDifference(said: {
  readonly changes: readonly SaidChange[];
  readonly sour: Days;
  readonly held: Days;
  readonly withinDays: number;
}): string {
  if (said.changes.length === 0) return 'Nothing is changed yet: both cases are the same.';
  const { text, many } = subject(said.changes);
  const { before, after } = said.sour;
  const who = capital(text);
  const likely = many ? 'are likely to bring it' : 'is likely to bring it';
  if (before !== null && after !== null) {
    const by = before - after;
    if (Math.abs(by) < SAME_DAYS)
      return `${who} ${many ? 'change' : 'changes'} little: pH\u00a04.2 on about the same day.${heldToo(said.held)}`;
    return `${who} ${likely} to pH\u00a04.2 about ${days(Math.abs(by))} ${by > 0 ? 'earlier' : 'later'}.${heldToo(said.held)}`;
  }
  if (after !== null)
    return `${who} ${likely} to pH\u00a04.2, on about ${day(after)}; as it is, it is not likely to get there within ${said.withinDays} days.`;
  if (before !== null)
    return `${who} ${many ? 'are' : 'is'} likely to keep it from pH\u00a04.2 for ${said.withinDays} days or more, against about ${day(before)} as it is.`;
  return `${who} ${many ? 'are' : 'is'} not likely to bring it to pH\u00a04.2 within ${said.withinDays} days either.`;
}

/** The hold, where it moves. */
function heldToo({ before, after }: Days): string {
  if (before !== null && after !== null) {
    const by = before - after;
    return Math.abs(by) < SAME_DAYS
      ? ''
      : ` It is then likely to be held about ${days(Math.abs(by))} ${by > 0 ? 'earlier' : 'later'}.`;
  }
  if (after !== null) return ` It is then likely to be held, on about ${day(after)}.`;
  return before === null ? '' : ' It is then not likely to be held at all.';
}

/** A day of a figure, and the span under it. */
export function sayDay(on: number | null, withinDays: number): string {
  return on === null ? `not likely within ${withinDays}\u00a0days` : day(on);
}

/** "day 4 to 9"; an end that was not seen is said to be later. */
export function sayDays(span: { readonly low: number; readonly high: number | null } | null): string {
  if (span === null) return 'fewer than half of the runs';
  if (span.high === null) return `${halves(span.low)} or later`;
  const [from, to] = [halves(span.low), halves(span.high)];
  return from === to ? 'all runs alike' : `${from} to ${to}`;
}

/** A span of a figure: "3.4 to 3.9". */
export function saySpan({ low, high }: { readonly low: number; readonly high: number }, decimals: number): string {
  const [from, to] = [figure(low, decimals), figure(high, decimals)];
  return from === to ? 'all runs alike' : `${from} to ${to}`;
}

/** Figures as they stand in the table. */
export const caseFigures = {
  ph: (value: number) => figure(value, 1),
  sugar: (gPerL: number) => withUnit(gPerL, 'g/L', 1),
  gas: (litres: number, on: number) => `${withUnit(litres, 'L', 1)}, ${day(on)}`,
  fill: (volumeL: number, usableL: number) => `${figure(volumeL, 1)} of ${withUnit(usableL, 'L', 1)}`,
  over: (overL: number) => `${withUnit(overL, 'L', 1)} too much`,
  under: (freeL: number) => `${withUnit(freeL, 'L', 1)} to spare`,
  level: (volumeL: number) => withUnit(volumeL, 'L', 1),
  apart: (by: number) => (Math.round(by) <= 1 ? 'a day' : counted(Math.round(by), 'day')),
};

/** The drawing of the lines, as a sentence. */
export function linesAlternative(both: {
  readonly before: number | null;
  readonly after: number | null;
  readonly plateau: { readonly before: number; readonly after: number };
  readonly withinDays: number;
}): string {
  const one = (name: string, on: number | null, plateauPh: number) =>
    `${name}: ${on === null ? `pH 4.2 not likely within ${both.withinDays} days` : `pH 4.2 on about day ${figure(on, 0)}`}, down to about pH ${figure(plateauPh, 1)}.`;
  return `Sour lines. ${one('As it is', both.before, both.plateau.before)} ${one('If you change it', both.after, both.plateau.after)}`;
}

/** The drawing of the vessels, as a sentence. */
export function vesselsAlternative(both: {
  readonly vesselL: number;
  readonly usableL: number;
  readonly before: { readonly volumeL: number; readonly overL: number };
  readonly after: { readonly volumeL: number; readonly overL: number };
}): string {
  const one = (name: string, { volumeL, overL }: { volumeL: number; overL: number }) =>
    `${name}: ${withUnit(volumeL, 'L', 1)}${overL > 0 ? `, ${besideLimit(overL, 0, 'L', 1)} above the fill line` : ''}.`;
  return `Two ${withUnit(both.vesselL, 'L')} vessels cut open, to one scale, with ${withUnit(both.usableL, 'L', 1)} to the fill line. ${one('As it is', both.before)} ${one('If you change it', both.after)}`;
}
