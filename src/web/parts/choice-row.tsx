// A few answers side by side, one of them taken: native radio buttons behind outlined blocks.

import { createMemo, For } from 'solid-js';

export function ChoiceRow<Word extends string>(props: {
  readonly name: string;
  readonly legend: string;
  readonly words: readonly (readonly [Word, string])[];
  readonly taken: Word | undefined;
  readonly onTake: (word: Word) => void;
}) {
  // Named anew with every key typed beside them, and nearly always the same: no answer under a finger is made anew.
  const words = createMemo(() => props.words, undefined, { equals: (a, b) => a.join('\n') === b.join('\n') });
  return (
    <fieldset class="choice">
      <legend>{props.legend}</legend>
      <div class="choices">
        <For each={words()}>
          {([word, text]) => (
            <label class="block" classList={{ taken: props.taken === word }}>
              <input
                type="radio"
                name={props.name}
                value={word}
                checked={props.taken === word}
                onChange={() => props.onTake(word)}
              />
              <span>{text}</span>
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}
