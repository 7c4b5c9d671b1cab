// Draws the line where a layout has put it. Each stretch and each peg is a link with its whole sentence for whoever
// listens; the drawing itself decides nothing.

import { For, type JSX, Show } from 'solid-js';
import { canLayers } from './can-geometry.ts';
import { fillOf } from './hatches.tsx';
import { Heap } from './heap.tsx';
import type { StripAt } from './line-geometry.ts';
import type { Box, LineLayout, LinePicture, PegPlace, PictureStrip, Words } from './line-picture.ts';
import { Sack } from './sack.tsx';
import { StateMark } from './state-mark.tsx';
import { halfWidth, levelInY, rimY, slicePath, wallPath } from './vessel-geometry.ts';

/** Textures of this drawing that no material has: liquid feed, and what is set aside. */
function LineHatches() {
  return (
    <defs>
      <pattern id="l-feed" width="16" height="6" patternUnits="userSpaceOnUse">
        <path class="h2" d="M0 3H9M12 3H13.4" />
      </pattern>
      <pattern id="l-aside" width="14" height="14" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path class="h" d="M7 0V8" />
      </pattern>
    </defs>
  );
}

export function LineDrawing(props: { readonly picture: LinePicture; readonly layout: LineLayout }) {
  const l = () => props.layout;
  const p = () => props.picture;
  const bar = () =>
    l().scale.pxPerM / 2 > MOST_BAR_PX
      ? { width: l().scale.pxPerM / 5, figure: p().scale.fifthMetre }
      : { width: l().scale.pxPerM / 2, figure: p().scale.halfMetre };
  return (
    <svg class="drawing line-drawing" width={l().width} height={l().height} viewBox={`0 0 ${l().width} ${l().height}`}>
      <title>{p().title}</title>
      <LineHatches />
      <g>
        <path class="edge" d={l().benches.join('')} />
        <path class="solids" d={l().solids.join('')} />
        <path class="flow" d={l().flows.join('')} />
        <path class="flow flow-waiting" d={l().waitingFlows.join('')} />
        <path class="flow pour" d={l().pours.join('')} />
        <For each={l().tips}>{(tip) => <path class="tip" d={tipPath(tip)} />}</For>
        <Show when={l().solidsAt}>
          {(at) => (
            <text x={at().x} y={at().y}>
              {p().toHeap}
            </text>
          )}
        </Show>
      </g>
      <Stretch to={p().scraps.to} label={p().scraps.label} hit={l().scraps.hit}>
        <Show when={l().scraps.sack}>
          {(sack) => <Sack x={sack().x} floorY={sack().y} width={sack().width} height={sack().height} />}
        </Show>
        <Show when={l().scraps.heap}>
          {(heap) => (
            <Heap
              x={heap().x}
              floorY={heap().y}
              width={heap().width}
              height={heap().height}
              hatch={p().scraps.hatch}
              brokenOff={l().scraps.brokenOff}
            />
          )}
        </Show>
        <WordBlock words={l().scraps.words} />
      </Stretch>
      <Show when={l().noPegHit} fallback={<Show when={l().pail}>{(pail) => <WordBlock words={pail()} />}</Show>}>
        {(hit) => (
          <Stretch to={p().noPeg.to} label={p().noPeg.label} hit={hit()}>
            <Show when={l().pail}>{(pail) => <WordBlock words={pail()} />}</Show>
          </Stretch>
        )}
      </Show>
      <For each={l().pegs}>{(place) => <OnePeg place={place} />}</For>
      <Stretch to={p().bottles.to} label={p().bottles.label} hit={l().bottles.hit}>
        <For each={l().bottles.each}>{(bottle) => <OneBottle bottle={bottle} />}</For>
        <Show when={l().bottles.more}>
          {(more) => (
            <text x={more().x} y={more().y}>
              {p().andMore(more().count)}
            </text>
          )}
        </Show>
        <WordBlock words={l().bottles.words} />
      </Stretch>
      <Show when={l().bottles.takes}>
        {(takes) => (
          <g>
            <path class="hair" d={dimensionPath(takes())} />
            <text class="figure knocked" x={takes().x + takes().width + 10} y={takes().y + 7}>
              {p().bottles.takes?.text}
            </text>
          </g>
        )}
      </Show>
      <Stretch to={p().can.to} label={p().can.label} hit={l().can.hit}>
        <CanBody body={l().can.body} concentrateFraction={p().can.concentrateFraction} />
        <WordBlock words={l().can.words} />
      </Stretch>
      <Stretch to={p().beds.to} label={p().beds.label} hit={l().beds.hit}>
        <WordBlock words={l().beds.words} />
        <For each={p().beds.strips}>
          {(strip, i) => <Show when={l().beds.strips[i()]}>{(at) => <OneStrip strip={strip} at={at()} />}</Show>}
        </For>
      </Stretch>
      <g>
        <Heap
          x={l().heap.body.x}
          floorY={l().heap.body.y}
          width={l().heap.body.width}
          height={l().heap.body.height}
          hatch="crumbs"
        />
        <WordBlock words={l().heap.words} />
      </g>
      <ScaleLine at={l().beds.scaleAt} width={l().beds.pxPerM} figure={p().scale.oneMetre} of={p().scale.beds} />
      <ScaleLine at={l().scaleAt} {...bar()} of={p().scale.things} />
    </svg>
  );
}

