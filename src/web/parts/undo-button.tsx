// A block that undoes something. Drawn anew, or drawn for something else, it rests a moment: a finger that comes down on it
// just then meant what stood there before. The keyboard need not wait.

import { createEffect, createSignal, type JSX, on, onCleanup } from 'solid-js';
import { UNDOES } from './one-press.ts';

/** How long it rests; longer than the taps of one hand lie apart. @our-caution */
const REST_MS = 700;

export function UndoButton(props: {
  /** What it undoes: it rests again when that changes. */
  readonly of: unknown;
  readonly onPress: () => void;
  readonly id?: string;
  readonly class?: string;
  readonly label?: string;
  readonly children: JSX.Element;
}) {
  const [isCalm, setCalm] = createSignal(false);
  let began = true;
  createEffect(
    on(
      () => props.of,
      () => {
        setCalm(false);
        const timer = setTimeout(() => setCalm(true), REST_MS);
        onCleanup(() => clearTimeout(timer));
      },
    ),
  );
  return (
    <button
      type="button"
      id={props.id}
      class={props.class ?? 'block'}
      aria-label={props.label}
      aria-disabled={!isCalm() || undefined}
      {...{ [UNDOES]: '' }}
      onPointerDown={() => {
        began = isCalm();
      }}
      onClick={(event) => {
        const isMeant = event.detail === 0 || (began && isCalm());
        began = true;
        if (isMeant) props.onPress();
      }}
    >
      {props.children}
    </button>
  );
}
