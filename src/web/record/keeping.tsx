// How well this browser keeps the record, and how much room it has for it.

import { createResource, createSignal, Show } from 'solid-js';
import { files as words } from '#words/en/record.ts';
import { Places } from './places.tsx';

/** Above this share of what is allowed, room is short. */
const NEARLY_FULL_FRACTION = 0.8;

async function isPersisted(): Promise<boolean> {
  return (await navigator.storage?.persisted?.()) ?? false;
}

async function estimate(): Promise<StorageEstimate> {
  return (await navigator.storage?.estimate?.()) ?? {};
}

export function Keeping() {
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
      <Places />
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
    </>
  );
}
