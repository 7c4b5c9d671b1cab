// The page's side of the cover's worker: a question in, the answer to the newest one out.

import { createEffect, createSignal, onCleanup } from 'solid-js';
import type { CoverInput } from '#engine/ground/cover/input.ts';
import type { CoverReply, CoverShown } from './messages.ts';

/** The answer to a question, anew whenever it changes; the last one stays until then. */
export function planned(input: () => CoverInput | undefined) {
  const [answer, setAnswer] = createSignal<CoverShown>();
  const [failed, setFailed] = createSignal(false);
  let worker: Worker | undefined;
  let number = 0;
  createEffect(() => {
    const asked = input();
    if (asked === undefined) return;
    if (worker === undefined) {
      worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
      worker.onerror = () => setFailed(true);
      worker.onmessage = ({ data }: MessageEvent<CoverReply>) => {
        if (data.number !== number) return;
        setFailed('failed' in data);
        if ('answer' in data) setAnswer(data.answer);
      };
    }
    worker.postMessage({ number: ++number, input: asked });
  });
  onCleanup(() => worker?.terminate());
  return { answer, failed };
}
