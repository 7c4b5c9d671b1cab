// The beds as strips in walking order, lengths to one scale: the whole strip is the need of the bed, hatched from the left
// by what was given, open what is missing, too much past the end. Pots stand as circles. Figures come from tasks/plot/got.ts.

import { A } from '@solidjs/router';
import { createUniqueId, For, Show } from 'solid-js';
import type { Nutrient } from '#engine/ground/need.ts';
import type { GotBed, GotView } from '#tasks/plot/got.ts';
import { got, gotAlternative, sayBed } from '#words/en/got.ts';
import { type LaidStrip, laidStrip, pxPerMetre } from '../drawings/got-strip-geometry.ts';
import { fillOf } from '../drawings/hatches.tsx';
import { measured } from '../parts/measured.ts';

const FIRST_WIDTH = 350;
const HIGH = 34;
const TOP = 6;
const MIDDLE = TOP + HIGH / 2;
const BOX = HIGH + 2 * TOP;
/** Room left of the strips and right of the last stroke. */
const EDGE = 2;
/** Narrower than this a stretch is too small for a hatch, and is black. */
const LEAST_HATCHED_PX = 7;
const HATCH: Readonly<Record<string, string>> = {
  pour: fillOf('bottled-feed'),
  compost: fillOf('crumbs'),
  mulch: fillOf('clippings'),
  solids: fillOf('trimmings'),
  product: fillOf('halves'),
  'cover-crop': fillOf('pods'),
};
const hatch = (kind: string) => HATCH[kind] ?? fillOf('roots');
const paint = (kind: string, wide: number) => (wide < LEAST_HATCHED_PX ? 'var(--ink)' : hatch(kind));

export function Strips(props: { readonly view: GotView; readonly nutrient: Nutrient }) {
  const [width, watch] = measured(FIRST_WIDTH);
  const asked = () => props.view.beds.map(({ strip: { lengthM }, covered, pieces }) => ({ lengthM, covered, pieces }));
  const scale = () => pxPerMetre(asked(), width() - 4 * EDGE);
  const laid = () => asked().map((one) => laidStrip(one, scale()));
  const widened = () => props.view.beds.flatMap(({ name }, i) => (laid()[i]?.liquid?.widened ? [name] : []));
  return (
    <section class="got-strips" ref={watch}>
      <Legend view={props.view} laid={laid()} />
      <Show when={widened().length > 0}>
        <p class="note">{got.widened(widened())}</p>
      </Show>
      <p class="got-scale">
        <svg class="drawing" width={scale() + 12} height="22" aria-hidden="true">
          <path class="edge" d={`M6 4V18M6 11H${6 + scale()}M${6 + scale()} 4V18`} />
        </svg>
        {got.oneMetre}, {got.scaleNote}
      </p>
      <ul class="got-beds plain">
        <For each={props.view.beds}>
          {(bed, i) => (
            <Show when={laid()[i()]}>{(strip) => <BedStrip bed={bed} laid={strip()} nutrient={props.nutrient} />}</Show>
          )}
        </For>
      </ul>
    </section>
  );
}

function BedStrip(props: { readonly bed: GotBed; readonly laid: LaidStrip; readonly nutrient: Nutrient }) {
  const sentences = () => sayBed(props.nutrient, props.bed);
  const right = () => {
    const { lengthPx, past, whisker, liquid } = props.laid;
    const ends = [lengthPx, past ? past.x + past.wide : 0, whisker?.toX ?? 0, liquid ? liquid.x + liquid.wide : 0];
    return Math.max(...ends) + 4 * EDGE;
  };
  return (
    <li>
      <p>
        <A class="got-bed-link" href={`/got/${props.bed.id}`}>
          {props.bed.name}
        </A>
        <Show when={props.bed.strip.lengthTold}> {got.metres(props.bed.strip.lengthM)}</Show>,{' '}
        {props.bed.crops.length > 0 ? props.bed.crops.join(', ') : got.noCrop}
      </p>
      <svg
        class="drawing"
        width={right()}
        height={BOX}
        viewBox={`${-EDGE} 0 ${right()} ${BOX}`}
        role="img"
        aria-label={gotAlternative(props.bed.name, sentences())}
      >
        <Drawn bed={props.bed} laid={props.laid} />
      </svg>
      <For each={sentences()}>{(line) => <p>{line}</p>}</For>
      <Show when={props.bed.pots}>{(pots) => <p class="note">{got.pots(pots())}</p>}</Show>
    </li>
  );
}

