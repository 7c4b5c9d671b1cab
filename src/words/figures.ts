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
