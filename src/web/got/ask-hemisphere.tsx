// On which side of the equator the plot lies: asked once, where a sum needs it and no latitude tells it. A touch writes it
// down; the facts sheet changes it later.

import { createSignal, For } from 'solid-js';
import { got } from '#words/en/got.ts';
import { useRecord } from '../app/context.tsx';
import { sayFailure } from '../parts/failure.ts';

export function AskHemisphere() {
  const record = useRecord();
  const [busy, setBusy] = createSignal(false);
  const [said, setSaid] = createSignal('');
  const answer = (hemisphere: 'north' | 'south') => {
    if (busy()) return;
    setBusy(true);
    record
      .act('plot.described', { hemisphere })
      .catch((failure) => setSaid(sayFailure(failure)))
      .finally(() => setBusy(false));
  };
  return (
    <section class="ask-hemisphere">
      <p id="ask-hemisphere">{got.askHemisphere}</p>
      <div class="choices">
        <For each={got.hemispheres}>
          {([hemisphere, text]) => (
            <button
              type="button"
              class="block"
              aria-describedby="ask-hemisphere"
              aria-disabled={busy() || undefined}
              onClick={() => answer(hemisphere)}
            >
              {text}
            </button>
          )}
        </For>
      </div>
      <p class="said" role="status">
        {said()}
      </p>
    </section>
  );
}
