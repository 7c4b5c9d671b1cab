// The vessel cut open and drawn to scale: layers from the floor up, the fill line at the gas room, what is too
// much in raddle and, where it would pass the rim, running down the side. Words and figures come in.

import { createMemo, For, Show } from 'solid-js';
import { type ShapeKind, vesselShape } from '#engine/pail/shape.ts';
import { Leader, UprightDimension } from './dimension.tsx';
import { fillOf } from './hatches.tsx';
import { spread, twoLines } from './spread.ts';
import {
  halfWidth,
  layersUpTo,
  levelY,
  rimY,
  slicePath,
  spillPath,
  standing,
  vesselRoom,
  vesselSheet,
  wallPath,
} from './vessel-geometry.ts';

/** One thing in the vessel, in the order it is drawn from the floor up. */
export interface DrawnLayer {
  readonly name: string;
  readonly hatch: string;
  readonly litres: number;
}

export interface VesselPicture {
  readonly vesselL: number;
  readonly shape: ShapeKind;
  readonly usableL: number;
  readonly overL: number;
  /** Highest stand while it gasses; undefined while nothing is in. */
  readonly liftHighL: number | undefined;
  readonly layers: readonly DrawnLayer[];
  readonly usableText: string;
  readonly overText: string;
  readonly rimText: string;
  readonly gasRoomText: string;
  readonly liftText: string;
  readonly alternative: string;
}

const ABOVE = 48;
const MOST_ABOVE = 34;
const LEVEL_FIRST = 16;
const BELOW = 12;
/** Thinner than this a layer cannot show its hatch: sugar is drawn solid, plants are left open. */
const THIN_PX = 4;

