// Five small drawings for "how?" of the can card: let the gas out, fill to the mark, fill up with water, pour low,
// rinse and wash. Outlines only.

import type { JSX } from 'solid-js';

function Step(props: { readonly children: JSX.Element }) {
  return (
    <svg class="drawing" width="150" height="110" viewBox="0 0 150 110" aria-hidden="true">
      {props.children}
      <path class="edge" d="M6 104H144" />
    </svg>
  );
}

/** One drawing for each step, in the order of the steps. */
export const canSteps: readonly (() => JSX.Element)[] = [
  () => (
    <Step>
      <path class="outline" d="M54 104V48Q54 40 62 36V24H82V36Q90 40 90 48V104" />
      <path class="outline" d="M58 18L88 12" />
      <path class="edge" d="M96 16q6 -6 12 0t12 0M96 28q6 -6 12 0t12 0" />
    </Step>
  ),
  () => (
    <Step>
      <path class="outline" d="M50 20V104H106V20" />
      <path class="edge" d="M94 40H106M94 60H106M94 80H106" />
      <path class="mark-accent" d="M44 60H112" />
      <path class="h" d="M52 68H104M52 76H104M52 84H104M52 92H104" stroke-dasharray="10 3 2 3" />
      <path class="edge" d="M6 60q10 -10 20 0q-10 10 -20 0M30 60H42" />
      <circle class="tip" cx="16" cy="60" r="3" />
    </Step>
  ),
  () => (
    <Step>
      <path class="outline" d="M10 14H52V26" />
      <path class="edge" d="M46 30V46M52 30V46M58 30V46" />
      <rect class="outline" x="30" y="48" width="56" height="56" />
      <rect class="bare" x="30" y="60" width="56" height="44" fill="url(#h-water)" />
      <path class="mark-accent" d="M22 54H92" />
      <path class="outline" d="M86 88L122 50M110 44L130 56" />
    </Step>
  ),
  () => (
    <Step>
      <path class="outline" d="M14 30L58 18L72 60L28 74Z" />
      <path class="outline" d="M70 52L104 78M98 86L112 70" />
      <path class="edge" d="M104 86V98M110 84V98M98 90V98" />
      <path class="outline" d="M130 104V50M130 70L118 60M130 62L142 50" />
    </Step>
  ),
  () => (
    <Step>
      <path class="outline" d="M20 50V104H60V50" />
      <path class="edge" d="M26 20V44M34 20V44M42 20V44M50 20V44" />
      <path class="outline" d="M86 70Q96 50 108 64Q126 52 132 70Q134 90 112 92H96Q84 88 86 70Z" />
      <path class="edge" d="M92 40q4 8 0 12q-4 -4 0 -12M112 34q4 8 0 12q-4 -4 0 -12" />
    </Step>
  ),
];
