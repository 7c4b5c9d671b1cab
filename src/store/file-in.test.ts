// Files of the record taken in part by part, and held against a record: whole or not at all, whatever is in them.

import { describe, expect, it } from 'vitest';
import { exifSegment, jpegOf, pngOf } from '../../test/scenarios/pictures.ts';
import { kg, recorder } from '../../test/scenarios/recorder.ts';
import { exportLines, MOST_FILE_LINE_SIGNS, type PhotoLine } from '../journal/lines.ts';
import { checkFile, takeInFile } from './file-in.ts';
import { fileLines } from './file-lines.ts';
import { recordFile } from './file-out.ts';
import { memoryStore } from './memory.ts';
import { lineOfPhoto } from './photos.ts';
import type { Photo, Store } from './store.ts';

const rake = recorder();
const [lot, leaves, peel] = ['clippings', 'feuilles d’été', 'peel'].map((name) =>
  rake.did('scraps.weighed', '2026-06-01', { name, mass: kg(2) }),
) as [ReturnType<typeof one>, ReturnType<typeof one>, ReturnType<typeof one>];
function one() {
  return rake.did('scraps.weighed', '2026-06-01', { name: 'x', mass: kg(2) });
}
const entries = [lot, leaves, peel];
const photo: Photo = { id: lot.id, type: 'image/jpeg', bytes: jpegOf({ size: 5000 }) };
const other: Photo = { id: leaves.id, type: 'image/png', bytes: pngOf() };

/** A file handed over in parts of so many bytes, as a disk does. */
function inParts(text: string | Uint8Array<ArrayBuffer>, size: number): Blob {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  const parts = Array.from({ length: Math.ceil(bytes.length / size) }, (_, i) => bytes.slice(i * size, (i + 1) * size));
  const stream = () =>
    new ReadableStream<Uint8Array>({
      pull(controller) {
        const part = parts.shift();
        if (part === undefined) controller.close();
        else controller.enqueue(part);
      },
    });
  return Object.assign(new Blob([bytes]), { stream });
}

async function linesOf(file: Blob): Promise<readonly unknown[]> {
  const found = [];
  for await (const { line } of fileLines(file)) found.push(line);
  return found;
}

async function holds(store: Store): Promise<readonly string[]> {
  return [...(await store.all()).map(({ id }) => id), ...(await store.photoIds())];
}

const take = (store: Store, file: Blob, signal?: AbortSignal) =>
  takeInFile(store, { file, here: () => undefined, ...(signal && { signal }) });
const fileWith = (...photos: readonly PhotoLine[]) => new Blob([exportLines(entries, photos)]);

describe('the lines of a file', () => {
  it('are the same however the file is handed over', async () => {
    const text = '\uFEFFé{"a":"\u2028"}\r\n\n{"ü":1}\nlast';
    for (const size of [1, 2, 3, 7, 1000])
      expect(await linesOf(inParts(text, size)), `${size}`).toEqual(['é{"a":"\u2028"}', '', '{"ü":1}', 'last']);
  });
  it('that are no UTF-8, or longer than any may be, are told in their place, and the next one is read', async () => {
    const long = new Uint8Array(MOST_FILE_LINE_SIGNS + 2).fill(0x20);
    const bytes = new Uint8Array([...new TextEncoder().encode('a\n'), 0xff, 0xfe, 0x0a, 0x62, 0x0a]);
    expect(await linesOf(inParts(bytes, 2))).toMatchObject(['a', { message: 'is no text in UTF-8' }, 'b']);
    const file = new Blob(['a\n', long, '\nb']);
    expect(await linesOf(file)).toMatchObject(['a', { message: 'is too long' }, 'b']);
  });
});

