import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { unsavedElsewhere } from '#journal/unsaved.ts';
import { takeInFile } from '#store/file-in.ts';
import { recordFile } from '#store/file-out.ts';
import { memoryStore } from '#store/memory.ts';
import type { Photo, Store } from '#store/store.ts';
import { jpegOf } from './pictures.ts';
import { kg, litres, meter, recorder } from './recorder.ts';

const rake = recorder();
const lot = rake.did('scraps.weighed', '2026-05-31', { name: 'own clippings', mass: kg(6.4) });
const filled = rake.did('peg.filled', '2026-06-01', {
  peg: 14,
  parts: [{ lot: lot.id, mass: kg(2.1) }],
  water: [{ volume: litres(5.2) }],
});
const look = rake.did('peg.looked', '2026-06-02', { batch: filled.id, acidity: meter(5.2), smell: 'grassy' });
const photo: Photo = {
  id: rake.did('heap.looked', '2026-06-02', { heap: 'h', turned: true }).id,
  type: 'image/jpeg',
  bytes: jpegOf(),
};
const taken = rake.did('photo.taken', '2026-06-02', {
  photo: photo.id,
  of: look.id,
  type: photo.type,
  bytes: photo.bytes.length,
  widthPx: 1,
  heightPx: 1,
});

async function fileOf(store: Store): Promise<string> {
  return (await recordFile(store, await store.all(), {})).text();
}

describe('a phone whose browser cleared its storage', () => {
  it('has everything back from its last file, photos included', async () => {
    const phone = memoryStore();
    await phone.append([lot, filled, look, taken]);
    await phone.putPhoto(photo);
    const file = await fileOf(phone);
    const before = fold(await phone.all());
    await phone.forget();
    expect(await phone.all()).toEqual([]);

    const read = await takeInFile(phone, { file: new Blob([file]), here: () => undefined });
    if (!read.ok) throw new Error('refused');
    await read.keep();
    expect(fold(await phone.all())).toEqual(before);
    expect(await phone.getPhoto(photo.id)).toEqual(photo);
    expect(await fileOf(phone)).toBe(file);
  });
});

describe('a visit with no file for a week', () => {
  const file = { on: '2026-06-01', at: '2026-06-01T12:00:00.000Z', held: lot.id };
  const later = { ...look, at: '2026-06-03T08:00:00.000Z' };
  const on = (date: string, last: typeof file | undefined) => ({
    file: last,
    nowMs: Date.parse(`${date}T12:00:00.000Z`),
  });

  it('is told that something is on this phone alone, from the seventh day', () => {
    expect(unsavedElsewhere([lot, later], on('2026-06-09', file))).toEqual({ count: 1, days: 6, isDue: false });
    expect(unsavedElsewhere([lot, later], on('2026-06-10', file))).toEqual({ count: 1, days: 7, isDue: true });
  });
  it('is told from the first entry where there never was a file', () => {
    expect(unsavedElsewhere([later], on('2026-06-09', undefined)).isDue).toBe(false);
    expect(unsavedElsewhere([later], on('2026-06-10', undefined))).toMatchObject({ days: 7, isDue: true });
  });
  it('is not told where nothing was recorded since the file, however old that is', () => {
    expect(unsavedElsewhere([lot], on('2027-06-01', file))).toEqual({ count: 0, days: 0, isDue: false });
  });
  it('is told where the last file has a date that cannot be read', () => {
    expect(unsavedElsewhere([later], on('2026-06-04', { ...file, at: 'long ago' })).isDue).toBe(true);
  });
});
