// The sour line: each reading with what it can be trusted to, the three limits told apart by stroke with their names
// on them, the line above which it is late; under them what is expected, beneath them the spans of dates and the
// temperatures. A table of the same stands behind it for those who hear the page, and is shown on a touch.

import { createMemo, createSignal, For, Show } from 'solid-js';
import { fillOf } from './hatches.tsx';
import {
  alarmPath,
  type BandPoint,
  bandPaths,
  type DrawnReading,
  figurePlace,
  labelled,
  limitNames,
  linePath,
  px,
  ROWS,
  sourScale,
  type WarmthOfDay,
} from './sour-line-geometry.ts';
import { SpanRow, WarmthStrip } from './sour-line-rows.tsx';
import { ExpectedTable } from './sour-line-table.tsx';

/** A reading with what the table says of it. */
export interface SourReading extends DrawnReading {
  readonly on: string;
  readonly by: string;
  readonly error: string;
  /** Where it was expected by what was known before it. */
  readonly expected?: { readonly low: number; readonly high: number; readonly text: string } | undefined;
}

/** A span of dates with its name; without ends it is a sentence alone. */
export interface DrawnSpan {
  readonly text: string;
  readonly days: { readonly from: number; readonly to: number; readonly openEnded: boolean } | undefined;
}

export interface SourLinePicture {
  readonly readings: readonly SourReading[];
  /** One run with likely values, there before the band is. */
  readonly likely: readonly { readonly day: number; readonly ph: number }[];
  /** What is expected of it four times in five; empty until it is worked out. */
  readonly band: readonly (BandPoint & { readonly likely: number })[];
  /** What the expectation stands on: one likely run, the first draws, all of them. */
  readonly stands: 'line' | 'first' | 'whole';
  /** Only the last reading shows where it was expected. */
  readonly bracketed: boolean;
  readonly spans: readonly DrawnSpan[];
  readonly warmth: readonly WarmthOfDay[];
  /** Room for the temperatures is kept also while they are not there yet. */
  readonly keepsWarmth: boolean;
  /** Day from which the temperatures are carried on, and at which today stands; undefined where it is over. */
  readonly today: number | undefined;
  readonly toldUntil: number;
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
    readonly expected: string;
    readonly likely: string;
    readonly today: string;
    readonly warmth: string;
    readonly degrees: (temperatureC: number) => string;
    readonly asTable: string;
    readonly expectedCaption: string;
    readonly expectedTable: readonly [day: string, ph: string, warmth: string];
    readonly expectedHead: string;
    readonly dayName: (day: number) => string;
    readonly between: (low: number, high: number) => string;
    readonly betweenC: (lowC: number, highC: number) => string;
  };
}

