// Where two sour lines stand on one paper: days to the right, pH upwards, the same axes for both, so that they compare.
// Only places; figures come from the task, names from words.

import { px } from './sour-line-geometry.ts';
import { spread } from './spread.ts';

/** Paper for sour lines. */
export interface CasePaper {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly days: number;
  readonly x: (day: number) => number;
  readonly y: (ph: number) => number;
  readonly dayTicks: readonly number[];
  readonly phTicks: readonly number[];
}

export interface DayPh {
  readonly day: number;
  readonly ph: number;
}

export interface DayBandPh {
  readonly day: number;
  readonly ph: { readonly low: number; readonly high: number };
}

const LEFT = 30;
const RIGHT = 98;
const TOP = 40;
const NAME_HIGH = 20;
const BOTTOM = 32;
/** The axis goes from here to there, and on to the next half of a pH where a line does: what is drawn is what is said. */
const TOP_PH = 6.6;
const BOTTOM_PH = 3.3;
/** Days an axis may end on: few, so that it stands still while figures are stepped. */
const ENDS = [7, 14, 21, 28, 42, 60] as const;
/** Room behind the day a line comes to 4.2, and the days shown where it does not. */
const BEHIND_FACTOR = 1.4;
const UNREACHED_DAYS = 28;

/** Days the axis covers: both lines well past 4.2. */
export function axisDays(sourDays: readonly (number | null)[]): number {
  const wanted = Math.max(...sourDays.map((day) => (day === null ? UNREACHED_DAYS : day * BEHIND_FACTOR)));
  return ENDS.find((days) => days >= wanted) ?? ENDS[ENDS.length - 1] ?? UNREACHED_DAYS;
}

/** The scales for so many days, and for every pH that is drawn. */
export function casePaper(room: {
  readonly width: number;
  readonly height: number;
  readonly days: number;
  readonly drawnPh?: readonly number[];
}): CasePaper {
  const highest = Math.max(TOP_PH, ...(room.drawnPh ?? []));
  const lowest = Math.min(BOTTOM_PH, ...(room.drawnPh ?? []));
  const topPh = highest > TOP_PH ? Math.ceil(highest * 2) / 2 : TOP_PH;
  const bottomPh = lowest < BOTTOM_PH ? Math.floor(lowest * 2) / 2 : BOTTOM_PH;
  const right = room.width - RIGHT;
  const bottom = room.height - BOTTOM;
  const step = room.days <= 7 ? 1 : room.days <= 14 ? 2 : room.days <= 42 ? 7 : 10;
  return {
    left: LEFT,
    right,
    top: TOP,
    bottom,
    days: room.days,
    x: (day) => LEFT + ((right - LEFT) * Math.min(day, room.days)) / room.days,
    y: (ph) => TOP + ((bottom - TOP) * (topPh - Math.min(topPh, Math.max(bottomPh, ph)))) / (topPh - bottomPh),
    dayTicks: Array.from({ length: Math.floor(room.days / step) + 1 }, (_, i) => i * step),
    phTicks: Array.from({ length: Math.floor(topPh) - Math.ceil(bottomPh) + 1 }, (_, i) => Math.ceil(bottomPh) + i),
  };
}

/** A line through its points, as far as the paper goes. */
export function linePath(points: readonly DayPh[], paper: CasePaper): string {
  const seen = points.filter(({ day }) => day <= paper.days);
  return seen.map(({ day, ph }, i) => `${i ? 'L' : 'M'}${px(paper.x(day))} ${px(paper.y(ph))}`).join('');
}

/** What lies between low and high, as far as the paper goes. */
export function bandPath(band: readonly DayBandPh[], paper: CasePaper): string {
  const seen = band.filter(({ day }) => day <= paper.days);
  if (seen.length < 2) return '';
  const above = seen.map(({ day, ph }) => `${px(paper.x(day))} ${px(paper.y(ph.high))}`);
  const below = seen.toReversed().map(({ day, ph }) => `${px(paper.x(day))} ${px(paper.y(ph.low))}`);
  return `M${[...above, ...below].join('L')}Z`;
}

/** Where the names of the limits stand beside the paper: at their lines as near as they find room. */
export function limitTops(limits: readonly { readonly ph: number }[], paper: CasePaper): readonly number[] {
  return spread(
    limits.map(({ ph }) => ({ y: paper.y(ph), high: NAME_HIGH })),
    { top: paper.top, bottom: paper.bottom + NAME_HIGH },
  );
}
