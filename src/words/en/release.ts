// The season of one bed in plain English: how what came free of everything given stands to what the crop can take up.

import type { Range } from '#engine/quantity/range.ts';
import { band, figure, withUnit } from '../figures.ts';
import { monthName, sayDate } from './app.ts';

interface MomentSaid {
  readonly on: string;
  readonly takenUpG: Range | null;
  readonly freeG: Range | null;
  readonly standing: 'behind' | 'even' | 'ahead' | 'unknown';
}

interface SeasonSaid {
  readonly plantedOn: string | undefined;
  readonly today: MomentSaid;
  readonly end: MomentSaid | undefined;
  readonly behindFrom: string | undefined;
  readonly aheadUntil: string | undefined;
  readonly usualDays: number | undefined;
  readonly soilC: Range;
  readonly nothingGiven: boolean;
}

export const release = {
  heading: 'Nitrogen over the season',
  takenUp: 'what the crop can have taken up, likely, with its range dashed',
  free: 'what came free of all that was given, low to high',
  today: 'today',
  grams: 'g',
  month: (on: string) => monthName(on),
  table: 'Week by week',
  columns: ['By', 'Taken up, g', 'Come free, g'],
  notKnown: 'not known',
  alternative: (name: string, sentences: readonly string[]) => `${name}, nitrogen by week. ${sentences.join(' ')}`,
} as const;

const STANDS: Readonly<Record<MomentSaid['standing'], string>> = {
  behind: 'The release is behind: the rest has to come out of the soil.',
  even: 'The two are about even.',
  ahead: 'The release is ahead: what is not taken up may wash out.',
  unknown: '',
};

/** Grams of one cell. */
export function releaseGrams(one: Range | null): string {
  return one === null ? release.notKnown : band(one, '', placesOf(one.likely));
}

function placesOf(value: number): number {
  return Math.abs(value) >= 10 || value === 0 ? 0 : Math.abs(value) >= 1 ? 1 : 2;
}

/** "9 g (7 to 11)". */
function grams(one: Range): string {
  return band(one, 'g', placesOf(one.likely));
}

/** "3 to 5 g". */
function span({ low, likely, high }: Range): string {
  if (low === high) return withUnit(likely, 'g', placesOf(likely));
  const places = placesOf(likely);
  return `${figure(low, places)} to ${withUnit(high, 'g', places)}`;
}

/** By a day: taken up, and come free. */
function sayBy({ on, takenUpG, freeG }: MomentSaid, given: string): string {
  const came = freeG === null ? 'how much came free is not known' : `${span(freeG)} ${given}`;
  return takenUpG === null
    ? `by ${sayDate(on)} ${came}`
    : `by ${sayDate(on)} the crop can have taken up ${grams(takenUpG)} and ${came}`;
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}

/** Since or until when the two part. */
function sayParting({ today, behindFrom, aheadUntil, nothingGiven }: SeasonSaid): readonly string[] {
  const ahead =
    aheadUntil === undefined || aheadUntil >= today.on ? [] : [`It was ahead until about ${sayDate(aheadUntil)}.`];
  if (behindFrom === undefined || nothingGiven) return ahead;
  const behind =
    behindFrom <= today.on
      ? `It has been behind since about ${sayDate(behindFrom)}.`
      : `It falls behind from about ${sayDate(behindFrom)} on.`;
  return [...ahead, behind];
}

/** What was taken for granted, and what is left open. */
function sayOpen({ plantedOn, today, end, usualDays, soilC }: SeasonSaid): readonly string[] {
  const rots = (end?.freeG?.high ?? 0) > (today.freeG?.high ?? 0);
  return [
    ...(plantedOn === undefined
      ? ['When the crop was sown or planted was not told: what it takes up is left open.']
      : today.takenUpG === null
        ? ['What this crop needs is not known: what it takes up is left open.']
        : []),
    ...(usualDays === undefined
      ? []
      : [`How long this crop grows stands in no table here: ${usualDays} days are taken, evenly.`]),
    ...(rots ? [`Days to come are taken with soil of ${band(soilC, '°C', 0)}.`] : []),
  ];
}

/** The season of a bed: today, when the two part, its end, and what was taken for granted. */
export function sayRelease(season: SeasonSaid): readonly string[] {
  const { today, end, nothingGiven } = season;
  const stands = (one: MomentSaid) => (STANDS[one.standing] === '' ? '' : ` ${STANDS[one.standing]}`);
  const came = nothingGiven ? 'came free, as nothing was given' : 'came free of what was given';
  const last = end && `If nothing more is given, ${sayBy(end, 'came free')}.`;
  return [
    `${capital(sayBy(today, came))}.${stands(today)}`,
    ...sayParting(season),
    ...(end === undefined || last === undefined
      ? []
      : [`${last}${end.standing === today.standing ? '' : stands(end)}`]),
    ...sayOpen(season),
  ];
}
