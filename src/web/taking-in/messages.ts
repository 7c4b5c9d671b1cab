// What the page and the worker that takes a file in tell each other. A worker takes in one file.

import type { Why } from '#store/store.ts';
import type { TakeAsk, Taken } from './take-in.ts';

export type ToTaker = { readonly kind: 'take'; readonly ask: TakeAsk } | { readonly kind: 'stop' };

export type FromTaker =
  | { readonly kind: 'progress'; readonly fraction: number }
  | { readonly kind: 'done'; readonly taken: Taken }
  /** It was stopped in time: nothing stays of the file. */
  | { readonly kind: 'stopped' }
  /** `why` where the store failed; else the file could not be read. */
  | { readonly kind: 'failed'; readonly why: Why | undefined; readonly message: string };
