// The figures of a working, written down for screen and command line alike: small ones keep the digits it takes to redo it.

import type { Range } from '#engine/quantity/range.ts';
import { band, figure, withUnit } from '../figures.ts';

/** A value of a working with its unit: a figure or a band; a word stands alone. */
export function written(value: number | Range | string, unit: string): string {
  if (typeof value === 'string') return value;
  const likely = typeof value === 'object' ? value.likely : value;
  if (likely === Number.POSITIVE_INFINITY) return 'no amount does';
  return typeof value === 'number' ? withUnit(value, unit, small(value)) : band(value, unit, small(likely));
}

/** The ends of a band, as finely as its likely value. */
export function writtenEnds(value: Range, unit: string): string {
  const decimals = small(value.likely);
  return `${figure(value.low, decimals)} to ${withUnit(value.high, unit, decimals)}`;
}

/** Figures far below one keep three places that tell something. */
function small(value: number): number | undefined {
  const size = Math.abs(value);
  return size > 0 && size < 0.1 ? Math.min(8, 2 - Math.floor(Math.log10(size))) : undefined;
}
