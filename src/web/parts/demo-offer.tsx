// The block that opens the demo garden. The garden is fetched then; where it does not arrive, that stands below.

import { createSignal, Show } from 'solid-js';
import { demo as words } from '#words/en/demo.ts';
import { useDemo } from '../app/demo.ts';

export function DemoOffer() {
  const demo = useDemo();
  const [isMissing, setMissing] = createSignal(false);
  const open = () => {
    setMissing(false);
    demo.open().catch(() => setMissing(true));
  };
  return (
    <>
      <button type="button" class="block" id="demo-open" onClick={open}>
        {words.offer}
      </button>
      <Show when={isMissing()}>
        <p role="alert">{words.missing}</p>
      </Show>
    </>
  );
}