/** Longest half metre, px, that leaves room for its words on a phone. */
const MOST_BAR_PX = 100;

/** A link around a stretch; it stands in a group, so that it is made as part of the drawing. */
function Stretch(props: {
  readonly to: string;
  readonly label: string;
  readonly hit: Box;
  readonly children: JSX.Element;
}) {
  return (
    <g>
      <a class="line-link" href={props.to} aria-label={props.label}>
        <rect class="line-hit" {...props.hit} />
        {props.children}
      </a>
    </g>
  );
}

/** Name, figure, notes beneath each other; what wants a hand in the marking colour with its triangle. */
function WordBlock(props: { readonly words: Words }) {
  const nameY = () => props.words.y + 20;
  const figureY = () => props.words.y + (props.words.name === undefined ? 38 : 62);
  const notesY = () => {
    const { name, figure, notesX } = props.words;
    if (notesX !== undefined) return figureY() - 16;
    return props.words.y + (name === undefined ? 0 : 26) + (figure ? 44 : 0) + 18;
  };
  const handY = () => notesY() + props.words.notes.length * 23;
  const x = () => props.words.notesX ?? props.words.x;
  return (
    <>
      <Show when={props.words.name}>
        <text class="figure" x={props.words.x} y={nameY()}>
          {props.words.name}
        </text>
      </Show>
      <Show when={props.words.figure}>
        {(figure) => (
          <text class={figure().length > 8 ? 'line-figure long' : 'line-figure'} x={props.words.x} y={figureY()}>
            {figure()}
          </text>
        )}
      </Show>
      <For each={props.words.notes}>
        {(note, i) => (
          <text x={x()} y={notesY() + i() * 23}>
            {note}
          </text>
        )}
      </For>
      <Show when={props.words.hand}>
        <path class="tip-accent" d={`M${x()} ${handY() - 14}l12 8l-12 8Z`} />
        <text class="hand-text" x={x() + 18} y={handY()}>
          {props.words.hand}
        </text>
      </Show>
    </>
  );
}

/** Letters of number and word above which they are set smaller. */
const LONG_WORD = 9;

function OnePeg(props: { readonly place: PegPlace }) {
  const { place } = props;
  const words = () => place.words;
  const stand = () => place.stand;
  const usableY = () => levelInY(stand(), place.peg.usableL);
  const half = () => halfWidth(stand(), usableY());
  const isLong = () => place.peg.peg.length + place.peg.word.length > LONG_WORD;
  return (
    <g>
      <a class="line-link" href={place.peg.to} aria-label={place.peg.label}>
        <rect class="line-hit" {...place.hit} />
        <path class="line-hit" d={slicePath(stand(), stand().floorY, rimY(stand()))} />
        <path
          class="layer"
          d={slicePath(stand(), stand().floorY, levelInY(stand(), place.peg.presentL))}
          fill="url(#l-feed)"
        />
        <path class="line-vessel" d={wallPath(stand())} />
        <path class="line-fill" d={`M${stand().axisX - half()} ${usableY()}H${stand().axisX + half()}`} />
        <Stake x={stand().axisX} floorY={stand().floorY} peg={place.peg.peg} />
        <g transform={`translate(${words().x - 2} ${words().y}) scale(0.82)`}>
          <StateMark state={place.peg.state} />
        </g>
        <text class={isLong() ? 'peg-word' : 'figure'} x={words().x + 32} y={words().y + 21}>
          {place.peg.peg} {place.peg.word}
        </text>
        <For each={words().notes}>
          {(note, i) => (
            <text x={words().x} y={words().y + 47 + i() * 23}>
              {note}
            </text>
          )}
        </For>
        <Show when={words().hand}>
          <path class="tip-accent" d={`M${words().x} ${words().y + 33 + words().notes.length * 23}l12 8l-12 8Z`} />
          <text class="hand-text" x={words().x + 18} y={words().y + 47 + words().notes.length * 23}>
            {words().hand}
          </text>
        </Show>
      </a>
    </g>
  );
}

/** A peg's stake with its number, hung low on its vessel. */
function Stake(props: { readonly x: number; readonly floorY: number; readonly peg: string }) {
  const half = () => Math.max(17, props.peg.length * 6.5 + 5);
  const top = () => props.floorY - 40;
  return (
    <>
      <path class="stake" d={`M${props.x - half()} ${top()}h${2 * half()}v24l${-half()} 12l${-half()} -12Z`} />
      <text class="figure" x={props.x} y={top() + 20} text-anchor="middle">
        {props.peg}
      </text>
    </>
  );
}

