// Just enough of the JPEG file form to plant what a camera writes beside a picture, and to see whether it is there:
// a file is a row of segments, each a marker byte and a length; APP1 (0xE1) holds Exif; SOF holds the size.

const APP1 = 0xe1;
const START_OF_SCAN = 0xda;
const SIZE_MARKERS = [0xc0, 0xc1, 0xc2];

/** The picture with an Exif segment that names a place. */
export function withExif(jpeg: Uint8Array): Uint8Array {
  const body = Buffer.from('Exif\0\0MM\0*\0\0\0\x08\0\0GPSLatitude 51.4779N GPSLongitude 0.0015W', 'latin1');
  const length = body.length + 2;
  return Buffer.concat([jpeg.slice(0, 2), Buffer.from([0xff, APP1, length >> 8, length & 255]), body, jpeg.slice(2)]);
}

/** The markers of the segments before the picture's own data. */
export function segmentsOf(jpeg: Uint8Array): readonly number[] {
  return walked(jpeg).map(({ marker }) => marker);
}

/** Width and height in pixels, as the file has them. */
export function sizeOf(jpeg: Uint8Array): { readonly width: number; readonly height: number } | undefined {
  const frame = walked(jpeg).find(({ marker }) => SIZE_MARKERS.includes(marker));
  if (frame === undefined) return undefined;
  const data = new DataView(jpeg.buffer, jpeg.byteOffset + frame.at);
  return { height: data.getUint16(5), width: data.getUint16(7) };
}

function walked(jpeg: Uint8Array): readonly { readonly marker: number; readonly at: number }[] {
  const found: { marker: number; at: number }[] = [];
  let at = 2;
  while (at + 4 <= jpeg.length && jpeg[at] === 0xff) {
    const marker = jpeg[at + 1] ?? 0;
    if (marker === START_OF_SCAN) break;
    found.push({ marker, at });
    at += 2 + (((jpeg[at + 2] ?? 0) << 8) | (jpeg[at + 3] ?? 0));
  }
  return found;
}
