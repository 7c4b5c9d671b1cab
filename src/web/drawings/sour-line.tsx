// The sour line: each reading with what it can be trusted to, the three limits told apart by stroke with their names
// on them, and the line above which it is late. A table of the same stands behind it for those who hear the page.

import { createMemo, For, Show } from 'solid-js';
import { alarmPath, type DrawnReading, labelled, namesSide, px, sourScale } from './sour-line-geometry.ts';

/** A reading with what the table says of it. */
export interface SourReading extends DrawnReading {
  readonly on: string;
  readonly by: string;
  readonly error: string;
}

export interface SourLinePicture {
  readonly readings: readonly SourReading[];
  readonly alarm: readonly { readonly ph: number; readonly day: number }[];
  readonly lastDay: number;
  readonly alternative: string;
  readonly words: {
    readonly ph: string;
    readonly day: string;
    readonly late: string;
    readonly limits: Readonly<Record<'food' | 'ready' | 'held', string>>;
    readonly table: readonly [day: string, ph: string, by: string];
    readonly caption: string;
  };
}

const LIMITS = [
  { name: 'food', ph: 4.6 },
  { name: 'ready', ph: 4.2 },
  { name: 'held', ph: 4.0 },
] as const;
/** Shorter than this a name on a line stands in the way of the dots. */
const NAME_ROOM = 17;

export function SourLine(props: {
  readonly picture: SourLinePicture;
  readonly width: number;
  readonly height: number;
}) {
  const scale = createMemo(() =>
    sourScale(props.picture.readings, {
      width: props.width,
      height: props.height,
      lastDay: props.picture.lastDay,
    }),
  );
  const namesAt = createMemo(() => namesSide(props.picture.readings, scale()));
  const shown = createMemo(() => labelled(props.picture.readings, scale()));
  const line = () =>
    props.picture.readings
      .map(({ day, ph }, i) => `${i ? 'L' : 'M'}${px(scale().x(day))} ${px(scale().y(ph))}`)
      .join('');
  const whisker = ({ day, ph, errorPh }: DrawnReading) => {
    const [x, high, low] = [scale().x(day), scale().y(ph + errorPh), scale().y(ph - errorPh)];
    return `M${px(x)} ${px(high)}V${px(low)}M${px(x - 6)} ${px(high)}h12M${px(x - 6)} ${px(low)}h12`;
  };
  const late = () => alarmPath(props.picture.alarm, scale());
  const lateAt = () => {
    const first = props.picture.alarm[0];
    return first === undefined ? undefined : { x: scale().x(first.day) + 8, y: scale().top + 12 };
  };
  /** Left of the figure where the paper ends. */
  const anchor = (day: number) => (scale().x(day) > scale().right - 44 ? 'end' : 'start');
  const textX = (day: number) => scale().x(day) + (anchor(day) === 'end' ? -11 : 11);
  /** Above the dot; under it just below the lowest limit, whose name stands there. */
  const figureY = (ph: number) => scale().y(ph) + (ph >= 3.35 && ph <= 4.05 ? 30 : -9);
  return (
    <div class="sour-line">
      <svg
        class="drawing"
        width={props.width}
        height={props.height}
        viewBox={`0 0 ${props.width} ${props.height}`}
        role="img"
        aria-label={props.picture.alternative}
      >
        <path class="outline" d={`M${scale().left} ${scale().top - 6}V${scale().bottom}H${scale().right}`} />
        <text x={scale().left - 9} y="16" text-anchor="end">
          {props.picture.words.ph}
        </text>
        <For each={scale().phTicks}>
          {(ph) => (
            <>
              <path class="edge" d={`M${scale().left - 6} ${px(scale().y(ph))}h6`} />
              <text class="figure" x={scale().left - 10} y={px(scale().y(ph) + 7)} text-anchor="end">
                {ph}
              </text>
            </>
          )}
        </For>
        <For each={scale().dayTicks}>
          {(day, i) => (
            <>
              <path class="edge" d={`M${px(scale().x(day))} ${scale().bottom}v7`} />
              <text
                x={i() === 0 ? 0 : px(scale().x(day))}
                y={scale().bottom + 27}
                text-anchor={i() === 0 ? 'start' : i() === scale().dayTicks.length - 1 ? 'end' : 'middle'}
              >
                {i() === 0 ? `${props.picture.words.day} 0` : day}
              </text>
            </>
          )}
        </For>
        <For each={LIMITS}>
          {(limit) => (
            <path
              class={`limit-${limit.name}`}
              d={`M${scale().left} ${px(scale().y(limit.ph))}H${px(scale().right)}`}
            />
          )}
        </For>
        <Show when={late() !== ''}>
          <path class="late" d={late()} />
          <text class="knocked" x={px(lateAt()?.x ?? 0)} y={px(lateAt()?.y ?? 0)}>
            {props.picture.words.late}
          </text>
        </Show>
        <path class="read" d={line()} />
        <For each={props.picture.readings}>
          {(one) => (
            <>
              <path class="edge" d={whisker(one)} />
              <circle class="lead" cx={px(scale().x(one.day))} cy={px(scale().y(one.ph))} r="5.5" />
            </>
          )}
        </For>
        <For each={LIMITS}>
          {(limit) => (
            <text
              class="knocked"
              x={namesAt() === 'left' ? scale().left + 6 : scale().right - 4}
              text-anchor={namesAt() === 'left' ? 'start' : 'end'}
              y={px(scale().y(limit.ph) + (limit.name === 'held' ? NAME_ROOM + 2 : -5))}
            >
              {props.picture.words.limits[limit.name]}
            </text>
          )}
        </For>
        <For each={shown()}>
          {(one) => (
            <text
              class="knocked figure"
              classList={{ last: one === props.picture.readings.at(-1) }}
              x={px(textX(one.day))}
              y={px(figureY(one.ph))}
              text-anchor={anchor(one.day)}
            >
              {one.text}
            </text>
          )}
        </For>
      </svg>
      <div class="unseen">
        <table>
          <caption>{props.picture.words.caption}</caption>
          <thead>
            <tr>
              <For each={props.picture.words.table}>{(head) => <th scope="col">{head}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={props.picture.readings}>
              {(one) => (
                <tr>
                  <th scope="row">{one.on}</th>
                  <td>{one.error}</td>
                  <td>{one.by}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
    </div>
  );
}
