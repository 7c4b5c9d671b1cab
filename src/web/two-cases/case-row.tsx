// A row of the second case: what it is now, less and more in wide blocks, what it is in the first case under it.

import { Show } from 'solid-js';
import { caseActs, twoCases } from '#words/en/two-cases-labels.ts';
import { typedInto } from '../parts/typed.ts';
import { type Field, field } from '../weigh-in/draft.ts';
import type { Trouble } from '../weigh-in/reading.ts';
import type { Step } from '../weigh-in/steps.ts';
import { WeightRow } from '../weigh-in/weight-row.tsx';
import type { TwoCases } from './model.ts';

export interface CaseRowProps {
  readonly model: TwoCases;
  readonly id: string;
  readonly name: string;
  readonly hint: string;
  readonly hatch?: string | undefined;
  readonly dimension: 'mass' | 'volume' | 'temperature';
  readonly field: Field;
  readonly trouble: Trouble | undefined;
  readonly step: Step;
  /** The text one step away; undefined where there is none. */
  readonly stepped: (way: 1 | -1) => string | undefined;
  /** What it is as it is; undefined on a row of the first case. */
  readonly was?: string | undefined;
  readonly isChanged?: boolean;
  readonly onField: (act: string, field: Field, typing?: string) => void;
}

export function CaseRow(props: CaseRowProps) {
  const countries = () => ({
    gallon: props.model.draft().base?.gallon,
    spoon: props.model.draft().base?.spoon,
    style: props.model.draft().base?.style,
  });
  const settle = (text: string) => props.onField(caseActs.typed(props.name), field(text), props.id);
  const country = (told: Partial<ReturnType<typeof countries>>) =>
    props.model.change(caseActs.answered(props.name), ({ base }) => (base ? { base: { ...base, ...told } } : {}));
  return (
    <WeightRow
      id={props.id}
      name={props.name}
      entryLabel={props.name}
      hint={props.hint}
      hatch={props.hatch}
      field={props.field}
      trouble={props.trouble}
      step={props.step}
      canStep={props.stepped(-1) !== undefined}
      onStep={(way) => {
        const text = props.stepped(way);
        if (text !== undefined) props.onField(caseActs.step(props.name), field(text));
      }}
      onType={(text) =>
        props.onField(caseActs.typed(props.name), typedInto(props.field, text, props.dimension, countries()), props.id)
      }
      onLeave={(text) => {
        if (text !== props.field.settled) settle(text);
      }}
      onGallon={(gallon) => country({ gallon })}
      onSpoon={(spoon) => country({ spoon })}
      onStyle={(style) => country({ style })}
      onUnit={(unit) => settle(`${props.field.text.trim()} ${unit}`)}
    >
      <Show when={props.isChanged && props.was}>{(was) => <p class="case-was">{twoCases.was(was())}</p>}</Show>
    </WeightRow>
  );
}
