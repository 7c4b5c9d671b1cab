// The worker that takes a file in: reads and checks each line, and writes, off the page's own thread.

import { openBrowserStore } from '#store/browser.ts';
import { StoreFailure } from '#store/store.ts';
import type { FromTaker, ToTaker } from './messages.ts';
import { type TakeAsk, type Taken, takeIn } from './take-in.ts';

const page = globalThis as unknown as {
  postMessage: (message: FromTaker) => void;
  onmessage: ((event: { readonly data: ToTaker }) => void) | null;
};

const stopper = new AbortController();

page.onmessage = ({ data }) => {
  if (data.kind === 'stop') stopper.abort();
  else
    taken(data.ask).then(
      (done) => page.postMessage({ kind: 'done', taken: done }),
      (cause: unknown) => page.postMessage(failed(cause)),
    );
};

async function taken(ask: TakeAsk): Promise<Taken> {
  const opened = await openBrowserStore();
  if (!opened.ok) throw new StoreFailure(opened.why, `the store does not open: ${opened.why}`, { cause: opened.cause });
  try {
    const progress = (fraction: number) => page.postMessage({ kind: 'progress', fraction });
    return await takeIn(opened.store, ask, { progress, signal: stopper.signal });
  } finally {
    opened.store.close();
  }
}

function failed(cause: unknown): FromTaker {
  if (stopper.signal.aborted) return { kind: 'stopped' };
  return { kind: 'failed', why: cause instanceof StoreFailure ? cause.why : undefined, message: String(cause) };
}