function OneBottle(props: { readonly bottle: Box & { readonly fraction: number } }) {
  const body = () => {
    const { x, y, width: w, height: h } = props.bottle;
    return (
      `M${x} ${y}V${y - h}L${x + w * 0.3} ${y - h * 1.11}V${y - h * 1.28}` +
      `H${x + w * 0.7}V${y - h * 1.11}L${x + w} ${y - h}V${y}Z`
    );
  };
  return (
    <>
      <Show when={props.bottle.fraction > 0}>
        <rect
          class="layer"
          x={props.bottle.x}
          y={props.bottle.y - props.bottle.height * props.bottle.fraction}
          width={props.bottle.width}
          height={props.bottle.height * props.bottle.fraction}
          fill="url(#l-feed)"
        />
      </Show>
      <path class="edge" d={body()} />
    </>
  );
}

/** A watering can cut open: concentrate at the bottom, water above it, to its fill line. */
function CanBody(props: { readonly body: Box; readonly concentrateFraction: number }) {
  const b = () => props.body;
  const line = (points: readonly (readonly [number, number])[]) =>
    points
      .map(([right, up], i) => `${i === 0 ? 'M' : 'L'}${b().x + right * b().width} ${b().y - up * b().height}`)
      .join('');
  const layers = () => canLayers(props.concentrateFraction);
  return (
    <>
      <rect
        class="bare"
        x={b().x}
        y={b().y - b().height * (layers().concentrate + layers().water)}
        width={b().width}
        height={b().height * layers().water}
        fill={fillOf('water')}
      />
      <rect
        class="layer"
        x={b().x}
        y={b().y - b().height * layers().concentrate}
        width={b().width}
        height={b().height * layers().concentrate}
        fill="url(#l-feed)"
      />
      <rect class="outline" x={b().x} y={b().y - b().height} width={b().width} height={b().height} />
      <path
        class="outline"
        d={
          line([
            [1, 0.19],
            [1.79, 1.11],
          ]) +
          line([
            [1, 0.37],
            [1.67, 1.11],
          ]) +
          line([
            [1.5, 1.22],
            [1.96, 1.03],
          ])
        }
      />
      <path
        class="outline"
        d={`M${b().x + b().width * 0.08} ${b().y - b().height}c0 ${-b().height * 0.6} ${b().width * 0.84} ${-b().height * 0.6} ${b().width * 0.84} 0`}
      />
    </>
  );
}

/** A bed's strip, hatched where it is fed; pots as discs, drawn solid where they are fed. */
function OneStrip(props: { readonly strip: PictureStrip; readonly at: StripAt }) {
  const { strip } = props;
  const at = () => props.at;
  const fed = () => at().width * strip.fedFraction;
  const columns = Math.ceil(Math.sqrt(strip.pots));
  const discs = () => {
    const across = at().width / columns;
    const down = at().height / Math.ceil(strip.pots / columns);
    return Array.from({ length: strip.pots }, (_, i) => ({
      cx: at().x + across * ((i % columns) + 0.5),
      cy: at().y + down * (Math.floor(i / columns) + 0.5),
      r: Math.min(across, down) * strip.discFraction * 0.5,
    }));
  };
  return (
    <Show
      when={strip.pots === 0}
      fallback={
        <For each={discs()}>{(disc) => <circle class={strip.fedFraction > 0 ? 'tip' : 'edge'} {...disc} />}</For>
      }
    >
      <Show when={fed() > 0}>
        <rect class="layer" x={at().x} y={at().y} width={fed()} height={at().height} fill="url(#l-feed)" />
      </Show>
      <rect class="edge" x={at().x} y={at().y} width={at().width} height={at().height} />
      <Tag strip={strip} at={at()} />
    </Show>
  );
}

function Tag(props: { readonly strip: PictureStrip; readonly at: StripAt }) {
  return (
    <text
      class="figure knocked"
      x={props.at.x + props.at.width / 2}
      y={props.at.y + props.at.height / 2 + 7}
      text-anchor="middle"
    >
      {props.strip.tag}
    </text>
  );
}

function ScaleLine(props: {
  readonly at: { readonly x: number; readonly y: number };
  readonly width: number;
  readonly figure: string;
  readonly of: string;
}) {
  return (
    <>
      <path class="hair" d={dimensionPath({ ...props.at, width: props.width })} />
      <text x={props.at.x + props.width + 10} y={props.at.y + 7}>
        <tspan class="figure">{props.figure}</tspan> {props.of}
      </text>
    </>
  );
}

function dimensionPath({ x, y, width }: { readonly x: number; readonly y: number; readonly width: number }): string {
  const tick = (at: number) => `M${at - 5} ${y + 5}l10 -10`;
  return `M${x} ${y}h${width}${tick(x)}${tick(x + width)}`;
}

function tipPath({ x, y, way }: LineLayout['tips'][number]): string {
  if (way === 'left') return `M${x} ${y}l12 -6v12Z`;
  if (way === 'right') return `M${x} ${y}l-12 -7v14Z`;
  return `M${x} ${y}l-7 -12h14Z`;
}
