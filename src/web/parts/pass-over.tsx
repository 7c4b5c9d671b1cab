// A stop that is a matter of judgement gives way to a reason in words, and to nothing less.

import { createSignal } from 'solid-js';
import { isReason } from '#tasks/caution.ts';

export interface PassOverWords {
  readonly passAsk: (what: string) => string;
  readonly passBecause: string;
  readonly passTooShort: string;
  readonly passAct: string;
}

/** Asks for the reason; folded, so that nobody passes over a stop by a stray touch. */
export function PassOver(props: {
  readonly id: string;
  readonly words: PassOverWords;
  readonly what: string;
  readonly onPass: (reason: string) => void;
}) {
  const [reason, setReason] = createSignal('');
  const [short, setShort] = createSignal(false);
  const give = (event: Event) => {
    event.preventDefault();
    setShort(!isReason(reason()));
    if (isReason(reason())) props.onPass(reason().trim());
  };
  return (
    <details class="fold pass-over">
      <summary>{props.words.passAsk(props.what)}</summary>
      <form onSubmit={give}>
        <div class="field">
          <label for={props.id}>{props.words.passBecause}</label>
          <textarea
            id={props.id}
            class="entry"
            rows={2}
            maxLength={2000}
            aria-invalid={short()}
            aria-describedby={`${props.id}-note`}
            value={reason()}
            onInput={(event) => setReason(event.currentTarget.value)}
          />
        </div>
        <p id={`${props.id}-note`} class={short() ? 'trouble' : 'note'}>
          {props.words.passTooShort}
        </p>
        <button type="submit" class="block">
          {props.words.passAct}
        </button>
      </form>
    </details>
  );
}
