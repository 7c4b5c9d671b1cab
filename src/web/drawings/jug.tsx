// The dose in a jug, and a small dose in a syringe: marks, the mark to reach in raddle, its figure. Broken off above
// with the zigzag; a dimension in millimetres only where the screen was set and the jug measured.

import { For, Show } from 'solid-js';
import { jugOnPaper, syringeOnPaper } from './jug-geometry.ts';

const LEFT = 30;
const RIGHT = 196;
const TOP = 30;
/** Lower than this, the height and the names beside it would stand on each other. */
const ROOM_FOR_HEIGHT = 100;

/** A dimension line beside the wall, ticks at its ends. */
function heightLine(topY: number, bottomY: number): string {
  const x = RIGHT + 14;
  const tick = (y: number) => `M${x - 5} ${y + 5}L${x + 5} ${y - 5}`;
  return `M${x} ${topY}V${bottomY}${tick(topY)}${tick(bottomY)}`;
}

/** Level lines of liquid feed: dash and dot, close. */
function feedLines(box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }) {
  let path = '';
  for (let y = box.y + 6; y < box.y + box.height - 2; y += 6) path += `M${box.x} ${y.toFixed(1)}h${box.width}`;
  return path;
}

export function JugDrawing(props: {
  readonly width: number;
  readonly jugMl: number;
  /** What goes to the mark; full jugs before it are told in words. */
  readonly doseMl: number;
  readonly figure: string;
  readonly lines: readonly string[];
  readonly pxPerMl: number | undefined;
  /** "31 mm" and "from the floor", at full size. */
  readonly height: { readonly figure: string; readonly words: string } | undefined;
  readonly label: string;
}) {
  const paper = () => jugOnPaper({ doseMl: props.doseMl, jugMl: props.jugMl, topY: TOP, pxPerMl: props.pxPerMl });
  const textX = RIGHT + 24;
  const wall = () => {
    const { floorY, topY } = paper();
    return `M${RIGHT} ${topY}V${floorY - 8}Q${RIGHT} ${floorY} ${RIGHT - 8} ${floorY}H${LEFT}`;
  };
  const zigzag = () => `M${LEFT - 8} ${TOP}H92l8 9l12 -18l8 9H${RIGHT + 10}`;
  const bottom = () => paper().floorY + 14;
  const feed = () => ({
    x: LEFT + 2,
    y: paper().doseY,
    width: RIGHT - LEFT - 6,
    height: paper().floorY - paper().doseY,
  });
  return (
    <svg
      class="drawing jug"
      width={props.width}
      height={bottom()}
      viewBox={`0 0 ${props.width} ${bottom()}`}
      role="img"
      aria-label={props.label}
    >
      <path class="h" d={feedLines(feed())} stroke-dasharray="10 3 2 3" />
      <path class="hair" d={`M${LEFT} ${TOP - 8}V${paper().floorY + 10}`} />
      <path class="wall" d={wall()} />
      <Show when={paper().broken}>
        <path class="hair" d={zigzag()} />
      </Show>
      <For each={paper().marks}>
        {(mark) => (
          <>
            <path class="edge" d={`M${mark.named ? 150 : 170} ${mark.y}H${RIGHT}`} />
            <Show when={mark.named}>
              <rect class="knock-out" x="92" y={mark.y - 12} width="54" height="24" />
              <text class="figure" x="142" y={mark.y + 7} text-anchor="end">
                {mark.volumeMl}
              </text>
            </Show>
          </>
        )}
      </For>
      <path class="mark-accent" d={`M${LEFT - 10} ${paper().doseY}H${props.width}`} />
      <text class="dose-figure" x={props.width} y={paper().doseY - 12} text-anchor="end">
        {props.figure}
      </text>
      <For each={props.lines}>
        {(line, i) => (
          <text x={textX} y={paper().doseY + 28 + i() * 24}>
            {line}
          </text>
        )}
      </For>
      <Show when={paper().fullSize && paper().floorY - paper().doseY >= ROOM_FOR_HEIGHT && props.height}>
        {(height) => (
          <>
            <path class="hair" d={heightLine(paper().doseY, paper().floorY)} />
            <text class="figure" x={textX} y={paper().floorY - 22}>
              {height().figure}
            </text>
            <text x={textX} y={paper().floorY}>
              {height().words}
            </text>
          </>
        )}
      </Show>
    </svg>
  );
}

/** A 20 mL syringe lying down, drawn for doses that a jug cannot read. */
export function SyringeDrawing(props: {
  readonly width: number;
  readonly doseMl: number;
  readonly figure: string;
  readonly label: string;
}) {
  const paper = () => syringeOnPaper(props);
  return (
    <svg
      class="drawing jug"
      width={props.width}
      height="150"
      viewBox={`0 0 ${props.width} 150`}
      role="img"
      aria-label={props.label}
    >
      <path
        class="h"
        d={feedLines({ x: paper().emptyX, y: 60, width: paper().doseX - paper().emptyX, height: 44 })}
        stroke-dasharray="10 3 2 3"
      />
      <rect class="outline" x={paper().emptyX} y="58" width={paper().fullX - paper().emptyX} height="46" />
      <path class="outline" d={`M${paper().emptyX} 76H6M${paper().emptyX} 86H6M6 76V86`} />
      <path
        class="outline"
        d={`M${paper().doseX} 60V102M${paper().doseX} 81H${props.width - 8}M${props.width - 8} 62V100`}
      />
      <For each={paper().marks}>
        {({ volumeMl, x }) => (
          <>
            <path class="edge" d={`M${x} 104v12`} />
            <text class="figure" x={x} y="138" text-anchor="middle">
              {volumeMl}
            </text>
          </>
        )}
      </For>
      <path class="mark-accent" d={`M${paper().doseX} 40V112`} />
      <text class="dose-figure" x={Math.max(110, paper().doseX)} y="34" text-anchor="end">
        {props.figure}
      </text>
    </svg>
  );
}