describe('a file taken in', () => {
  it('is the same file when it is made again, and brings nothing the second time', async () => {
    const [first, second] = [memoryStore(), memoryStore()];
    await first.append(entries);
    for (const picture of [photo, other]) await first.putPhoto(picture);
    const file = await recordFile(first, entries, {});
    for (const added of [3, 0]) {
      const read = await take(second, inParts(await file.text(), 100));
      expect(read.ok && (await read.keep())).toBe(added);
    }
    expect(await (await recordFile(second, await second.all(), {})).text()).toBe(await file.text());
  });
  it('leaves the place out of its photos, and knows them again', async () => {
    const store = memoryStore();
    const dressed = { ...photo, bytes: jpegOf({ size: 5000, beside: [exifSegment()] }) };
    for (let round = 0; round < 2; round++) {
      const read = await take(store, fileWith(lineOfPhoto(dressed)));
      expect(read.ok && (await read.keep())).toBe(round === 0 ? 3 : 0);
      expect((await store.getPhoto(photo.id))?.bytes).toEqual(photo.bytes);
    }
  });
  it('of a photo that was kept with its place is the same photo', async () => {
    const store = memoryStore();
    await store.putPhoto({ ...photo, bytes: jpegOf({ size: 5000, beside: [exifSegment()] }) });
    expect((await take(store, fileWith(lineOfPhoto(photo)))).ok).toBe(true);
  });
  it.each([
    ['another picture under an id that stands here', { ...photo, bytes: jpegOf({ seed: 7 }) }, 'photo'],
    ['bytes that are no picture', { ...other, bytes: new TextEncoder().encode('<script>') }, 'base64'],
    ['a picture of another type', { ...other, type: 'image/webp' as const }, 'base64'],
  ])('is refused for %s, with its line, and nothing stays of it', async (_, bad, field) => {
    const store = memoryStore();
    await store.putPhoto(photo);
    const read = await take(store, fileWith(lineOfPhoto({ ...photo, id: peel.id }), lineOfPhoto(bad)));
    expect(read).toMatchObject({ ok: false, refusedCount: 1, refused: [{ line: 6, problems: [{ field }] }] });
    expect(await holds(store)).toEqual([photo.id]);
  });
  it('is refused where it has two pictures under one id', async () => {
    const store = memoryStore();
    const read = await take(store, fileWith(lineOfPhoto(photo), lineOfPhoto({ ...photo, bytes: jpegOf({ seed: 7 }) })));
    expect(read).toMatchObject({ ok: false, refused: [{ line: 6, problems: [{ field: 'photo' }] }] });
    expect(await holds(store)).toEqual([]);
  });
  it('leaves nothing where it is stopped on the way, or its entries are not kept', async () => {
    const store = memoryStore();
    const stopper = new AbortController();
    const stopping = takeInFile(store, {
      file: fileWith(lineOfPhoto(photo), lineOfPhoto(other)),
      here: () => undefined,
      progress: () => stopper.abort(),
      signal: stopper.signal,
    });
    await expect(stopping).rejects.toMatchObject({ name: 'AbortError' });
    const read = await take(store, fileWith(lineOfPhoto(photo)));
    // Meanwhile another tab kept another content under one of the ids.
    await store.append([{ ...lot, on: '2026-06-09' }]);
    await expect(read.ok && read.keep()).rejects.toMatchObject({ why: 'different' });
    expect(await holds(store)).toEqual([lot.id]);
  });
});

describe('a file held against the record', () => {
  it('holds everything, or what it lacks is named', async () => {
    const store = memoryStore();
    await store.append(entries);
    for (const picture of [photo, other]) await store.putPhoto(picture);
    const check = (file: Blob) => checkFile(store, { file, entries });
    const nothing = { ok: true, missing: [], missingPhotos: [], moreCount: 0 };
    expect(await check(await recordFile(store, entries, {}))).toMatchObject(nothing);
    const lacking = await check(new Blob([exportLines([lot, one()], [lineOfPhoto(other)])]));
    expect(lacking).toMatchObject({ missing: [leaves, peel], missingPhotos: [photo.id], moreCount: 1 });
    expect(lacking.ok && [lacking.held, lacking.photos]).toEqual([[lot.id], [other.id]]);
    expect((await check(new Blob([exportLines(entries).slice(0, -40)]))).ok).toBe(false);
    const swapped = fileWith(lineOfPhoto(photo), lineOfPhoto({ ...other, ...photo, id: other.id }));
    expect(await check(swapped)).toMatchObject({ ok: false, refused: [{ line: 6, problems: [{ field: 'photo' }] }] });
    expect(await store.all()).toEqual(entries);
  });
});
