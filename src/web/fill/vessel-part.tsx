// Which vessel: one that was described, or one described on the spot; its lid, where it stands, how warm it is there.

import { For, Show } from 'solid-js';
import { kindOf } from '#plot/place/basin.ts';
import { fillSheet, vesselTaken, vesselWords } from '#words/en/fill.ts';
import { shapeNames, sheet } from '#words/en/weigh-in-labels.ts';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { TypedField, type TypedFieldProps } from '../parts/typed-field.tsx';
import { readField } from './draft.ts';
import type { PartProps } from './scraps-part.tsx';

export function VesselPart(props: PartProps) {
  const field = (
    name: 'newName' | 'newVolume' | 'gasRoom' | 'place' | 'warmth',
    said: Pick<TypedFieldProps, 'id' | 'label' | 'hint' | 'dimension'>,
    trouble: () => TypedFieldProps['trouble'] = () => undefined,
  ) => (
    <TypedField
      {...said}
      field={props.draft[name]}
      trouble={trouble()}
      countries={props.habits}
      onField={(next) => props.change({ [name]: next })}
      onCountries={(countries) => props.change({ countries })}
    />
  );
  const taken = () => (props.draft.vessel === 'new' ? undefined : props.reading.offer?.peg);
  return (
    <section class="ask" aria-labelledby="fill-vessel">
      <h2 id="fill-vessel">
        <b class="number">1</b> {fillSheet.vesselQuestion}
      </h2>
      <div class="choices" role="radiogroup" aria-labelledby="fill-vessel">
        <For each={props.offers.vessels}>
          {(vessel) => (
            <label class="block choice-block" classList={{ taken: props.draft.vessel === vessel.id }}>
              <input
                type="radio"
                name="vessel"
                checked={props.draft.vessel === vessel.id}
                onChange={() =>
                  props.change({
                    vessel: vessel.id,
                    lid: props.draft.lid ?? vessel.lid,
                    ...(props.draft.place.text === '' ? { place: readField(vessel.place ?? '') } : {}),
                  })
                }
              />
              <span>{vesselWords(vessel)}</span>
            </label>
          )}
        </For>
        <label class="block choice-block" classList={{ taken: props.draft.vessel === 'new' }}>
          <input
            type="radio"
            name="vessel"
            checked={props.draft.vessel === 'new'}
            onChange={() => props.change({ vessel: 'new' })}
          />
          <span>{fillSheet.another}</span>
        </label>
      </div>
      <Show when={taken()}>{(peg) => <p class="accent">{vesselTaken(peg())}</p>}</Show>
      <Show when={props.draft.vessel === 'new'}>
        <div class="two">
          {field('newName', { id: 'fill-new-name', label: fillSheet.newName, hint: fillSheet.newNameHint })}
          {field(
            'newVolume',
            { id: 'fill-new-volume', label: fillSheet.newVolume, hint: fillSheet.volumeHint, dimension: 'volume' },
            () => props.reading.volume.trouble,
          )}
          {field(
            'gasRoom',
            { id: 'fill-gas-room', label: fillSheet.gasRoom, hint: fillSheet.gasRoomHint },
            () => props.reading.gasRoom.trouble,
          )}
        </div>
        <p class="note">{sheet.gasRoomNote}</p>
        <ChoiceRow
          name="shape"
          legend={fillSheet.shapeQuestion}
          words={[
            ['pail', shapeNames.pail],
            ['drum', shapeNames.drum],
            ['barrel', shapeNames.barrel],
          ]}
          taken={kindOf(props.reading.vesselL ?? 0, props.draft.newShape)}
          onTake={(newShape) => props.change({ newShape })}
        />
      </Show>
      <ChoiceRow
        name="lid"
        legend={fillSheet.lidQuestion}
        words={[
          ['loose', fillSheet.lids.loose],
          ['vent', fillSheet.lids.vent],
          ['none', fillSheet.lids.none],
          ['tight', fillSheet.lids.tight],
        ]}
        taken={props.draft.lid}
        onTake={(lid) => props.change({ lid })}
      />
      <div class="two">
        {field('place', { id: 'fill-place', label: fillSheet.place, hint: fillSheet.placeHint })}
        {field(
          'warmth',
          { id: 'fill-warmth', label: fillSheet.warmth, hint: fillSheet.warmthHint, dimension: 'temperature' },
          () => props.reading.warmth.trouble,
        )}
      </div>
    </section>
  );
}
