// The sheet of one peg: the vessel to scale, the word for it, its sour line, what may be done with it, what was seen.

import { A, useParams } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { batchNamed, pegView } from '#tasks/plot/peg.ts';
import { explainPeg } from '#tasks/plot/peg-working.ts';
import { keptOutIn } from '#tasks/plot/scraps.ts';
import { look as lookWords, unbroken } from '#words/en/look.ts';
import { pegDrawing, pegWords, standsLine } from '#words/en/peg.ts';
import { keptOutSays } from '#words/en/scraps-stock.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { signer } from '../look/keyholder.ts';
import { NextLook, PegSourLine, PegVerdict, Reasons } from '../look/told.tsx';
import { MovedFigures } from '../parts/moved-figures.tsx';
import { WorkingDialog } from '../parts/working-dialog.tsx';
import '../styles/look.css';
import '../styles/peg.css';
import '../styles/plot.css';
import '../styles/small-form.css';
import { foretellPeg } from '../souring/peg.ts';
import { Acts } from './acts.tsx';
import { Expected, ForecastNotes, GasOf, LessonsOf, Rescues } from './forecast.tsx';
import { StandingVessel } from './standing.tsx';
import { LooksSoFar, MassSums } from './sums.tsx';

export function PegScreen() {
  const record = useRecord();
  const params = useParams<{ batch: string }>();
  const who = signer(record);
  const [denominator, setDenominator] = createSignal<number>();
  const [asked, setAsked] = createSignal(false);
  const view = createMemo(() => {
    const batch = batchNamed(record.plot(), params.batch);
    return batch && pegView({ plot: record.plot(), batch, now: record.now() });
  });
  const foretold = foretellPeg(record, view, () => undefined);
  /** The days of the table at once; the workings of the forecast follow from where it was worked out. */
  const why = () => {
    setAsked(true);
    foretold.whole.explain();
  };
  const date = (on: string) => lookWords.date(on, record.today());
  return (
    <Sheet
      title={pegWords.title(view()?.peg ?? 0)}
      aside={view() && lookWords.day(view()?.day ?? 0)}
      here="pail"
      number={3}
      scale={denominator() === undefined ? undefined : pegDrawing.scale(denominator() ?? 1)}
    >
      <Show when={view()} fallback={<NoPeg />}>
        {(seen) => (
          <div class="peg-sheet">
            <div class="peg-left">
              <PegVerdict view={seen()} words={lookWords} today={record.today()} temperature={who.temperature} />
              <Show when={seen().endedOn}>{(on) => <p>{pegWords.endedOn(date(on()))}</p>}</Show>
              <Show when={seen().state === 'ready' && !seen().held && seen().heldOn}>
                {(on) => <p>{pegWords.heldFrom(date(on()))}</p>}
              </Show>
              <Show when={seen().endedOn === undefined}>
                <StandingVessel view={seen()} onScale={setDenominator} />
              </Show>
              <p>
                {standsLine({
                  vessel: seen().vessel.name,
                  lid: seen().vessel.lid,
                  place: seen().vessel.place,
                  mean: seen().temperature && who.temperature(seen().temperature?.meanC ?? Number.NaN),
                  filled: date(seen().filledOn),
                })}
                .
              </p>
              <Show
                when={seen().vessel.volumeL !== undefined || seen().endedOn !== undefined}
                fallback={
                  <p>
                    {pegWords.noVessel}{' '}
                    <A class="block inline" href="/plot">
                      {pegWords.toPlot}
                    </A>
                  </p>
                }
              >
                <Show when={seen().endedOn === undefined}>
                  <p class="note">{pegWords.drawn}</p>
                </Show>
              </Show>
              <Show when={keptOutIn(record.plot(), seen().batch)}>
                {(kept) => (
                  <p class="kept-in-batch">
                    <b>{keptOutSays(kept())}</b>
                  </p>
                )}
              </Show>
              <Show when={seen().disposal}>
                {(disposal) => (
                  <section class="disposal" aria-labelledby="disposal">
                    <h2 id="disposal">{pegWords.disposalHeading}</h2>
                    <ol class="numbered">
                      <For each={pegWords.disposal(disposal().ventFirst)}>{(line) => <li>{line}</li>}</For>
                    </ol>
                    <p class="note">{pegWords.disposalSource}</p>
                  </section>
                )}
              </Show>
              <Acts view={seen()} />
            </div>
            <div class="peg-right">
              <div class="line-head">
                <h2>{pegWords.lineHeading}</h2>
                <button type="button" class="why" aria-label={lookWords.whyOf} onClick={() => why()}>
                  {lookWords.why}
                </button>
              </div>
              <PegSourLine
                view={seen()}
                words={lookWords}
                today={record.today()}
                temperature={who.temperature}
                height={440}
                foretold={foretold.foretold()}
                bracketed={false}
              />
              <ForecastNotes foretold={foretold} date={date} />
              <Show when={seen().endedOn === undefined}>
                <NextLook view={seen()} words={lookWords} today={record.today()} />
              </Show>
              <Reasons view={seen()} words={lookWords} beside={foretold.forecast()?.beside.map(unbroken)} />
              <Rescues foretold={foretold} date={date} />
              <Expected foretold={foretold} date={date} />
              <GasOf foretold={foretold} date={date} />
              <LessonsOf foretold={foretold} date={date} />
              <LooksSoFar view={seen()} temperature={who.temperature} mass={who.mass} />
              <MassSums view={seen()} mass={who.mass} />
              <MovedFigures id="peg-moved" only={{ batch: seen().batch.id }} />
            </div>
            <WorkingDialog
              model={{
                workings: () => (asked() ? [...explainPeg(seen()), ...(foretold.whole.workings() ?? [])] : undefined),
                closeWhy: () => setAsked(false),
              }}
            />
          </div>
        )}
      </Show>
    </Sheet>
  );
}

function NoPeg() {
  return (
    <div class="no-peg">
      <p class="lead-in">{pegWords.noPeg}</p>
      <A class="block" href="/fill">
        {pegWords.toFill}
      </A>
    </div>
  );
}
