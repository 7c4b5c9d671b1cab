import { describe, expect, it } from 'vitest';
import {
  bytesOf,
  chunk,
  exifSegment,
  jpegOf,
  pngOf,
  riffChunk,
  segment,
  webpOf,
} from '../../../test/scenarios/pictures.ts';
import type { Photo } from '../store.ts';
import { orientationOf, uprightSegment } from './orientation.ts';
import { barePhoto, samePicture } from './picture.ts';

const PLACE = 'GPSLatitude 51.4779N';
const photo = (type: Photo['type'], bytes: Uint8Array): Photo => ({ id: 'p', type, bytes });
const bare = (type: Photo['type'], bytes: Uint8Array) => barePhoto(photo(type, bytes))?.bytes;
const holds = (bytes: Uint8Array | undefined, text: string) => new TextDecoder('latin1').decode(bytes).includes(text);
const [jpeg, png, webp] = ['image/jpeg', 'image/png', 'image/webp'] as const;
const flagged = (flags: number) => riffChunk('VP8X', [flags, 0, 0, 0, 0, 0, 0, 0, 0, 0]);
const picture = riffChunk('VP8L', [0x2f, 0, 0, 0, 0]);

/** What a camera or an editor writes beside a picture, and the picture without it. */
const dressed: readonly (readonly [string, Photo['type'], Uint8Array, Uint8Array])[] = [
  ['Exif in a JPEG', jpeg, jpegOf({ beside: [exifSegment()] }), jpegOf()],
  ['XMP in a JPEG', jpeg, jpegOf({ beside: [segment(0xe1, `http://ns/xap/1.0/\0${PLACE}`)] }), jpegOf()],
  ['IPTC in a JPEG', jpeg, jpegOf({ beside: [segment(0xed, `Photoshop 3.0\0${PLACE}`)] }), jpegOf()],
  ['a comment in a JPEG', jpeg, jpegOf({ beside: [segment(0xfe, PLACE)] }), jpegOf()],
  ['further pictures told of in a JPEG', jpeg, jpegOf({ beside: [segment(0xe2, `MPF\0${PLACE}`)] }), jpegOf()],
  ['a second picture behind a JPEG', jpeg, bytesOf(jpegOf(), jpegOf({ beside: [exifSegment()] })), jpegOf()],
  ['Exif in a PNG', png, pngOf([chunk('eXIf', PLACE)]), pngOf()],
  ['texts in a PNG', png, pngOf([chunk('tEXt', PLACE), chunk('iTXt', PLACE), chunk('zTXt', PLACE)]), pngOf()],
  ['an unknown chunk in a PNG', png, pngOf([chunk('plAc', PLACE)]), pngOf()],
  ['what follows a PNG', png, bytesOf(pngOf(), PLACE), pngOf()],
  [
    'Exif and XMP in a WebP',
    webp,
    webpOf([flagged(0x1c), picture, riffChunk('EXIF', PLACE), riffChunk('XMP ', PLACE)]),
    webpOf([flagged(0x10), picture]),
  ],
  ['what follows a WebP', webp, bytesOf(webpOf(), PLACE), webpOf()],
];

describe('a picture from outside', () => {
  it.each(dressed)('loses %s, and nothing of the picture', (_, type, bytes, wanted) => {
    expect(holds(bytes, PLACE)).toBe(true);
    expect(bare(type, bytes)).toEqual(wanted);
  });
  it.each(dressed)('with %s is the same photo as without', (_, type, bytes, wanted) => {
    expect(bare(type, wanted)).toEqual(wanted);
    expect(samePicture(photo(type, bytes), photo(type, wanted))).toBe(true);
    expect(samePicture(photo(type, wanted), photo(type, wanted))).toBe(true);
  });
  it('keeps which side is up, and nothing else of Exif', () => {
    for (const order of ['MM', 'II'] as const) {
      const found = bare(jpeg, jpegOf({ beside: [exifSegment(6, order)] }));
      expect(orientationOf(found?.subarray(2) ?? new Uint8Array())).toBe(6);
      expect(holds(found, PLACE)).toBe(false);
      expect(bare(jpeg, found ?? new Uint8Array())).toEqual(found);
    }
  });
  it.each([1, 2, 8])('reads back the side %i it writes', (side) => {
    expect(orientationOf(uprightSegment(side))).toBe(side);
  });
  it('keeps the colours it is drawn with', () => {
    const profile = segment(0xe2, 'ICC_PROFILE\0', [1, 1, 9]);
    expect(bare(jpeg, jpegOf({ beside: [profile] }))).toEqual(jpegOf({ beside: [profile] }));
    expect(bare(png, pngOf([chunk('iCCP', 'x')]))).toEqual(pngOf([chunk('iCCP', 'x')]));
  });
  it('with other data, or of another type, is another photo', () => {
    expect(samePicture(photo(jpeg, jpegOf()), photo(jpeg, jpegOf({ seed: 2 })))).toBe(false);
    expect(samePicture(photo(png, pngOf()), photo(webp, pngOf()))).toBe(false);
  });
});

describe('bytes that are no whole picture of their type', () => {
  const scripted = bytesOf('<svg onload="alert(1)"></svg>');
  it.each([jpeg, png, webp])('are refused as %s: nothing, a script, another type', (type) => {
    const others = { [jpeg]: pngOf(), [png]: webpOf(), [webp]: jpegOf() };
    for (const bytes of [new Uint8Array(), scripted, others[type] as Uint8Array]) {
      expect(bare(type, bytes)).toBeUndefined();
    }
  });
  it.each([
    [jpeg, jpegOf({ beside: [exifSegment(3)] })],
    [png, pngOf([chunk('tEXt', 'x')])],
    [webp, webpOf([flagged(0x1c), picture, riffChunk('EXIF', 'x')])],
  ] as const)('are refused as %s wherever they are cut', (type, bytes) => {
    for (let size = 0; size < bytes.length; size++)
      expect(bare(type, bytes.subarray(0, size)), `${size}`).toBeUndefined();
  });
  it('are refused where a JPEG has no frame, no scan, or one of no size', () => {
    const frame = (height: number) => segment(0xc0, [8, 0, height, 0, 3, 1, 1, 0x11, 0]);
    const scan = bytesOf(segment(0xda, [1, 1, 0, 0, 63, 0]), [1, 2, 3]);
    const made = (...parts: readonly Uint8Array[]) => bare(jpeg, bytesOf([0xff, 0xd8], ...parts, [0xff, 0xd9]));
    expect(made(frame(2), scan)).toBeDefined();
    expect([made(scan), made(frame(2)), made(frame(0), scan)]).toEqual([undefined, undefined, undefined]);
  });
});
