// One bed: what it needs, what it was given, what is missing or too much, what went on, and the forms by which the grower
// tells the ground's facts. Everything shown comes from tasks/plot/got-bed.ts and the form tasks.

import { A, useParams } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { type GotBedView, gotBed as viewOf } from '#tasks/plot/got-bed.ts';
import { explainPlotLedger } from '#tasks/plot/ledger.ts';
import { got, sayBed, sayGrams } from '#words/en/got.ts';
import { gotBed, sayCarried } from '#words/en/ground-forms.ts';
import { sharePercent } from '#words/en/ledger.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { MovedFigures } from '../parts/moved-figures.tsx';
import { WorkingDialog } from '../parts/working-dialog.tsx';
import '../styles/small-form.css';
import '../styles/weigh-in.css';
import '../styles/got.css';
import '../styles/got-bed.css';
import { AskHemisphere } from './ask-hemisphere.tsx';
import { DressingForm, ProductForm } from './dressing.tsx';
import { GoalForm, OwnCropForm } from './goals.tsx';
import { ReleaseCurve } from './release.tsx';
import { SoilReportForm } from './soil-report.tsx';
import { WentOn } from './went-on.tsx';

const SHEET = 15;

export function GotBedScreen() {
  const record = useRecord();
  const params = useParams();
  const view = createMemo(() => viewOf({ plot: record.plot(), bed: params.bed ?? '', today: record.today() }));
  return (
    <Sheet title={view() === undefined ? got.title : gotBed.title(view()?.name ?? '')} here="bed" number={SHEET}>
      <A href="/got" class="got-bed-link">
        {gotBed.back}
      </A>
      <Show when={view()} fallback={<p class="lead-in">{gotBed.gone}</p>}>
        {(found) => <Shown view={found()} />}
      </Show>
    </Sheet>
  );
}

function Shown(props: { readonly view: GotBedView }) {
  const own = () => props.view.crops.filter(({ listed }) => !listed);
  return (
    <>
      <Show
        when={props.view.sized}
        fallback={
          <p class="lead-in">
            {gotBed.noSize} <A href="/plot">{gotBed.toPlot}</A>
          </p>
        }
      >
        <Sums view={props.view} />
        <MovedFigures id="bed-moved" only={{ bed: props.view.id }} />
        <ReleaseCurve bed={props.view.id} />
      </Show>
      <section class="ground-forms">
        <DressingForm bed={props.view.id} />
        <ProductForm />
        <SoilReportForm bed={props.view.id} name={props.view.name} />
        <GoalForm bed={props.view.id} crops={props.view.crops} />
        <For each={own().map(({ name }) => name)}>
          {(name) => (
            <Show when={own().find((one) => one.name === name)}>{(crop) => <OwnCropForm crop={crop()} />}</Show>
          )}
        </For>
      </section>
      <WentOn view={props.view} />
    </>
  );
}

function Sums(props: { readonly view: GotBedView }) {
  const record = useRecord();
  const [asked, setAsked] = createSignal(false);
  const workings = () => explainPlotLedger({ plot: record.plot(), bed: props.view.id, to: record.today() });
  return (
    <section>
      <p>{gotBed.lead(props.view)}</p>
      <Show when={props.view.carriedG}>
        {(grams) => <For each={sayCarried(grams())}>{(line) => <p>{line}</p>}</For>}
      </Show>
      <Show when={props.view.asksHemisphere}>
        <AskHemisphere />
      </Show>
      <dl class="got-bed-says">
        <For each={props.view.rows}>
          {(row) => (
            <>
              <dt>{gotBed.names[row.nutrient]}</dt>
              <dd>{sayBed(row.nutrient, row).join(' ')}</dd>
            </>
          )}
        </For>
      </dl>
      <Show when={props.view.isTested}>
        <p>
          {gotBed.soilClass('p', props.view.soil.p)} {gotBed.soilClass('k', props.view.soil.k)}
        </p>
      </Show>
      <Also view={props.view} />
      <details class="fold">
        <summary>{gotBed.table}</summary>
        <section class="got-table" aria-label={gotBed.table} tabindex={0}>
          <table>
            <thead>
              <tr>
                <For each={gotBed.columns}>{(name) => (name === '' ? <td /> : <th scope="col">{name}</th>)}</For>
              </tr>
            </thead>
            <tbody>
              <For each={props.view.rows}>
                {(row) => (
                  <tr>
                    <th scope="row">{gotBed.names[row.nutrient]}</th>
                    <td>{sayGrams(row.needG)}</td>
                    <td>{sayGrams(row.givenG)}</td>
                    <td>{sayGrams(row.missingG)}</td>
                    <td>{sayGrams(row.excessG)}</td>
                    <td>{row.liquidPercent === null ? got.notKnown : sharePercent(row.liquidPercent)}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </section>
      </details>
      <button type="button" class="block" onClick={() => setAsked(true)}>
        {got.why}
      </button>
      <CautionList cautions={props.view.cautions} />
      <WorkingDialog model={{ workings: () => (asked() ? workings() : undefined), closeWhy: () => setAsked(false) }} />
    </section>
  );
}

/** Calcium, magnesium and dry matter, where they are known. */
function Also(props: { readonly view: GotBedView }) {
  return (
    <>
      <Show when={props.view.also.ca}>{(grams) => <p>{gotBed.also(gotBed.names.ca, sayGrams(grams()))}</p>}</Show>
      <Show when={props.view.also.mg}>{(grams) => <p>{gotBed.also(gotBed.names.mg, sayGrams(grams()))}</p>}</Show>
      <Show when={props.view.also.dryMatterKg}>{(kg) => <p>{gotBed.dryMatter(kg())}</p>}</Show>
    </>
  );
}
