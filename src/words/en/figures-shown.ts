// What was shown with a straining, a bottling and a pour, and what newer tables made of it, in words. Nothing is computed
// here but the rounding by which a figure counts as moved: what reads the same has not moved.

import type { Range } from '#engine/quantity/range.ts';
import type { Version } from '#engine/tables/version.ts';
import { band, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { madeWith, versionDate } from './version.ts';

type What = 'nGPerL' | 'pGPerL' | 'kGPerL' | 'nG' | 'pG' | 'kG' | 'useFirstDays';

const NAMES: Readonly<Record<What, string>> = {
  nGPerL: 'nitrogen',
  pGPerL: 'phosphorus',
  kGPerL: 'potassium',
  nG: 'nitrogen',
  pG: 'phosphorus',
  kG: 'potassium',
  useFirstDays: 'days until use first by',
};

/** What it is about: the liquid of a batch, its bottles, or the pours on a bed. */
export type MovedOf =
  | { readonly of: 'liquid' | 'bottles'; readonly peg: PegName }
  | { readonly of: 'pours'; readonly name: string };

/** One figure that moved. */
export interface ChangeSaid {
  readonly what: What;
  readonly before: Range;
  readonly now: Range | undefined;
  /** Undefined where it is not known now, or nothing was shown before. */
  readonly byPercent: number | undefined;
}

/** Labels of the sheets that show it. */
export const shownWords = {
  heading: 'What newer tables changed',
  note: 'Your entries are as you entered them. Both figures stay readable here.',
  fold: 'Figures shown before and now',
  shownThen: 'Shown when this was entered',
  notKept: 'The figure shown at the time was not kept.',
  none: 'No figure was shown with this entry.',
  enteredAnew: 'What you entered since then can be part of the reason.',
} as const;

/** Whether the figure reads otherwise than it did. */
export function isMoved(what: What, before: Range, now: Range | undefined): boolean {
  return now === undefined || sayRange(what, before) !== sayRange(what, now);
}

/** "With the tables of 3 Dec 2026 the liquid of peg 14 holds 4 % less nitrogen than was shown before." */
export function sayMoved(moved: {
  readonly of: MovedOf;
  readonly changes: readonly ChangeSaid[];
  readonly shownBy: Version;
  readonly now: Version;
  readonly enteredAnew: boolean;
}): string {
  const { of, changes, now } = moved;
  const by =
    moved.shownBy.tables.digest === now.tables.digest
      ? `With the formulas of model\u00a0${now.model}`
      : `With the tables of ${versionDate(now.tables.on)}`;
  const known = changes.filter((one) => one.now !== undefined);
  const unknown = changes.filter((one) => one.now === undefined).map(({ what }) => NAMES[what]);
  return [
    ...(known.length > 0 ? [`${by} ${told(of, known)} than was shown before.`] : []),
    ...(unknown.length > 0 ? [`${by} there is no figure any more for ${ofWhat(of)}: ${listed(unknown)}.`] : []),
    ...(moved.enteredAnew ? [shownWords.enteredAnew] : []),
  ].join(' ');
}

function told(of: MovedOf, changes: readonly ChangeSaid[]): string {
  const days = changes.find(({ what }) => what === 'useFirstDays');
  if (of.of === 'bottles' && days?.now !== undefined) {
    const byDays = Math.round(days.now.likely) - Math.round(days.before.likely);
    if (byDays === 0) return `${ofWhat(of)} keep for another range of days`;
    const count = withUnit(Math.abs(byDays), Math.abs(byDays) === 1 ? 'day' : 'days', 0);
    return `${ofWhat(of)} keep ${count} ${byDays < 0 ? 'less' : 'more'}`;
  }
  return `${ofWhat(of)} ${of.of === 'pours' ? 'gave' : 'holds'} ${listed(changes.map(changeSaid))}`;
}

function ofWhat(of: MovedOf): string {
  if (of.of === 'pours') return `the pours on ${of.name}`;
  return of.of === 'bottles' ? `the bottles of peg\u00a0${of.peg}` : `the liquid of peg\u00a0${of.peg}`;
}

function changeSaid({ what, before, now, byPercent }: ChangeSaid): string {
  const name = NAMES[what];
  if (now !== undefined && sayLikely(what, before) === sayLikely(what, now)) return `${name} in another range`;
  if (byPercent === undefined) return `more ${name}`;
  const share = withUnit(Math.abs(byPercent), '%', Math.abs(byPercent) < 1 ? 1 : 0);
  return `${share} ${byPercent < 0 ? 'less' : 'more'} ${name}`;
}

function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** "Nitrogen in a litre: before 1.2 g (0.9 to 1.5), now 1.15 g (0.8 to 1.4)." */
export function sayBoth(what: What, before: Range, now: Range | undefined): string {
  const today = now === undefined ? 'not known now' : `now ${sayRange(what, now)}`;
  return `${whatSaid(what)}: before ${sayRange(what, before)}, ${today}.`;
}

/** "Nitrogen in a litre: 1.2 g (0.9 to 1.5)." */
export function sayShown(what: What, shown: Range): string {
  return `${whatSaid(what)}: ${sayRange(what, shown)}.`;
}

/** The tables and formulas of what was shown. */
export function shownBy(version: Version): string {
  return `${madeWith(version)}.`;
}

function whatSaid(what: What): string {
  const name = NAMES[what];
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}${what.endsWith('GPerL') ? ' in a litre' : ''}`;
}

function sayRange(what: What, range: Range): string {
  return what === 'useFirstDays' ? band(range, 'days', 0) : band(range, 'g');
}

function sayLikely(what: What, range: Range): string {
  return figure(range.likely, what === 'useFirstDays' ? 0 : undefined);
}
