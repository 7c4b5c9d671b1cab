// First question: which vessel. Volume as typed, shape, and the gas room that stands at our usual until changed.

import { For, Show } from 'solid-js';
import { vesselsDrawn } from '#tasks/plot/facts.ts';
import { vesselWords } from '#words/en/fill.ts';
import { acts, shapeNames, sheet } from '#words/en/weigh-in-labels.ts';
import { figure } from '#words/figures.ts';
import { useRecord } from '../app/context.tsx';
import { AmountField } from '../parts/amount-field.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { field } from './draft.ts';
import type { WeighIn } from './model.ts';
import { readable } from './readable.ts';
import { settling } from './settle.ts';

export function VesselQuestion(props: { readonly model: WeighIn }) {
  const { sheet: act, trouble, reading } = props.model;
  const vessel = () => act.draft().vessel;
  const record = useRecord();
  const own = () => vesselsDrawn(record.plot());
  const take = (one: ReturnType<typeof own>[number]) =>
    act.change(acts.answered(sheet.vesselQuestion), (now) => ({
      ...now,
      vessel: {
        ...now.vessel,
        volume: field(one.typed),
        gasRoom: field(`${figure((1 - one.usableL / one.volumeL) * 100, 0)} %`),
        shape: one.shape.kind,
      },
    }));
  const type = (part: 'volume' | 'gasRoom', label: string, text: string, settled: boolean) =>
    act.change(
      acts.typed(label),
      (now) => ({ ...now, vessel: { ...now.vessel, [part]: act.typed(now.vessel[part], text, settled) } }),
      `vessel.${part}`,
    );
  return (
    <section class="ask" aria-labelledby="ask-vessel">
      <h2 id="ask-vessel">
        <b class="number">1</b> {sheet.vesselQuestion}
      </h2>
      <Show when={own().length > 0}>
        <fieldset class="choice" id="own-vessels">
          <legend>{sheet.ownVessels}</legend>
          <div class="choices">
            <For each={own()}>
              {(one) => (
                <button
                  type="button"
                  class="block"
                  aria-pressed={vessel().volume.text === one.typed}
                  classList={{ taken: vessel().volume.text === one.typed }}
                  onClick={() => take(one)}
                >
                  {vesselWords({ ...one, peg: undefined })}
                </button>
              )}
            </For>
          </div>
        </fieldset>
      </Show>
      <div class="two">
        <AmountField
          id="vessel-volume"
          label={sheet.vesselVolume}
          hint={sheet.vesselHint}
          field={vessel().volume}
          trouble={trouble('vessel.volume')}
          onType={(text) => type('volume', sheet.vesselVolume, text, readable(text, 'volume', act.draft()))}
          onLeave={(text) => type('volume', sheet.vesselVolume, text, true)}
          {...settling(
            props.model,
            sheet.vesselVolume,
            () => vessel().volume.text,
            (text) => type('volume', sheet.vesselVolume, text, true),
          )}
        />
        <AmountField
          id="vessel-gas-room"
          label={sheet.gasRoom}
          hint={sheet.gasRoomHint}
          field={vessel().gasRoom}
          trouble={trouble('vessel.gasRoom')}
          onType={(text) => type('gasRoom', sheet.gasRoom, text, /^\d{1,2}\s*%$/.test(text))}
          onLeave={(text) => type('gasRoom', sheet.gasRoom, text, true)}
          {...settling(
            props.model,
            sheet.gasRoom,
            () => '',
            () => undefined,
          )}
        />
      </div>
      <p class="note">{sheet.gasRoomNote}</p>
      <ChoiceRow
        name="shape"
        legend={sheet.shapeQuestion}
        words={[
          ['pail', shapeNames.pail],
          ['drum', shapeNames.drum],
          ['barrel', shapeNames.barrel],
        ]}
        taken={reading().shape}
        onTake={(shape) =>
          act.change(acts.answered(sheet.shapeQuestion), (now) => ({ ...now, vessel: { ...now.vessel, shape } }))
        }
      />
      <Show when={reading().vesselL !== undefined}>
        <ChoiceRow
          name="lid"
          legend={sheet.lidQuestion}
          words={[
            ['loose', sheet.lids.loose],
            ['vent', sheet.lids.vent],
            ['tight', sheet.lids.tight],
          ]}
          taken={vessel().lid}
          onTake={(lid) =>
            act.change(acts.answered(sheet.lidQuestion), (now) => ({ ...now, vessel: { ...now.vessel, lid } }))
          }
        />
      </Show>
    </section>
  );
}
