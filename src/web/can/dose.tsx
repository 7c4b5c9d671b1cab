// The dose of the can in hand: jug with the mark to reach, or syringe, or two steps; then how far the can is filled;
// other tools, and the figure in the keyholder's own units.

import { For, Match, Show, Switch } from 'solid-js';
import { formatAmount, type Manner } from '#engine/quantity/format.ts';
import { type CanToFill, fillsFor, jugLevelMm, type PourCard, syringeMl } from '#tasks/plot/pour.ts';
import type { CanCardWords } from '#words/en/can-card.ts';
import { JugDrawing, SyringeDrawing } from '../drawings/jug.tsx';
import { jugOnPaper } from '../drawings/jug-geometry.ts';
import { measured } from '../parts/measured.ts';
import type { Screen } from './screen-set.tsx';

const FIRST_WIDTH = 350;
const MOST_WIDTH = 460;

export function Dose(props: {
  readonly words: CanCardWords;
  readonly card: PourCard;
  /** Index of the can in hand. */
  readonly at: number;
  readonly jugMl: number;
  readonly screen: Screen;
  readonly units: Manner;
}) {
  const [width, watch] = measured(FIRST_WIDTH);
  const can = (): CanToFill | undefined => props.card.cans[props.at];
  const drawn = () => Math.min(width(), MOST_WIDTH);
  return (
    <Show when={can()}>
      {(now) => {
        const figure = () => props.words.ml(now().concentrateMl);
        const others = () => now().measures.filter(({ tool }) => tool !== now().drawn);
        return (
          <section class="dose" ref={watch} aria-label={props.words.drawn}>
            <Switch fallback={<p class="big">{figure()}</p>}>
              <Match when={now().twoStep}>
                {(step) => (
                  <>
                    <p class="big">{figure()}</p>
                    <p class="two-step">
                      {props.words.twoStep(step().firstConcentrateMl, step().firstWaterMl, step().thenMl)}
                    </p>
                  </>
                )}
              </Match>
              <Match when={now().drawn === 'jug'}>
                <Jug {...props} width={drawn()} can={now()} />
              </Match>
              <Match when={now().drawn === 'syringe'}>
                <Syringe {...props} width={drawn()} can={now()} />
              </Match>
            </Switch>
            <Show when={props.units !== 'metric'}>
              <p>{formatAmount({ value: now().concentrateMl / 1000, dimension: 'volume' }, props.units).text}</p>
            </Show>
            <For each={others()}>
              {(measure) => (
                <p>
                  {props.words.orWith} {props.words.measure(measure)}
                </p>
              )}
            </For>
            <p class="fill-to">
              {now().full ? props.words.fillTo : props.words.fillToPart} <b>{props.words.litres(now().volumeL)}</b>
              <Show when={props.units !== 'metric'}>
                <span> ({formatAmount({ value: now().volumeL, dimension: 'volume' }, props.units).text})</span>
              </Show>
            </p>
          </section>
        );
      }}
    </Show>
  );
}

interface Drawn {
  readonly words: CanCardWords;
  readonly card: PourCard;
  readonly can: CanToFill;
  readonly jugMl: number;
  readonly screen: Screen;
  readonly width: number;
}

/** What a dose of several fills says before the last of them. */
function Before(props: { readonly words: CanCardWords; readonly can: CanToFill; readonly text: string | undefined }) {
  return (
    <Show when={props.text}>
      <p class="before">
        <b>{props.words.ml(props.can.concentrateMl)}</b>: {props.text}
      </p>
    </Show>
  );
}

function Syringe(props: Drawn) {
  const fills = () => fillsFor({ volumeMl: props.can.concentrateMl, toolMl: syringeMl });
  const figure = () => props.words.mlFine(fills().restMl);
  return (
    <>
      <Before {...props} text={fills().full > 0 ? props.words.fullSyringes(fills().full) : undefined} />
      <SyringeDrawing
        width={props.width}
        doseMl={fills().restMl}
        figure={figure()}
        label={`${props.words.syringe}: ${figure()}`}
      />
      <p>
        {props.words.syringe}, {props.words.of(props.card.liquid?.peg ?? 0)}
      </p>
    </>
  );
}

function Jug(props: Drawn) {
  const fills = () => fillsFor({ volumeMl: props.can.concentrateMl, toolMl: props.jugMl });
  const levelMm = () => jugLevelMm({ volumeMl: fills().restMl, boreMm: props.screen.boreMm() });
  const pxPerMl = () => (props.screen.ready() ? (levelMm() * props.screen.pxPerMm()) / fills().restMl : undefined);
  // Set or not: a jug too high or too low for the sheet is not drawn at full size, and does not say so.
  const trueSize = () =>
    jugOnPaper({ doseMl: fills().restMl, jugMl: props.jugMl, topY: 0, pxPerMl: pxPerMl() }).fullSize;
  const figure = () => props.words.ml(fills().restMl);
  const lines = () => [props.words.of(props.card.liquid?.peg ?? 0), props.words.jug(props.jugMl)];
  return (
    <>
      <Before {...props} text={fills().full > 0 ? props.words.fullJugs(fills().full, props.jugMl) : undefined} />
      <JugDrawing
        width={props.width}
        jugMl={props.jugMl}
        doseMl={fills().restMl}
        figure={figure()}
        lines={lines()}
        pxPerMl={pxPerMl()}
        height={{ figure: props.words.mm(levelMm()), words: props.words.fromFloor }}
        label={`${props.words.jug(props.jugMl)}: ${figure()} ${props.words.of(props.card.liquid?.peg ?? 0)}`}
      />
      <p class="note">{trueSize() ? props.words.fullSizeAt(props.words.mm(levelMm())) : props.words.notFullSize}</p>
    </>
  );
}