export function VesselDrawing(props: {
  readonly picture: VesselPicture;
  readonly width: number;
  readonly onScale: (denominator: number) => void;
}) {
  const sheet = createMemo(() => vesselSheet(props.width));
  const shape = createMemo(() => vesselShape({ volumeL: props.picture.vesselL, shape: props.picture.shape }));
  const stand = createMemo(() => {
    const { widthPx, axisX } = vesselRoom(sheet());
    const first = standing(shape(), { widthPx, heightPx: sheet().tall, axisX, floorY: 0 });
    props.onScale(first.denominator);
    const heightPx = shape().heightM * first.pxPerM;
    return { ...first, floorY: ABOVE + heightPx };
  });
  const usableY = () => levelY(stand(), props.picture.usableL);
  const settledL = () => props.picture.layers.reduce((sum, layer) => sum + layer.litres, 0);
  const heapedY = () => levelY(stand(), settledL());
  /** More than a hand's breadth above the rim is broken off. */
  const brokenOff = () => heapedY() < rimY(stand()) - MOST_ABOVE;
  const settledY = () => Math.max(heapedY(), rimY(stand()) - MOST_ABOVE);
  const topY = () => Math.max(rimY(stand()), settledY());
  const runsOver = () => props.picture.overL > 0 && (props.picture.liftHighL ?? 0) > props.picture.vesselL;
  const slices = createMemo(() =>
    layersUpTo(stand(), { layers: props.picture.layers, mostL: props.picture.usableL }).map((slice) => ({
      ...slice,
      seen: slice.fromY - slice.toY > 0.3,
    })),
  );
  const names = createMemo(() => {
    const { letters, width } = sheet();
    const rim = rimY(stand());
    const list: { lines: readonly string[]; at: { x: number; y: number }; dot: boolean }[] = [];
    const right = (y: number) => stand().axisX + halfWidth(stand(), y);
    list.push({ lines: [props.picture.rimText], at: { x: right(rim) + 6, y: rim }, dot: false });
    const lift = props.picture.liftHighL;
    if (lift !== undefined && lift <= props.picture.vesselL && props.picture.overL === 0) {
      const y = levelY(stand(), lift);
      list.push({ lines: twoLines(props.picture.liftText, letters), at: { x: right(y), y }, dot: false });
    }
    list.push({
      lines: twoLines(props.picture.gasRoomText, letters),
      at: { x: right(usableY()) + 6, y: usableY() },
      dot: false,
    });
    for (const slice of slices().toReversed()) {
      const share = (slice.middleL - props.picture.usableL) / (settledL() - props.picture.usableL);
      const y = slice.seen ? (slice.fromY + slice.toY) / 2 : usableY() - share * (usableY() - topY());
      const inset = Math.min(16, halfWidth(stand(), y) / 3);
      const name = briefly(slice.name, letters, props.picture.layers);
      list.push({ lines: twoLines(name, letters), at: { x: right(y) - inset, y }, dot: true });
    }
    // The name of a level goes before names of things at about its height: its leader then lies level.
    const rank = (one: (typeof list)[number]) => one.at.y - (one.dot ? 0 : LEVEL_FIRST);
    list.sort((a, b) => rank(a) - rank(b));
    const wanted = list.map((one) => ({ y: one.at.y, high: one.lines.length * 21 + 4 }));
    const needed = wanted.reduce((sum, one) => sum + one.high, 0);
    const top = 4;
    const bottom = Math.max(stand().floorY, (wanted[0]?.y ?? 0) + needed);
    const tops = spread(wanted, { top, bottom });
    const nameX = width - sheet().names;
    return {
      bottom: Math.max(...tops.map((y, i) => y + (wanted[i]?.high ?? 0))),
      entries: list.map((one, i) => ({ ...one, topY: tops[i] ?? 0, nameX })),
    };
  });
  const height = () => Math.max(stand().floorY, names().bottom) + BELOW;
  const leftWall = () => stand().axisX - halfWidth(stand(), usableY());
  return (
    <svg
      class="drawing"
      width={sheet().width}
      height={height()}
      viewBox={`0 0 ${sheet().width} ${height()}`}
      role="img"
      aria-label={props.picture.alternative}
    >
      <path class="edge" d={`M8 ${stand().floorY + 1.6}H${sheet().width - sheet().names - 8}`} />
      <For each={slices()}>
        {(slice) => (
          <Show when={slice.seen}>
            <path
              class="layer"
              d={slicePath(stand(), slice.fromY, slice.toY)}
              fill={
                slice.fromY - slice.toY >= THIN_PX
                  ? fillOf(slice.hatch)
                  : slice.hatch === 'sugar'
                    ? 'var(--ink)'
                    : 'none'
              }
            />
          </Show>
        )}
      </For>
      <Show when={props.picture.overL > 0}>
        <path class="over" d={slicePath(stand(), usableY(), topY())} fill={fillOf('over')} />
        <Show when={runsOver()}>
          <path
            class="over"
            d={spillPath(stand(), { levelY: settledY(), overL: props.picture.overL })}
            fill={fillOf('over')}
          />
        </Show>
      </Show>
      <Show when={props.picture.overL === 0 && (props.picture.liftHighL ?? Infinity) <= props.picture.vesselL}>
        <path
          class="bare"
          d={slicePath(stand(), topY(), levelY(stand(), props.picture.liftHighL ?? 0))}
          fill={fillOf('band')}
        />
      </Show>
      <path class="outline" d={wallPath(stand())} />
      <path
        class="fill-line"
        d={`M${leftWall() - 3} ${usableY()}H${stand().axisX + halfWidth(stand(), usableY()) + 6}`}
      />
      <path class="hair" d={`M${sheet().dimensionX - 8} ${usableY()}H${leftWall() - 24}`} />
      <UprightDimension
        x={sheet().dimensionX}
        topY={usableY()}
        bottomY={stand().floorY}
        text={props.picture.usableText}
      />
      <Show when={props.picture.overL > 0}>
        <UprightDimension
          x={sheet().dimensionX}
          topY={Math.min(settledY(), usableY() - 8)}
          bottomY={usableY()}
          text={props.picture.overText}
          accent
          broken={brokenOff()}
        />
      </Show>
      <For each={names().entries}>{(name) => <Leader {...name} elbowX={name.nameX - 12} />}</For>
    </svg>
  );
}

/** A name too long for its place by its last word, where no other layer ends on the same. */
function briefly(name: string, letters: number, all: readonly DrawnLayer[]): string {
  const last = name.split(' ').at(-1) ?? name;
  const shared = all.filter((layer) => layer.name.split(' ').at(-1) === last).length > 1;
  return name.length <= letters || shared ? name : last;
}

/** The vessel before anything is known of it: dashed, as a thing that waits. */
export function WaitingVessel(props: { readonly alternative: string }) {
  return (
    <svg class="drawing" width="350" height="190" viewBox="0 0 350 190" role="img" aria-label={props.alternative}>
      <path class="edge" d="M8 181.6H342" />
      <path class="edge waiting" d="M92 14H100L114 180H236L250 14H258" />
      <path class="hair waiting" d="M103 55H247" />
    </svg>
  );
}
