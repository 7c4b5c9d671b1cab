// A loose heap on its bench line: scraps as they lie, or the compost heap. Broken off with a zigzag where it is larger
// than the sheet.

import { fillOf } from './hatches.tsx';

export function Heap(props: {
  readonly x: number;
  readonly floorY: number;
  readonly width: number;
  readonly height: number;
  readonly hatch: string;
  readonly brokenOff?: boolean;
}) {
  const path = () => {
    const { x, floorY, width: w, height: h } = props;
    return (
      `M${x} ${floorY}C${x + w * 0.2} ${floorY - h * 0.9} ${x + w * 0.36} ${floorY - h * 1.05} ${x + w * 0.5} ${floorY - h}` +
      `S${x + w * 0.82} ${floorY - h * 0.8} ${x + w} ${floorY}Z`
    );
  };
  return (
    <>
      <path class="knock-out" d={path()} />
      <path class="bare" d={path()} fill={fillOf(props.hatch)} />
      <path class="outline" d={path()} />
      {props.brokenOff && (
        <path
          class="hair zigzag"
          d={`M${props.x + props.width * 0.5} ${props.floorY - props.height - 8}l6 -6l-12 -4l6 -6`}
        />
      )}
    </>
  );
}
