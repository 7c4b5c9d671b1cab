// What a text was read with: all that the reader of parse.ts was given beside the text, small enough to be kept with each amount.

import type { Countries } from './ask.ts';
import type { NumberStyle } from './number.ts';
import type { Range } from './range.ts';
import type { GallonCountry, SpoonCountry, UnitId } from './units.ts';

/**
 * Edition of the reader of parse.ts; whoever changes what a text is read as counts it up. The second also reads an area by its
 * two sides, and all else as the first did: what the first could read is kept with 1, so that an older program checks it still.
 */
export const READER = 2;

/** The first edition: everything but areas by their sides. */
export const FIRST_READER = 1;
/** Editions whose texts this one reads as they did. */
export const READ_ALIKE: readonly number[] = [FIRST_READER, READER];

/** What an amount was read with: by which reader, the unit shown beside the field, the keyholder's style and countries. */
export interface ReadWith {
  readonly reader: number;
  readonly unitShown?: UnitId | 'C' | 'F' | undefined;
  readonly style?: NumberStyle | undefined;
  readonly gallon?: GallonCountry | undefined;
  readonly spoon?: SpoonCountry | undefined;
  /** Mass per litre of the product, where a mass was told by volume. */
  readonly bulkKgPerL?: Range | undefined;
}

interface Given extends Countries {
  readonly bareUnit?: ReadWith['unitShown'];
  readonly bulkKgPerL?: Range | 'ask' | undefined;
}

/** What the reader was given, as it is kept beside the amount. @arithmetic none */
export function readWithOf({ bareUnit, style, gallon, spoon, bulkKgPerL }: Given): ReadWith {
  return {
    reader: FIRST_READER,
    ...(bareUnit !== undefined && { unitShown: bareUnit }),
    ...(style !== undefined && { style }),
    ...(gallon !== undefined && { gallon }),
    ...(spoon !== undefined && { spoon }),
    ...(typeof bulkKgPerL === 'object' && { bulkKgPerL }),
  };
}
