// Work that lasts: how far it is, and a button that stops it. One piece of such work at a time in a place.

import { createSignal, onCleanup, Show } from 'solid-js';
import type { Watched } from '#store/file-in.ts';

/** What a piece of work is called while it lasts. */
export interface WorkWords {
  readonly doing: string;
  readonly stop: string;
  readonly stopped: string;
}

export interface LongWork {
  /** Does it, unless one is under way; `told` hears that it was stopped, or why it failed. */
  readonly run: (
    words: WorkWords,
    work: (watched: Required<Watched>) => Promise<void>,
    told: { readonly stopped: (sentence: string) => void; readonly failed: (failure: unknown) => void },
  ) => Promise<void>;
  readonly at: () => { readonly words: WorkWords; readonly fraction: number } | undefined;
  readonly stop: () => void;
}

export function longWork(): LongWork {
  const [at, setAt] = createSignal<ReturnType<LongWork['at']>>();
  let stopper: AbortController | undefined;
  const stop = () => stopper?.abort();
  // A sheet that is left asks for nothing any more.
  onCleanup(stop);
  return {
    at,
    stop,
    async run(words, work, { stopped, failed }) {
      if (stopper !== undefined) return;
      stopper = new AbortController();
      const { signal } = stopper;
      setAt({ words, fraction: 0 });
      try {
        await work({ signal, progress: (fraction) => setAt({ words, fraction }) });
      } catch (failure) {
        if (signal.aborted) stopped(words.stopped);
        else failed(failure);
      } finally {
        stopper = undefined;
        setAt(undefined);
      }
    },
  };
}

/** Shown while the work lasts. */
export function LongWorkView(props: { readonly work: LongWork; readonly id: string }) {
  return (
    <Show when={props.work.at()}>
      {(at) => (
        <div class="long-work" id={props.id}>
          <label>
            {at().words.doing}
            <progress max={100} value={Math.floor(at().fraction * 100)} />
          </label>
          <button type="button" class="block" onClick={() => props.work.stop()}>
            {at().words.stop}
          </button>
        </div>
      )}
    </Show>
  );
}
