// Lots of the stock that may not go into a vessel, greyed with their reason: on the filling sheet and at the weigh-in.

import { For, Show } from 'solid-js';
import type { StockKept } from '#tasks/plot/kept-out.ts';
import { fillSheet, lotWords } from '#words/en/fill.ts';
import { byId, More, paged } from '../parts/paged.tsx';
import '../styles/scraps.css';

/** Lots drawn at first. */
const LOTS = 12;

/** Lots of the stock that may not go in: greyed where the others stand, each with its reason. */
export function KeptOutLots(props: { readonly offers: Pick<StockKept, 'keptOut'> }) {
  const lots = paged(() => props.offers.keptOut, LOTS, byId);
  return (
    <Show when={props.offers.keptOut.length > 0}>
      <ul class="plain kept-out" aria-label={fillSheet.kept}>
        <For each={lots.ids()}>{(id) => <Show when={lots.of(id)}>{(lot) => <KeptLot lot={lot()} />}</Show>}</For>
      </ul>
      <More of={lots} />
    </Show>
  );
}

function KeptLot(props: { readonly lot: StockKept['keptOut'][number] }) {
  return (
    <li>
      <button type="button" class="block" aria-disabled="true" aria-describedby={`kept-${props.lot.id}`}>
        {lotWords(props.lot)}: {fillSheet.keptWhy[props.lot.why]}
      </button>
      <Show when={props.lot.says}>
        <p class="note" id={`kept-${props.lot.id}`}>
          {props.lot.says}
        </p>
      </Show>
    </li>
  );
}
