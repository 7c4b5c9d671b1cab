// Alkalinity as it stands on a water report, in the unit chosen beside it. What it costs in acid is the engine's.

import { figureAlone } from '#engine/quantity/number.ts';
import { type AlkalinityUnit, alkalinityMeqPerL } from '#engine/scraps/water.ts';

/** A figure of a water report in the unit chosen; undefined when it is no number in the believed range. */
export function readAlkalinity(typed: string, unit: AlkalinityUnit): number | undefined {
  const value = figureAlone(typed) ?? Number.NaN;
  const meqPerL = alkalinityMeqPerL({ value, unit });
  return meqPerL >= 0 && meqPerL <= 20 ? meqPerL : undefined;
}
