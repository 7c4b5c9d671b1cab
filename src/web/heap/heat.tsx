// The core temperature by day: each reading a dot, the range in which a heap works hatched, the line from which the
// published rules count, ticks where it was turned. A table of the same stands behind it.

import { For, Show } from 'solid-js';
import type { HeapView } from '#tasks/plot/heap.ts';
import { sayDate } from '#words/en/app.ts';
import { heapSheet } from '#words/en/heap-sheet.ts';
import { useRecord } from '../app/context.tsx';
import { fillOf } from '../drawings/hatches.tsx';
import { heatScale } from '../drawings/heap-side-geometry.ts';

/** Top of the scale. */
const TOP_C = 80;
const BOX = { left: 44, right: 350, top: 16, bottom: 196 };

export function HeapHeat(props: { readonly view: HeapView }) {
  const record = useRecord();
  const curve = () => props.view.curve;
  const points = () => curve().points;
  const lastDay = () => Math.max(7, points().at(-1)?.day ?? 0, ...curve().turnedDays);
  const scale = () => heatScale(lastDay(), BOX);
  const path = () =>
    points()
      .map(({ day, coreC }, i) => `${i === 0 ? 'M' : 'L'}${scale().x(day)} ${scale().y(coreC)}`)
      .join('');
  /** The days that count best for each rule, once for each temperature; hotter than the scale has no line. */
  const windows = () => {
    const spans = curve().spans.flatMap(({ span, needs }) => (span === undefined ? [] : [{ span, needs }]));
    return spans.filter(
      ({ span, needs }, i) =>
        spans.findIndex(
          (one) =>
            one.needs.leastC === needs.leastC && one.span.fromDay === span.fromDay && one.span.toDay === span.toDay,
        ) === i,
    );
  };
  const otherC = () => [...new Set(curve().spans.map(({ needs }) => needs.leastC))].filter((one) => one !== ruleC());
  const ruleC = () => Math.max(...curve().spans.map(({ needs }) => needs.leastC));
  return (
    <Show when={points().length > 0} fallback={<p>{heapSheet.heatNone}</p>}>
      <svg
        class="drawing heap-heat"
        viewBox="0 0 360 226"
        role="img"
        aria-label={heapSheet.curveAlternative(props.view.heap, points().length)}
      >
        <rect
          class="bare"
          x={BOX.left}
          y={scale().y(curve().works.mostC)}
          width={BOX.right - BOX.left}
          height={scale().y(curve().works.leastC) - scale().y(curve().works.mostC)}
          fill={fillOf('band')}
        />
        <For each={windows()}>
          {({ span, needs }) => (
            <rect
              class="heap-window"
              x={scale().x(span.fromDay)}
              y={scale().y(needs.mostC ?? TOP_C)}
              width={Math.max(3, scale().x(span.toDay) - scale().x(span.fromDay))}
              height={scale().y(needs.leastC) - scale().y(needs.mostC ?? TOP_C)}
            />
          )}
        </For>
        <For each={otherC()}>
          {(temperatureC) => (
            <>
              <path class="hair" stroke-dasharray="3 5" d={`M${BOX.left} ${scale().y(temperatureC)}H${BOX.right}`} />
              <text class="heap-tick knocked" x={BOX.right} y={scale().y(temperatureC) - 4} text-anchor="end">
                {heapSheet.degrees(temperatureC)}
              </text>
            </>
          )}
        </For>
        <path class="hair" d={`M${BOX.left} ${BOX.top}V${BOX.bottom}H${BOX.right}`} />
        <path class="fill-line" stroke-dasharray="10 6" d={`M${BOX.left} ${scale().y(ruleC())}H${BOX.right}`} />
        <For each={[0, 20, 40, 60, 80]}>
          {(temperatureC) => (
            <text class="heap-tick" x={BOX.left - 6} y={scale().y(temperatureC) + 5} text-anchor="end">
              {temperatureC}
            </text>
          )}
        </For>
        <text class="heap-tick knocked" x={BOX.right} y={scale().y(ruleC()) - 6} text-anchor="end">
          {heapSheet.degrees(ruleC())}: {heapSheet.ruleSpan}
        </text>
        <path class="edge" fill="none" d={path()} />
        <For each={points()}>
          {({ day, coreC }) => <circle class="d" cx={scale().x(day)} cy={scale().y(coreC)} r="5" />}
        </For>
        <For each={curve().turnedDays}>
          {(day) => <path class="outline" d={`M${scale().x(day)} ${BOX.bottom}v-12`} />}
        </For>
        <text class="heap-tick" x={BOX.left} y={BOX.bottom + 22}>
          {heapSheet.dayTick(0)}
        </text>
        <text class="heap-tick" x={BOX.right} y={BOX.bottom + 22} text-anchor="end">
          {heapSheet.dayTick(lastDay())}
        </text>
      </svg>
      <Show when={windows().length > 0}>
        <p class="note">{heapSheet.windows}</p>
      </Show>
      <p>{heapSheet.turnedOn(curve().turnedDays)}</p>
      <Show when={props.view.cooling}>
        {(cooling) => <p>{heapSheet.coolingSaid(cooling().tauDays, cooling().readingsCount)}</p>}
      </Show>
      <table>
        <thead>
          <tr>
            <For each={heapSheet.curveHeads}>{(head) => <th scope="col">{head}</th>}</For>
          </tr>
        </thead>
        <tbody>
          <For each={points()}>
            {({ on, day, coreC }) => (
              <tr>
                <th scope="row">{sayDate(on, record.today())}</th>
                <td>{day}</td>
                <td>{heapSheet.degrees(coreC)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </Show>
  );
}
