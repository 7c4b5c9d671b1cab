// One wide row: a thing that goes in, what was planned of it, and the weight as the scale really said.

import { type JSX, Show } from 'solid-js';
import type { Countries } from '#engine/quantity/ask.ts';
import { formatAmount } from '#engine/quantity/format.ts';
import type { AmountRead } from '#engine/quantity/kept.ts';
import { fillSheet, offPlan } from '#words/en/fill.ts';
import { type Habits, leftField, type TypedReading, typedInto } from '../parts/typed.ts';
import type { Field } from '../weigh-in/draft.ts';
import { type Step, stepped } from '../weigh-in/steps.ts';
import { WeightRow } from '../weigh-in/weight-row.tsx';
import { readField, takenField } from './draft.ts';

export function ActualRow(props: {
  readonly id: string;
  readonly name: string;
  readonly hint: string;
  readonly hatch: string;
  readonly dimension: 'mass' | 'volume';
  readonly field: Field;
  readonly read: TypedReading;
  /** As it was read at the weigh-in; undefined where it was not planned. */
  readonly planned: AmountRead | undefined;
  readonly step: (value: number) => Step;
  readonly habits: Habits;
  readonly onField: (field: Field) => void;
  readonly onCountries: (countries: Countries) => void;
  readonly keys?: JSX.Element;
  readonly children?: JSX.Element;
}) {
  /** Steps start from what was weighed, else from the plan. */
  const from = () => props.read.value ?? props.planned?.value ?? 0;
  const step = () => props.step(from());
  const countries = (): Countries => {
    const { gallon, spoon, style } = props.habits;
    return { gallon, spoon, style };
  };
  const written = (value: number) => formatAmount({ value, dimension: props.dimension }, props.habits.manner).text;
  const onStep = (way: 1 | -1) => {
    const next = stepped(from(), step(), way);
    if (next !== undefined) props.onField(readField(written(next)));
  };
  return (
    <WeightRow
      id={props.id}
      name={props.name}
      entryLabel={props.name}
      hint={props.hint}
      hatch={props.hatch}
      field={props.field}
      trouble={props.read.trouble}
      step={step()}
      canStep={stepped(from(), step(), -1) !== undefined}
      onStep={onStep}
      onType={(text) => props.onField(typedInto(props.field, text, props.dimension, props.habits))}
      onLeave={(text) => props.onField(leftField(props.field, text))}
      onGallon={(gallon) => props.onCountries({ ...countries(), gallon })}
      onSpoon={(spoon) => props.onCountries({ ...countries(), spoon })}
      onStyle={(style) => props.onCountries({ ...countries(), style })}
      onUnit={(unit) => props.onField(readField(`${props.field.text.trim()} ${unit}`))}
      keys={props.keys}
    >
      <p class="plan-line">
        <Show when={props.planned} fallback={<span class="note">{fillSheet.notPlanned}</span>}>
          {(planned) => (
            <>
              <span>{fillSheet.planned(planned().asTyped)}</span>
              <Show
                when={props.read.value !== undefined}
                fallback={
                  <button
                    type="button"
                    class="block"
                    aria-label={`${props.name}, ${fillSheet.asPlanned}`}
                    onClick={() => props.onField(takenField(planned()))}
                  >
                    {fillSheet.asPlanned}
                  </button>
                }
              >
                <b>{offPlan(props.read.value ?? 0, planned().value, props.dimension === 'mass' ? 'kg' : 'L')}</b>
              </Show>
            </>
          )}
        </Show>
      </p>
      {props.children}
    </WeightRow>
  );
}
