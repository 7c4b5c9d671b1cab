// A picture that comes from outside: whether its bytes are a picture of the type that stands beside them, and what it is
// without all that a camera writes beside it, the place above all. The picture itself is not drawn anew, so no sharpness is
// lost, and taking away once more changes nothing: the same photo taken in twice is known again. A photo taken here is
// drawn small before it is kept and has nothing beside it (look/shrink.ts).

import type { Photo } from '../store.ts';
import { bareJpeg } from './jpeg.ts';
import { barePng } from './png.ts';
import { bareWebp } from './webp.ts';

type Bare = (bytes: Uint8Array) => Uint8Array | undefined;

const BY_TYPE: Readonly<Record<Photo['type'], Bare>> = {
  'image/jpeg': bareJpeg,
  'image/png': barePng,
  'image/webp': bareWebp,
};

/** The photo with the picture alone; undefined where its bytes are no whole picture of its type. */
export function barePhoto(photo: Photo): Photo | undefined {
  const bytes = BY_TYPE[photo.type](photo.bytes);
  return bytes === undefined ? undefined : { ...photo, bytes };
}

/** Whether two photos of one id show the same; one kept before pictures were bared may still have something beside it. */
export function samePicture(here: Photo, photo: Photo): boolean {
  if (here.type !== photo.type) return false;
  return sameBytes(here.bytes, photo.bytes) || sameBytes((barePhoto(here) ?? here).bytes, photo.bytes);
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}
