// Bottles in a row, drawn to one scale: liquid to its level, empty ones in dashes, a cap that tells how it is closed.

import { createMemo, For, Show } from 'solid-js';
import { bottleFill, bottlePath, bottleScale, bottleShape, bottleWidth, takesSpan } from './bottle-geometry.ts';
import { fillOf } from './hatches.tsx';

export interface BottleRowProps {
  /** Litres in each. */
  readonly eachL: readonly number[];
  readonly sizeL: number;
  /** Sizes of every bottle of the sheet, so that all rows keep one scale. */
  readonly allSizesL: readonly number[];
  readonly width: number;
  readonly tallPx: number;
  readonly alternative: string;
  readonly onScale?: (denominator: number) => void;
  /** Past its date: the liquid is drawn crossed, in raddle. */
  readonly past?: boolean;
  /** What the next round takes of it: a dimension under the bottles. */
  readonly takes?: { readonly litres: number; readonly text: string } | undefined;
}

const GAP = 8;
const CAP = 7;
const BELOW = 6;
const DIMENSION = 44;

export function BottleRow(props: BottleRowProps) {
  const scale = createMemo(() => bottleScale(props.allSizesL, props.tallPx));
  const shape = createMemo(() => bottleShape(props.sizeL));
  const wide = () => bottleWidth(shape(), scale().pxPerM) + GAP;
  const inRow = () => Math.max(1, Math.floor((props.width - 4) / wide()));
  const high = () => shape().heightM * scale().pxPerM + CAP + BELOW + 4;
  const rows = () => Math.max(1, Math.ceil(props.eachL.length / inRow()));
  const placed = createMemo(() => {
    props.onScale?.(scale().denominator);
    return props.eachL.map((litres, i) => ({
      litres,
      stand: {
        shape: shape(),
        pxPerM: scale().pxPerM,
        axisX: 2 + (i % inRow()) * wide() + wide() / 2,
        floorY: (Math.floor(i / inRow()) + 1) * high() - BELOW,
      },
    }));
  });
  /** Under the bottles, where all stand in one row. */
  const span = createMemo(() => {
    const { takes } = props;
    if (takes === undefined || rows() > 1) return undefined;
    return takesSpan(props.eachL, { takesL: takes.litres, left: 2, wide: wide() });
  });
  /** In the right half of the paper the words end where the dimension ends, so that none is cut off. */
  const endsAtRight = () => (span()?.left ?? 0) > props.width / 2;
  const tall = () => rows() * high() + (props.takes === undefined ? 0 : DIMENSION);
  return (
    <svg
      class="drawing"
      width={props.width}
      height={tall()}
      viewBox={`0 0 ${props.width} ${tall()}`}
      role="img"
      aria-label={props.alternative}
    >
      <For each={Array.from({ length: rows() }, (_, i) => (i + 1) * high() - BELOW)}>
        {(floorY) => <path class="edge" d={`M0 ${floorY + 1.6}H${Math.min(props.width, inRow() * wide() + 4)}`} />}
      </For>
      <For each={placed()}>
        {({ litres, stand }) => {
          const mouthY = stand.floorY - stand.shape.heightM * stand.pxPerM;
          const half = (stand.shape.rings.at(-1)?.radiusM ?? 0) * stand.pxPerM;
          return (
            <>
              <Show when={litres > 0}>
                <path
                  class={props.past ? 'over' : 'layer'}
                  d={bottleFill(stand, litres)}
                  fill={props.past ? fillOf('over') : fillOf('bottled-feed')}
                />
              </Show>
              <path class={litres > 0 ? 'outline' : 'edge waiting'} d={bottlePath(stand)} />
              <path class="outline" d={`M${stand.axisX - half - 2} ${mouthY - 3}H${stand.axisX + half + 2}`} />
            </>
          );
        }}
      </For>
      <Show when={props.takes}>
        {(takes) => (
          <>
            <Show when={span()}>
              {(one) => {
                const y = () => rows() * high() + 6;
                const tick = (x: number) => `M${x - 5} ${y() + 5}L${x + 5} ${y() - 5}`;
                return (
                  <path
                    class="hair"
                    d={`M${one().left} ${y()}H${one().right}${tick(one().left)}${tick(one().right)}`}
                  />
                );
              }}
            </Show>
            <text
              class="figure"
              x={endsAtRight() ? span()?.right : (span()?.left ?? 2)}
              text-anchor={endsAtRight() ? 'end' : 'start'}
              y={rows() * high() + 32}
            >
              {takes().text}
            </text>
          </>
        )}
      </Show>
    </svg>
  );
}
