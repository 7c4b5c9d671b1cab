// The cans of one bed in a row: those poured, the one in hand, those to come. Touching the can in hand pours it.

import { For, Show } from 'solid-js';
import type { PourCard } from '#tasks/plot/pour.ts';
import type { CanCardWords } from '#words/en/can-card.ts';
import { CanDrawing } from '../drawings/can.tsx';

/** With more than this, only the cans around the one in hand are drawn. */
const DRAWN = 4;

export function Cans(props: {
  readonly words: CanCardWords;
  readonly card: PourCard;
  readonly poured: readonly number[];
  readonly onPour: () => void;
}) {
  const count = () => props.card.cans.length;
  const first = () => (count() <= DRAWN ? 0 : Math.max(0, Math.min(props.poured.length - 1, count() - DRAWN)));
  const shown = () => props.card.cans.slice(first(), first() + DRAWN);
  const stateOf = (i: number) => {
    const fraction = props.poured[i];
    if (fraction !== undefined) return fraction < 1 ? 'half' : 'poured';
    return i === props.poured.length ? 'now' : 'next';
  };
  const word = (i: number) => {
    const state = stateOf(i);
    if (state === 'poured') return props.words.canPoured;
    return state === 'half' ? props.words.canHalf : '';
  };
  return (
    <ol class="cans" aria-label={props.words.canOf(Math.min(props.poured.length + 1, count()), count())}>
      <For each={shown()}>
        {(can, at) => {
          const i = () => first() + at();
          const fillFraction = () => can.volumeL / (props.card.canL ?? can.volumeL);
          const drawing = () => (
            <>
              <CanDrawing state={stateOf(i())} fillFraction={fillFraction()} />
              <span>
                {props.words.canOf(i() + 1, count())}
                <Show when={word(i()) !== ''}>
                  <br />
                  {word(i())}
                </Show>
              </span>
            </>
          );
          return (
            <li aria-current={stateOf(i()) === 'now' ? 'step' : undefined}>
              <Show when={stateOf(i()) === 'now'} fallback={<div class="can-still">{drawing()}</div>}>
                <button
                  type="button"
                  class="can-touch"
                  aria-label={props.words.poured(i() + 1)}
                  onClick={() => props.onPour()}
                >
                  {drawing()}
                </button>
              </Show>
            </li>
          );
        }}
      </For>
    </ol>
  );
}
