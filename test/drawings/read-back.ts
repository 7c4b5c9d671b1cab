// Reading a drawing back: corners of a path, a figure off a straight scale by two of its marks, the litres of a vessel
// out of its drawn wall. Nothing here knows how the drawing was made; unit tests and page tests read with the same.

export interface Corner {
  readonly x: number;
  readonly y: number;
}

/** Corners of a path of straight pieces, in order. A curve counts with its end. */
export function cornersOf(path: string): readonly Corner[] {
  const found: Corner[] = [];
  let [x, y] = [0, 0];
  for (const [, letter = '', rest = ''] of path.matchAll(/([MLHVQCZmlhvz])([^MLHVQCZmlhvz]*)/g)) {
    const numbers = [...rest.matchAll(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g)].map(([text]) => Number(text));
    const [first = 0] = numbers;
    const [a = 0, b = 0] = numbers.slice(-2);
    if (letter === 'H') x = first;
    else if (letter === 'V') y = first;
    else if (letter === 'h') x += first;
    else if (letter === 'v') y += first;
    else if (letter === 'l' || letter === 'm') [x, y] = [x + a, y + b];
    else if (letter !== 'Z' && letter !== 'z') [x, y] = [a, b];
    if (letter.toUpperCase() !== 'Z') found.push({ x, y });
  }
  return found;
}

/** A mark of a scale: its figure and where it stands. */
export interface Mark {
  readonly figure: number;
  readonly at: number;
}

/** Reads figures off a straight scale by its two outermost marks. */
export function readBy(marks: readonly Mark[]): (at: number) => number {
  const [low, high] = [marks[0], marks.at(-1)];
  if (low === undefined || high === undefined || low.at === high.at) throw new Error('a scale needs two marks apart');
  return (at) => low.figure + ((high.figure - low.figure) * (at - low.at)) / (high.at - low.at);
}

/**
 * Litres of what is drawn cut open around an axis: its right side turned about the axis, piece by piece of a cone.
 * @param upToY counts only what lies beneath this height
 */
export function turnedL(path: string, axisX: number, pxPerM: number, upToY = Number.NEGATIVE_INFINITY): number {
  const side = cornersOf(path)
    .filter(({ x }) => x > axisX)
    .toSorted((a, b) => a.y - b.y);
  let volumeM3 = 0;
  side.forEach((lower, i) => {
    const above = side[i - 1];
    if (above === undefined || lower.y <= upToY || lower.y === above.y) return;
    const topY = Math.max(above.y, upToY);
    const share = (topY - above.y) / (lower.y - above.y);
    const [a, b] = [above.x + share * (lower.x - above.x), lower.x].map((x) => (x - axisX) / pxPerM) as [
      number,
      number,
    ];
    volumeM3 += (Math.PI * ((lower.y - topY) / pxPerM) * (a * a + a * b + b * b)) / 3;
  });
  return 1000 * volumeM3;
}

/** Highest corner of a path, px from the top; nothing without a corner. */
export function topOf(path: string): number {
  return Math.min(...cornersOf(path).map(({ y }) => y));
}

/** Lowest corner of a path, px from the top. */
export function footOf(path: string): number {
  return Math.max(...cornersOf(path).map(({ y }) => y));
}
