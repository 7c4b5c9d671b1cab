// Third question: how much water; and, for who knows it, how much acid it takes up.

import { Show } from 'solid-js';
import { formatAmount } from '#engine/quantity/format.ts';
import type { AlkalinityUnit } from '#engine/scraps/water.ts';
import { acts, alkalinityUnits, sheet } from '#words/en/weigh-in-labels.ts';
import { AmountField } from '../parts/amount-field.tsx';
import { field } from './draft.ts';
import type { WeighIn } from './model.ts';
import { readable } from './readable.ts';
import { settling } from './settle.ts';
import { stepped, volumeStep } from './steps.ts';
import { WeightRow } from './weight-row.tsx';

export function WaterQuestion(props: { readonly model: WeighIn }) {
  const { sheet: act, trouble, reading } = props.model;
  const water = () => act.draft().water;
  const litres = () => reading().waterL ?? 0;
  const step = () => volumeStep(litres());
  const type = (part: 'volume' | 'alkalinity', text: string, settled: boolean) =>
    act.change(
      acts.typed(sheet.waterVolume),
      (now) => ({ ...now, water: { ...now.water, [part]: act.typed(now.water[part], text, settled) } }),
      `water.${part}`,
    );
  const onStep = (way: 1 | -1) => {
    const next = stepped(litres(), step(), way);
    if (next === undefined) return;
    const volume = field(formatAmount({ value: next, dimension: 'volume' }, 'metric').text);
    act.change(acts.step(sheet.waterVolume), (now) => ({ ...now, water: { ...now.water, volume } }));
  };
  return (
    <section class="ask" aria-labelledby="ask-water">
      <h2 id="ask-water">
        <b class="number">3</b> {sheet.waterQuestion}
      </h2>
      <WeightRow
        id="water-volume"
        name={sheet.waterVolume}
        entryLabel={sheet.waterVolume}
        hint={sheet.waterHint}
        hatch="water"
        field={water().volume}
        trouble={trouble('water.volume')}
        step={step()}
        canStep={stepped(litres(), step(), -1) !== undefined}
        onStep={onStep}
        onType={(text) => type('volume', text, readable(text, 'volume', act.draft()))}
        onLeave={(text) => type('volume', text, true)}
        {...settling(
          props.model,
          sheet.waterVolume,
          () => water().volume.text,
          (text) => type('volume', text, true),
        )}
      />
      <details class="fold">
        <summary>{sheet.hardnessMore}</summary>
        <div class="two">
          <AmountField
            id="water-alkalinity"
            label={sheet.hardness}
            field={water().alkalinity}
            trouble={trouble('water.alkalinity')}
            onType={(text) => type('alkalinity', text, /^\d+$/.test(text) || text === '')}
            onLeave={(text) => type('alkalinity', text, true)}
            {...settling(
              props.model,
              sheet.hardness,
              () => '',
              () => undefined,
            )}
          />
          <div class="field">
            <label for="water-alkalinity-unit">{sheet.hardnessUnit}</label>
            <select
              id="water-alkalinity-unit"
              onChange={(event) => {
                const alkalinityUnit = event.currentTarget.value as AlkalinityUnit;
                act.change(acts.answered(sheet.hardnessUnit), (now) => ({
                  ...now,
                  water: { ...now.water, alkalinityUnit },
                }));
              }}
            >
              {Object.entries(alkalinityUnits).map(([unit, name]) => (
                <option value={unit} selected={unit === water().alkalinityUnit}>
                  {name}
                </option>
              ))}
            </select>
          </div>
        </div>
      </details>
      <Show when={water().alkalinity.settled.trim() === '' && water().volume.settled.trim() !== ''}>
        <p class="note">{sheet.hardnessUnknown}</p>
      </Show>
    </section>
  );
}
