// PNG (W3C Portable Network Graphics): a signature and a row of chunks. What is needed to draw is kept: the critical chunks,
// transparency, colour, size of a dot, the frames of an animation. Text, time, Exif and anything unknown go.

import { joined, reads, viewOf } from '../bytes.ts';

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
const DRAWN = 'IHDR PLTE IDAT IEND tRNS gAMA cHRM sRGB iCCP cICP sBIT bKGD pHYs acTL fcTL fdAT'.split(' ');
/** Length, type and checksum around the data of a chunk. */
const AROUND_BYTES = 12;

/** The picture alone; undefined where the bytes are no whole PNG. */
export function barePng(bytes: Uint8Array): Uint8Array | undefined {
  if (!SIGNATURE.every((byte, i) => bytes[i] === byte)) return undefined;
  const view = viewOf(bytes);
  const kept: Uint8Array[] = [bytes.subarray(0, SIGNATURE.length)];
  let hasData = false;
  for (let at = SIGNATURE.length; at + AROUND_BYTES <= bytes.length; ) {
    const next = at + AROUND_BYTES + view.getUint32(at);
    if (next > bytes.length) return undefined;
    const isFirst = at === SIGNATURE.length;
    const isHeader = reads(bytes, at + 4, 'IHDR') && view.getUint32(at) === 13;
    if (isFirst !== isHeader) return undefined;
    if (isHeader && (view.getUint32(at + 8) === 0 || view.getUint32(at + 12) === 0)) return undefined;
    hasData ||= reads(bytes, at + 4, 'IDAT');
    if (DRAWN.some((type) => reads(bytes, at + 4, type))) kept.push(bytes.subarray(at, next));
    if (reads(bytes, at + 4, 'IEND')) return hasData ? joined(kept) : undefined;
    at = next;
  }
  return undefined;
}
