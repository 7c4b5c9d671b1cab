// One strip of a look: its name, what it asks, its blocks; and one block, pressed or not. What is answered can be
// changed by another touch and left out again.

import { type JSX, Show } from 'solid-js';
import type { LookWords, Strip } from '#words/en/look.ts';

export function LookStrip(props: {
  readonly strip: Strip;
  readonly words: LookWords;
  readonly answered: boolean;
  readonly onSkip: () => void;
  readonly children: JSX.Element;
}) {
  return (
    <section class="look-strip" id={`strip-${props.strip}`} aria-labelledby={`name-${props.strip}`}>
      <header>
        <h2 id={`name-${props.strip}`}>
          {props.words.strips[props.strip]} <small>{props.words.asks[props.strip]}</small>
        </h2>
        <Show when={props.answered}>
          <button type="button" class="why" onClick={() => props.onSkip()}>
            {props.words.skip}
            <span class="unseen">, {props.words.strips[props.strip]}</span>
          </button>
        </Show>
      </header>
      {props.children}
    </section>
  );
}

export function Choice(props: {
  readonly taken: boolean;
  readonly onTake: () => void;
  readonly label?: string | undefined;
  readonly children: JSX.Element;
}) {
  return (
    <button
      type="button"
      class="block pick-one"
      classList={{ taken: props.taken }}
      aria-pressed={props.taken}
      aria-label={props.label}
      onClick={() => props.onTake()}
    >
      {props.children}
    </button>
  );
}