function Drawn(props: { readonly bed: GotBed; readonly laid: LaidStrip }) {
  const clip = createUniqueId();
  const laid = () => props.laid;
  const middle = () => laid().lengthPx / 2;
  return (
    <>
      <clipPath id={clip}>
        <Outline bed={props.bed} laid={laid()} />
      </clipPath>
      <g clip-path={`url(#${clip})`}>
        <For each={laid().stretches}>
          {({ kind, x, wide }) => (
            <rect class="hatched" x={x} y={TOP} width={wide} height={HIGH} fill={paint(kind, wide)} />
          )}
        </For>
      </g>
      <g class={!props.bed.strip.lengthTold && !props.bed.strip.pots ? 'waiting' : undefined}>
        <Outline bed={props.bed} laid={laid()} />
      </g>
      <Show when={laid().past}>
        {(past) => (
          <>
            <rect class="over" x={past().x} y={TOP} width={past().wide} height={HIGH} fill={fillOf('over')} />
            <Show when={past().broken}>
              <path class="got-break" d={broken(past().x + past().wide)} />
            </Show>
          </>
        )}
      </Show>
      <Show when={laid().liquid}>
        {(liquid) => (
          <rect
            class="hatched got-liquid"
            x={liquid().x}
            y={TOP - 3}
            width={liquid().wide}
            height={HIGH + 6}
            fill={paint('pour', liquid().wide)}
          />
        )}
      </Show>
      <Show when={laid().whisker}>{(whisker) => <Whisker {...whisker()} />}</Show>
      <Show when={props.bed.needG === null}>
        <text x={middle()} y={MIDDLE + 6} text-anchor="middle">
          ?
        </text>
      </Show>
    </>
  );
}

/** The bed itself: a strip, or its pots in a row. */
function Outline(props: { readonly bed: GotBed; readonly laid: LaidStrip }) {
  const each = () => props.laid.lengthPx / (props.bed.strip.pots?.count ?? 1);
  return (
    <Show
      when={props.bed.strip.pots}
      fallback={<rect class="edge" x="0" y={TOP} width={props.laid.lengthPx} height={HIGH} />}
    >
      {(pots) => (
        <For each={Array.from({ length: pots().count }, (_, i) => i)}>
          {(i) => (
            <circle class="edge" cx={(i + 0.5) * each()} cy={MIDDLE} r={Math.max(1, Math.min(HIGH, each()) / 2 - 1)} />
          )}
        </For>
      )}
    </Show>
  );
}

function Whisker(props: NonNullable<LaidStrip['whisker']>) {
  const line = () =>
    `M${props.fromX} ${MIDDLE}H${props.toX}M${props.fromX} ${MIDDLE - 6}v12${props.broken ? '' : `M${props.toX} ${MIDDLE - 6}v12`}`;
  return (
    <>
      <path class="got-whisker-ground" d={line()} />
      <path class="edge" d={line()} />
    </>
  );
}

/** A zigzag where a strip is broken off. */
function broken(x: number): string {
  return `M${x} ${TOP - 3}l-5 ${HIGH / 4 + 2}l10 ${HIGH / 4 - 1}l-10 ${HIGH / 4 - 1}l5 ${HIGH / 4 + 2}`;
}

function Legend(props: { readonly view: GotView; readonly laid: readonly LaidStrip[] }) {
  const over = () => props.laid.some(({ past }) => past !== undefined);
  const line = () => props.laid.some(({ whisker }) => whisker !== undefined);
  return (
    <ul class="got-legend plain">
      <li>
        <svg class="swatch" width="40" height="28" aria-hidden="true">
          <rect class="edge" x="1" y="5" width="38" height="18" />
        </svg>
        {got.needLegend}
      </li>
      <For each={props.view.kinds}>
        {(kind) => (
          <li>
            <svg class="swatch" width="40" height="28" aria-hidden="true">
              <rect class="hatched" x="1" y="1" width="38" height="26" fill={hatch(kind)} />
            </svg>
            {got.kind(kind)}
          </li>
        )}
      </For>
      <Show when={over()}>
        <li>
          <svg class="swatch" width="40" height="28" aria-hidden="true">
            <rect class="over" x="1" y="1" width="38" height="26" fill={fillOf('over')} />
          </svg>
          {got.overLegend}
        </li>
      </Show>
      <Show when={line()}>
        <li>
          <svg class="swatch" width="40" height="28" aria-hidden="true">
            <path class="edge" d="M2 14H38M2 8V20M38 8V20" />
          </svg>
          {got.whiskerLegend}
        </li>
      </Show>
      <Show when={props.view.beds.some(({ needG }) => needG === null)}>
        <li>
          <b>?</b> {got.noNeed}
        </li>
      </Show>
      <Show when={props.view.beds.some(({ strip }) => !strip.lengthTold && !strip.pots)}>
        <li>{got.lengthAssumed}</li>
      </Show>
    </ul>
  );
}
