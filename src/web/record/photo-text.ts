// Photos as the lines of a file carry them, and back.

import type { PhotoLine } from '#journal/lines.ts';
import type { Photo } from '#store/store.ts';

const CHUNK = 32_768;

export function photoLine({ id, type, bytes }: Photo): PhotoLine {
  let text = '';
  for (let i = 0; i < bytes.length; i += CHUNK) text += String.fromCharCode(...bytes.subarray(i, i + CHUNK));
  return { photo: id, type, base64: btoa(text) };
}

export function photoOf({ photo, type, base64 }: PhotoLine): Photo {
  return { id: photo, type, bytes: Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0)) };
}
