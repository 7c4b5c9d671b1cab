// The steps for a jar without a peg, each a small drawing: open outdoors, dip, smell, heap, tag.

import type { JSX } from 'solid-js';
import { fillOf } from '../drawings/hatches.tsx';

function Step(props: { readonly children: JSX.Element; readonly alternative: string }) {
  return (
    <svg class="drawing step" width="120" height="96" viewBox="0 0 120 96" role="img" aria-label={props.alternative}>
      <path class="edge" d="M4 90H116" />
      {props.children}
    </svg>
  );
}

const JAR = 'M40 36V88H80V36L74 28V20H46V28Z';

/** The drawings in the order of the steps. */
export function jarSteps(alternatives: readonly string[]): readonly JSX.Element[] {
  const [open = '', dip = '', smell = '', heap = '', tag = ''] = alternatives;
  return [
    <Step alternative={open}>
      <path class="outline" d={JAR} />
      <path class="layer" d="M40 54H80V88H40Z" fill="url(#h-bottled-feed)" />
      <path class="outline" d="M48 14L82 2" />
      <path class="hair" d="M86 18L98 10M88 26H102M86 8L92 -2" />
    </Step>,
    <Step alternative={dip}>
      <path class="outline" d={JAR} />
      <path class="layer" d="M40 54H80V88H40Z" fill="url(#h-bottled-feed)" />
      <path class="outline" d="M56 4H66V66H56Z" />
      <path class="hair" d="M56 46H66M56 56H66" />
    </Step>,
    <Step alternative={smell}>
      <path class="outline" d="M6 90V50H34V90" />
      <path class="edge" d="M12 50V40H28V50" />
      <path class="outline" d="M112 20C96 24 96 40 88 50C86 56 92 60 100 60V74" />
      <path class="hair" d="M20 36C24 30 16 26 20 20M34 38C38 32 30 28 34 22" />
      <path class="hair" d="M36 82H84M36 78V86M84 78V86" />
    </Step>,
    <Step alternative={heap}>
      <path class="outline" d="M44 90C54 50 94 50 112 90Z" />
      <path class="layer" d="M52 72C60 58 92 58 103 72Z" fill={fillOf('roofs')} />
      <path class="outline" d="M10 22L36 8L44 24L48 34L40 38L30 34L18 40Z" />
      <path class="hair" d="M50 40C54 44 56 48 58 54" />
    </Step>,
    <Step alternative={tag}>
      <path class="outline" d="M20 30H84V78H20Z" />
      <path class="hair" d="M30 44H74M30 56H74M30 68H56" />
      <path class="outline" d="M100 12L72 62L70 72L78 66L108 18Z" />
    </Step>,
  ];
}
