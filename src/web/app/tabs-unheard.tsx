// Said until it is hidden: this browser does not tell one tab what another saved.

import { createSignal, Show } from 'solid-js';
import { app } from '#words/en/app.ts';
import { useRecord } from './context.tsx';
import { lasting } from './device.ts';
import { TABS_UNHEARD } from './places.ts';

const [hidden, setHidden] = createSignal(false);

export function TabsUnheard() {
  const record = useRecord();
  const said = () => hidden() || lasting.read(TABS_UNHEARD) !== undefined;
  function hide() {
    lasting.write(TABS_UNHEARD, 'said');
    setHidden(true);
  }
  return (
    <Show when={!record.store.hearsTabs && !said()}>
      <p class="note" id="tabs-unheard">
        {app.tabsUnheard}
      </p>
      <button type="button" class="block" onClick={hide}>
        {app.hideNote}
      </button>
    </Show>
  );
}
