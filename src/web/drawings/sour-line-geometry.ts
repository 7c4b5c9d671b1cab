// Where the sour line's readings, limits and alarm line stand on paper: days to the right, pH upwards. Only places;
// the figures come from the task, the names from words.

/** One reading to be drawn. */
export interface DrawnReading {
  readonly day: number;
  readonly ph: number;
  readonly errorPh: number;
  readonly text: string;
}

export interface SourLineRoom {
  readonly width: number;
  readonly height: number;
  /** Days that must find room: today, the next look, the lines of alarm. */
  readonly lastDay: number;
  /** The lowest pH that is likely to come. */
  readonly lowestPh?: number | undefined;
}

/** Paper for a sour line: scales and the ticks of both axes. */
export interface SourLineScale {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly days: number;
  readonly topPh: number;
  readonly bottomPh: number;
  readonly x: (day: number) => number;
  readonly y: (ph: number) => number;
  readonly dayTicks: readonly number[];
  readonly phTicks: readonly number[];
}

const LEFT = 36;
const RIGHT = 12;
const TOP = 38;
const BOTTOM = 36;
const LEAST_DAYS = 7;
const LOWEST_PH = 3.5;
const HIGHEST_PH = 7;
/** Room over the last reading for its large figure. */
const LAST_FIGURE_PH = 0.35;
/** Widths of a label beside its dot, px. */
const LABEL = { wide: 34, high: 22 } as const;
/** The same for the last reading, whose figure is larger. */
const LAST_LABEL = { wide: 56, high: 32 } as const;

/** The scales for some readings. The axis ends on a whole pH or half of one, and on a tick of days. */
export function sourScale(readings: readonly DrawnReading[], room: SourLineRoom): SourLineScale {
  const last = readings.at(-1);
  const highest = Math.max(
    HIGHEST_PH,
    ...readings.map(({ ph, errorPh }) => ph + errorPh),
    last === undefined ? HIGHEST_PH : last.ph + LAST_FIGURE_PH,
  );
  const lowest = Math.min(LOWEST_PH, room.lowestPh ?? LOWEST_PH, ...readings.map(({ ph, errorPh }) => ph - errorPh));
  const topPh = Math.ceil(highest * 2) / 2;
  const bottomPh = Math.floor(lowest * 2) / 2;
  const wanted = Math.max(LEAST_DAYS, room.lastDay, ...readings.map(({ day }) => day));
  const step = [1, 2, 7, 14, 28, 56, 112, 364].find((days) => wanted / days <= 7) ?? 364;
  const days = Math.ceil(wanted / step) * step;
  const right = room.width - RIGHT;
  const bottom = room.height - BOTTOM;
  return {
    left: LEFT,
    right,
    top: TOP,
    bottom,
    days,
    topPh,
    bottomPh,
    x: (day) => LEFT + ((right - LEFT) * day) / days,
    y: (ph) => TOP + ((bottom - TOP) * (topPh - ph)) / (topPh - bottomPh),
    dayTicks: Array.from({ length: days / step + 1 }, (_, i) => i * step),
    phTicks: Array.from({ length: Math.floor(topPh) - Math.ceil(bottomPh) + 1 }, (_, i) => Math.ceil(bottomPh) + i),
  };
}

/** The line of alarm as steps: free until the first day, then at or below each pH from its day on. */
export function alarmPath(
  lines: readonly { readonly ph: number; readonly day: number }[],
  { x, y, top, right, days }: SourLineScale,
): string {
  const seen = lines.filter(({ day }) => day < days);
  const [first] = seen;
  if (first === undefined) return '';
  let path = `M${px(x(first.day))} ${px(top)}`;
  seen.forEach(({ ph, day }) => {
    path += `H${px(x(day))}V${px(y(ph))}`;
  });
  return `${path}H${px(right)}`;
}

/** What letters reach below the line they stand on, px. */
const BELOW_LINE = 5;

/** A piece of text on paper, px. */
export interface TextBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const meet = (a: TextBox, b: TextBox) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Where the figure of a reading begins or ends, and on which line: above its dot; just below the lowest limit under it. */
export function figurePlace({ day, ph }: Pick<DrawnReading, 'day' | 'ph'>, scale: SourLineScale) {
  const anchor = scale.x(day) > scale.right - 44 ? ('end' as const) : ('start' as const);
  const x = scale.x(day) + (anchor === 'end' ? -11 : 11);
  return { anchor, x, y: scale.y(ph) + (ph >= 3.35 && ph <= 4.05 ? 30 : -9) };
}

