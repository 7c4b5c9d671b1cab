// Small drawings of what a look finds: the six kinds of top, and the pads of a strip by how many bars they bear. They
// stand beside their word and say nothing aloud.

import { For, type JSX } from 'solid-js';
import type { Surface } from '#engine/souring/look.ts';

const TOPS: Readonly<Record<Surface, () => JSX.Element>> = {
  clear: () => <path class="edge" d="M4 18H60M12 27H30M38 27H52" />,
  bubbles: () => (
    <>
      <path class="edge" d="M4 18H60" />
      <circle class="edge" cx="15" cy="13" r="5" />
      <circle class="edge" cx="30" cy="14" r="4" />
      <circle class="edge" cx="46" cy="11" r="7" />
    </>
  ),
  'flat-white': () => (
    <path
      class="edge"
      d="M4 13H60V19H4ZM10 13l-4 6M18 13l-4 6M26 13l-4 6M34 13l-4 6M42 13l-4 6M50 13l-4 6M58 13l-4 6"
    />
  ),
  'fuzzy-white': () => (
    <path class="edge" d="M4 20H60M14 20V12M18 20L14 9M22 20V7M26 20L30 9M30 20V12M40 20V14M44 20L42 10M48 20L51 12" />
  ),
  'coloured-fuzz': () => (
    <>
      <path class="edge" d="M4 20H60M12 20V10M18 20L15 6M24 20V5M30 20L33 7M36 20V11M46 20V12M51 20L53 10" />
      <circle class="tip" cx="12" cy="9" r="3" />
      <circle class="tip" cx="15" cy="5" r="3" />
      <circle class="tip" cx="24" cy="4" r="3" />
      <circle class="tip" cx="33" cy="6" r="3" />
      <circle class="tip" cx="46" cy="11" r="3" />
    </>
  ),
  larvae: () => <path class="edge" d="M4 10H60M12 18q4 -6 8 0t8 0M34 26q4 -6 8 0t8 0M40 17q3 -5 6 0t6 0" />,
};

/** What lies on top, seen from the side. */
export function TopDrawing(props: { readonly top: Surface }) {
  return (
    <svg width="64" height="32" viewBox="0 0 64 32" aria-hidden="true">
      {TOPS[props.top]()}
    </svg>
  );
}

/** A pad of a strip: more bars, more sour. */
export function PadDrawing(props: { readonly bars: number }) {
  const xs = () => Array.from({ length: props.bars }, (_, i) => 4 + (40 * (i + 0.5)) / props.bars);
  return (
    <svg width="48" height="18" viewBox="0 0 48 18" aria-hidden="true">
      <rect class="edge" x="2" y="2" width="44" height="14" />
      <For each={xs()}>{(x) => <path class="edge" d={`M${x} 3V15`} />}</For>
    </svg>
  );
}
