// Two sour lines on one paper: as it is thin, if you change it heavy, each with its span in a hatch of its own, the day
// each comes to 4.2 dropped to the axis, and the days between them as a dimension. A table stands behind it.

import { createMemo, For, Index, Show } from 'solid-js';
import {
  axisDays,
  bandPath,
  casePaper,
  type DayBandPh,
  type DayPh,
  limitTops,
  linePath,
} from './case-lines-geometry.ts';
import { fillOf } from './hatches.tsx';
import { px } from './sour-line-geometry.ts';

export interface DrawnCase {
  readonly name: string;
  readonly line: readonly DayPh[];
  readonly band: readonly DayBandPh[] | undefined;
  readonly sourDay: number | null;
}

export interface CaseLinesPicture {
  readonly before: DrawnCase;
  readonly after: DrawnCase;
  /** Whether anything differs. */
  readonly differs: boolean;
  /** "5 days", between the two. */
  readonly apart: string | undefined;
  readonly alternative: string;
  readonly words: {
    readonly ph: string;
    readonly day: string;
    readonly caption: string;
    readonly limits: Readonly<Record<'food' | 'ready' | 'held', string>>;
    readonly figure: (ph: number) => string;
  };
}

const LIMITS = [
  { name: 'food', ph: 4.6 },
  { name: 'ready', ph: 4.2 },
  { name: 'held', ph: 4 },
] as const;
const SOUR_PH = 4.2;
/** Days read out in the table. */
const TABLE_DAYS = [0, 1, 2, 3, 5, 7, 10, 14, 21, 28, 42, 60];
/** From one name of the key to the next, px. */
const KEY_APART_PX = 126;
/** About the width of a letter of a figure, px. */
const FIGURE_LETTER_PX = 11;

