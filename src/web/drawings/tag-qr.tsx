// A square code that opens a peg on a phone with the app: modules as one path, with its quiet border of four.

import { createMemo } from 'solid-js';
import { encode } from 'uqr';

const BORDER = 4;

export function TagQr(props: { readonly text: string; readonly sizeMm: number; readonly label: string }) {
  // Once for a tag: it is asked for its size and its modules several times.
  const code = createMemo(() => encode(props.text, { ecc: 'M', border: BORDER }));
  const path = () =>
    code()
      .data.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : '')))
      .join('');
  return (
    <svg
      class="tag-qr"
      width={`${props.sizeMm}mm`}
      height={`${props.sizeMm}mm`}
      viewBox={`0 0 ${code().size} ${code().size}`}
      shape-rendering="crispEdges"
      role="img"
      aria-label={props.label}
    >
      <path class="qr-paper" d={`M0 0h${code().size}v${code().size}h-${code().size}z`} />
      <path class="qr-ink" d={path()} />
    </svg>
  );
}
