// The newest own act of the last ten minutes, one touch from being taken back. The entry stays readable.

import { Show } from 'solid-js';
import { app } from '#words/en/app.ts';
import { useRecord } from './context.tsx';

export function TakeBack() {
  const record = useRecord();
  const newest = () => record.recent()[0];
  return (
    <Show when={newest()}>
      {(recent) => (
        <button
          type="button"
          class="block undo"
          id="take-back"
          onClick={() => {
            record.takeBack(recent().entry).catch(() => undefined);
          }}
        >
          <b>{app.takeBack}</b>
          <span>
            {app.took[recent().entry.kind] ?? app.tookOther}, {app.minutesLeft(recent().minutesLeft)}
          </span>
        </button>
      )}
    </Show>
  );
}
