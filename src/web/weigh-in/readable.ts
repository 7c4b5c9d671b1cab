// Whether half-typed text can be read already: then the answer moves with every key, else it waits until the
// field is left.

import { parseAmount } from '#engine/quantity/parse.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { Draft } from './draft.ts';

/** True when the text is an amount as it stands, or empty. */
export function readable(text: string, dimension: 'mass' | 'volume', draft: Draft, bulkKgPerL?: Range): boolean {
  if (text.trim() === '') return true;
  return parseAmount(text, { dimension, gallon: draft.gallon, spoon: draft.spoon, style: draft.style, bulkKgPerL }).ok;
}
