// A field for an amount in a drafted form: the text field with its label, its trouble and the blocks that settle it.

import type { Countries } from '#engine/quantity/ask.ts';
import type { Field } from '../weigh-in/draft.ts';
import type { Trouble } from '../weigh-in/reading.ts';
import { AmountField } from './amount-field.tsx';
import { leftField, typedInto } from './typed.ts';

export interface TypedFieldProps {
  readonly id: string;
  readonly label: string;
  readonly hint?: string;
  /** What is measured; a plain figure or text is read by whoever asks for it. */
  readonly dimension?: 'mass' | 'volume' | 'temperature' | 'count';
  readonly field: Field;
  readonly trouble: Trouble | undefined;
  readonly countries: Countries;
  readonly onField: (field: Field) => void;
  readonly onCountries: (countries: Countries) => void;
}

export function TypedField(props: TypedFieldProps) {
  const settled = (text: string) => props.onField({ text, settled: text });
  return (
    <AmountField
      id={props.id}
      label={props.label}
      hint={props.hint}
      field={props.field}
      trouble={props.trouble}
      onType={(text) =>
        props.dimension === undefined
          ? props.onField({ text, settled: props.field.settled })
          : props.onField(typedInto(props.field, text, props.dimension, props.countries))
      }
      onLeave={(text) => props.onField(leftField(props.field, text))}
      onGallon={(gallon) => props.onCountries({ ...props.countries, gallon })}
      onSpoon={(spoon) => props.onCountries({ ...props.countries, spoon })}
      onStyle={(style) => props.onCountries({ ...props.countries, style })}
      onUnit={(unit) => settled(`${props.field.text.trim()} ${unit}`)}
    />
  );
}
