// Two fillings of one vessel, cut open side by side on one bench and to one scale; the names of what is in them stand
// between, with a line to each side. What is too much is drawn in raddle and runs down the side.

import { createMemo, For, Index, Show } from 'solid-js';
import { vesselShape } from '#engine/pail/shape.ts';
import { fillOf } from './hatches.tsx';
import { spread, twoLines } from './spread.ts';
import type { VesselPicture } from './vessel-drawing.tsx';
import {
  halfWidth,
  layersUpTo,
  levelY,
  rimY,
  type Stand,
  slicePath,
  spillPath,
  standing,
  wallPath,
} from './vessel-geometry.ts';

export interface TwoVesselsPicture {
  readonly before: VesselPicture;
  readonly after: VesselPicture;
  /** What stands over each vessel, and the figure under it. */
  readonly names: readonly [before: string, after: string];
  readonly figures: readonly [before: string, after: string];
  readonly fillLine: string;
  readonly alternative: string;
}

const ABOVE = 44;
const MOST_ABOVE = 14;
const BELOW = 34;
const LINE_HIGH = 21;
/** From this width the names stand between the vessels; on a narrower sheet they are named beside it. */
export const NAMES_FROM = 460;
/** Thinner than this a layer cannot show its hatch: sugar is drawn solid, plants are left open. */
const THIN_PX = 4;
/** About the width of a letter, px. */
const LETTER_PX = 10;

interface Slice {
  readonly name: string;
  readonly hatch: string;
  readonly fromY: number;
  readonly toY: number;
}

