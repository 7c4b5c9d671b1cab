// What to say when the browser did not keep an act: full, refused, another tab. What was typed stays.

import { StoreFailure } from '#store/store.ts';
import { app } from '#words/en/app.ts';
import { failures } from '#words/en/record.ts';

export function sayFailure(failure: unknown): string {
  return failure instanceof StoreFailure ? failures[failure.why] : app.notSaved;
}
