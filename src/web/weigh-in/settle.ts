// What the blocks of a trouble note do: settle whose gallon or spoon it is and which mark
// stands before decimals for the whole sheet, or put the
// unit behind a bare figure.

import { acts } from '#words/en/weigh-in-labels.ts';
import type { Settling } from '../parts/trouble-note.tsx';
import type { WeighIn } from './model.ts';

/** The settling of one field; `retype` puts a new text into it, read at once. */
export function settling(model: WeighIn, name: string, text: () => string, retype: (text: string) => void): Settling {
  return {
    onGallon: (gallon) => model.sheet.change(acts.answered(name), (now) => ({ ...now, gallon })),
    onSpoon: (spoon) => model.sheet.change(acts.answered(name), (now) => ({ ...now, spoon })),
    onStyle: (style) => model.sheet.change(acts.answered(name), (now) => ({ ...now, style })),
    onUnit: (unit) => retype(`${text().trim()} ${unit}`),
  };
}
