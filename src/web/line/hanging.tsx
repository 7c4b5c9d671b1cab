// The list that hangs below the line: what is not yet here stands as plain text, the rest leads to its sheet.

import { A } from '@solidjs/router';
import { For } from 'solid-js';
import type { LineView } from '#tasks/plot/line.ts';
import { hanging } from '#words/en/line.ts';

const WAITING = [hanging.season, hanging.trial] as const;
const PRINTS = [
  { to: '/print/tags', word: hanging.print.tags },
  { to: '/print/can', word: hanging.print.can },
  { to: '/print/shed', word: hanging.print.shed },
] as const;

export function Hanging(props: { readonly view: LineView }) {
  return (
    <ul class="hang" aria-label={hanging.list}>
      <li>
        <A href="/got">
          <b>{hanging.got.name}</b>
          <span>{hanging.got.note}</span>
        </A>
      </li>
      <For each={WAITING}>
        {({ name, note }) => (
          <li>
            <b>{name}</b>
            <span>{note}</span>
          </li>
        )}
      </For>
      <li>
        <A href="/heap">
          <b>{hanging.heap.name}</b>
          <span>{hanging.heap.note}</span>
        </A>
      </li>
      <li>
        <A href="/record">
          <b>{hanging.record.name}</b>
          <span>{hanging.record.note(props.view.lastFileOn, props.view.today)}</span>
        </A>
      </li>
      <li>
        <A href="/plot">
          <b>{hanging.plot.name}</b>
          <span>{hanging.plot.note(props.view.beds.strips.length, props.view.keyholders)}</span>
        </A>
      </li>
      <li class="prints">
        <b>{hanging.print.name}</b>
        <div class="choices">
          <For each={PRINTS}>
            {({ to, word }) => (
              <A class="block" href={to}>
                {word}
              </A>
            )}
          </For>
        </div>
      </li>
    </ul>
  );
}
