// What is done to the rows of a database inside one write: entries looked up by id, loose rows moved into packs, rows and
// photos removed by their births. When it is done, and what else is written with it, is not decided here.

import type { IDBPObjectStore } from 'idb';
import type { Kept } from '#journal/entry.ts';
import { isNew } from './gate.ts';
import { birthAt, birthOf, PACK_SIZE, packOf, type ReadRow, type Row, rowsOf, stretches } from './packs.ts';
import type { Database, Forgetting, TableName, Tables, WriteTx } from './tables.ts';

/** More ids than these are looked for in the whole of a place: two questions for each of a file's would take far longer. */
const MOST_ASKED = 500;

/** What is kept under some ids, loose or packed; each pack is opened once. */
export async function keptUnder(tx: WriteTx, ids: readonly string[]): Promise<ReadonlyMap<string, Kept>> {
  const [table, packs] = [tx.objectStore('entries'), tx.objectStore('packs')];
  const found = new Map<string, Kept>();
  const wanted = new Set(ids);
  const isMany = wanted.size > MOST_ASKED;
  const byId = table.index('id');
  const loose = isMany ? await table.getAll() : await Promise.all(ids.map((id) => byId.get(id)));
  for (const row of loose) if (row !== undefined && wanted.has(row.id)) found.set(row.id, row.kept);
  const inPacks = packs.index('ids');
  const lasts = isMany ? await packs.getAllKeys() : await Promise.all(ids.map((id) => inPacks.getKey(id)));
  for (const last of new Set(lasts)) {
    const one = last === undefined ? undefined : await packs.get(last);
    if (one === undefined || !one.ids.some((id) => wanted.has(id))) continue;
    for (const { id, kept } of rowsOf(one)) if (wanted.has(id)) found.set(id, kept);
  }
  return found;
}

/** Adds the entries of a checked batch that are not here yet; tells how many. @throws StoreFailure different */
export async function addFresh(tx: WriteTx, batch: readonly Kept[], drawn: number): Promise<number> {
  const here = await keptUnder(
    tx,
    batch.map(({ id }) => id),
  );
  // By its place in the batch, not among the fresh ones: a place that lacks more gives each the same birth.
  const born = batch.map((kept, i) => ({ id: kept.id, plot: kept.plot, kept, birth: birthAt(drawn, i) }));
  const fresh = born.filter(({ id, kept }) => isNew(kept, here.get(id)));
  await addRows(tx, fresh);
  return fresh.length;
}

/**
 * Adds rows in their order; many at once go into packs, for a row each would take a database ten times longer. The loose rows
 * before them go with them, since packs hold what came first.
 */
export async function addRows(tx: WriteTx, rows: readonly Row[]): Promise<void> {
  const table = tx.objectStore('entries');
  const [first] = rows;
  if (rows.length <= PACK_SIZE || first === undefined) {
    await Promise.all(rows.map((row) => table.add(row)));
    return;
  }
  const loose = (await table.getAll()) as ReadRow[];
  // The number the database gives the first; the others follow, and the last of them is written as a row with its number, so
  // that the database goes on behind it.
  const from = await table.add(first);
  const numbered = rows.map((row, i): ReadRow => ({ ...row, seq: from + i }));
  const left = await packWhole(tx, [...loose, ...numbered], 1);
  await Promise.all(left.map((row) => table.put(row)));
}

/** Moves the oldest loose rows into packs. */
export async function pack(tx: WriteTx): Promise<void> {
  await packWhole(tx, (await tx.objectStore('entries').getAll()) as ReadRow[], 0);
}

/** Packs whole stretches of rows, the oldest first, and takes them out of the loose ones; gives those that are left. */
async function packWhole(tx: WriteTx, rows: readonly ReadRow[], least: 0 | 1): Promise<readonly ReadRow[]> {
  const packs = stretches(rows.slice(0, rows.length - least)).map(packOf);
  const last = packs.at(-1)?.last;
  if (last === undefined) return rows;
  await Promise.all([
    ...packs.map((one) => tx.objectStore('packs').add(one)),
    tx.objectStore('entries').delete(IDBKeyRange.upperBound(last)),
  ]);
  return rows.slice(packs.length * PACK_SIZE);
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
  const [table, packs] = [tx.objectStore('entries'), tx.objectStore('packs')];
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
  }
}
