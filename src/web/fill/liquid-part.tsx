// The rest of what goes in: water, sugar, a starter of an earlier batch that was ready.

import { For, Show } from 'solid-js';
import { sugarList } from '#tasks/lists.ts';
import { fillSheet, starterWords } from '#words/en/fill.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';
import { sugarStep, volumeStep } from '../weigh-in/steps.ts';
import { ActualRow } from './actual-row.tsx';
import type { PartProps } from './scraps-part.tsx';

export function LiquidPart(props: PartProps) {
  const onCountries = (countries: PartProps['draft']['countries']) => props.change({ countries });
  const untold = () => {
    const report = props.offers.waters.find(({ id }) => id === props.draft.waterFrom);
    return report?.alkalinityMeqPerL === undefined && props.draft.alkalinityMeqPerL === undefined;
  };
  return (
    <>
      <section class="ask" aria-labelledby="fill-water">
        <h2 id="fill-water">
          <b class="number">3</b> {fillSheet.waterQuestion}
        </h2>
        <ActualRow
          id="fill-water-volume"
          name={fillSheet.water}
          hint={fillSheet.waterHint}
          hatch="water"
          dimension="volume"
          field={props.draft.water}
          read={props.reading.water}
          planned={props.draft.waterPlanned}
          step={volumeStep}
          habits={props.habits}
          onField={(water) => props.change({ water })}
          onCountries={onCountries}
        />
        <Show when={props.offers.waters.length > 0}>
          <div class="field">
            <label for="fill-water-from">{fillSheet.waterFrom}</label>
            <select
              id="fill-water-from"
              onChange={(event) => props.change({ waterFrom: event.currentTarget.value || undefined })}
            >
              <option value="">{fillSheet.noReport}</option>
              <For each={props.offers.waters}>
                {(water) => (
                  <option value={water.id} selected={water.id === props.draft.waterFrom}>
                    {water.name ?? fillSheet.sources[water.source]}
                  </option>
                )}
              </For>
            </select>
          </div>
        </Show>
        <Show when={untold()}>
          <p class="note">{fillSheet.alkalinityUntold}</p>
        </Show>
      </section>
      <section class="ask" aria-labelledby="fill-sugar">
        <h2 id="fill-sugar">
          <b class="number">4</b> {fillSheet.sugarQuestion}
        </h2>
        <div class="field">
          <label for="fill-sugar-kind">{sheet.sugarProduct}</label>
          <select id="fill-sugar-kind" onChange={(event) => props.change({ sugarProduct: event.currentTarget.value })}>
            <option value="none">{fillSheet.noSugar}</option>
            <For each={sugarList()}>
              {(one) => (
                <option value={one.id} selected={one.id === props.draft.sugarProduct}>
                  {one.name}
                </option>
              )}
            </For>
          </select>
        </div>
        <Show when={props.draft.sugarProduct !== 'none'}>
          <ActualRow
            id="fill-sugar-mass"
            name={fillSheet.sugar}
            hint={fillSheet.sugarHint}
            hatch="sugar"
            dimension="mass"
            field={props.draft.sugar}
            read={props.reading.sugar}
            planned={props.draft.sugarPlanned}
            step={sugarStep}
            habits={props.habits}
            onField={(sugar) => props.change({ sugar })}
            onCountries={onCountries}
          />
        </Show>
      </section>
      <section class="ask" aria-labelledby="fill-starter">
        <h2 id="fill-starter">
          <b class="number">5</b> {fillSheet.starterQuestion}
        </h2>
        <div class="field">
          <label for="fill-starter-from">{fillSheet.waterFrom}</label>
          <select id="fill-starter-from" onChange={(event) => props.change({ starterFrom: event.currentTarget.value })}>
            <option value="none">{fillSheet.noStarter}</option>
            <For each={props.offers.starters}>
              {(one) => (
                <option value={one.id} selected={one.id === props.draft.starterFrom}>
                  {starterWords(one)}
                </option>
              )}
            </For>
            <option value="elsewhere" selected={props.draft.starterFrom === 'elsewhere'}>
              {fillSheet.starterOther}
            </option>
          </select>
        </div>
        <p class="note">{fillSheet.starterNote}</p>
        <Show when={props.draft.starterFrom !== 'none'}>
          <ActualRow
            id="fill-starter-volume"
            name={fillSheet.starter}
            hint={fillSheet.starterHint}
            hatch="bottled-feed"
            dimension="volume"
            field={props.draft.starter}
            read={props.reading.starter}
            planned={undefined}
            step={volumeStep}
            habits={props.habits}
            onField={(starter) => props.change({ starter })}
            onCountries={onCountries}
          />
        </Show>
      </section>
    </>
  );
}
