// A few answers side by side, one of them taken: native radio buttons behind outlined blocks.

import { For } from 'solid-js';

export function ChoiceRow<Word extends string>(props: {
  readonly name: string;
  readonly legend: string;
  readonly words: readonly (readonly [Word, string])[];
  readonly taken: Word | undefined;
  readonly onTake: (word: Word) => void;
}) {
  return (
    <fieldset class="choice">
      <legend>{props.legend}</legend>
      <div class="choices">
        <For each={props.words}>
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
