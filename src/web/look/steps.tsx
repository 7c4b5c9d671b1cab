// The five steps of a look, drawn: lid, strip or meter, nose, top, thermometer. Outlines only, one hand, one pail.

import type { JSX } from 'solid-js';
import type { LookWords } from '#words/en/look.ts';
import type { HowStep } from '../parts/how.tsx';

function Pail(props: { readonly children?: JSX.Element }) {
  return (
    <svg class="how-drawing" width="120" height="100" viewBox="0 0 120 100" aria-hidden="true">
      <path class="outline" d="M28 40H92L86 94H34Z" />
      <path class="edge" d="M31 60H89" />
      {props.children}
    </svg>
  );
}

const DRAWINGS: readonly (() => JSX.Element)[] = [
  () => (
    <Pail>
      <path class="outline" d="M24 34L84 6" />
      <path class="edge" d="M52 18l-4 -8l8 -4" />
      <path class="edge waiting" d="M96 30C106 24 108 14 104 6" />
    </Pail>
  ),
  () => (
    <Pail>
      <path class="outline" d="M48 10H56V74H48Z" />
      <path class="edge" d="M48 62H56M48 68H56" />
      <path class="outline" d="M70 8H82V34H70Z" />
      <path class="edge" d="M76 34V74M72 14H80M72 20H80" />
    </Pail>
  ),
  () => (
    <Pail>
      <path class="edge" d="M40 52C44 44 36 38 42 30M56 52C60 44 52 38 58 30" />
      <path class="outline" d="M66 34L88 20L96 26L78 42Z" />
      <path class="edge waiting" d="M58 22C72 12 88 10 102 12" />
    </Pail>
  ),
  () => (
    <Pail>
      <path class="edge" d="M40 58V50M46 58L43 48M52 58V46M58 58L61 48M64 58V50" />
      <path class="outline" d="M78 26C86 16 100 16 108 26C100 36 86 36 78 26Z" />
      <circle class="tip" cx="93" cy="26" r="4" />
      <path class="edge waiting" d="M80 34L60 48" />
    </Pail>
  ),
  () => (
    <Pail>
      <path class="outline" d="M56 6H64V74H56Z" />
      <path class="edge" d="M60 74V36M64 14H70M64 22H70M64 30H70" />
      <circle class="tip" cx="60" cy="77" r="6" />
    </Pail>
  ),
];

/** The steps with a keyholder's words. */
export function lookSteps(words: LookWords): readonly HowStep[] {
  return words.steps.map((text, i) => ({ text, drawing: DRAWINGS[i]?.() }));
}