/** The room a figure takes; the last one is larger. */
function figureBox(one: DrawnReading, scale: SourLineScale, isLast: boolean): TextBox {
  const { anchor, x, y } = figurePlace(one, scale);
  const { wide, high } = isLast ? LAST_LABEL : LABEL;
  const left = anchor === 'end' ? x - wide : x;
  return { left, right: left + wide, top: y - high, bottom: y + BELOW_LINE };
}

/**
 * The readings whose figure finds room: the last always, then the first, then those between from the newest back.
 * @param taken what else is written on the paper; a figure other than the last gives way to it
 */
export function labelled(
  readings: readonly DrawnReading[],
  scale: SourLineScale,
  taken: readonly TextBox[] = [],
): readonly DrawnReading[] {
  const last = readings.at(-1);
  if (last === undefined) return [];
  const order = [...readings.slice(0, -1).slice(0, 1), ...readings.slice(1, -1).toReversed()];
  const kept = new Map([[last, figureBox(last, scale, true)]]);
  for (const one of order) {
    const box = figureBox(one, scale, false);
    if (![...kept.values(), ...taken].some((other) => meet(box, other))) kept.set(one, box);
  }
  return readings.filter((one) => kept.has(one));
}

/** Room of the limits' names on their lines: px along the line, and pH from the lowest to the highest of them. */
const NAMES = {
  wide: 160,
  widePerLetter: 8.6,
  high: 16,
  over: -5,
  under: 19,
  step: 36,
  lowPh: 3.75,
  highPh: 4.95,
} as const;

/** The end of the limits at which their names stand: the left, unless the readings run through there and not at the right. */
export function namesSide(readings: readonly DrawnReading[], scale: SourLineScale): 'left' | 'right' {
  const meets = (fromX: number, toX: number) =>
    readings.some((one, i) => {
      const before = readings[i - 1] ?? one;
      const x = [scale.x(before.day), scale.x(one.day)] as const;
      const ph = [Math.min(before.ph, one.ph), Math.max(before.ph, one.ph)] as const;
      return x[0] <= toX && x[1] >= fromX && ph[0] <= NAMES.highPh && ph[1] >= NAMES.lowPh;
    });
  const isLeftTaken = meets(scale.left, scale.left + NAMES.wide);
  return isLeftTaken && !meets(scale.right - NAMES.wide, scale.right) ? 'right' : 'left';
}

/** A limit with its name on the paper. */
export interface NamedLimit {
  readonly text: string;
  readonly ph: number;
  /** Whether the name stands under its line, not on it. */
  readonly under: boolean;
}

/** Where each limit's name stands: on the side that suits all, or where the last figure and the names before it leave room. */
export function limitNames(limits: readonly NamedLimit[], readings: readonly DrawnReading[], scale: SourLineScale) {
  const usual = namesSide(readings, scale);
  const other = usual === 'left' ? 'right' : 'left';
  const last = readings.at(-1);
  const taken = last === undefined ? [] : [figureBox(last, scale, true)];
  return limits.map(({ text, ph, under }) => {
    const wide = text.length * NAMES.widePerLetter;
    const at = (side: 'left' | 'right', fromLine: number) => {
      const x = side === 'left' ? scale.left + 6 : scale.right - 4;
      const y = scale.y(ph) + fromLine;
      const left = side === 'left' ? x : x - wide;
      return { text, side, x, y, box: { left, right: left + wide, top: y - NAMES.high, bottom: y + BELOW_LINE } };
    };
    const own = under ? NAMES.under : NAMES.over;
    const first = at(usual, own);
    const steps = [own, under ? NAMES.over : NAMES.under, own + NAMES.step, own - NAMES.step];
    const places = steps.flatMap((fromLine) => [at(usual, fromLine), at(other, fromLine)]);
    const place = places.find(({ box }) => !taken.some((one) => meet(box, one))) ?? first;
    taken.push(place.box);
    return place;
  });
}

