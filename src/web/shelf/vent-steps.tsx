// How a bottle is vented: four drawn steps.

import { shelfSheet } from '#words/en/shelf.ts';
import type { HowStep } from '../parts/how.tsx';

const BOTTLE = 'M36 90V40L50 26V14H70V26L84 40V90Z';

export function ventSteps(): readonly HowStep[] {
  const drawings = [
    <>
      <path class="outline" d={BOTTLE} />
      <path class="hair" d="M60 8V-2M74 8L82 0M46 8L38 0" />
    </>,
    <>
      <path class="outline" d={BOTTLE} />
      <path class="outline" d="M48 10H72" />
      <path class="edge" d="M80 4A24 12 0 0 1 88 20L82 16M88 20L93 14" />
    </>,
    <>
      <path class="outline" d="M14 30H106V74H60L46 88V74H14Z" />
      <path class="hair" d="M26 46H94M26 58H70" />
    </>,
    <>
      <path class="outline" d={BOTTLE} />
      <path class="outline" d="M48 6L72 10" />
      <path class="hair" d="M78 8C84 4 84 -2 90 -4" />
    </>,
  ];
  return shelfSheet.how.map((text, i) => ({
    text,
    drawing: (
      <svg class="drawing" width="120" height="96" viewBox="0 -6 120 102" aria-hidden="true">
        <path class="edge" d="M4 91H116" />
        {drawings[i]}
      </svg>
    ),
  }));
}
