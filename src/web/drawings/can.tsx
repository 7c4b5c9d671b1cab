// A watering can from the side: the one in hand with water and a thin layer of feed at its floor, poured ones empty
// in full outline, the next ones dashed. A part-can is filled to its share.

import { Show } from 'solid-js';
import { canLevel } from './can-geometry.ts';

const BODY = { x: 16, y: 33, width: 77, height: 87 } as const;

export function CanDrawing(props: {
  readonly state: 'now' | 'poured' | 'half' | 'next';
  /** Share of the can that is filled. */
  readonly fillFraction: number;
}) {
  const filled = () => {
    if (props.state === 'now') return props.fillFraction;
    return props.state === 'half' ? props.fillFraction / 2 : 0;
  };
  const levelY = () => BODY.y + BODY.height * (1 - canLevel(filled()));
  const waiting = () => props.state === 'next';
  return (
    <svg class="drawing can" width="150" height="124" viewBox="0 0 150 124" aria-hidden="true">
      <Show when={filled() > 0}>
        <rect
          class="bare"
          x={BODY.x}
          y={levelY()}
          width={BODY.width}
          height={BODY.y + BODY.height - levelY()}
          fill="url(#h-water)"
        />
        <path class="edge" d={`M${BODY.x - 8} ${levelY()}H${BODY.x + BODY.width}`} />
        <rect class="tip" x={BODY.x} y={BODY.y + BODY.height - 4} width={BODY.width} height="3" />
      </Show>
      <rect
        class={waiting() ? 'outline waiting' : 'outline'}
        x={BODY.x}
        y={BODY.y}
        width={BODY.width}
        height={BODY.height}
      />
      <path
        class={waiting() ? 'outline waiting' : 'outline'}
        d={`M${BODY.x + 6} ${BODY.y}Q${BODY.x + 6} 3 ${BODY.x + 38} 3T${BODY.x + 71} ${BODY.y}`}
      />
      <path
        class={waiting() ? 'outline waiting' : 'outline'}
        d={`M${BODY.x + BODY.width} 88L${BODY.x + BODY.width + 46} 24M${BODY.x + BODY.width} 102L${BODY.x + BODY.width + 52} 28M${BODY.x + BODY.width + 34} 16L${BODY.x + BODY.width + 56} 30`}
      />
      <path class="edge" d="M4 121H146" />
    </svg>
  );
}
