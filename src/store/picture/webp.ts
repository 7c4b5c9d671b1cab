// WebP (RFC 9649): a RIFF container of chunks. What is needed to draw is kept: the picture, its transparency, its frames, the
// colour profile. Exif, XMP and anything unknown go, and the flags that announce them.

import { joined, reads, viewOf } from '../bytes.ts';

const DRAWN = ['VP8 ', 'VP8L', 'VP8X', 'ALPH', 'ANIM', 'ANMF', 'ICCP'];
const PICTURE = ['VP8 ', 'VP8L', 'ANMF'];
/** Flags of the extended header that announce Exif and XMP. */
const ANNOUNCED = 0b1100;
/** "RIFF", the size, "WEBP". */
const HEAD_BYTES = 12;

/** The picture alone; undefined where the bytes are no whole WebP. */
export function bareWebp(bytes: Uint8Array): Uint8Array | undefined {
  if (!reads(bytes, 0, 'RIFF') || !reads(bytes, 8, 'WEBP')) return undefined;
  const view = viewOf(bytes);
  const end = 8 + view.getUint32(4, true);
  if (end > bytes.length) return undefined;
  const kept: Uint8Array[] = [];
  let hasPicture = false;
  for (let at = HEAD_BYTES; at + 8 <= end; ) {
    const size = view.getUint32(at + 4, true);
    // Chunks begin at even places.
    const next = at + 8 + size + (size % 2);
    if (next > end) return undefined;
    const is = (type: string) => reads(bytes, at, type);
    hasPicture ||= PICTURE.some(is);
    if (is('VP8X') && size >= 10) kept.push(unannounced(bytes.subarray(at, next)));
    else if (DRAWN.some(is)) kept.push(bytes.subarray(at, next));
    at = next;
  }
  if (!hasPicture) return undefined;
  const whole = joined([bytes.subarray(0, HEAD_BYTES), ...kept]);
  viewOf(whole).setUint32(4, whole.length - 8, true);
  return whole;
}

function unannounced(header: Uint8Array): Uint8Array {
  const bare = header.slice();
  bare[8] = (bare[8] ?? 0) & ~ANNOUNCED;
  return bare;
}
