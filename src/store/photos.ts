// Photos between a store and a file: bytes on one side, base64 on a line on the other. What a photo may be, and that nothing
// stands beside its picture, is looked at in picture/.

import { isSealed, type Kept } from '#journal/entry.ts';
import type { PhotoLine } from '#journal/lines.ts';
import type { Photo } from './store.ts';

/** Bytes turned at a time: more would pass the most arguments a call can have. */
const CHUNK = 0x8000;

/** Id of the photo that an entry tells of. */
export function photoOf(kept: Kept): string | undefined {
  if (isSealed(kept) || kept.kind !== 'photo.taken') return undefined;
  const { photo } = kept.body as { readonly photo?: unknown };
  return typeof photo === 'string' ? photo : undefined;
}

/** A kept photo as a line of a file carries it. */
export function lineOfPhoto({ id, type, bytes }: Photo): PhotoLine {
  let signs = '';
  for (let i = 0; i < bytes.length; i += CHUNK) signs += String.fromCharCode(...bytes.subarray(i, i + CHUNK));
  return { photo: id, type, base64: btoa(signs) };
}

/** A photo from a checked line. */
export function photoOfLine({ photo, type, base64 }: PhotoLine): Photo {
  const signs = atob(base64);
  const bytes = new Uint8Array(signs.length);
  for (let i = 0; i < signs.length; i++) bytes[i] = signs.charCodeAt(i);
  return { id: photo, type, bytes };
}
