// What is done to the rows of a database inside one write: entries looked up by id, loose rows moved into packs, rows and
// photos removed by their births. When it is done, and what else is written with it, is not decided here.

import type { IDBPObjectStore } from 'idb';
import type { Kept } from '#journal/entry.ts';
import { checked, isNew } from './gate.ts';
import { birthAt, birthOf, packOf, type ReadRow, rowsOf, stretches } from './packs.ts';
import type { Database, Forgetting, TableName, Tables, WriteTx } from './tables.ts';

/** More ids than these are looked for in the whole of a place: two questions for each of a file's would take far longer. */
const MOST_ASKED = 500;

/** What is kept under some ids, loose or packed; each pack is opened once. */
export async function keptUnder(tx: WriteTx, ids: readonly string[]): Promise<ReadonlyMap<string, Kept>> {
  const index = tx.objectStore('entries').index('id');
  const packed = tx.objectStore('packed');
  const found = new Map<string, Kept>();
  const inPacks = new Set<number>();
  const wanted = new Set(ids);
  if (wanted.size > MOST_ASKED) {
    const table = tx.objectStore('entries');
    const [loose, packedIds, lasts] = await Promise.all([table.getAll(), packed.getAllKeys(), packed.getAll()]);
    for (const { id, kept } of loose) if (wanted.has(id)) found.set(id, kept);
    packedIds.forEach((id, i) => {
      const last = lasts[i];
      if (last !== undefined && wanted.has(id)) inPacks.add(last);
    });
  } else
    await Promise.all(
      ids.map(async (id) => {
        const [row, last] = await Promise.all([index.get(id), packed.get(id)]);
        if (row !== undefined) found.set(id, row.kept);
        if (last !== undefined) inPacks.add(last);
      }),
    );
  for (const last of inPacks) {
    const pack = await tx.objectStore('packs').get(last);
    for (const { id, kept } of pack === undefined ? [] : rowsOf(pack)) if (wanted.has(id)) found.set(id, kept);
  }
  return found;
}

/** Adds the entries that are not here yet; tells how many. @throws StoreFailure unreadable or different */
export async function addFresh(tx: WriteTx, entries: readonly Kept[], drawn: number): Promise<number> {
  const batch = [...checked(entries).values()];
  const here = await keptUnder(
    tx,
    batch.map(({ id }) => id),
  );
  // By its place in the batch, not among the fresh ones: a place that lacks more gives each the same birth.
  const born = batch.map((kept, i) => ({ id: kept.id, plot: kept.plot, kept, birth: birthAt(drawn, i) }));
  const fresh = born.filter(({ id, kept }) => isNew(kept, here.get(id)));
  const table = tx.objectStore('entries');
  await Promise.all(fresh.map((row) => table.add(row)));
  return fresh.length;
}

/** Moves the oldest loose rows into packs. */
export async function pack(tx: WriteTx): Promise<void> {
  const table = tx.objectStore('entries');
  for (const rows of stretches((await table.getAll()) as ReadRow[])) {
    const made = packOf(rows);
    await Promise.all([
      tx.objectStore('packs').add(made),
      ...rows.map(({ id }) => tx.objectStore('packed').add(made.last, id)),
      table.delete(IDBKeyRange.bound(rows[0]?.seq, made.last)),
    ]);
  }
}

/** Every row of a place, packed and loose, in the order of arrival. */
export async function allRows(db: Database): Promise<readonly ReadRow[]> {
  const tx = db.transaction(['entries', 'packs'], 'readonly');
  const [packs, loose] = await Promise.all([tx.objectStore('packs').getAll(), tx.objectStore('entries').getAll()]);
  return [...packs.flatMap(rowsOf), ...(loose as ReadRow[])];
}

/** The birth of every photo of a place, by its id. */
export function photoBirths(db: Database): Promise<ReadonlyMap<string, string>> {
  return photoBirthsIn(db.transaction(['photos'], 'readonly').objectStore('photos'));
}

/** The same inside a transaction; no photo is read for it. */
export async function photoBirthsIn(
  table: IDBPObjectStore<Tables, TableName[], 'photos', 'readonly' | 'readwrite'>,
): Promise<ReadonlyMap<string, string>> {
  const found = new Map((await table.getAllKeys()).map((id) => [id, id]));
  for (let at = await table.index('birth').openKeyCursor(); at !== null; at = await at.continue()) {
    found.set(at.primaryKey, at.key);
  }
  return found;
}

/** Births that forgettings took and that must not come back. */
export function birthsGone(forgettings: Iterable<Forgetting>): ReadonlySet<string> {
  const births = new Set<string>();
  for (const one of forgettings) if (one !== 'revoked') for (const birth of one.births) births.add(birth);
  return births;
}

/** Removes rows by their births, loose and packed. */
export async function removeRows(tx: WriteTx, births: ReadonlySet<string>): Promise<void> {
  const [table, packs, packed] = [tx.objectStore('entries'), tx.objectStore('packs'), tx.objectStore('packed')];
  const goes = (row: ReadRow) => births.has(birthOf(row));
  const loose = (await table.getAll()) as ReadRow[];
  await Promise.all(loose.filter(goes).map(({ seq }) => table.delete(seq)));
  for (const one of await packs.getAll()) {
    const rows = rowsOf(one);
    const out = rows.filter(goes);
    if (out.length === 0) continue;
    const stay = rows.filter((row) => !goes(row));
    // Under the number it had: cursors that were given out must go on meaning the same.
    await (stay.length > 0 ? packs.put({ ...packOf(stay), last: one.last }) : packs.delete(one.last));
    await Promise.all(out.map(({ id }) => packed.delete(id)));
  }
}
