// The newer version that waits, with the one block that takes it.

import { type JSX, Show } from 'solid-js';
import { app } from '#words/en/app.ts';
import { newerVersion, takeNewer } from './offline.ts';

/** @param props.children what is to be done before it is taken */
export function NewerVersion(props: { readonly children?: JSX.Element }) {
  return (
    <Show when={newerVersion()}>
      <p class="note">{app.newer}</p>
      {props.children}
      <button type="button" class="block" id="take-newer" onClick={takeNewer}>
        {app.takeNewer}
      </button>
    </Show>
  );
}
