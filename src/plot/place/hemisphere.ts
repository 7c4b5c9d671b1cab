// On which side of the equator a plot lies: its latitude says so; without one, what the grower answered. Where neither was
// told nobody guesses, and the bed's sheet asks.

import type { Plot } from '#journal/fold.ts';

export type Hemisphere = 'north' | 'south';

/** By latitude, else as answered; undefined where neither was told. @arithmetic the sign of a latitude */
export function hemisphereOf({ latitudeDeg, hemisphere }: Plot['facts']): Hemisphere | undefined {
  if (latitudeDeg === undefined) return hemisphere;
  return latitudeDeg < 0 ? 'south' : 'north';
}
