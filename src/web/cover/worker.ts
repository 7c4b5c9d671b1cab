// The worker that plans the cover: the solver is fetched here, off the page's own thread, when the first question comes.

import wasmUrl from 'highs/runtime?url';
import { coverAnswer } from '#tasks/plot/cover.ts';
import { loadSolver } from '#tasks/solver/highs.ts';
import type { CoverQuestion, CoverReply } from './messages.ts';

const page = globalThis as unknown as {
  postMessage: (message: CoverReply) => void;
  onmessage: ((event: { readonly data: CoverQuestion }) => void) | null;
};

page.onmessage = ({ data: { number, input } }) => {
  loadSolver({ wasmUrl }).then(
    (solve) => {
      const { plan: _, ...answer } = coverAnswer(input, solve);
      page.postMessage({ number, answer });
    },
    (error: unknown) => page.postMessage({ number, failed: String(error) }),
  );
};