export function TwoVessels(props: {
  readonly picture: TwoVesselsPicture;
  readonly width: number;
  readonly onScale: (denominator: number) => void;
}) {
  const sheet = createMemo(() =>
    props.width >= NAMES_FROM ? { middle: 190, letters: 18, tall: 132 } : { middle: 16, letters: 0, tall: 150 },
  );
  const shape = createMemo(() =>
    vesselShape({ volumeL: props.picture.before.vesselL, shape: props.picture.before.shape }),
  );
  const stands = createMemo((): readonly [Stand, Stand] => {
    const side = (props.width - sheet().middle) / 2;
    const first = standing(shape(), { widthPx: side - 26, heightPx: sheet().tall, axisX: 0, floorY: 0 });
    props.onScale(first.denominator);
    const floorY = ABOVE + shape().heightM * first.pxPerM;
    return [
      { ...first, axisX: side / 2, floorY },
      { ...first, axisX: props.width - side / 2, floorY },
    ];
  });
  const sides = createMemo(() =>
    ([props.picture.before, props.picture.after] as const).map((picture, i) =>
      sideOf(picture, stands()[i === 0 ? 0 : 1]),
    ),
  );
  const usableY = () => levelY(stands()[0], props.picture.before.usableL);
  /** Each name once, at the middle of where it stands in both. */
  const names = createMemo(() => {
    if (sheet().letters === 0) return [];
    const [left, right] = [sides()[0]?.slices ?? [], sides()[1]?.slices ?? []];
    const seen = [...new Set([...right, ...left].map(({ name }) => name))];
    const list = seen.map((name) => {
      const ends = [left, right].map((slices) =>
        slices.find((slice) => slice.name === name && slice.fromY > slice.toY),
      );
      const ys = ends.flatMap((slice) => (slice ? [(slice.fromY + slice.toY) / 2] : []));
      const y = ys.length > 0 ? ys.reduce((a, b) => a + b, 0) / ys.length : usableY();
      return { lines: twoLines(name, sheet().letters), ends, y, dot: true };
    });
    const line = { lines: [props.picture.fillLine], ends: [undefined, undefined], y: usableY() - 10, dot: false };
    const all = [line, ...list].toSorted((a, b) => a.y - b.y);
    const tops = spread(
      all.map(({ y, lines }) => ({ y, high: lines.length * LINE_HIGH + 4 })),
      { top: ABOVE - 20, bottom: Math.max(stands()[0].floorY, ABOVE + all.length * (LINE_HIGH + 4)) },
    );
    return all.map((one, i) => ({ ...one, topY: tops[i] ?? 0 }));
  });
  const bottom = () =>
    Math.max(stands()[0].floorY + BELOW, ...names().map(({ topY, lines }) => topY + lines.length * LINE_HIGH + 6));
  const middleX = () => props.width / 2;
  return (
    <svg
      class="drawing two-vessels"
      width={props.width}
      height={bottom()}
      viewBox={`0 0 ${props.width} ${bottom()}`}
      role="img"
      aria-label={props.picture.alternative}
    >
      <Index each={sides()}>
        {(side, i) => (
          <>
            <path
              class="edge"
              d={`M${side().stand.axisX - side().half - 12} ${side().stand.floorY + 1.6}h${2 * side().half + 24}`}
            />
            <text class={i === 0 ? undefined : 'figure'} x={side().stand.axisX} y="18" text-anchor="middle">
              {props.picture.names[i === 0 ? 0 : 1]}
            </text>
            <Index each={side().slices}>
              {(slice) => (
                <Show when={slice().fromY - slice().toY > 0.3}>
                  <path class="layer" d={slicePath(side().stand, slice().fromY, slice().toY)} fill={paint(slice())} />
                </Show>
              )}
            </Index>
            <Show when={side().picture.overL > 0}>
              <path class="over" d={slicePath(side().stand, usableY(), side().topY)} fill={fillOf('over')} />
              <Show when={(side().picture.liftHighL ?? 0) > side().picture.vesselL}>
                <path
                  class="over"
                  d={spillPath(side().stand, { levelY: side().settledY, overL: side().picture.overL })}
                  fill={fillOf('over')}
                />
              </Show>
            </Show>
            <path class="outline" d={wallPath(side().stand)} />
            <path
              class="fill-line"
              d={`M${side().stand.axisX - halfWidth(side().stand, usableY()) - 3} ${usableY()}h${2 * halfWidth(side().stand, usableY()) + 6}`}
            />
            <text
              class={side().picture.overL > 0 ? 'figure-accent' : 'figure'}
              x={side().stand.axisX}
              y={side().stand.floorY + 25}
              text-anchor="middle"
            >
              {props.picture.figures[i === 0 ? 0 : 1]}
            </text>
          </>
        )}
      </Index>
      <Index each={names()}>
        {(name) => {
          const halfText = () => (Math.max(...name().lines.map((line) => line.length)) * LETTER_PX) / 2 + 7;
          return (
            <>
              <Index each={name().ends}>
                {(slice, i) => (
                  <Show when={slice()}>
                    {(there) => {
                      const stand = () => stands()[i === 0 ? 0 : 1];
                      const way = () => (i === 0 ? 1 : -1);
                      const y = () => (there().fromY + there().toY) / 2;
                      const x = () => stand().axisX + way() * (halfWidth(stand(), y()) - 10);
                      return (
                        <>
                          <path
                            class="hair"
                            d={`M${x()} ${y()}L${stand().axisX + way() * (halfWidth(stand(), rimY(stand())) + 8)} ${name().topY + 11}L${middleX() - way() * halfText()} ${name().topY + 11}`}
                          />
                          <circle class="lead" cx={x()} cy={y()} r="3.4" />
                        </>
                      );
                    }}
                  </Show>
                )}
              </Index>
              <text x={middleX()} y={name().topY + 17} text-anchor="middle">
                <For each={name().lines}>
                  {(line, i) => (
                    <tspan x={middleX()} dy={i() === 0 ? 0 : LINE_HIGH}>
                      {line}
                    </tspan>
                  )}
                </For>
              </text>
            </>
          );
        }}
      </Index>
    </svg>
  );
}

function paint({ hatch, fromY, toY }: Slice): string {
  if (fromY - toY >= THIN_PX) return fillOf(hatch);
  return hatch === 'sugar' ? 'var(--ink)' : 'none';
}

/** One vessel: each layer up to the fill line; what stands above it is drawn once, as too much. */
function sideOf(picture: VesselPicture, stand: Stand) {
  const slices: readonly Slice[] = layersUpTo(stand, { layers: picture.layers, mostL: picture.usableL });
  const litres = picture.layers.reduce((sum, layer) => sum + layer.litres, 0);
  const settledY = Math.max(levelY(stand, litres), rimY(stand) - MOST_ABOVE);
  return {
    picture,
    stand,
    slices,
    settledY,
    topY: Math.max(rimY(stand), settledY),
    half: halfWidth(stand, rimY(stand)),
  };
}
