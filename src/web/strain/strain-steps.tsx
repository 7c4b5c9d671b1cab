// How a batch is strained: five drawn steps.

import { strainSheet } from '#words/en/straining.ts';
import { fillOf } from '../drawings/hatches.tsx';
import type { HowStep } from '../parts/how.tsx';

export function strainSteps(): readonly HowStep[] {
  const drawings = [
    <>
      <path class="outline" d="M16 24H92V72H16Z" />
      <path class="hair" d="M26 36H82M26 48H82M26 60H60" />
      <circle class="edge" cx="24" cy="30" r="2.5" />
    </>,
    <>
      <path class="outline" d="M24 30H96L84 50H36Z" />
      <path class="layer" d="M34 30C42 12 78 12 86 30Z" fill={fillOf('clippings')} />
      <path class="hair" d="M46 54V62M60 54V66M74 54V62" />
      <path class="outline" d="M34 70H86V90H34Z" />
    </>,
    <>
      <path class="outline" d="M10 34L40 14L54 34L24 54Z" />
      <path class="edge waiting" d="M56 44H104" />
      <path class="outline" d="M62 54H98V90H62Z" />
      <path class="layer" d="M62 70H98V90H62Z" fill="url(#h-bottled-feed)" />
      <path class="hair" d="M98 60H92M98 70H90M98 80H92" />
    </>,
    <>
      <path class="outline" d="M20 76H100V90H20Z" />
      <path class="outline" d="M36 44H84L78 74H42Z" />
      <path class="layer" d="M40 44C48 28 72 28 80 44Z" fill={fillOf('clippings')} />
      <path class="hair" d="M52 83H68" />
    </>,
    <>
      <path class="outline" d="M36 90V44L50 30V14H70V30L84 44V90Z" />
      <path class="layer" d="M36 50H84V90H36Z" fill="url(#h-bottled-feed)" />
      <path class="outline" d="M48 8L72 12" />
    </>,
  ];
  return strainSheet.how.map((text, i) => ({
    text,
    drawing: (
      <svg class="drawing" width="120" height="96" viewBox="0 0 120 96" aria-hidden="true">
        <path class="edge" d="M4 91H116" />
        {drawings[i]}
      </svg>
    ),
  }));
}
