// Ranges: a figure with its likely value and the band that holds it about four times in five.
// low, likely, high stand for the 10th, 50th and 90th percentile. The rule for combining is stated once,
// here; nobody else adds or multiplies the ends of ranges. Next: units.ts, parse.ts.

/** About 10th, 50th and 90th percentile of one figure; low <= likely <= high. */
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A figure known without a band (as typed, as weighed). @arithmetic */
export function point(value: number): Range {
  return { low: value, likely: value, high: value };
}

/**
 * A band from its three values. Orders nothing silently: ends on the wrong side are our own fault.
 * @throws RangeError when low > likely or likely > high
 * @arithmetic
 */
export function range(low: number, likely: number, high: number): Range {
  if (low > likely || likely > high) throw new RangeError(`range: ${low}, ${likely}, ${high} are not in order`);
  return { low, likely, high };
}

/** A plain number or a band, read as a band. @arithmetic */
export function asRange(value: number | Range): Range {
  return typeof value === 'number' ? point(value) : value;
}

/** Every end multiplied by one exact, non-negative factor. @arithmetic */
export function scale(r: Range, factor: number): Range {
  return { low: r.low * factor, likely: r.likely * factor, high: r.high * factor };
}

/** Every end moved by one exact amount. @arithmetic */
export function shift(r: Range, by: number): Range {
  return { low: r.low + by, likely: r.likely + by, high: r.high + by };
}

/**
 * Sum of figures that err independently: likely values add, the distance from likely to each end adds
 * in quadrature, each side by itself.
 *
 *   high = Σ likely + √ Σ (high − likely)²
 *
 * First-order error propagation; exact for independent normal errors. Held against seeded draws in
 * test/property/range.test.ts.
 * @source jcgm-100-2008 5.1.2
 */
export function sum(rs: readonly Range[]): Range {
  let likely = 0;
  let down = 0;
  let up = 0;
  for (const r of rs) {
    likely += r.likely;
    down += (r.likely - r.low) ** 2;
    up += (r.high - r.likely) ** 2;
  }
  return { low: likely - Math.sqrt(down), likely, high: likely + Math.sqrt(up) };
}

/** Sum of figures that err together (one cause): the ends add straight. @arithmetic */
export function sumTogether(rs: readonly Range[]): Range {
  let low = 0;
  let likely = 0;
  let high = 0;
  for (const r of rs) {
    low += r.low;
    likely += r.likely;
    high += r.high;
  }
  return { low, likely, high };
}

/** a − b for figures that err independently; may fall below zero. @source jcgm-100-2008 5.1.2 */
export function difference(a: Range, b: Range): Range {
  return sum([a, { low: -b.high, likely: -b.likely, high: -b.low }]);
}

/**
 * Product of non-negative figures that err independently: likely values multiply, the ends add in
 * quadrature on the logarithm, so that a factor 2 up and a factor 2 down weigh the same.
 *
 *   high = Π likely · exp √ Σ ln²(high/likely)
 *
 * A low end of 0 makes the product's low end 0.
 * @source jcgm-100-2008 5.1.6 (relative form, on the logarithm)
 */
export function product(rs: readonly Range[]): Range {
  let likely = 1;
  let down = 0;
  let up = 0;
  for (const r of rs) {
    likely *= r.likely;
    if (r.likely > 0) {
      down += r.low > 0 ? Math.log(r.likely / r.low) ** 2 : Number.POSITIVE_INFINITY;
      up += Math.log(r.high / r.likely) ** 2;
    }
  }
  if (Number.isNaN(likely)) return { low: Number.NaN, likely, high: Number.NaN };
  if (!(likely > 0)) {
    const high = rs.reduce((p, r) => p * r.high, 1);
    return { low: 0, likely: 0, high };
  }
  const low = likely * Math.exp(-Math.sqrt(down));
  const high = likely * Math.exp(Math.sqrt(up));
  return { low: Number.isFinite(low) ? low : 0, likely, high: Number.isNaN(high) ? Number.POSITIVE_INFINITY : high };
}

/** 1 / r for a positive range; the ends change places. @arithmetic */
export function inverse(r: Range): Range {
  return { low: 1 / r.high, likely: 1 / r.likely, high: r.low > 0 ? 1 / r.low : Number.POSITIVE_INFINITY };
}

/** Nothing above a ceiling: all three values are held down to it. @arithmetic */
export function capAt(r: Range, ceiling: number): Range {
  return { low: Math.min(r.low, ceiling), likely: Math.min(r.likely, ceiling), high: Math.min(r.high, ceiling) };
}

/** Nothing below a floor: all three values are held up to it. @arithmetic */
export function floorAt(r: Range, floor: number): Range {
  return { low: Math.max(r.low, floor), likely: Math.max(r.likely, floor), high: Math.max(r.high, floor) };
}
