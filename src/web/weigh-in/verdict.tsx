// The pail and the sentence over it: what stands in it, how much too much or to spare, and, before that, what
// is still to tell. Said aloud once figures rest.

import { createEffect, createSignal, on, onCleanup, Show } from 'solid-js';
import {
  fillSentence,
  liftSentence,
  massSentence,
  stillMissing,
  stopsBelow,
  unreadable,
  verdict,
  waitingAlternative,
} from '#words/en/weigh-in.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';
import { VesselDrawing, WaitingVessel } from '../drawings/vessel-drawing.tsx';
import { measured } from '../parts/measured.ts';
import { WhyBlock } from '../parts/why.tsx';
import type { WeighIn } from './model.ts';

/** Rest before the sentence is said aloud, so that a run of steps is said once. */
const REST_MS = 700;

export function Verdict(props: { readonly model: WeighIn; readonly onScale: (denominator: number) => void }) {
  const { result, reading, troubles, picture } = props.model;
  const [width, setPlace] = measured(350);
  const stops = () => (result()?.cautions ?? []).filter((one) => one.level === 'stop');
  const firstStop = () => stops()[0]?.rule;
  const said = () => {
    const given = result();
    if (given) {
      const { figure, rest } = verdict(given.fill);
      const about = { vesselL: reading().vesselL ?? 0, shape: reading().shape };
      return [`${figure} ${rest}.`, fillSentence(given.fill, about), ...stops().map((one) => one.text)].join(' ');
    }
    return waiting();
  };
  const waiting = () => {
    if (props.model.lost()) return sheet.notLoaded;
    if (troubles().size > 0) return unreadable(troubles().size);
    return reading().missing.length === 3 ? sheet.emptyStart : stillMissing(reading().missing);
  };
  return (
    <section class="stand" aria-label={sheet.title}>
      <Show when={result()} fallback={<p class="lead-in">{waiting()}</p>}>
        {(given) => (
          <p class="say">
            <b classList={{ accent: !given().fill.fits }}>{verdict(given().fill).figure}</b>{' '}
            {verdict(given().fill).rest}
          </p>
        )}
      </Show>
      <Show when={firstStop()}>
        <a class="block jump stop-jump" href={`#stop-${firstStop()}`}>
          {stopsBelow(stops().length)}
        </a>
      </Show>
      <div class="drawing-place" ref={setPlace}>
        <Show when={picture()} fallback={<WaitingVessel alternative={waitingAlternative()} />}>
          {(drawn) => <VesselDrawing picture={drawn()} width={width()} onScale={props.onScale} />}
        </Show>
      </div>
      <Show when={result()}>
        {(given) => (
          <div class="fact">
            <p>{fillSentence(given().fill, { vesselL: reading().vesselL ?? 0, shape: reading().shape })}</p>
            <WhyBlock
              of={verdict(given().fill).figure}
              onAsk={() => props.model.askWhy('fill.volumeL', 'fill.usableL', 'fill.overL')}
            />
          </div>
        )}
      </Show>
      <Spoken text={said()} />
    </section>
  );
}

/** How high it rises, and what there is to lift. */
export function Facts(props: { readonly model: WeighIn }) {
  return (
    <Show when={props.model.result()}>
      {(given) => (
        <div class="facts">
          <div class="fact">
            <p>{liftSentence(given().lift)}</p>
            <WhyBlock of={liftSentence(given().lift)} onAsk={() => props.model.askWhy('lift.highL')} />
          </div>
          <div class="fact">
            <p>{massSentence(given().fill.massKg)}</p>
            <WhyBlock of={massSentence(given().fill.massKg)} onAsk={() => props.model.askWhy('fill.massKg')} />
          </div>
        </div>
      )}
    </Show>
  );
}

function Spoken(props: { readonly text: string }) {
  const [text, setText] = createSignal('');
  let timer: ReturnType<typeof setTimeout> | undefined;
  createEffect(
    on(
      () => props.text,
      (now) => {
        clearTimeout(timer);
        timer = setTimeout(() => setText(now), REST_MS);
      },
    ),
  );
  onCleanup(() => clearTimeout(timer));
  return (
    <p class="unseen" role="status">
      {text()}
    </p>
  );
}
