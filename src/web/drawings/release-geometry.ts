// Where the season of a bed stands on paper: days to the right, grams upwards; the band of what came free, the line of
// what is taken up with its dashed ends. Pixels only.

interface Ends {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** One point of the season. */
export interface SeasonPoint {
  readonly day: number;
  readonly takenUpG: Ends | null;
  readonly freeG: Ends | null;
}

export interface SeasonScale {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (day: number) => number;
  readonly y: (grams: number) => number;
  readonly gramTicks: readonly number[];
}

const LEFT = 48;
const RIGHT = 10;
const TOP = 28;
const BOTTOM = 30;
const MOST_TICKS = 6;

/** The scales of a season: the axis ends on a tick over and under everything drawn, nothing always in it. */
export function seasonScale(
  points: readonly SeasonPoint[],
  room: { readonly width: number; readonly height: number },
): SeasonScale {
  const drawn = points.flatMap(({ takenUpG, freeG }) => [takenUpG, freeG]).filter((one) => one !== null);
  const most = Math.max(0, ...drawn.map(({ high }) => high));
  const least = Math.min(0, ...drawn.map(({ low }) => low));
  const step = stepFor(most - least || 1);
  const top = Math.max(step, Math.ceil(most / step) * step);
  const bottom = Math.floor(least / step) * step;
  const [fromDay = 0, lastDay = 0] = [points[0]?.day, points.at(-1)?.day];
  const [left, right] = [LEFT, room.width - RIGHT];
  const floor = room.height - BOTTOM;
  return {
    left,
    right,
    top: TOP,
    bottom: floor,
    x: (day) => left + ((right - left) * (day - fromDay)) / Math.max(1, lastDay - fromDay),
    y: (grams) => floor - ((floor - TOP) * (grams - bottom)) / (top - bottom),
    gramTicks: Array.from({ length: Math.round((top - bottom) / step) + 1 }, (_, i) => bottom + i * step),
  };
}

/** A step of 1, 2 or 5 times a power of ten, with at most six of them over a span. */
function stepFor(span: number): number {
  const unit = 10 ** Math.floor(Math.log10(span / MOST_TICKS));
  return [1, 2, 5, 10].map((times) => times * unit).find((step) => span / step <= MOST_TICKS) ?? 10 * unit;
}

/** A line through one end of the points that have it. */
export function seasonLine(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
}

/** The band between the low and the high end of what came free; '' without any. */
export function seasonBand(points: readonly SeasonPoint[], { x, y }: SeasonScale): string {
  const known = points.flatMap(({ day, freeG }) => (freeG === null ? [] : [{ day, ...freeG }]));
  if (known.length === 0) return '';
  const over = known.map(({ day, high }) => [x(day), y(high)] as const);
  const back = known.toReversed().map(({ day, low }) => [x(day), y(low)] as const);
  return `${seasonLine([...over, ...back])}Z`;
}
