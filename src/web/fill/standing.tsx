// The vessel as it stands with what is in it: the verdict, the drawing, the sentences, each with its working.

import { createMemo, Show } from 'solid-js';
import type { ShapeKind } from '#engine/pail/shape.ts';
import type { FillAnswer } from '#tasks/plot/fill.ts';
import { countedAsPlanned, fillSheet } from '#words/en/fill.ts';
import { fillSentence, liftSentence, massSentence, verdict, waitingAlternative } from '#words/en/weigh-in.ts';
import { VesselDrawing, WaitingVessel } from '../drawings/vessel-drawing.tsx';
import { pictureOf } from '../drawings/vessel-picture.ts';
import { AssumedList } from '../parts/assumed-list.tsx';
import { measured } from '../parts/measured.ts';
import { WhyBlock } from '../parts/why.tsx';

export function Standing(props: {
  readonly answer: FillAnswer | undefined;
  readonly vesselL: number | undefined;
  readonly shape: ShapeKind;
  readonly onScale: (denominator: number) => void;
  readonly onWhy: (...figures: readonly string[]) => void;
}) {
  const [width, setPlace] = measured(350);
  const fill = () => props.answer?.fit.fill;
  const picture = createMemo(() => {
    const given = props.answer;
    return given && props.vesselL !== undefined ? pictureOf(given.fit, props.vesselL, props.shape) : undefined;
  });
  return (
    <section class="stand" aria-label={fillSheet.vesselQuestion}>
      <Show when={fill()} fallback={<p class="lead-in">{fillSheet.empty}</p>}>
        {(given) => (
          <p class="say">
            <b classList={{ accent: !given().fits }}>{verdict(given()).figure}</b> {verdict(given()).rest}
          </p>
        )}
      </Show>
      <div class="drawing-place" ref={setPlace}>
        <Show when={picture()} fallback={<WaitingVessel alternative={waitingAlternative()} />}>
          {(drawn) => <VesselDrawing picture={drawn()} width={width()} onScale={props.onScale} />}
        </Show>
      </div>
      <Show when={props.answer}>
        {(given) => (
          <>
            <div class="fact">
              <p>{fillSentence(given().fit.fill, { vesselL: props.vesselL ?? 0, shape: props.shape })}</p>
              <WhyBlock
                of={verdict(given().fit.fill).figure}
                onAsk={() => props.onWhy('fill.volumeL', 'fill.usableL', 'fill.overL')}
              />
            </div>
            <div class="fact">
              <p>{liftSentence(given().fit.lift)}</p>
              <WhyBlock of={liftSentence(given().fit.lift)} onAsk={() => props.onWhy('lift.highL')} />
            </div>
            <div class="fact">
              <p>{massSentence(given().fit.fill.massKg)}</p>
              <WhyBlock of={massSentence(given().fit.fill.massKg)} onAsk={() => props.onWhy('fill.massKg')} />
            </div>
            <Show when={given().asPlanned > 0}>
              <p class="note">{countedAsPlanned(given().asPlanned)}</p>
            </Show>
            <AssumedList assumed={given().fit.assumed} />
          </>
        )}
      </Show>
    </section>
  );
}
