// What the beds got: every bed in walking order with a bar for its need and one for what was given, by kind, the liquid
// first and never too thin to see; a table behind. Everything shown comes from tasks/plot/got.ts.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Nutrient } from '#engine/ground/need.ts';
import { type GotBed, type GotView, gotSums, gotView, yearSoFar } from '#tasks/plot/got.ts';
import { explainPlotLedger } from '#tasks/plot/ledger.ts';
import { got, gotAlternative, sayBed, sayGrams } from '#words/en/got.ts';
import { sharePercent } from '#words/en/ledger.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { fillOf } from '../drawings/hatches.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { measured } from '../parts/measured.ts';
import { WorkingDialog } from '../parts/working-dialog.tsx';
import '../styles/drawing.css';
import '../styles/weigh-in.css';
import '../styles/got.css';

const SHEET = 15;
const FIRST_WIDTH = 350;
const HATCH: Readonly<Record<string, string>> = {
  pour: fillOf('bottled-feed'),
  compost: fillOf('crumbs'),
  mulch: fillOf('clippings'),
  solids: fillOf('trimmings'),
  product: fillOf('halves'),
  'cover-crop': fillOf('pods'),
};
const hatch = (kind: string) => HATCH[kind] ?? fillOf('roots');

export function GotScreen() {
  const record = useRecord();
  const [nutrient, setNutrient] = createSignal<Nutrient>('n');
  const [asked, setAsked] = createSignal(false);
  const ask = () => ({ plot: record.plot(), today: record.today() });
  const sums = createMemo(() => gotSums(ask()));
  const view = createMemo(() => gotView(sums(), nutrient()));
  const workings = () => explainPlotLedger({ plot: record.plot(), ...yearSoFar(record.today()) });
  return (
    <Sheet title={got.title} here="bed" number={SHEET}>
      <Show
        when={view().beds.length > 0}
        fallback={
          <section>
            <p class="lead-in">{got.empty}</p>
            <A class="block act" href="/plot">
              {got.start}
            </A>
          </section>
        }
      >
        <p>{got.lead(view().from, view().to)}</p>
        <ChoiceRow name="nutrient" legend={got.choose} words={got.nutrients} taken={nutrient()} onTake={setNutrient} />
        <Legend view={view()} />
        <ul class="got-beds plain">
          <For each={view().beds}>{(bed) => <BedBar bed={bed} nutrient={nutrient()} />}</For>
        </ul>
        <Show when={view().unsized.length > 0}>
          <p class="note">{got.unsized(view().unsized)}</p>
        </Show>
        <button type="button" class="block" onClick={() => setAsked(true)}>
          {got.why}
        </button>
        <CautionList cautions={view().cautions} />
        <Table view={view()} />
        <p class="note">{got.commandLine}</p>
        <WorkingDialog
          model={{ workings: () => (asked() ? workings() : undefined), closeWhy: () => setAsked(false) }}
        />
      </Show>
    </Sheet>
  );
}

function Legend(props: { readonly view: GotView }) {
  return (
    <ul class="got-legend plain">
      <li>
        <svg class="swatch" width="28" height="28" aria-hidden="true">
          <rect class="edge" x="1" y="8" width="26" height="12" fill="none" />
        </svg>
        {got.needLegend}
      </li>
      <For each={props.view.kinds}>
        {(kind) => (
          <li>
            <svg class="swatch" width="28" height="28" aria-hidden="true">
              <rect class="hatched" x="1" y="1" width="26" height="26" fill={hatch(kind)} />
            </svg>
            {got.kind(kind)}
          </li>
        )}
      </For>
    </ul>
  );
}

const NEED_HIGH = 14;
const GIVEN_HIGH = 24;
const GAP = 4;
const HIGH = NEED_HIGH + GIVEN_HIGH + GAP + 2;
/** The liquid is seen, however little it is. */
const LEAST_PX = 3;

function BedBar(props: { readonly bed: GotBed; readonly nutrient: Nutrient }) {
  const [width, watch] = measured(FIRST_WIDTH);
  const px = (fraction: number) => 1 + fraction * (width() - 2);
  const sentences = () => sayBed(props.nutrient, props.bed);
  return (
    <li ref={watch}>
      <p>
        <b>{props.bed.name}</b> {props.bed.crops.length > 0 ? props.bed.crops.join(', ') : got.noCrop}
      </p>
      <svg
        class="drawing"
        width={width()}
        height={HIGH}
        viewBox={`0 0 ${width()} ${HIGH}`}
        role="img"
        aria-label={gotAlternative(props.bed.name, sentences())}
      >
        <Show when={props.bed.need}>
          {(need) => (
            <>
              <rect
                class="edge waiting"
                x="1"
                y="1"
                width={Math.max(1, px(need().high) - 1)}
                height={NEED_HIGH}
                fill="none"
              />
              <rect
                class="edge"
                x="1"
                y="1"
                width={Math.max(1, px(need().likely) - 1)}
                height={NEED_HIGH}
                fill="none"
              />
            </>
          )}
        </Show>
        <path class="edge" d={`M1 ${NEED_HIGH + GAP}V${HIGH - 1}`} />
        <For each={props.bed.pieces}>
          {(piece) => {
            const wide = () => px(piece.toFraction) - px(piece.fromFraction);
            return (
              <rect
                class="hatched"
                x={px(piece.fromFraction)}
                y={NEED_HIGH + GAP}
                width={Math.max(LEAST_PX, wide())}
                height={GIVEN_HIGH}
                fill={wide() < 2 * LEAST_PX ? 'var(--ink)' : hatch(piece.kind)}
              />
            );
          }}
        </For>
      </svg>
      <For each={sentences()}>{(line) => <p>{line}</p>}</For>
    </li>
  );
}

function Table(props: { readonly view: GotView }) {
  return (
    <details class="fold">
      <summary>{got.table}</summary>
      <section class="got-table" aria-label={got.table} tabindex={0}>
        <table>
          <thead>
            <tr>
              <For each={got.columns}>{(name) => <th scope="col">{name}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={props.view.beds}>
              {(bed) => (
                <tr>
                  <th scope="row">{bed.name}</th>
                  <td>{sayGrams(bed.needG)}</td>
                  <td>{sayGrams(bed.givenG)}</td>
                  <td>{sayGrams(bed.missingG)}</td>
                  <td>{sayGrams(bed.excessG)}</td>
                  <td>{bed.liquidPercent === null ? got.notKnown : sharePercent(bed.liquidPercent)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </section>
    </details>
  );
}
