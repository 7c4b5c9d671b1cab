// Cautions at the question that decides them: every stop, at most two others, the rest folded. Each with its
// mark, its word and its source.

import { createMemo, For, Show } from 'solid-js';
import type { Caution } from '#tasks/caution.ts';
import { more } from '#words/en/weigh-in.ts';
import { placeOf, sheet } from '#words/en/weigh-in-labels.ts';
import { LevelMark } from '../parts/marks.tsx';
import type { WeighIn } from './model.ts';

const SHOWN_BESIDE_STOPS = 2;

export function Cautions(props: { readonly model: WeighIn; readonly place: ReturnType<typeof placeOf> }) {
  const here = createMemo(() =>
    (props.model.result()?.cautions ?? []).filter((one) => placeOf(one.rule) === props.place),
  );
  const stops = () => here().filter((one) => one.level === 'stop');
  const others = () => here().filter((one) => one.level !== 'stop');
  const folded = () => others().slice(SHOWN_BESIDE_STOPS);
  return (
    <Show when={here().length > 0}>
      <ul class="cautions">
        <For each={[...stops(), ...others().slice(0, SHOWN_BESIDE_STOPS)]}>
          {(one) => <CautionLine caution={one} />}
        </For>
      </ul>
      <Show when={folded().length > 0}>
        <details class="fold">
          <summary>{more(folded().length)}</summary>
          <ul class="cautions">
            <For each={folded()}>{(one) => <CautionLine caution={one} />}</For>
          </ul>
        </details>
      </Show>
    </Show>
  );
}

function CautionLine(props: { readonly caution: Caution }) {
  return (
    <li class="caution" id={props.caution.level === 'stop' ? `stop-${props.caution.rule}` : undefined}>
      <LevelMark level={props.caution.level} />
      <div>
        <p>
          <b>{sheet.levels[props.caution.level]}.</b> {props.caution.text}
        </p>
        <p class="source">{props.caution.source}</p>
      </div>
    </li>
  );
}
