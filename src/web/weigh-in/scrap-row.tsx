// The row of one lot of scraps: weight, bowl, the way out, and for clippings and hay the question about
// weedkiller.

import { Show } from 'solid-js';
import { formatAmount } from '#engine/quantity/format.ts';
import { material } from '#engine/tables/index.ts';
import { acts, asksWeedkiller, rowLabels, sheet } from '#words/en/weigh-in-labels.ts';
import { hatchOf } from '../drawings/hatch-of.ts';
import { AmountField } from '../parts/amount-field.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { type Field, field, type Lot } from './draft.ts';
import type { WeighIn } from './model.ts';
import { readable } from './readable.ts';
import { lotField } from './reading.ts';
import { settling } from './settle.ts';
import { massStep, stepped } from './steps.ts';
import { WeightRow } from './weight-row.tsx';

export function ScrapRow(props: { readonly model: WeighIn; readonly lot: Lot; readonly onOut: () => void }) {
  const { sheet: act, trouble, reading } = props.model;
  const row = () => material(props.lot.material);
  const name = () => row()?.name ?? props.lot.material;
  const netKg = () => reading().lotKg.get(props.lot.key);
  const bowlKg = () => reading().bowlKg.get(props.lot.key) ?? 0;
  const step = () => massStep(netKg() ?? 0);
  const kg = (value: number) => formatAmount({ value, dimension: 'mass' }, 'metric').text;

  const type = (part: 'weight' | 'bowl', text: string, settled: boolean) =>
    act.changeLot(
      part === 'weight' ? acts.typed(name()) : acts.bowl(name()),
      props.lot.key,
      (lot) => ({ ...lot, [part]: act.typed(lot[part] ?? field(''), text, settled) }),
      lotField(props.lot.key, part),
    );
  const setBowl = (bowl: Field | undefined, weight?: Field) =>
    act.changeLot(acts.bowl(name()), props.lot.key, (lot) => ({ ...lot, bowl, weight: weight ?? lot.weight }));
  const onStep = (way: 1 | -1) => {
    const next = stepped(netKg() ?? 0, step(), way);
    if (next === undefined) return;
    act.changeLot(acts.step(name()), props.lot.key, (lot) => ({ ...lot, weight: field(kg(next + bowlKg())) }));
  };
  const id = () => `lot-${props.lot.key}`;
  return (
    <WeightRow
      id={id()}
      name={name()}
      entryLabel={rowLabels.weight(name())}
      hint={sheet.weightHint}
      hatch={hatchOf(row() ?? { id: '', group: '' }) ?? 'trimmings'}
      field={props.lot.weight}
      trouble={trouble(lotField(props.lot.key, 'weight'))}
      step={step()}
      canStep={stepped(netKg() ?? 0, step(), -1) !== undefined}
      onStep={onStep}
      onType={(text) => type('weight', text, readable(text, 'mass', act.draft()))}
      onLeave={(text) => type('weight', text, true)}
      {...settling(
        props.model,
        name(),
        () => props.lot.weight.text,
        (text) => type('weight', text, true),
      )}
      keys={
        <>
          <button
            type="button"
            class="block"
            aria-label={rowLabels.bowl(name())}
            aria-expanded={props.lot.bowl !== undefined}
            onClick={() => setBowl(props.lot.bowl ? undefined : field(''))}
          >
            {sheet.bowl}
          </button>
          <button type="button" class="block" aria-label={rowLabels.out(name())} onClick={() => props.onOut()}>
            {sheet.out}
          </button>
        </>
      }
    >
      <Show when={props.lot.bowl}>
        {(bowl) => (
          <div class="bowl">
            <AmountField
              id={`${id()}-bowl`}
              label={sheet.bowlWeighs}
              field={bowl()}
              trouble={trouble(lotField(props.lot.key, 'bowl'))}
              onType={(text) => type('bowl', text, readable(text, 'mass', act.draft()))}
              onLeave={(text) => type('bowl', text, true)}
              {...settling(
                props.model,
                name(),
                () => bowl().text,
                (text) => type('bowl', text, true),
              )}
            />
            <button
              type="button"
              class="block"
              disabled={props.lot.weight.text.trim() === ''}
              onClick={() => setBowl(field(props.lot.weight.text), field(''))}
            >
              {sheet.bowlIsOn}
            </button>
            <Show when={netKg() !== undefined && bowlKg() > 0}>
              <p class="note">{rowLabels.net(kg(netKg() ?? 0), kg(bowlKg()))}</p>
            </Show>
          </div>
        )}
      </Show>
      <Show when={asksWeedkiller(row()?.group ?? '')}>
        <ChoiceRow
          name={`${id()}-treated`}
          legend={sheet.treatedQuestion}
          words={[
            ['no', sheet.treated.no],
            ['unknown', sheet.treated.unknown],
            ['yes', sheet.treated.yes],
          ]}
          taken={props.lot.treated}
          onTake={(treated) => act.changeLot(acts.answered(name()), props.lot.key, (lot) => ({ ...lot, treated }))}
        />
      </Show>
    </WeightRow>
  );
}
