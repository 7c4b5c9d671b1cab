// How well this browser keeps the record, and how everything on this device is forgotten: only after the date of the
// last file was typed.

import { createResource, createSignal, Show } from 'solid-js';
import { files as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { lasting, visit } from '../app/device.ts';
import { sayFailure } from '../parts/failure.ts';
import type { LastFile } from './last-file.ts';

const OURS = 'tilthwright';
/** Above this share of what is allowed, room is short. */
const NEARLY_FULL_FRACTION = 0.8;

async function isPersisted(): Promise<boolean> {
  return (await navigator.storage?.persisted?.()) ?? false;
}

async function estimate(): Promise<StorageEstimate> {
  return (await navigator.storage?.estimate?.()) ?? {};
}

export function Keeping(props: { readonly lastFile: LastFile | undefined; readonly newerCount: number }) {
  const [persisted, { mutate }] = createResource(isPersisted);
  const [room] = createResource(estimate);
  const [said, setSaid] = createSignal('');
  const used = () => room()?.usage ?? 0;
  const quota = () => room()?.quota ?? 0;
  async function ask() {
    const agreed = (await navigator.storage?.persist?.()) ?? false;
    mutate(agreed);
    setSaid(agreed ? '' : words.refusedPersist);
  }
  return (
    <>
      <h3>{words.keepHeading}</h3>
      <p id="persisted">{persisted() ? words.persisted : words.notPersisted}</p>
      <Show when={persisted() === false}>
        <button type="button" class="block" onClick={() => ask().catch(() => setSaid(words.refusedPersist))}>
          {words.askPersist}
        </button>
      </Show>
      <p role="status" class="said">
        {said()}
      </p>
      <Show when={quota() > 0}>
        <p class="note">{words.usage(words.room(used()), words.room(quota()))}</p>
      </Show>
      <Show when={quota() > 0 && used() > NEARLY_FULL_FRACTION * quota()}>
        <p class="wants">{words.nearlyFull}</p>
      </Show>
      <Forget {...props} />
    </>
  );
}

function Forget(props: { readonly lastFile: LastFile | undefined; readonly newerCount: number }) {
  const record = useRecord();
  const [typed, setTyped] = createSignal('');
  const [trouble, setTrouble] = createSignal('');
  async function forget() {
    if (props.lastFile === undefined || typed() !== props.lastFile.on) {
      setTrouble(words.forgetWrong);
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
      <Show when={props.lastFile} fallback={<p>{words.forgetNoFile}</p>}>
        <Show when={props.newerCount > 0}>
          <p class="wants">{words.forgetSince(props.newerCount)}</p>
        </Show>
        <div class="field">
          <label for="forget-date">{words.forgetAsk}</label>
          <input
            id="forget-date"
            class="entry plain"
            type="date"
            aria-invalid={trouble() !== '' || undefined}
            aria-describedby="forget-trouble"
            onInput={(event) => {
              setTyped(event.currentTarget.value);
              setTrouble('');
            }}
          />
          <div class="trouble">
            <p id="forget-trouble" role="alert">
              {trouble()}
            </p>
          </div>
        </div>
        <button
          type="button"
          class="block"
          id="forget-now"
          onClick={() => forget().catch((failure) => setTrouble(sayFailure(failure)))}
        >
          {words.forgetNow}
        </button>
      </Show>
    </details>
  );
}
