// The water's workings by hand.

import type { Working } from '#engine/working/working.ts';
import { all, each, likely, one, type Redo } from '../by-hand.ts';

/** Water times chlorine, free and bound; a kind that is not listed was not given. */
function chlorineMg(working: Working): number {
  const kinds = all(working, /^(free chlorine|chloramine, as chlorine)$/);
  return likely(working, 'water') * kinds.reduce((sum, { likely: mgPerL }) => sum + mgPerL, 0);
}

export const waterRoom: readonly Redo[] = [
  { figure: /^chlorineMg$/, redo: chlorineMg },
  { figure: /^ascorbicAcidMg$/, redo: (w) => chlorineMg(w) * likely(w, 'ascorbic acid per mg of chlorine') },
  { figure: /^thiosulfatePentahydrateMg$/, redo: (w) => chlorineMg(w) * likely(w, 'thiosulfate per mg of chlorine') },
  { figure: /^halvingIn(doors|Sun)H$/, redo: (w) => each(one(w, 'loss per hour'), (perH) => Math.log(2) / perH) },
  { figure: /^alkalinityMeqPerL$/, redo: (w) => likely(w, 'reported') * likely(w, /^meq\/L in one /) },
  { figure: /^lacticAcidEatenG$/, redo: (w) => (likely(w, 'water') * likely(w, 'alkalinity') * 90.08) / 1000 },
  {
    figure: /^plantAcidPercent$/,
    redo: (w) => {
      const plantsEq = likely(w, 'plants') * likely(w, 'acid per kg of mixed plants');
      return (100 * likely(w, 'water') * likely(w, 'alkalinity')) / 1000 / plantsEq;
    },
  },
];
