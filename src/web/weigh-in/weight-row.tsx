// One wide row: a thing that goes in, its weight in large figures, less and more in wide blocks. The row of a
// lot of scraps carries its bowl and the way out as well.

import { type JSX, Show } from 'solid-js';
import { restOfName, shortName } from '#words/en/weigh-in.ts';
import { stepLabel } from '#words/en/weigh-in-labels.ts';
import { Swatch } from '../drawings/hatches.tsx';
import { AmountEntry } from '../parts/amount-field.tsx';
import { type Settling, TroubleNote } from '../parts/trouble-note.tsx';
import type { Field } from './draft.ts';
import type { Trouble } from './reading.ts';
import type { Step } from './steps.ts';

export interface WeightRowProps extends Settling {
  readonly id: string;
  readonly name: string;
  readonly entryLabel: string;
  /** How an amount may be written, while nothing stands there. */
  readonly hint: string;
  /** Texture beside the name; none for what is no thing that goes in. */
  readonly hatch?: string | undefined;
  readonly field: Field;
  readonly trouble: Trouble | undefined;
  readonly step: Step;
  readonly canStep: boolean;
  readonly onStep: (way: 1 | -1) => void;
  readonly onType: (text: string) => void;
  readonly onLeave: (text: string) => void;
  /** Further blocks at the right of the name. */
  readonly keys?: JSX.Element;
  /** What stands under the row. */
  readonly children?: JSX.Element;
}

export function WeightRow(props: WeightRowProps) {
  return (
    <fieldset class="row" classList={{ keyless: !props.keys }} aria-label={props.name}>
      <div class="row-name">
        <Show when={props.hatch}>{(hatch) => <Swatch hatch={hatch()} />}</Show>
        <span>
          {shortName(props.name)}
          <Show when={restOfName(props.name)}>
            <small>{restOfName(props.name)}</small>
          </Show>
          <Show when={props.field.text === ''}>
            <small>{props.hint}</small>
          </Show>
        </span>
      </div>
      <Show when={props.keys}>
        <div class="row-keys">{props.keys}</div>
      </Show>
      <div class="row-weight">
        <button
          type="button"
          class="block sign"
          aria-label={stepLabel(props.name, 'less', props.step.text)}
          aria-disabled={!props.canStep}
          onClick={() => props.onStep(-1)}
        >
          −
        </button>
        <AmountEntry
          id={props.id}
          label={props.entryLabel}
          field={props.field}
          trouble={props.trouble}
          onType={props.onType}
          onLeave={props.onLeave}
        />
        <button
          type="button"
          class="block sign"
          aria-label={stepLabel(props.name, 'more', props.step.text)}
          onClick={() => props.onStep(1)}
        >
          +
        </button>
      </div>
      <div class="row-under">
        <Show when={props.trouble}>
          {(trouble) => (
            <TroubleNote
              id={`${props.id}-trouble`}
              trouble={trouble()}
              onGallon={props.onGallon}
              onSpoon={props.onSpoon}
              onStyle={props.onStyle}
              onUnit={props.onUnit}
            />
          )}
        </Show>
        {props.children}
      </div>
    </fieldset>
  );
}
