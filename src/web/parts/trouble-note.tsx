// The sentence at a field that cannot be read, with the blocks that settle it in one touch: whose gallon,
// whose spoon, which mark stands before decimals, which unit. What was typed stays as it is.

import { For, Show } from 'solid-js';
import type { NumberStyle } from '#engine/quantity/number.ts';
import type { GallonCountry, SpoonCountry } from '#engine/quantity/units.ts';
import type { FieldTrouble, Typed } from '#tasks/plot/form.ts';
import { choiceWords } from '#words/en/weigh-in-labels.ts';
import { sayStyleChoice } from '#words/quantity.ts';
import { HandMark } from './marks.tsx';

export interface Settling {
  readonly onGallon: (country: GallonCountry) => void;
  readonly onSpoon: (country: SpoonCountry) => void;
  readonly onStyle: (style: NumberStyle) => void;
  readonly onUnit: (unit: string) => void;
  /** Puts texts into a form; only where its troubles offer some. */
  readonly onPut?: (put: Typed) => void;
}

export function TroubleNote(props: { readonly id: string; readonly trouble: FieldTrouble } & Settling) {
  const gallon = () => (props.trouble.ask?.kind === 'gallon' ? props.trouble.ask.choices : []);
  const spoon = () => (props.trouble.ask?.kind === 'spoon' ? props.trouble.ask.choices : []);
  const style = () => (props.trouble.ask?.kind === 'style' ? props.trouble.ask : undefined);
  return (
    <div class="trouble">
      <p id={props.id}>
        <HandMark />
        {props.trouble.sentence}
      </p>
      <Show when={props.trouble.ask || props.trouble.units || props.trouble.offers}>
        <div class="choices">
          <For each={gallon()}>
            {(choice) => (
              <button type="button" class="block" onClick={() => props.onGallon(choice.country)}>
                {choiceWords(choice)}
              </button>
            )}
          </For>
          <For each={spoon()}>
            {(choice) => (
              <button type="button" class="block" onClick={() => props.onSpoon(choice.country)}>
                {choiceWords(choice)}
              </button>
            )}
          </For>
          <For each={style()?.choices}>
            {(choice) => (
              <button type="button" class="block" onClick={() => props.onStyle(choice.style)}>
                {sayStyleChoice(choice, style()?.behind ?? '')}
              </button>
            )}
          </For>
          <For each={props.trouble.offers}>
            {(offer) => (
              <button type="button" class="block" onClick={() => props.onPut?.(offer.put)}>
                {offer.text}
              </button>
            )}
          </For>
          <For each={props.trouble.units}>
            {(unit) => (
              <button type="button" class="block" onClick={() => props.onUnit(unit)}>
                {unit}
              </button>
            )}
          </For>
        </div>
      </Show>
    </div>
  );
}
