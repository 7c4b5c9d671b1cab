// Offers the demo garden, and steps through its days while it is shown. It opens in a plot of its own.

import { createResource, Show } from 'solid-js';
import { sayDate } from '#words/en/app.ts';
import { demo as words } from '#words/en/demo.ts';
import { useDemo } from '../app/demo.ts';
import { DemoOffer } from './demo-offer.tsx';

export function DemoBlock() {
  const demo = useDemo();
  // The garden is fetched only where it is shown.
  const [bounds] = createResource(demo.day, async () => {
    const { DEMO_FIRST_DAY, DEMO_LAST_DAY } = await import('#tasks/demo/garden.ts');
    return { first: DEMO_FIRST_DAY, last: DEMO_LAST_DAY };
  });
  return (
    <section class="demo-block" aria-label={words.heading}>
      <Show
        when={demo.day()}
        fallback={
          <>
            <DemoOffer />
            <p class="note">{words.offerNote}</p>
          </>
        }
      >
        {(day) => (
          <>
            <h2>
              {words.heading}: {sayDate(day())}
            </h2>
            <p class="note">{words.note}</p>
            <div class="choices">
              <button
                type="button"
                class="block"
                disabled={day() <= (bounds.latest?.first ?? '')}
                onClick={() => demo.step(-1)}
              >
                {words.earlier}
              </button>
              <button
                type="button"
                class="block"
                disabled={day() >= (bounds.latest?.last ?? '9')}
                onClick={() => demo.step(1)}
              >
                {words.later}
              </button>
              <button type="button" class="block" id="demo-leave" onClick={() => demo.leave()}>
                {words.leave}
              </button>
            </div>
          </>
        )}
      </Show>
    </section>
  );
}
