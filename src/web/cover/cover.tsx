// How to close the gap: a strip for each bed as long as what it misses, hatched by what closes it; the plan in sentences, the
// table behind, what a shop offers, and the best use of what lies here. The plan comes out of the cover's worker.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import type { CoverInput } from '#engine/ground/cover/input.ts';
import type { Nutrient } from '#engine/ground/need.ts';
import { coverInput } from '#tasks/plot/cover.ts';
import { type ExpectedTyped, readExpected } from '#tasks/plot/cover-expected.ts';
import { type LimitsTyped, type OfferTyped, readLimits, readOffers } from '#tasks/plot/cover-offers.ts';
import { shopSource } from '#tasks/plot/cover-sources.ts';
import { coverSheet as words } from '#words/en/cover-sheet.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { Sheet } from '../app/sheet.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { TableFold } from '../parts/table-fold.tsx';
import { WorkingDialog } from '../parts/working-dialog.tsx';
import { planned } from './client.ts';
import { Expected } from './expected.tsx';
import type { CoverShown } from './messages.ts';
import { Offers } from './offers.tsx';
import { CoverStrips } from './strips.tsx';
import { BestUses } from './ways.tsx';
import '../styles/drawing.css';
import '../styles/weigh-in.css';
import '../styles/got.css';
import '../styles/cover.css';

const SHEET = 16;

interface Draft extends LimitsTyped {
  readonly aim: CoverInput['aim'];
  readonly offers: readonly OfferTyped[];
  readonly expected: readonly ExpectedTyped[];
}

export function CoverScreen() {
  const record = useRecord();
  const { draft, change } = useDraft<Draft>(`${record.plotId()}.cover`, {
    aim: 'least-cost',
    money: '',
    minutes: '',
    bucketMinutes: '',
    offers: [],
    expected: [],
  });
  const [nutrient, setNutrient] = createSignal<Nutrient>('n');
  const [asked, setAsked] = createSignal(false);
  const offers = createMemo(() => readOffers(draft().offers));
  const expected = createMemo(() => readExpected(draft().expected));
  const limits = createMemo(() => readLimits(draft()));
  const input = createMemo(() =>
    coverInput({
      plot: record.plot(),
      to: record.today(),
      expected: expected().stuff,
      shop: offers().feeds.map(shopSource),
      aim: draft().aim,
      limits: limits().limits,
      bucketMinutes: limits().bucketMinutes,
    }),
  );
  const hasBeds = () => input().beds.length > 0;
  const { answer, failed } = planned(() => (hasBeds() ? input() : undefined));
  return (
    <Sheet title={words.title} here="bed" number={SHEET}>
      <p class="lead-in">{words.lead}</p>
      <Show
        when={hasBeds()}
        fallback={
          <>
            <p>{words.empty}</p>
            <A class="block act" href="/plot">
              {words.start}
            </A>
          </>
        }
      >
        <ChoiceRow
          name="aim"
          legend={words.choose}
          words={words.aims}
          taken={draft().aim}
          onTake={(aim) => change({ aim })}
        />
        <Show when={!failed()} fallback={<p role="alert">{words.failed}</p>}>
          <Show when={answer()} fallback={<p role="status">{words.working}</p>}>
            {(plan) => (
              <>
                <p role="status">
                  {words.status[plan().status]} <Show when={plan().cost}>{(cost) => words.costs(cost())}</Show>
                </p>
                <ChoiceRow
                  name="cover-nutrient"
                  legend={words.nutrient}
                  words={words.nutrients}
                  taken={nutrient()}
                  onTake={setNutrient}
                />
                <CoverStrips beds={plan().beds} nutrient={nutrient()} />
                <Sentences plan={plan()} />
                <Table plan={plan()} />
                <Show when={plan().workings.length > 0}>
                  <button type="button" class="block" onClick={() => setAsked(true)}>
                    {words.why}
                  </button>
                </Show>
                <WorkingDialog
                  model={{ workings: () => (asked() ? plan().workings : undefined), closeWhy: () => setAsked(false) }}
                />
              </>
            )}
          </Show>
        </Show>
        <Expected
          rows={draft().expected}
          troubles={expected().troubles}
          onRows={(rows) => change({ expected: rows })}
        />
        <Offers
          offers={draft().offers}
          limits={draft()}
          troubles={offers().troubles}
          limitTroubles={limits().troubles}
          onOffers={(rows) => change({ offers: rows })}
          onLimit={(field, text) => change({ [field]: text })}
        />
      </Show>
      <BestUses plot={record.plot()} />
      <A class="block" href="/got">
        {words.toSums}
      </A>
    </Sheet>
  );
}

function Sentences(props: { readonly plan: CoverShown }) {
  return (
    <For each={words.order}>
      {(part) => (
        <Show when={props.plan.says[part].length > 0}>
          <section class="cover-part">
            <h2>{words.headings[part]}</h2>
            <ul class="cover-says">
              <For each={props.plan.says[part]}>{(sentence) => <li>{sentence}</li>}</For>
            </ul>
            <Show when={part === 'uses'}>
              <p class="note">{words.care}</p>
            </Show>
            <Show when={part === 'short' && props.plan.says.open.length > 0}>
              <details class="fold">
                <summary>{words.whyOpen}</summary>
                <ul class="cover-says">
                  <For each={props.plan.says.open}>{(sentence) => <li>{sentence}</li>}</For>
                </ul>
              </details>
            </Show>
          </section>
        </Show>
      )}
    </For>
  );
}

function Table(props: { readonly plan: CoverShown }) {
  const rows = () => props.plan.beds.flatMap((bed) => bed.pieces.map((piece) => ({ bed: bed.name, piece })));
  return (
    <Show when={rows().length > 0}>
      <TableFold name={words.table} columns={words.columns}>
        <For each={rows()}>
          {({ bed, piece }) => (
            <tr>
              <th scope="row">{bed}</th>
              <td>{piece.source}</td>
              <td>{words.amount(piece.massKg)}</td>
              <td>{words.perM2(piece.kgPerM2)}</td>
              <td>{words.grams(piece.bringsG.n)}</td>
              <td>{words.grams(piece.bringsG.p)}</td>
              <td>{words.grams(piece.bringsG.k)}</td>
            </tr>
          )}
        </For>
      </TableFold>
    </Show>
  );
}
