// Everything on this device is forgotten only after a file was chosen that holds everything. What was added after that asks
// for a new file.

import { createSignal, Show } from 'solid-js';
import type { LastFile } from '#journal/unsaved.ts';
import { forgetting } from '#words/en/files.ts';
import { files as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { lasting, visit } from '../app/device.ts';
import { sayFailure } from '../parts/failure.ts';
import { type CheckedFile, CheckFile } from './check-file.tsx';

const OURS = 'tilthwright';

export function Forget(props: { readonly onNote: (file: LastFile) => Promise<void> }) {
  const record = useRecord();
  const [checked, setChecked] = createSignal<CheckedFile>();
  const [trouble, setTrouble] = createSignal('');

  async function forget(file: CheckedFile) {
    // Asked of the store itself: another tab may have written what this one has not heard of.
    const entries = (await record.store.all()).filter(({ id }) => !file.held.has(id));
    const photos = (await record.store.photoIds()).filter((id) => !file.photos.has(id));
    if (entries.length + photos.length > 0) {
      setChecked(undefined);
      setTrouble(forgetting.grown(entries.length + photos.length));
      return;
    }
    await record.store.forget();
    for (const facts of [lasting, visit]) facts.clear(OURS);
    location.assign('/');
  }

  return (
    <details class="fold" id="forget">
      <summary>{words.forget}</summary>
      <p class="note">{words.forgetNote}</p>
      <p>{forgetting.ask}</p>
      <CheckFile
        id="forget-file"
        onNote={props.onNote}
        onChecked={(file) => {
          setTrouble('');
          setChecked(file);
        }}
      />
      <Show when={checked()?.isWhole ? checked() : undefined}>
        {(file) => (
          <>
            <p>{forgetting.open}</p>
            <button
              type="button"
              class="block"
              id="forget-now"
              onClick={() => forget(file()).catch((failure) => setTrouble(sayFailure(failure)))}
            >
              {words.forgetNow}
            </button>
          </>
        )}
      </Show>
      <p class="trouble" id="forget-trouble" role="alert">
        {trouble()}
      </p>
    </details>
  );
}
