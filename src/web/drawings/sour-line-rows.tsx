// What stands beneath the days of the sour line: each span of dates as a dimension line, and the temperatures.

import { createMemo, For, Show } from 'solid-js';
import type { DrawnSpan } from './sour-line.tsx';
import { px, type SourLineScale, spanOn, type WarmthOfDay, warmthStrip } from './sour-line-geometry.ts';

/** The name with its dates, and under it the line with a tick at each end; one that goes on ends in an arrow. */
export function SpanRow(props: { readonly span: DrawnSpan; readonly scale: SourLineScale; readonly top: number }) {
  const drawn = () => props.span.days && spanOn(props.span.days, props.scale);
  const y = () => props.top + 34;
  const tick = (x: number) => `M${px(x - 6)} ${y() + 6}l12 -12`;
  return (
    <g class="span">
      <text x="0" y={props.top + 18}>
        {props.span.text}
      </text>
      <path class="hair" d={`M${props.scale.left} ${y()}H${px(props.scale.right)}`} />
      <Show when={drawn()}>
        {(ends) => (
          <>
            <path
              class="span-line"
              classList={{ waiting: ends().goesOn }}
              d={`M${px(ends().from)} ${y()}H${px(ends().to)}`}
            />
            <path class="mark" d={tick(ends().from) + (ends().goesOn ? '' : tick(ends().to))} />
          </>
        )}
      </Show>
    </g>
  );
}

/** Low to high of each day; what is carried on from the last telling is dashed. */
export function WarmthStrip(props: {
  readonly days: readonly WarmthOfDay[];
  readonly scale: SourLineScale;
  readonly top: number;
  readonly toldUntil: number;
  readonly name: string;
  readonly degrees: (temperatureC: number) => string;
}) {
  const strip = createMemo(() => warmthStrip(props.days, props));
  return (
    <g class="warmth">
      <For each={strip().ticks}>
        {(tick) => <path class="hair" d={`M${props.scale.left} ${px(tick.y)}H${px(props.scale.right)}`} />}
      </For>
      <path class="warm" d={strip().told} />
      <path class="warm waiting" d={strip().ahead} />
      <For each={strip().ticks}>
        {(tick, i) => (
          <text class="knocked" x={props.scale.left} y={px(tick.y + (i() === 0 ? 18 : -5))}>
            {i() === 0 ? props.degrees(tick.c) : `${props.name}, ${props.degrees(tick.c)}`}
          </text>
        )}
      </For>
    </g>
  );
}
