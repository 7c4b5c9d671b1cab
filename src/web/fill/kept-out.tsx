// Lots of the stock that may not go into a vessel, greyed with their reason: on the filling sheet and at the weigh-in.

import { For, Show } from 'solid-js';
import type { StockKept } from '#tasks/plot/kept-out.ts';
import { fillSheet, lotWords } from '#words/en/fill.ts';
import '../styles/scraps.css';

/** Lots of the stock that may not go in: greyed where the others stand, each with its reason. */
export function KeptOutLots(props: { readonly offers: Pick<StockKept, 'keptOut'> }) {
  return (
    <Show when={props.offers.keptOut.length > 0}>
      <ul class="plain kept-out" aria-label={fillSheet.kept}>
        <For each={props.offers.keptOut}>
          {(lot) => (
            <li>
              <button type="button" class="block" aria-disabled="true" aria-describedby={`kept-${lot.id}`}>
                {lotWords(lot)}: {fillSheet.keptWhy[lot.why]}
              </button>
              <Show when={lot.says}>
                <p class="note" id={`kept-${lot.id}`}>
                  {lot.says}
                </p>
              </Show>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
