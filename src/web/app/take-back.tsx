// The newest own act of the last minutes, one touch from being undone; the entry stays readable. Above it, where something
// is written down that this page could not show, the way to see it.

import { createSignal, Show } from 'solid-js';
import { app } from '#words/en/app.ts';
import { sayFailure } from '../parts/failure.ts';
import { UndoButton } from '../parts/undo-button.tsx';
import { useRecord } from './context.tsx';

export function TakeBack() {
  const record = useRecord();
  const newest = () => record.recent()[0];
  const [trouble, setTrouble] = createSignal('');
  return (
    <>
      <Show when={record.unshown()}>
        <div role="alert">
          <p class="note">{app.unshown}</p>
          <button type="button" class="block" id="show-again" onClick={() => location.reload()}>
            {app.loadAgain}
          </button>
        </div>
      </Show>
      <Show when={newest()}>
        {(recent) => (
          <UndoButton
            of={recent().entry.id}
            class="block undo"
            id="take-back"
            onPress={() => {
              setTrouble('');
              record.takeBack(recent().entry).catch((failure: unknown) => setTrouble(sayFailure(failure)));
            }}
          >
            <b>{recent().minutesLeft === undefined ? app.cancelEntry : app.takeBack}</b>
            <span>{app.lastAct(recent().entry.kind, recent().minutesLeft)}</span>
          </UndoButton>
        )}
      </Show>
      <Show when={trouble()}>
        <p class="trouble" role="alert">
          {trouble()}
        </p>
      </Show>
    </>
  );
}
