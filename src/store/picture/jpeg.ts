// JPEG (ITU-T T.81, annex B): a row of segments, each a marker and a length; after the start of a scan the picture's own
// data up to the next marker. What is needed to draw is kept: tables, frames, scans, the JFIF and Adobe segments, the colour
// profile. All other application segments (Exif, XMP, IPTC, further pictures), comments and what follows the end go. Which
// side is up stands in Exif; it alone is kept, in an Exif segment that holds nothing else.

import { joined, reads, viewOf } from '../bytes.ts';
import { orientationOf, uprightSegment } from './orientation.ts';

const START = 0xd8;
const END = 0xd9;
const SCAN = 0xda;
const [APP0, APP1, APP2, APP14, APP15, COMMENT] = [0xe0, 0xe1, 0xe2, 0xee, 0xef, 0xfe];
/** Start of frame, all kinds of coding; the gaps are tables and an extension. */
const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Markers inside the data of a scan: a stuffed byte, restarts, fill. */
const isInside = (marker: number) => marker === 0 || (marker >= 0xd0 && marker <= 0xd7) || marker === 0xff;

/** The picture alone; undefined where the bytes are no whole JPEG. */
export function bareJpeg(bytes: Uint8Array): Uint8Array | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== START) return undefined;
  const view = viewOf(bytes);
  const kept: Uint8Array[] = [];
  let orientation = 1;
  let [hasFrame, hasScan] = [false, false];
  for (let at = 2; at + 1 < bytes.length; ) {
    const marker = bytes[at + 1] ?? 0;
    if (bytes[at] !== 0xff) return undefined;
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === END) {
      if (!hasFrame || !hasScan) return undefined;
      const head = orientation === 1 ? [] : [uprightSegment(orientation)];
      return joined([bytes.subarray(0, 2), ...head, ...kept, Uint8Array.of(0xff, END)]);
    }
    const size = at + 4 <= bytes.length ? view.getUint16(at + 2) : 0;
    const next = at + 2 + size;
    if (size < 2 || next > bytes.length) return undefined;
    const segment = bytes.subarray(at, next);
    if (marker === APP1) orientation = orientationOf(segment) ?? orientation;
    if (isFrame(marker)) {
      // Precision, then height and width; a height of nothing may follow the scan, and no camera writes it so.
      if (size < 8 || view.getUint16(at + 5) === 0 || view.getUint16(at + 7) === 0) return undefined;
      hasFrame = true;
    }
    const end = marker === SCAN ? endOfScan(bytes, next) : next;
    if (marker === SCAN) hasScan = true;
    if (isDrawn(marker, segment)) kept.push(bytes.subarray(at, end));
    at = end;
  }
  return undefined;
}

function isDrawn(marker: number, segment: Uint8Array): boolean {
  if (marker === APP0) return reads(segment, 4, 'JFIF\0');
  if (marker === APP2) return reads(segment, 4, 'ICC_PROFILE\0');
  if (marker === APP14) return reads(segment, 4, 'Adobe');
  return marker !== COMMENT && !(marker >= APP0 && marker <= APP15);
}

/** Where the data of a scan ends: at the next marker that is none of its own. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(0xff, from); at >= 0 && at + 1 < bytes.length; at = bytes.indexOf(0xff, at + 1))
    if (!isInside(bytes[at + 1] ?? 0)) return at;
  return bytes.length;
}