export function CaseLines(props: {
  readonly picture: CaseLinesPicture;
  readonly width: number;
  readonly height: number;
}) {
  const { words } = props.picture;
  const days = createMemo(() => axisDays([props.picture.before.sourDay, props.picture.after.sourDay]));
  const drawnPh = () =>
    [props.picture.before, props.picture.after].flatMap(({ line, band }) => [
      ...line.filter(({ day }) => day <= days()).map(({ ph }) => ph),
      ...(band ?? []).filter(({ day }) => day <= days()).flatMap(({ ph }) => [ph.low, ph.high]),
    ]);
  const paper = createMemo(() =>
    casePaper({ width: props.width, height: props.height, days: days(), drawnPh: drawnPh() }),
  );
  const limitY = createMemo(() => limitTops(LIMITS, paper()));
  const keyX = (i: number) => paper().left + 14 + i * KEY_APART_PX;
  const drops = () =>
    [props.picture.before.sourDay, props.picture.after.sourDay].map((day) =>
      day === null || day > paper().days ? undefined : paper().x(day),
    );
  const between = createMemo(() => {
    const [a, b] = drops();
    if (a === undefined || b === undefined || props.picture.apart === undefined || Math.abs(a - b) < 6)
      return undefined;
    const [fromX, toX] = [Math.min(a, b), Math.max(a, b)];
    const half = (props.picture.apart.length * FIGURE_LETTER_PX) / 2 + 5;
    const middle = (fromX + toX) / 2;
    const within = toX - fromX >= 2 * half + 10;
    const end = toX + 2 * half > paper().right;
    return {
      fromX,
      toX,
      y: paper().bottom - 14,
      within,
      gap: within ? ([middle - half, middle + half] as const) : ([toX, toX] as const),
      textX: within ? middle : end ? fromX - 8 : toX + 8,
      end,
    };
  });
  const tick = (x: number, y: number) => `M${px(x - 5)} ${px(y + 5)}L${px(x + 5)} ${px(y - 5)}`;
  const at = (line: readonly DayPh[], day: number) => line.find((one) => one.day >= day)?.ph;
  return (
    <div class="case-lines">
      <svg
        class="drawing"
        width={props.width}
        height={props.height}
        viewBox={`0 0 ${props.width} ${props.height}`}
        role="img"
        aria-label={props.picture.alternative}
      >
        <Show when={props.picture.before.band}>
          {(band) => <path class="bare" d={bandPath(band(), paper())} fill={fillOf('band')} />}
        </Show>
        <Show when={props.picture.differs && props.picture.after.band}>
          {(band) => <path class="bare" d={bandPath(band(), paper())} fill={fillOf('upright')} />}
        </Show>
        <path class="outline" d={`M${paper().left} ${paper().top - 8}V${paper().bottom}H${paper().right}`} />
        <text x={paper().left - 8} y="36" text-anchor="end">
          {words.ph}
        </text>
        <For each={paper().phTicks}>
          {(ph) => (
            <>
              <path class="edge" d={`M${paper().left - 6} ${px(paper().y(ph))}h6`} />
              <text class="figure" x={paper().left - 9} y={px(paper().y(ph) + 7)} text-anchor="end">
                {ph}
              </text>
            </>
          )}
        </For>
        <For each={paper().dayTicks}>
          {(day, i) => (
            <>
              <path class="edge" d={`M${px(paper().x(day))} ${paper().bottom}v6`} />
              <text
                x={i() === 0 ? 0 : px(paper().x(day))}
                y={paper().bottom + 25}
                text-anchor={i() === 0 ? 'start' : day > days() - 2 ? 'end' : 'middle'}
              >
                {i() === 0 ? `${words.day} 0` : day}
              </text>
            </>
          )}
        </For>
        <For each={LIMITS}>
          {(limit) => (
            <path
              class={`case-limit ${limit.name}`}
              d={`M${paper().left} ${px(paper().y(limit.ph))}H${px(paper().right)}`}
            />
          )}
        </For>
        <For each={LIMITS}>
          {(limit, i) => (
            <>
              <path
                class="hair"
                d={`M${paper().right} ${px(paper().y(limit.ph))}L${paper().right + 8} ${px((limitY()[i()] ?? 0) + 10)}`}
              />
              <text x={paper().right + 11} y={px((limitY()[i()] ?? 0) + 16)}>
                {words.limits[limit.name]}
              </text>
            </>
          )}
        </For>
        <Index each={drops()}>
          {(x) => (
            <Show when={x()}>
              {(there) => <path class="hair" d={`M${px(there())} ${px(paper().y(SOUR_PH))}V${paper().bottom}`} />}
            </Show>
          )}
        </Index>
        <path class="case-ground" d={linePath(props.picture.before.line, paper())} />
        <path class="case-before" d={linePath(props.picture.before.line, paper())} />
        <Show when={props.picture.differs}>
          <path class="case-ground" d={linePath(props.picture.after.line, paper())} />
          <path class="case-after" d={linePath(props.picture.after.line, paper())} />
        </Show>
        <Index each={drops()}>
          {(x, i) => (
            <Show when={(i === 0 || props.picture.differs) && x()}>
              {(there) => (
                <circle class={i === 0 ? 'case-dot' : 'lead'} cx={px(there())} cy={px(paper().y(SOUR_PH))} r="6" />
              )}
            </Show>
          )}
        </Index>
        <Show when={between()}>
          {(span) => (
            <>
              <path
                class="hair"
                d={`M${px(span().fromX)} ${span().y}H${px(span().gap[0])}M${px(span().gap[1])} ${span().y}H${px(span().toX)}${tick(span().fromX, span().y)}${tick(span().toX, span().y)}`}
              />
              <text
                class="knocked figure"
                x={px(span().textX)}
                y={span().y + 7}
                text-anchor={span().within ? 'middle' : span().end ? 'end' : 'start'}
              >
                {props.picture.apart}
              </text>
            </>
          )}
        </Show>
        <Index each={[props.picture.before, props.picture.after]}>
          {(one, i) => (
            <>
              <rect
                class="hatched"
                x={keyX(i)}
                y="2"
                width="30"
                height="20"
                fill={fillOf(i === 0 ? 'band' : 'upright')}
              />
              <path class={i === 0 ? 'case-before' : 'case-after'} d={`M${keyX(i)} 12h30`} />
              <text class={i === 0 ? undefined : 'figure'} x={keyX(i) + 36} y="18">
                {one().name}
              </text>
            </>
          )}
        </Index>
      </svg>
      <div class="unseen">
        <table>
          <caption>{words.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{words.day}</th>
              <th scope="col">{props.picture.before.name}</th>
              <th scope="col">{props.picture.after.name}</th>
            </tr>
          </thead>
          <tbody>
            <For each={TABLE_DAYS}>
              {(day) => (
                <tr>
                  <th scope="row">{day}</th>
                  <td>{words.figure(at(props.picture.before.line, day) ?? Number.NaN)}</td>
                  <td>{words.figure(at(props.picture.after.line, day) ?? Number.NaN)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
    </div>
  );
}
