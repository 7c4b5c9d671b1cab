// What would mend a batch that does not fit, or use the room of one that stands far from full: one touch
// each, and one touch back.

import { For, Show } from 'solid-js';
import type { Cure } from '#engine/pail/cures.ts';
import { formatAmount } from '#engine/quantity/format.ts';
import { cureWords } from '#words/en/weigh-in.ts';
import { acts, sheet } from '#words/en/weigh-in-labels.ts';
import { Cautions } from './cautions.tsx';
import type { Lot } from './draft.ts';
import { type Draft, field } from './draft.ts';
import type { WeighIn } from './model.ts';

export function Cures(props: { readonly model: WeighIn }) {
  const { sheet: act, result, reading } = props.model;
  const larger = () => !(result()?.fill.fits ?? true);
  function take(cure: Cure) {
    const { head } = cureWords(cure, { larger: larger() });
    const { weighedLots, bowlKg } = reading();
    act.change(acts.cure(head), (now) => cured(now, cure, weighedLots, bowlKg));
    queueMicrotask(() => document.getElementById('take-back')?.focus());
  }
  return (
    <Show when={result()?.cures.length}>
      <section class="ask" id="cures" tabindex="-1" aria-labelledby="cures-heading">
        <h2 id="cures-heading">{larger() ? sheet.curesFor : sheet.curesMore}</h2>
        <Cautions model={props.model} place="cures" />
        <For each={result()?.cures}>
          {(cure, i) => {
            const words = () => cureWords(cure, { larger: larger() });
            return (
              <button type="button" class="block cure" onClick={() => take(cure)}>
                <span class="cure-number">{i() + 1}</span>
                <span>
                  <b>{words().head}</b>
                  {words().body}
                </span>
              </button>
            );
          }}
        </For>
      </section>
    </Show>
  );
}

/** The draft with a cure's amounts put in, each as it would be typed; a bowl's weight stays on the scale. */
function cured(now: Draft, cure: Cure, weighed: readonly Lot[], bowlKg: ReadonlyMap<number, number>): Draft {
  const mass = (kg: number) => field(formatAmount({ value: kg, dimension: 'mass' }, 'metric').text);
  const volume = (litres: number) => field(formatAmount({ value: litres, dimension: 'volume' }, 'metric').text);
  const cured = new Map(weighed.map((lot, i) => [lot.key, cure.plants?.[i]?.massKg]));
  return {
    ...now,
    vessel: cure.volumeL === undefined ? now.vessel : { ...now.vessel, volume: volume(cure.volumeL) },
    lots: now.lots.map((lot) => {
      const kg = cured.get(lot.key);
      return kg === undefined ? lot : { ...lot, weight: mass(kg + (bowlKg.get(lot.key) ?? 0)) };
    }),
    water: cure.waterL === undefined ? now.water : { ...now.water, volume: volume(cure.waterL) },
    sugar: cure.sugarKg ? { ...now.sugar, weight: mass(cure.sugarKg) } : now.sugar,
  };
}
