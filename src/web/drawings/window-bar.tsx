// The sugar window as a bar of grams: too little on the left, the window in the middle, too much on the
// right, and a mark at what is weighed. Where no amount fits, the two ends are drawn the wrong way round.

import { createMemo, For, Show } from 'solid-js';
import { type SugarInProduct, sugarBar } from '#words/en/weigh-in.ts';
import { fillOf } from './hatches.tsx';
import { barLabels, barScale } from './window-bar-geometry.ts';

const TOP = 46;
const HIGH = 34;
const BASE = TOP + HIGH;
const TALL = BASE + 34;

export function WindowBar(props: { readonly as: SugarInProduct; readonly closed: boolean; readonly width: number }) {
  const bar = createMemo(() => barScale({ ...props.as, leastG: props.as.leastG.likely }, props.width));
  const labels = createMemo(() => barLabels(bar(), props.width, props.closed));
  const between = () => ({ x: Math.min(bar().leastX, bar().mostX), wide: Math.abs(bar().mostX - bar().leastX) });
  const accent = () => props.closed || bar().weighedG < bar().leastG || bar().weighedG > bar().mostG;
  return (
    <svg
      class="drawing"
      width={props.width}
      height={TALL}
      role="img"
      aria-label={sugarBar.alternative(props.as, props.closed)}
    >
      <Show when={!props.closed}>
        <rect
          class="bare"
          x={bar().mostX}
          y={TOP}
          width={props.width - 1 - bar().mostX}
          height={HIGH}
          fill={fillOf('band')}
        />
        <Show when={bar().leastX > 140}>
          <text x="12" y={TOP + 23}>
            {sugarBar.short}
          </text>
        </Show>
      </Show>
      <rect class="edge" x="1" y={TOP} width={props.width - 2} height={HIGH} />
      <rect class="knock-out" x={between().x} y={TOP - 6} width={between().wide} height={HIGH + 12} />
      <rect
        class={props.closed ? 'over' : 'hatched'}
        x={between().x}
        y={TOP - 6}
        width={between().wide}
        height={HIGH + 12}
        fill={fillOf(props.closed ? 'over' : 'window')}
      />
      <For each={bar().ticksX}>{(x) => <path class="edge" d={`M${x} ${BASE}v9`} />}</For>
      <For each={labels()}>
        {(label) => (
          <text
            class={label.figure ? 'figure' : undefined}
            x={label.x}
            y={label.low ? BASE + 29 : 20}
            text-anchor={label.anchor}
          >
            {label.text}
          </text>
        )}
      </For>
      <Show when={bar().weighedG > 0}>
        <path class={accent() ? 'tip-accent' : 'tip'} d={`M${bar().weighedX - 10} ${TOP - 17}h20l-10 16Z`} />
        <path class={accent() ? 'mark-accent' : 'mark'} d={`M${bar().weighedX} ${TOP - 2}V${BASE}`} />
        <text class={accent() ? 'figure-accent' : 'figure'} x={bar().weighedTextX} y="20" text-anchor="middle">
          {sugarBar.weighed(bar().weighedG)}
        </text>
      </Show>
    </svg>
  );
}
