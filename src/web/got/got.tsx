// What the beds got: every bed in walking order as a strip of its need with what was given, all beds in a line, the table
// behind, the working, and the season of one bed. Everything shown comes from tasks/plot/got.ts.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Nutrient } from '#engine/ground/need.ts';
import { type GotView, gotSums, gotView } from '#tasks/plot/got.ts';
import { explainPlotLedger } from '#tasks/plot/ledger.ts';
import { got, sayGrams, sayKinds, sayPlot } from '#words/en/got.ts';
import { sharePercent } from '#words/en/ledger.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { TableFold } from '../parts/table-fold.tsx';
import { WorkingDialog } from '../parts/working-dialog.tsx';
import '../styles/drawing.css';
import '../styles/weigh-in.css';
import '../styles/got.css';
import { AskHemisphere } from './ask-hemisphere.tsx';
import { Strips } from './strips.tsx';

const SHEET = 15;

export function GotScreen() {
  const record = useRecord();
  const [nutrient, setNutrient] = createSignal<Nutrient>('n');
  const [asked, setAsked] = createSignal(false);
  const ask = () => ({ plot: record.plot(), today: record.today() });
  const sums = createMemo(() => gotSums(ask()));
  const view = createMemo(() => gotView(sums(), nutrient()));
  const workings = () => explainPlotLedger({ plot: record.plot(), to: record.today() });
  return (
    <Sheet title={got.title} here="bed" number={SHEET}>
      <Show
        when={view().beds.length + view().unsized.length > 0}
        fallback={
          <section>
            <p class="lead-in">{got.empty}</p>
            <A class="block act" href="/plot">
              {got.start}
            </A>
          </section>
        }
      >
        <p>{got.lead(view())}</p>
        <Show when={view().asksHemisphere}>
          <AskHemisphere />
        </Show>
        <ChoiceRow name="nutrient" legend={got.choose} words={got.nutrients} taken={nutrient()} onTake={setNutrient} />
        <Show when={view().beds.length > 0}>
          <div class="got-all">
            <For each={sayPlot(nutrient(), view().plot)}>{(line) => <p>{line}</p>}</For>
          </div>
          <Strips view={view()} nutrient={nutrient()} />
        </Show>
        <Show when={view().unsized.length > 0}>
          <p class="note">{got.unsized(view().unsized)}</p>
          <A class="block" href="/plot">
            {got.tellSize}
          </A>
        </Show>
        <button type="button" class="block" onClick={() => setAsked(true)}>
          {got.why}
        </button>
        <CautionList cautions={view().cautions} />
        <Table view={view()} />
        <A class="block act" href="/cover">
          {got.toCover}
        </A>
        <WorkingDialog
          model={{ workings: () => (asked() ? workings() : undefined), closeWhy: () => setAsked(false) }}
        />
      </Show>
    </Sheet>
  );
}

function Table(props: { readonly view: GotView }) {
  const rows = () => [
    ...props.view.beds.map((bed) => ({ ...bed, of: sayKinds(bed.byKind) })),
    { ...props.view.plot, name: got.all, of: '' },
  ];
  return (
    <TableFold name={got.table} columns={got.columns}>
      <For each={rows()}>
        {(row) => (
          <tr>
            <th scope="row">{row.name}</th>
            <td>{sayGrams(row.needG)}</td>
            <td>{sayGrams(row.givenG)}</td>
            <td>{row.of}</td>
            <td>{sayGrams(row.missingG)}</td>
            <td>{sayGrams(row.excessG)}</td>
            <td>{row.liquidPercent === null ? got.notKnown : sharePercent(row.liquidPercent)}</td>
          </tr>
        )}
      </For>
    </TableFold>
  );
}
