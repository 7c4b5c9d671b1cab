// Numbers for reading: sensible digits, a no-break space before the unit, a band in words.
// Units of the grower's choice come from quantity; this file only writes SI figures down.

import type { Range } from '#engine/quantity/range.ts';

const NBSP = '\u00a0';

/** Three significant digits below 100, whole numbers above; or as many decimals as asked. */
export function figure(value: number, decimals?: number): string {
  if (!Number.isFinite(value)) return 'unknown';
  const places = decimals ?? (Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2);
  const text = value.toFixed(places);
  if (decimals !== undefined || places === 0) return text.replace(/^-(0(\.0+)?)$/, '$1');
  return text.replace(/\.?0+$/, '').replace(/^-0$/, '0');
}

/**
 * Decimals with which a figure is told apart from the one that it is said beside; those asked for where they do, or
 * where nothing that a reader could measure lies between the two. @arithmetic
 */
export function decimalsApart(value: number, beside: number, decimals?: number): number | undefined {
  const alike = (places?: number) => figure(value, places) === figure(beside, places);
  if (value === beside || !alike(decimals)) return decimals;
  const from = decimals ?? 0;
  return [1, 2, 3, 4, 5].map((more) => from + more).find((places) => !alike(places)) ?? decimals;
}

/**
 * A figure said beside its limit ("19.8 is under 20"), or the limit beside the figure: with as many digits as tell the two
 * apart, and without zeros that tell nothing. `write` is the figure of another language. @arithmetic
 */
export function besideLimit(value: number, beside: number, unit: string, decimals?: number, write = figure): string {
  const places = decimalsApart(value, beside, decimals);
  const text = write(value, places);
  const trimmed = places === decimals ? text : text.replace(/([.,]\d*?)0+$/, '$1').replace(/[.,]$/, '');
  return unit ? trimmed + NBSP + unit : trimmed;
}

/** A figure and its unit that never break apart. */
export function withUnit(value: number, unit: string, decimals?: number): string {
  return unit ? figure(value, decimals) + NBSP + unit : figure(value, decimals);
}

/** "10.6 L (10.5 to 10.8)"; a figure without a band stands alone. */
export function band(r: Range, unit: string, decimals?: number): string {
  const likely = withUnit(r.likely, unit, decimals);
  if (r.low === r.high) return likely;
  return `${likely} (${figure(r.low, decimals)} to ${figure(r.high, decimals)})`;
}

/** A count and its noun: "1 can", "3 cans". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count}${NBSP}${count === 1 ? one : many}`;
}