const LIMITS = [
  { name: 'food', ph: 4.6, under: false },
  { name: 'ready', ph: 4.2, under: false },
  { name: 'held', ph: 4.0, under: true },
] as const;
/** Length of the name on the line of alarm, px. */
const LATE_ROOM = 150;
const LATE_HIGH = 16;

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
      lowestPh: props.picture.likely.reduce((least, { ph }) => Math.min(least, ph), 14) - 0.1,
    }),
  );
  const [tabled, setTabled] = createSignal(false);
  const whole = () =>
    props.height + props.picture.spans.length * ROWS.spanPx + (props.picture.keepsWarmth ? ROWS.warmthPx : 0);
  const band = createMemo(() => bandPaths(props.picture.band, scale()));
  /** The middle of the band once it is there, the one likely run before. */
  const likely = () =>
    linePath(
      props.picture.band.length > 0
        ? props.picture.band.map(({ day, likely: ph }) => ({ day, ph }))
        : props.picture.likely,
      scale(),
    );
  const bracket = () => {
    const last = props.picture.readings.at(-1);
    if (!props.picture.bracketed || last?.expected === undefined) return '';
    const [x, high, low] = [scale().x(last.day) - 13, scale().y(last.expected.high), scale().y(last.expected.low)];
    return `M${px(x + 6)} ${px(high)}h-6V${px(low)}h6`;
  };
  const legendX = () => scale().right - 214;
  const names = createMemo(() => {
    const limits = LIMITS.map((limit) => ({ ...limit, text: props.picture.words.limits[limit.name] }));
    return limitNames(limits, props.picture.readings, scale());
  });
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
    if (first === undefined) return undefined;
    const x = scale().x(first.day) + 8;
    // Lower where a reading stands in its way at the top.
    const isTaken = props.picture.readings.some(
      ({ day, ph }) => Math.abs(scale().x(day) - x - LATE_ROOM / 2) < LATE_ROOM && scale().y(ph) < scale().top + 50,
    );
    return { x, y: isTaken ? scale().y(5) - 8 : scale().top + 12 };
  };
  const shown = createMemo(() => {
    const at = lateAt();
    const late = at && { left: at.x, right: at.x + LATE_ROOM, top: at.y - LATE_HIGH, bottom: at.y + 4 };
    return labelled(props.picture.readings, scale(), [...names().map(({ box }) => box), ...(late ? [late] : [])]);
  });
  return (
    <div class="sour-line">
      <svg
        class="drawing"
        width={props.width}
        height={whole()}
        viewBox={`0 0 ${props.width} ${whole()}`}
        role="img"
        aria-label={props.picture.alternative}
      >
        <Show when={likely() !== ''}>
          <g class="expected" data-stands={props.picture.stands}>
            <Show when={band().area !== ''}>
              <path class="bare band" d={band().area} fill={fillOf('band')} />
              <path class="hair" d={band().low} />
              <path class="hair waiting" d={band().high} />
            </Show>
            <path class="likely-ground" d={likely()} />
            <path class="likely" d={likely()} />
            <rect class="hatched" x={legendX()} y="3" width="26" height="14" fill={fillOf('band')} />
            <text x={legendX() + 33} y="16">
              {props.picture.words.expected}
            </text>
            <path class="likely" d={`M${legendX() + 132} 10h28`} />
            <text x={legendX() + 167} y="16">
              {props.picture.words.likely}
            </text>
          </g>
        </Show>
        <Show when={props.picture.today !== undefined && props.picture.today <= scale().days}>
          <path class="hair today" d={`M${px(scale().x(props.picture.today ?? 0))} ${scale().top}V${scale().bottom}`} />
        </Show>
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
        <path class="edge" d={bracket()} />
        <path class="read" d={line()} />
        <For each={props.picture.readings}>
          {(one) => (
            <>
              <path class="edge whisker" d={whisker(one)} />
              <circle class="lead" cx={px(scale().x(one.day))} cy={px(scale().y(one.ph))} r="5.5" />
            </>
          )}
        </For>
        <For each={names()}>
          {({ text, side, x, y }) => (
            <text class="knocked" x={x} text-anchor={side === 'left' ? 'start' : 'end'} y={px(y)}>
              {text}
            </text>
          )}
        </For>
        <For each={shown()}>
          {(one) => {
            const place = () => figurePlace(one, scale());
            return (
              <text
                class="knocked figure"
                classList={{ last: one === props.picture.readings.at(-1) }}
                x={px(place().x)}
                y={px(place().y)}
                text-anchor={place().anchor}
              >
                {one.text}
              </text>
            );
          }}
        </For>
        <For each={props.picture.spans}>
          {(span, i) => <SpanRow span={span} scale={scale()} top={props.height + i() * ROWS.spanPx} />}
        </For>
        <Show when={props.picture.warmth.length > 0}>
          <WarmthStrip
            days={props.picture.warmth}
            scale={scale()}
            top={props.height + props.picture.spans.length * ROWS.spanPx + 32}
            toldUntil={props.picture.toldUntil}
            name={props.picture.words.warmth}
            degrees={props.picture.words.degrees}
          />
        </Show>
      </svg>
      <button type="button" class="why" aria-pressed={tabled()} onClick={() => setTabled(!tabled())}>
        {props.picture.words.asTable}
      </button>
      <div classList={{ unseen: !tabled(), 'line-tables': tabled() }}>
        <table>
          <caption>{props.picture.words.caption}</caption>
          <thead>
            <tr>
              <For each={props.picture.words.table}>{(head) => <th scope="col">{head}</th>}</For>
              <Show when={props.picture.readings.some(({ expected }) => expected !== undefined)}>
                <th scope="col">{props.picture.words.expectedHead}</th>
              </Show>
            </tr>
          </thead>
          <tbody>
            <For each={props.picture.readings}>
              {(one) => (
                <tr>
                  <th scope="row">{one.on}</th>
                  <td>{one.error}</td>
                  <td>{one.by}</td>
                  <Show when={one.expected}>{(expected) => <td>{expected().text}</td>}</Show>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <ExpectedTable picture={props.picture} />
      </div>
    </div>
  );
}