/** A number on paper, to a tenth of a pixel. */
export function px(value: number): string {
  return value.toFixed(1);
}

/** A band of values by day. */
export interface BandPoint {
  readonly day: number;
  readonly low: number;
  readonly high: number;
}

type Place = (value: number) => number;

/** The upper and the lower edge of a band, as far as the paper goes; what leaves the paper runs along its edge. */
export function bandPaths(
  band: readonly BandPoint[],
  scale: SourLineScale,
): { high: string; low: string; area: string } {
  const seen = band.filter(({ day }) => day <= scale.days);
  const within: Place = (y) => Math.min(scale.bottom, Math.max(scale.top, y));
  const points = (of: (point: BandPoint) => number) =>
    seen.map((point) => `${px(scale.x(point.day))} ${px(within(scale.y(of(point))))}`);
  const [high, low] = [points((one) => one.high), points((one) => one.low)];
  if (seen.length === 0) return { high: '', low: '', area: '' };
  return {
    high: `M${high.join('L')}`,
    low: `M${low.join('L')}`,
    area: `M${high.join('L')}L${low.toReversed().join('L')}Z`,
  };
}

/** One line through points by day, as far as the paper goes. */
export function linePath(
  points: readonly { readonly day: number; readonly ph: number }[],
  scale: SourLineScale,
): string {
  const seen = points.filter(({ day }) => day <= scale.days);
  const within: Place = (y) => Math.min(scale.bottom, Math.max(scale.top, y));
  return seen.map(({ day, ph }, i) => `${i ? 'L' : 'M'}${px(scale.x(day))} ${px(within(scale.y(ph)))}`).join('');
}

/** Room under the days for one span, and for the temperatures, px. */
export const ROWS = { spanPx: 54, warmthPx: 100, warmthHighPx: 46 } as const;

/** Room above and below the temperatures, and the steps its two lines are set to. */
const AROUND_C = 4;
const STEP_C = 5;

/** Low and high of one day. */
export interface WarmthOfDay {
  readonly day: number;
  readonly lowC: number;
  readonly highC: number;
}

/** The temperatures beneath the days: their own scale, and each day as a step of a band. */
export function warmthStrip(
  days: readonly WarmthOfDay[],
  { scale, top, toldUntil }: { readonly scale: SourLineScale; readonly top: number; readonly toldUntil: number },
) {
  const seen = days.filter(({ day }) => day < scale.days);
  const least = Math.floor((Math.min(...seen.map(({ lowC }) => lowC)) - AROUND_C) / STEP_C) * STEP_C;
  const most = Math.ceil((Math.max(...seen.map(({ highC }) => highC)) + AROUND_C) / STEP_C) * STEP_C;
  const bottom = top + ROWS.warmthHighPx;
  const y: Place = (c) => bottom - ((bottom - top) * (c - least)) / (most - least);
  const steps = (some: readonly WarmthOfDay[]) => {
    if (some.length === 0) return '';
    const edge = (of: (day: WarmthOfDay) => number, list: readonly WarmthOfDay[], ends: readonly [number, number]) =>
      list.map(
        (one) =>
          `${px(scale.x(one.day + ends[0]))} ${px(y(of(one)))}L${px(scale.x(one.day + ends[1]))} ${px(y(of(one)))}`,
      );
    const high = edge((one) => one.highC, some, [0, 1]);
    const low = edge((one) => one.lowC, some.toReversed(), [1, 0]);
    return `M${[...high, ...low].join('L')}Z`;
  };
  return {
    bottom,
    ticks: [least, most].map((c) => ({ c, y: y(c) })),
    told: steps(seen.filter(({ day }) => day < toldUntil)),
    ahead: steps(seen.filter(({ day }) => day >= toldUntil)),
  };
}

/** A span as a dimension line on the days: its ends, and whether it goes on past the paper. */
export function spanOn(
  span: { readonly from: number; readonly to: number; readonly openEnded: boolean },
  scale: SourLineScale,
) {
  if (span.from > scale.days) return undefined;
  const goesOn = span.openEnded || span.to > scale.days;
  const from = scale.x(span.from);
  const to = scale.x(Math.min(span.to, scale.days));
  // Both ticks of a very short span are still told apart.
  return { from, to: Math.max(to, from + 8), goesOn };
}
