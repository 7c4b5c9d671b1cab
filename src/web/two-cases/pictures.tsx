// The drawings of both cases: two vessels on one bench, two sour lines on one paper. On a wide sheet as on a narrow one
// they lie on the same axes and to the same scale.

import { createMemo, For, Show } from 'solid-js';
import { caseFigures, linesAlternative, vesselsAlternative } from '#words/en/two-cases.ts';
import { twoCases } from '#words/en/two-cases-labels.ts';
import { drawingNames } from '#words/en/weigh-in.ts';
import { CaseLines, type CaseLinesPicture } from '../drawings/case-lines.tsx';
import { Swatch } from '../drawings/hatches.tsx';
import { NAMES_FROM, TwoVessels, type TwoVesselsPicture } from '../drawings/two-vessels.tsx';
import { pictureOf } from '../drawings/vessel-picture.ts';
import { measured } from '../parts/measured.ts';
import type { OneCase, TwoCases } from './model.ts';

export function Vessels(props: { readonly model: TwoCases; readonly onScale: (denominator: number) => void }) {
  const [width, setPlace] = measured(350);
  const { before, after } = props.model;
  const drawn = (one: OneCase) => {
    const [given, reading] = [one.answer(), one.reading()];
    const vesselL = reading?.amounts.vesselL;
    return given && reading && vesselL !== undefined
      ? pictureOf(given.filled, vesselL, reading.amounts.shape)
      : undefined;
  };
  const [first, second] = [createMemo(() => drawn(before)), createMemo(() => drawn(after))];
  const picture = createMemo<TwoVesselsPicture | undefined>(() => {
    const [a, b, ofA, ofB] = [first(), second(), before.answer(), after.answer()];
    if (a === undefined || b === undefined || ofA === undefined || ofB === undefined) return undefined;
    const [fillA, fillB] = [ofA.filled.fill, ofB.filled.fill];
    return {
      before: a,
      after: b,
      names: [twoCases.asItIs, twoCases.ifYou],
      figures: [caseFigures.level(fillA.volumeL.likely), caseFigures.level(fillB.volumeL.likely)],
      fillLine: drawingNames.gasRoom,
      alternative: vesselsAlternative({
        vesselL: a.vesselL,
        usableL: fillA.usableL,
        before: { volumeL: fillA.volumeL.likely, overL: fillA.overL },
        after: { volumeL: fillB.volumeL.likely, overL: fillB.overL },
      }),
    };
  });
  return (
    <div class="drawing-place" ref={setPlace}>
      <Show when={picture()}>
        {(drawn) => (
          <>
            <TwoVessels picture={drawn()} width={width()} onScale={props.onScale} />
            <Show when={width() < NAMES_FROM}>
              <ul class="case-names">
                <For each={drawn().after.layers.toReversed()}>
                  {(layer) => (
                    <li>
                      <Swatch hatch={layer.hatch} />
                      {layer.name}
                    </li>
                  )}
                </For>
              </ul>
            </Show>
          </>
        )}
      </Show>
    </div>
  );
}

export function Lines(props: { readonly model: TwoCases; readonly height: number }) {
  const [width, setPlace] = measured(350);
  const { before, after, difference } = props.model;
  const picture = createMemo<CaseLinesPicture | undefined>(() => {
    const [a, b] = [before.answer(), after.answer()];
    if (a === undefined || b === undefined) return undefined;
    const [dayA, dayB] = [a.figures.sourDay, b.figures.sourDay];
    return {
      before: { name: twoCases.names.asItIs, line: a.line, band: before.line(), sourDay: dayA },
      after: { name: twoCases.names.ifYou, line: b.line, band: after.line(), sourDay: dayB },
      differs: (difference()?.changes.length ?? 0) > 0,
      apart: dayA === null || dayB === null ? undefined : caseFigures.apart(Math.abs(dayA - dayB)),
      alternative: linesAlternative({
        before: dayA,
        after: dayB,
        plateau: { before: a.figures.plateauPh, after: b.figures.plateauPh },
        withinDays: before.days,
      }),
      words: {
        ph: twoCases.ph,
        day: twoCases.day,
        caption: twoCases.caption,
        limits: twoCases.limits,
        figure: caseFigures.ph,
      },
    };
  });
  return (
    <div class="lines-place" ref={setPlace}>
      <Show when={picture()}>{(drawn) => <CaseLines picture={drawn()} width={width()} height={props.height} />}</Show>
    </div>
  );
}
