// What to say when work on a file failed: the store's reasons, or that the file itself could not be read, as where it was moved
// or changed while it was read, or could not be made.

import { StoreFailure } from '#store/store.ts';
import { fileWork } from '#words/en/files.ts';
import { notOpened } from '#words/en/trouble.ts';
import { MissingPart } from '../app/trouble.ts';
import { sayFailure } from '../parts/failure.ts';

export function sayFileFailure(failure: unknown, otherwise: string = fileWork.unread): string {
  if (failure instanceof MissingPart) return notOpened.missing;
  return failure instanceof StoreFailure ? sayFailure(failure) : otherwise;
}
