// A button that asks the browser for a file of the record.

import type { JSX } from 'solid-js';

export function ChooseFile(props: {
  readonly id: string;
  readonly onFile: (file: File) => void;
  readonly children: JSX.Element;
}) {
  return (
    <label class="block">
      {props.children}
      <input
        type="file"
        id={props.id}
        class="unseen"
        accept=".jsonl,.json,.txt,application/jsonl"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          if (file) props.onFile(file);
          event.currentTarget.value = '';
        }}
      />
    </label>
  );
}
