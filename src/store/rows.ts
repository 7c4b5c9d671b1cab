// What is done to the rows of a database inside one write: entries looked up by id, loose rows moved into packs, a plot
// removed from rows, packs and photos. When it is done, and what else is written with it, is browser.ts's affair.

import type { Kept } from '#journal/entry.ts';
import { checked, isNew } from './gate.ts';
import { packOf, type ReadRow, rowsOf, stretches } from './packs.ts';
import { photoOf } from './photos.ts';
import type { WriteTx } from './tables.ts';

/** What is kept under some ids, loose or packed; each pack is opened once. */
export async function keptUnder(tx: WriteTx, ids: readonly string[]): Promise<ReadonlyMap<string, Kept>> {
  const index = tx.objectStore('entries').index('id');
  const packed = tx.objectStore('packed');
  const found = new Map<string, Kept>();
  const inPacks = new Set<number>();
  await Promise.all(
    ids.map(async (id) => {
      const [row, last] = await Promise.all([index.get(id), packed.get(id)]);
      if (row !== undefined) found.set(id, row.kept);
      if (last !== undefined) inPacks.add(last);
    }),
  );
  const wanted = new Set(ids);
  for (const last of inPacks) {
    const pack = await tx.objectStore('packs').get(last);
    for (const { id, kept } of pack === undefined ? [] : rowsOf(pack)) if (wanted.has(id)) found.set(id, kept);
  }
  return found;
}

/** Adds the entries that are not here yet; tells how many. @throws StoreFailure unreadable or different */
export async function addFresh(tx: WriteTx, entries: readonly Kept[]): Promise<number> {
  const batch = [...checked(entries).values()];
  const here = await keptUnder(
    tx,
    batch.map(({ id }) => id),
  );
  const fresh = batch.filter((kept) => isNew(kept, here.get(kept.id)));
  const table = tx.objectStore('entries');
  await Promise.all(fresh.map((kept) => table.add({ id: kept.id, plot: kept.plot, kept })));
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

/** Removes the entries of one plot and their photos, from loose rows and packs. */
export async function forgetPlot(tx: WriteTx, plot: string): Promise<void> {
  const [table, packs, packed] = [tx.objectStore('entries'), tx.objectStore('packs'), tx.objectStore('packed')];
  const loose = (await table.index('plot').getAll(plot)) as ReadRow[];
  const gone = [...loose];
  await Promise.all(loose.map(({ seq }) => table.delete(seq)));
  for (const one of await packs.getAll()) {
    const rows = rowsOf(one);
    const out = rows.filter((row) => row.plot === plot);
    if (out.length === 0) continue;
    gone.push(...out);
    const stay = rows.filter((row) => row.plot !== plot);
    // Under the number it had: cursors that were given out must go on meaning the same.
    await (stay.length > 0 ? packs.put({ ...packOf(stay), last: one.last }) : packs.delete(one.last));
    await Promise.all(out.map(({ id }) => packed.delete(id)));
  }
  await Promise.all(gone.flatMap(({ kept }) => photoOf(kept) ?? []).map((id) => tx.objectStore('photos').delete(id)));
}
