// Dimension lines with 45° ticks and a figure in a gap of the line, and leaders with a dot at the thing.

import { Show } from 'solid-js';

/** An upright dimension; the figure stands in a gap where there is room for it, else above. */
export function UprightDimension(props: {
  readonly x: number;
  readonly topY: number;
  readonly bottomY: number;
  readonly text: string;
  readonly accent?: boolean;
  /** The thing goes on above: the line ends in a zigzag. */
  readonly broken?: boolean;
}) {
  const tall = () => props.bottomY - props.topY;
  const middle = () => (props.topY + props.bottomY) / 2;
  const within = () => tall() >= 56;
  const line = () =>
    within()
      ? `M${props.x} ${props.topY}V${middle() - 15}M${props.x} ${middle() + 13}V${props.bottomY}`
      : `M${props.x} ${props.topY}V${props.bottomY}`;
  const tick = (y: number) => `M${props.x - 5} ${y + 5}L${props.x + 5} ${y - 5}`;
  const zigzag = () => `M${props.x} ${props.topY}l-8 -4l16 -6l-8 -4v-6`;
  const ticks = () => tick(props.bottomY) + (props.broken ? zigzag() : tick(props.topY));
  return (
    <>
      <path class={props.accent ? 'hair-accent' : 'hair'} d={line() + ticks()} />
      <text
        class={props.accent ? 'figure-accent' : 'figure'}
        x={props.x}
        y={within() ? middle() + 6 : props.topY - (props.broken ? 26 : 12)}
        text-anchor="middle"
      >
        {props.text}
      </text>
    </>
  );
}

/** A name with a thin line to the thing it names; without a dot it names a level. */
export function Leader(props: {
  readonly at: { readonly x: number; readonly y: number };
  readonly elbowX: number;
  readonly nameX: number;
  readonly topY: number;
  readonly lines: readonly string[];
  readonly dot: boolean;
}) {
  const y = () => props.topY + 11;
  return (
    <>
      <path class="hair" d={`M${props.at.x} ${props.at.y}L${props.elbowX} ${y()}H${props.nameX - 4}`} />
      <Show when={props.dot}>
        <circle class="lead" cx={props.at.x} cy={props.at.y} r="3.4" />
      </Show>
      <text x={props.nameX} y={y() + 6}>
        {props.lines.map((line, i) => (
          <tspan x={props.nameX} dy={i === 0 ? 0 : 21}>
            {line}
          </tspan>
        ))}
      </text>
    </>
  );
}
