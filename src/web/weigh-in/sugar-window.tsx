// The sugar window asks for the sugar itself: kind, weight, and the bar of too little, enough, too much.

import { For, Show } from 'solid-js';
import { formatAmount } from '#engine/quantity/format.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { sugars } from '#engine/tables/index.ts';
import { onSheet } from '#tasks/caution.ts';
import { type SugarInProduct, sugarNeeds, sugarSentence } from '#words/en/weigh-in.ts';
import { acts, placeOf, sheet } from '#words/en/weigh-in-labels.ts';
import { WindowBar } from '../drawings/window-bar.tsx';
import { useCautionPlace } from '../parts/caution-places.ts';
import { LevelMark } from '../parts/marks.tsx';
import { measured } from '../parts/measured.ts';
import { WhyBlock } from '../parts/why.tsx';
import { field } from './draft.ts';
import type { WeighIn } from './model.ts';
import { readable } from './readable.ts';
import { settling } from './settle.ts';
import { stepped, sugarStep } from './steps.ts';
import { WeightRow } from './weight-row.tsx';

export function SugarWindow(props: { readonly model: WeighIn }) {
  const { sheet: act, trouble, reading, result, sugarInProduct } = props.model;
  const [width, setPlace] = measured(350);
  const sugar = () => act.draft().sugar;
  const product = () => sugarProduct(sugar().product ?? '');
  const kg = () => reading().sugarKg ?? 0;
  const step = () => sugarStep(kg());
  const type = (text: string, settled: boolean) =>
    act.change(
      acts.typed(sheet.sugarWeight),
      (now) => ({ ...now, sugar: { ...now.sugar, weight: act.typed(now.sugar.weight, text, settled) } }),
      'sugar.weight',
    );
  const onStep = (way: 1 | -1) => {
    const next = stepped(kg(), step(), way);
    const weight = field(next === undefined ? '' : formatAmount({ value: next, dimension: 'mass' }, 'metric').text);
    act.change(acts.step(sheet.sugarWeight), (now) => ({ ...now, sugar: { ...now.sugar, weight } }));
  };
  /** What the rules say about sugar: one sentence in grams of the product stands for them, with their sources. */
  const ruled = () => (result()?.cautions ?? []).filter((one) => placeOf(one.rule) === 'sugar');
  const place = useCautionPlace(ruled, false);
  /** The mark stands where the sheet has room for it; the sentence always does. */
  const marked = () => {
    const { here, all } = place();
    return onSheet(
      here,
      all.map((one) => one()),
    ).open[0];
  };
  const sentence = (as: SugarInProduct) => {
    const given = result();
    return given && sugarSentence(given.sugar, as);
  };
  return (
    <>
      <div ref={setPlace} class="bar">
        <Show when={sugarInProduct()}>
          {(as) => <WindowBar as={as()} closed={result()?.sugar.window === 'closed'} width={width()} />}
        </Show>
      </div>
      <Show when={result() && sugar().product === undefined}>
        <p class="note">{sheet.standsForSugar}</p>
      </Show>
      <Show when={sugarInProduct()}>
        {(as) => (
          <div>
            <div class="fact">
              <p>
                <Show when={marked()}>
                  {(rule) => (
                    <>
                      <LevelMark level={rule().level} />
                      <b>{sheet.levels[rule().level]}. </b>
                    </>
                  )}
                </Show>
                {sentence(as())}
              </p>
              <WhyBlock
                of={sheet.sugarQuestion}
                onAsk={() => props.model.askWhy('sugar.leastHexoseG', 'sugar.asProductG', 'sugar.mostHexoseG')}
              />
            </div>
            <For each={[...new Set(ruled().map((one) => one.source))]}>
              {(source) => <p class="source">{source}</p>}
            </For>
          </div>
        )}
      </Show>
      <div class="field">
        <label for="sugar-product">{sheet.sugarProduct}</label>
        <select
          id="sugar-product"
          onChange={(event) => {
            const id = event.currentTarget.value || undefined;
            act.change(acts.answered(sheet.sugarProduct), (now) => ({ ...now, sugar: { ...now.sugar, product: id } }));
          }}
        >
          <option value="" selected={sugar().product === undefined}>
            {sheet.noProduct}
          </option>
          {sugars.map((row) => (
            <option value={row.id} selected={row.id === sugar().product}>
              {row.name}
            </option>
          ))}
        </select>
      </div>
      <Show when={product()}>
        {(kind) => (
          <WeightRow
            id="sugar-weight"
            name={kind().name}
            entryLabel={sheet.sugarWeight}
            hint={sheet.sugarHint}
            hatch="sugar"
            field={sugar().weight}
            trouble={trouble('sugar.weight')}
            step={step()}
            canStep={kg() > 0}
            onStep={onStep}
            onType={(text) => type(text, readable(text, 'mass', act.draft(), kind().bulkKgPerL))}
            onLeave={(text) => type(text, true)}
            {...settling(
              props.model,
              sheet.sugarWeight,
              () => sugar().weight.text,
              (text) => type(text, true),
            )}
          />
        )}
      </Show>
      <Show when={result()}>
        {(given) => (
          <>
            <div class="fact">
              <p>{sugarNeeds(given().sugar).needed}</p>
              <WhyBlock of={sugarNeeds(given().sugar).needed} onAsk={() => props.model.askWhy('sugar.neededHexoseG')} />
            </div>
            <div class="fact">
              <p>{sugarNeeds(given().sugar).own}</p>
              <WhyBlock of={sugarNeeds(given().sugar).own} onAsk={() => props.model.askWhy('sugar.ownHexoseG')} />
            </div>
          </>
        )}
      </Show>
    </>
  );
}
