// What went onto a bed this year, pours added up by their liquid, and what was told of its ground; each act can be taken
// back here. It stays readable in the record.

import { createSignal, For, Show } from 'solid-js';
import type { GotBedView, ToldAct } from '#tasks/plot/got-bed.ts';
import { sayDate } from '#words/en/app.ts';
import { gotBed } from '#words/en/ground-forms.ts';
import { useRecord } from '../app/context.tsx';
import { sayFailure } from '../parts/failure.ts';
import { UndoButton } from '../parts/undo-button.tsx';

export function WentOn(props: { readonly view: GotBedView }) {
  const isEmpty = () => props.view.poured.length + props.view.dressed.length === 0;
  return (
    <section aria-labelledby="went-on">
      <h2 id="went-on">{gotBed.history}</h2>
      <Show when={isEmpty()}>
        <p>{gotBed.nothing}</p>
      </Show>
      <ul class="plain went-on">
        <For each={props.view.poured}>
          {({ peg, count, concentrateL, dilutedL }) => (
            <li>
              {gotBed.poured(
                peg === null ? gotBed.water : peg === undefined ? gotBed.unknownLiquid : gotBed.peg(peg),
                count,
                gotBed.litres(concentrateL),
                gotBed.litres(dilutedL),
              )}
            </li>
          )}
        </For>
        <For each={props.view.dressed}>{(act) => <TakenBack act={act} />}</For>
      </ul>
      <Show when={props.view.told.length > 0}>
        <h3>{gotBed.told}</h3>
        <ul class="plain went-on">
          <For each={props.view.told}>{(act) => <TakenBack act={act} />}</For>
        </ul>
      </Show>
    </section>
  );
}

function TakenBack(props: { readonly act: ToldAct }) {
  const record = useRecord();
  const [isAsked, setAsked] = createSignal(false);
  const [said, setSaid] = createSignal('');
  return (
    <li>
      <p>
        {sayDate(props.act.on.slice(0, 10), record.today())}: {props.act.sentence}
      </p>
      <Show
        when={isAsked()}
        fallback={
          <button
            type="button"
            class="block"
            aria-label={gotBed.takeBackOf(props.act.sentence)}
            onClick={() => setAsked(true)}
          >
            {gotBed.takeBack}
          </button>
        }
      >
        <div class="choices">
          <UndoButton
            of={props.act.entry.id}
            onPress={() => record.takeBack(props.act.entry).catch((failure) => setSaid(sayFailure(failure)))}
          >
            {gotBed.sure}
          </UndoButton>
          <button type="button" class="block" onClick={() => setAsked(false)}>
            {gotBed.leave}
          </button>
        </div>
      </Show>
      <p class="said" role="status">
        {said()}
      </p>
    </li>
  );
}
