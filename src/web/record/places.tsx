// In how many places this browser keeps the record, how often that asks for a file, and what the two places held differently.

import { createResource, For, Show } from 'solid-js';
import { isSealed } from '#journal/entry.ts';
import { fileDueDays } from '#journal/unsaved.ts';
import { sayEntry } from '#tasks/plot/record.ts';
import { sayMoment } from '#words/en/app.ts';
import { keptIn } from '#words/en/files.ts';
import { record as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';

export function Places() {
  const record = useRecord();
  const [differing] = createResource(() => record.store.differing());
  return (
    <Show when={!record.isDemo}>
      <p id="places">{record.store.places() === 2 ? keptIn.two(fileDueDays(2)) : keptIn.one(fileDueDays(1))}</p>
      <Show when={(differing()?.length ?? 0) > 0}>
        <div id="differing">
          <p class="wants">{keptIn.differing(differing()?.length ?? 0)}</p>
          <ul class="plain">
            <For each={differing()}>
              {(kept) => (
                <li>
                  {sayMoment(kept.on, record.today())}:{' '}
                  {isSealed(kept) ? words.sealed(kept.kind) : sayEntry(kept, record.plot())}
                </li>
              )}
            </For>
          </ul>
        </div>
      </Show>
    </Show>
  );
}
