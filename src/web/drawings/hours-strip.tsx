// One day as a ruled line of hours: open stretches hatched, the hour that runs marked, sunrise and sunset as ticks.

import { For, Show } from 'solid-js';
import type { SunDay } from '#tasks/plot/hours.ts';
import { fillOf } from './hatches.tsx';
import { hourX, sayStretch, stretchesOf } from './hours-strip-geometry.ts';

const TOP = 24;
const HIGH = 26;
const BASE = TOP + HIGH;
const TALL = BASE + 30;
const QUARTERS = [0, 6, 12, 18, 24];

export function HoursStrip(props: {
  readonly width: number;
  readonly open: readonly boolean[];
  readonly sun: SunDay | undefined;
  /** Hours since midnight; nothing on a day that does not run. */
  readonly now: number | undefined;
  readonly nowWord: string;
  readonly label: string;
}) {
  const x = (hour: number) => hourX(hour, props.width);
  const sunAt = () =>
    [props.sun?.sunriseMinute, props.sun?.sunsetMinute].flatMap((minute) =>
      minute === undefined ? [] : [minute / 60],
    );
  const anchor = (hour: number) => (hour === 0 ? 'start' : hour === 24 ? 'end' : 'middle');
  return (
    <svg class="drawing" width={props.width} height={TALL} role="img" aria-label={props.label}>
      <For each={stretchesOf(props.open)}>
        {({ from, to }) => (
          <rect class="hatched" x={x(from)} y={TOP} width={x(to) - x(from)} height={HIGH} fill={fillOf('window')} />
        )}
      </For>
      <path class="outline" d={`M${x(0)} ${BASE}H${x(24)}`} />
      <For each={Array.from({ length: 25 }, (_, hour) => hour)}>
        {(hour) => <path class="hair" d={`M${x(hour)} ${BASE}v${hour % 6 === 0 ? 9 : 5}`} />}
      </For>
      <For each={sunAt()}>
        {(hour) => (
          <>
            <path class="edge" d={`M${x(hour)} ${TOP - 6}V${BASE}`} />
            <path class="edge" d={`M${x(hour) - 6} ${TOP - 6}a6 6 0 0 1 12 0Z`} />
          </>
        )}
      </For>
      <For each={QUARTERS}>
        {(hour) => (
          <text x={x(hour)} y={TALL - 3} text-anchor={anchor(hour)}>
            {hour}
          </text>
        )}
      </For>
      <Show when={props.now}>
        {(now) => (
          <>
            <path class="mark" d={`M${x(now())} ${TOP - 2}V${BASE + 4}`} />
            <text class="figure" x={Math.max(18, Math.min(props.width - 18, x(now())))} y="14" text-anchor="middle">
              {props.nowWord}
            </text>
          </>
        )}
      </Show>
    </svg>
  );
}

/** The open stretches of a day in words. */
export function sayOpen(open: readonly boolean[], none: string): string {
  return stretchesOf(open).map(sayStretch).join(', ') || none;
}
