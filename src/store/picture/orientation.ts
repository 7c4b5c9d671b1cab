// Which side of a JPEG is up: one number of 1 to 8 among what a camera writes in Exif (tag 0x0112 of the first directory).
// It is the one thing beside the picture that drawing needs.

import { joined, reads, viewOf } from '../bytes.ts';

const EXIF = 'Exif\0\0';
const TAG = 0x0112;
/** Marker, length and name before the directory's own bytes, which count from here. */
const HEAD_BYTES = 10;
/** Bytes of one entry of a directory. */
const ENTRY_BYTES = 12;

/** The orientation that an Exif segment tells; undefined where it tells none. */
export function orientationOf(segment: Uint8Array): number | undefined {
  if (!reads(segment, 4, EXIF)) return undefined;
  const tiff = segment.subarray(HEAD_BYTES);
  const isLittle = reads(tiff, 0, 'II');
  if (tiff.length < 10 || !(isLittle || reads(tiff, 0, 'MM'))) return undefined;
  const view = viewOf(tiff);
  const directory = view.getUint32(4, isLittle);
  if (directory + 2 > tiff.length) return undefined;
  const count = view.getUint16(directory, isLittle);
  for (let i = 0; i < count; i++) {
    const at = directory + 2 + i * ENTRY_BYTES;
    if (at + ENTRY_BYTES > tiff.length) return undefined;
    if (view.getUint16(at, isLittle) !== TAG) continue;
    const told = view.getUint16(at + 8, isLittle);
    return told >= 1 && told <= 8 ? told : undefined;
  }
  return undefined;
}

/** An Exif segment that tells the orientation and nothing else. */
export function uprightSegment(orientation: number): Uint8Array {
  const letters = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
  // Big-endian; the directory begins at 8 and has one entry, a short, and no directory after it.
  const tiff = joined([
    letters('MM\0*\0\0\0\x08\0\x01'),
    Uint8Array.of(TAG >> 8, TAG & 255, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0),
  ]);
  const body = joined([letters(EXIF), tiff]);
  const size = body.length + 2;
  return joined([Uint8Array.of(0xff, 0xe1, size >> 8, size & 255), body]);
}
