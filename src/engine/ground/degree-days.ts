// Degree days of a day from its low and high. Four ways are published and give four answers for one day, so the name of
// the way travels with the number. What grows or rots by them stands elsewhere.

/** The published ways. */
export type DegreeDayWay = 'mean-then-base' | 'base-then-mean' | 'single-sine' | 'piecewise';

/** One day, the warmth below which nothing goes on and, where it is known, the one above which no more is gained. */
export interface DegreeDayAsk {
  readonly lowC: number;
  readonly highC: number;
  readonly baseC: number;
  readonly upperC?: number | undefined;
  readonly way: DegreeDayWay;
}

/** The number and the way it came about. */
export interface DegreeDays {
  readonly degreeDays: number;
  readonly way: DegreeDayWay;
}

/**
 * Degree days of one day.
 *
 *   mean-then-base   max((Tx + Tn)/2 − Tb, 0)
 *   base-then-mean   the same with Tx and Tn first raised to Tb
 *   single-sine      a sine through low and high, only what lies over Tb
 *   piecewise        all over Tb: mean − Tb · Tn < Tb < mean: (Tx − Tb)/2 − (Tb − Tn)/4 · mean < Tb < Tx: (Tx − Tb)/4
 *
 * Low and high are held down to the upper warmth first; the sine takes off what lies over it.
 * @range lowC no higher than highC, upperC above baseC
 * @returns °C·d, never below 0
 * @source mcmaster-wilhelm-1997 methods 1 and 2; met-eireann-degree-days cases I to IV; the sine is @memory
 * @checked worked/degree-days.csv
 */
export function degreeDays({ lowC, highC, baseC, upperC, way }: DegreeDayAsk): DegreeDays {
  const most = upperC ?? Number.POSITIVE_INFINITY;
  const low = Math.min(lowC, most);
  const high = Math.min(highC, most);
  switch (way) {
    case 'mean-then-base':
      return { way, degreeDays: Math.max(0, (high + low) / 2 - baseC) };
    case 'base-then-mean':
      return { way, degreeDays: (Math.max(high, baseC) + Math.max(low, baseC)) / 2 - baseC };
    case 'piecewise':
      return { way, degreeDays: piecewise(low, high, baseC) };
    case 'single-sine': {
      const over = upperC === undefined ? 0 : sineOver(lowC, highC, upperC);
      return { way, degreeDays: sineOver(lowC, highC, baseC) - over };
    }
  }
}

function piecewise(lowC: number, highC: number, baseC: number): number {
  const meanC = (lowC + highC) / 2;
  if (lowC >= baseC) return meanC - baseC;
  if (meanC >= baseC) return (highC - baseC) / 2 - (baseC - lowC) / 4;
  return highC > baseC ? (highC - baseC) / 4 : 0;
}

function sineOver(lowC: number, highC: number, baseC: number): number {
  const meanC = (lowC + highC) / 2;
  const swingC = (highC - lowC) / 2;
  if (lowC >= baseC) return meanC - baseC;
  if (highC <= baseC) return 0;
  const at = Math.asin((baseC - meanC) / swingC);
  return ((meanC - baseC) * (Math.PI / 2 - at) + swingC * Math.cos(at)) / Math.PI;
}
