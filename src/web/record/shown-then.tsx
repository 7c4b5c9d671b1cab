// What was shown when an act was entered: the figures with their tables and formulas, beside today's where an update moved
// them; or that they were not kept.

import { For, Match, Show, Switch } from 'solid-js';
import { type ShownThen as Kept, shownWith } from '#tasks/plot/moved-figures.ts';
import type { RecordAct } from '#tasks/plot/record-search.ts';
import { isMoved, sayBoth, sayShown, shownBy, shownWords } from '#words/en/figures-shown.ts';
import { useRecord } from '../app/context.tsx';

export function ShownThen(props: { readonly act: RecordAct }) {
  const record = useRecord();
  const found = () => {
    const { id, shown, versions } = props.act;
    const first = versions[0];
    return shown && first && shownWith(record.plot(), { id, shown, first });
  };
  const kept = () => {
    const one = found();
    return typeof one === 'object' ? one : undefined;
  };
  return (
    <Show when={found()}>
      <section class="version shown-then">
        <h3>{shownWords.shownThen}</h3>
        <Switch>
          <Match when={found() === 'not-kept'}>
            <p>{shownWords.notKept}</p>
          </Match>
          <Match when={found() === 'none'}>
            <p>{shownWords.none}</p>
          </Match>
          <Match when={kept()}>{(one) => <KeptFigures kept={one()} />}</Match>
        </Switch>
      </section>
    </Show>
  );
}

function KeptFigures(props: { readonly kept: Kept }) {
  const line = ({ what, before, now }: Kept['figures'][number]) =>
    props.kept.isOlder && isMoved(what, before, now) ? sayBoth(what, before, now) : sayShown(what, before);
  return (
    <>
      <ul class="plain">
        <For each={props.kept.figures}>{(figure) => <li>{line(figure)}</li>}</For>
      </ul>
      <Show when={props.kept.isOlder && props.kept.enteredAnew}>
        <p>{shownWords.enteredAnew}</p>
      </Show>
      <p class="note">{shownBy(props.kept.version)}</p>
    </>
  );
}
