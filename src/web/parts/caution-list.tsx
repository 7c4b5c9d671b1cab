// Cautions on a sheet: every stop, at most two others, the rest folded. Each with its mark, its word and its source.

import { For, Show } from 'solid-js';
import type { Caution } from '#tasks/caution.ts';
import { more } from '#words/en/weigh-in.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';
import { LevelMark } from './marks.tsx';

const SHOWN_BESIDE_STOPS = 2;

export function CautionList(props: {
  readonly cautions: readonly Caution[];
  /** Whether a link on the sheet leads to each stop. */
  readonly linked?: boolean;
}) {
  const stops = () => props.cautions.filter(({ level }) => level === 'stop');
  const others = () => props.cautions.filter(({ level }) => level !== 'stop');
  const folded = () => others().slice(SHOWN_BESIDE_STOPS);
  return (
    <Show when={props.cautions.length > 0}>
      <ul class="cautions">
        <For each={[...stops(), ...others().slice(0, SHOWN_BESIDE_STOPS)]}>
          {(one) => <CautionLine caution={one} linked={props.linked} />}
        </For>
      </ul>
      <Show when={folded().length > 0}>
        <details class="fold">
          <summary>{more(folded().length)}</summary>
          <ul class="cautions">
            <For each={folded()}>{(one) => <CautionLine caution={one} linked={props.linked} />}</For>
          </ul>
        </details>
      </Show>
    </Show>
  );
}

function CautionLine(props: { readonly caution: Caution; readonly linked: boolean | undefined }) {
  return (
    <li class="caution" id={props.linked && props.caution.level === 'stop' ? `stop-${props.caution.rule}` : undefined}>
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
