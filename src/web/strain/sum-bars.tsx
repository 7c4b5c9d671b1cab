// In = out as two bars to one scale, what is not accounted for in dashes; names and figures beside their hatch.

import { For } from 'solid-js';
import type { SumPart } from '#tasks/plot/straining.ts';
import { sumAlternative, sumName } from '#words/en/straining.ts';
import { sumPieces } from '../drawings/bar-geometry.ts';
import { fillOf } from '../drawings/hatches.tsx';

const HATCH: Readonly<Record<SumPart['kind'], string>> = {
  plants: fillOf('clippings'),
  water: fillOf('water'),
  sugar: fillOf('sugar'),
  starter: fillOf('bottled-feed'),
  liquid: fillOf('bottled-feed'),
  solids: fillOf('clippings'),
  missing: 'none',
  'too-much': 'none',
};
const HIGH = 36;
/** Thinner than this a part cannot show its hatch: it is drawn solid, or open where it is a gap. */
const THIN_PX = 5;

export function SumBars(props: {
  readonly inParts: readonly SumPart[];
  readonly outParts: readonly SumPart[];
  readonly width: number;
}) {
  const total = () => props.inParts.reduce((sum, { massKg }) => sum + massKg, 0);
  return (
    <>
      <svg
        class="drawing"
        width={props.width}
        height={2 * HIGH + 14}
        viewBox={`0 0 ${props.width} ${2 * HIGH + 14}`}
        role="img"
        aria-label={sumAlternative(props.inParts, props.outParts)}
      >
        <Bar parts={props.inParts} totalKg={total()} width={props.width} y={2} />
        <Bar parts={props.outParts} totalKg={total()} width={props.width} y={HIGH + 10} />
      </svg>
      <ul class="sum-names">
        <For each={[...props.inParts, ...props.outParts]}>
          {(part) => (
            <li>
              <svg class="swatch" width="28" height="28" aria-hidden="true">
                <rect
                  class={isGap(part) ? 'edge waiting' : 'hatched'}
                  x="1"
                  y="1"
                  width="26"
                  height="26"
                  fill={HATCH[part.kind]}
                />
              </svg>
              <b>{sumName(part)}</b>
            </li>
          )}
        </For>
      </ul>
    </>
  );
}

function isGap({ kind }: SumPart): boolean {
  return kind === 'missing' || kind === 'too-much';
}

function Bar(props: {
  readonly parts: readonly SumPart[];
  readonly totalKg: number;
  readonly width: number;
  readonly y: number;
}) {
  return (
    <For each={sumPieces(props.parts, props)}>
      {(piece) => (
        <rect
          class={isGap(piece.part) ? 'edge waiting' : 'hatched'}
          x={piece.x}
          y={props.y}
          width={Math.max(1, piece.width)}
          height={HIGH}
          fill={piece.width < THIN_PX && !isGap(piece.part) ? 'var(--ink)' : HATCH[piece.part.kind]}
        />
      )}
    </For>
  );
}
