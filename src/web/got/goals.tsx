// What is hoped to be picked of each crop of a bed, and a crop the tables lack by the grower's own figures. What is read
// and asked about comes from tasks/plot/goal-forms.ts.

import { A } from '@solidjs/router';
import { createMemo, For, Show } from 'solid-js';
import { countriesOf } from '#tasks/plot/facts.ts';
import { type CropAsked, readGoal, readOwnCrop } from '#tasks/plot/goal-forms.ts';
import { cropForm, goalForm, gotBed } from '#words/en/ground-forms.ts';
import { useRecord } from '../app/context.tsx';
import { HandMark } from '../parts/marks.tsx';
import { GroundField, GroundForm, GroundTrouble } from './ground-form.tsx';

const NO_GOAL = { crop: '', goal: '', plants: '', note: '' };

export function GoalForm(props: { readonly bed: string; readonly crops: readonly CropAsked[] }) {
  const record = useRecord();
  const id = () => `goal-${props.bed}`;
  const readOf = (draft: typeof NO_GOAL) =>
    readGoal(draft, {
      plot: record.plot(),
      bed: props.bed,
      today: record.today(),
      countries: countriesOf(record.plot(), record.keyholder()),
    });
  return (
    <Show
      when={props.crops.length > 0}
      fallback={
        <p class="note">
          {gotBed.noCrop} <A href="/plot">{gotBed.tellCrop}</A>
        </p>
      }
    >
      <GroundForm
        id={id()}
        summary={goalForm.summary}
        empty={NO_GOAL}
        read={(draft) => {
          const { read } = readOf(draft);
          return read.ok ? { ok: true, write: () => record.act('goal.told', read.body) } : read;
        }}
      >
        {({ draft, change, troubles }) => {
          const crop = () => props.crops.find(({ name }) => name === draft().crop) ?? props.crops[0];
          const found = createMemo(() => (draft().goal.trim() === '' ? undefined : readOf(draft())));
          return (
            <>
              <Show when={props.crops.length > 1}>
                <div class="field">
                  <label for={`${id()}-crop`}>{goalForm.crop}</label>
                  <select id={`${id()}-crop`} onChange={(event) => change({ crop: event.currentTarget.value })}>
                    <For each={props.crops}>
                      {({ name }) => (
                        <option value={name} selected={crop()?.name === name}>
                          {name}
                        </option>
                      )}
                    </For>
                  </select>
                </div>
              </Show>
              <GroundField
                id={`${id()}-goal`}
                label={goalForm.goal(crop()?.name ?? '')}
                value={draft().goal}
                trouble={troubles().get('goal')}
                onType={(goal) => change({ goal })}
              />
              <p class="note">
                <Show when={crop()?.usual} fallback={goalForm.noTable}>
                  {(usual) => goalForm.table(usual().range, usual().source)}
                </Show>
              </p>
              <Show when={crop()?.goalTyped}>{(typed) => <p class="note">{goalForm.before(typed())}</p>}</Show>
              <div aria-live="polite">
                <Show when={found()?.says}>{(says) => <p>{says()}</p>}</Show>
                <Show when={found()?.question}>
                  {(question) => (
                    <p>
                      <HandMark />
                      {question()}
                    </p>
                  )}
                </Show>
              </div>
              <Show when={/plant/i.test(draft().goal)}>
                <GroundField
                  id={`${id()}-plants`}
                  label={goalForm.plants}
                  value={draft().plants}
                  trouble={troubles().get('plants')}
                  numeric
                  onType={(plants) => change({ plants })}
                />
              </Show>
              <GroundTrouble trouble={troubles().get('crop')} />
            </>
          );
        }}
      </GroundForm>
    </Show>
  );
}

const NO_TEXTS: Readonly<Record<string, string>> = {};

/** One form for each crop that no table here has. */
export function OwnCropForm(props: { readonly crop: CropAsked }) {
  const record = useRecord();
  const id = () => `own-crop-${props.crop.name.replaceAll(/[^a-z0-9]+/g, '-')}`;
  return (
    <GroundForm
      id={id()}
      summary={cropForm.summary(props.crop.name)}
      empty={NO_TEXTS}
      read={(draft) => {
        const found = readOwnCrop(props.crop.name, draft);
        return found.ok ? { ok: true, write: () => record.act('crop.described', found.body) } : found;
      }}
    >
      {({ draft, change, troubles }) => (
        <>
          <p>
            {props.crop.ownSource === undefined ? cropForm.lead(props.crop.name) : cropForm.again(props.crop.ownSource)}
          </p>
          <For each={Object.entries(cropForm.fields)}>
            {([field, label]) => (
              <GroundField
                id={`${id()}-${field}`}
                label={label}
                value={draft()[field] ?? ''}
                trouble={troubles().get(field)}
                onType={(text) => change({ [field]: text })}
              />
            )}
          </For>
          <For each={[...troubles()].filter(([field]) => cropForm.fields[field] === undefined)}>
            {([, trouble]) => <GroundTrouble trouble={trouble} />}
          </For>
        </>
      )}
    </GroundForm>
  );
}
