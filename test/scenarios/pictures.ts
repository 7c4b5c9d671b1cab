// Small pictures for tests, built segment by segment or chunk by chunk, with what a camera writes beside them where a test asks
// for it. The JPEG has the form of one and any size; its data show nothing anybody would know.

const ascii = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

export function bytesOf(...parts: readonly (Uint8Array | string | readonly number[])[]): Uint8Array {
  const all = parts.map((part) => (typeof part === 'string' ? ascii(part) : Uint8Array.from(part)));
  const whole = new Uint8Array(all.reduce((size, { length }) => size + length, 0));
  let at = 0;
  for (const part of all) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** A segment of a JPEG. */
export function segment(marker: number, ...body: readonly (Uint8Array | string | readonly number[])[]): Uint8Array {
  const data = bytesOf(...body);
  return bytesOf([0xff, marker, (data.length + 2) >> 8, (data.length + 2) & 255], data);
}

const JFIF = segment(0xe0, 'JFIF\0', [1, 1, 0, 0, 1, 0, 1, 0, 0]);
const FRAME = segment(0xc0, [8, 0, 2, 0, 3, 1, 1, 0x11, 0]);
const SCAN = segment(0xda, [1, 1, 0, 0, 63, 0]);

/** A JPEG of 3 by 2 px with so many bytes of data, other ones for each seed; `beside` stands before its frame. */
export function jpegOf({ size = 40, seed = 1, beside = [] as readonly Uint8Array[] } = {}): Uint8Array {
  const data = new Uint8Array(size);
  let state = seed * 2_654_435_761 || 1;
  for (let i = 0; i < size; i++) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    // Never 0xFF, which would begin a marker.
    data[i] = (state >>> 24) % 255;
  }
  return bytesOf([0xff, 0xd8], JFIF, ...beside, FRAME, SCAN, data, [0xff, 0xd9]);
}

/** Exif with a place and, where told, which side is up. */
export function exifSegment(orientation?: number, order: 'MM' | 'II' = 'MM'): Uint8Array {
  const short = (value: number) => (order === 'MM' ? [value >> 8, value & 255] : [value & 255, value >> 8]);
  const long = (value: number) => (order === 'MM' ? [0, 0, ...short(value)] : [...short(value), 0, 0]);
  const entry = (tag: number, type: number, value: readonly number[]) =>
    bytesOf(short(tag), short(type), long(1), value);
  const entries = [
    entry(0x010e, 2, [0, 0, 0, 0]),
    ...(orientation === undefined ? [] : [entry(0x0112, 3, [...short(orientation), 0, 0])]),
    entry(0x8825, 4, long(0)),
  ];
  const directory = bytesOf(short(entries.length), ...entries, long(0));
  return segment(0xe1, 'Exif\0\0', order, short(42), long(8), directory, 'GPSLatitude 51.4779N');
}

export function chunk(type: string, data: Uint8Array | string | readonly number[]): Uint8Array {
  const body = bytesOf(data);
  return bytesOf([0, 0, body.length >> 8, body.length & 255], type, body, [0, 0, 0, 0]);
}

/** A PNG in form, its checksums left out. */
export function pngOf(beside: readonly Uint8Array[] = []): Uint8Array {
  const header = chunk('IHDR', [0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
  const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
  return bytesOf(signature, header, ...beside, chunk('IDAT', [1, 2, 3]), chunk('IEND', []));
}

/** A chunk of a RIFF container; chunks begin at even places. */
export function riffChunk(type: string, data: Uint8Array | string | readonly number[]): Uint8Array {
  const body = bytesOf(data);
  return bytesOf(type, [body.length & 255, body.length >> 8, 0, 0], body, body.length % 2 ? [0] : []);
}

export function webpOf(chunks: readonly Uint8Array[] = [riffChunk('VP8L', [0x2f, 0, 0, 0, 0])]): Uint8Array {
  const body = bytesOf('WEBP', ...chunks);
  return bytesOf('RIFF', [body.length & 255, body.length >> 8, 0, 0], body);
}
