// The hatches that every drawing is filled with: fetched with the first sheet that can hold a drawing, which waits for them.
// The sheet of a phone that knows nothing yet has none.

import { createSignal, type JSX, Show } from 'solid-js';

const [drawn, setDrawn] = createSignal<() => JSX.Element>();

/** Resolves once drawings find their hatches on the page. */
export async function patterns(): Promise<void> {
  if (drawn() !== undefined) return;
  const { Hatches } = await import('../drawings/hatches.tsx');
  setDrawn(() => Hatches);
}

export function Patterns() {
  return (
    <Show when={drawn()} keyed>
      {(Hatches) => <Hatches />}
    </Show>
  );
}
