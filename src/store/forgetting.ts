// Forgetting, the only thing that removes. Both places have it written down before either loses a row: what goes is listed by
// births, so that a place that missed the forgetting brings nothing back, while what is kept later, the same
// entry out of a file among it, has another birth and stays.

import { failureOf } from './failure.ts';
import { birthAt, birthOf } from './packs.ts';
import { photoOf } from './photos.ts';
import type { SecondPlace } from './places.ts';
import { allRows, photoBirths, photoBirthsIn, removeRows } from './rows.ts';
import { beginEra, birthOfFacts, countWrite, drawWrite, stateIn, stateOf } from './state.ts';
import { ALL_TABLES, type Database, strictWrite, type WriteTx } from './tables.ts';

const NOTES = ['forgotten', 'facts'] as const;

/** What one forgetting takes: births of entries and photos, and with everything the facts of an era too. */
export interface Forgotten {
  /** Drawn by chance: what is revoked is this forgetting and no other. */
  readonly name: string;
  readonly births: ReadonlySet<string>;
  readonly everything: boolean;
}

/** What goes with a plot, or with everything, in whichever of the places it is held. */
export async function listForgotten(places: readonly Database[], plot: string | undefined): Promise<Forgotten> {
  const births = new Set<string>();
  for (const db of places) {
    const photos = await photoBirths(db);
    const rows = [...(await allRows(db)), ...(await db.getAll('differing'))];
    for (const row of rows.filter((one) => plot === undefined || one.plot === plot)) {
      births.add(birthOf(row));
      const photo = photos.get(photoOf(row.kept) ?? '');
      if (photo !== undefined) births.add(photo);
    }
    if (plot !== undefined) continue;
    for (const birth of photos.values()) births.add(birth);
    births.add(birthOfFacts((await stateOf(db)).era));
  }
  return { name: birthAt(drawWrite()), births, everything: plot === undefined };
}

/**
 * Forgets in a store that has one place: nothing can come back out of another, so that no note of it is needed.
 * @throws what the browser throws; nothing was forgotten then
 */
export async function forgetInOne(db: Database, gone: Forgotten): Promise<void> {
  await letGoOf(db, gone, async (tx) => {
    if (gone.everything) await tx.objectStore('forgotten').clear();
  });
}

async function letGoOf(db: Database, gone: Forgotten, also: (tx: WriteTx) => Promise<void>): Promise<void> {
  const state = await stateOf(db);
  await strictWrite(db, ALL_TABLES, async (tx) => {
    await remove(tx, gone);
    await also(tx);
  });
  // Apart from the removing, which must work on a full disk: whoever forgets everything makes room.
  await strictWrite(db, ['facts'], async (tx) => {
    if (gone.everything) await beginEra(tx, state);
    await countWrite(tx, drawWrite());
  }).catch(() => undefined);
}

/**
 * Forgets in both places. First the second writes down what goes, then the first writes it down and lets it go, then the second.
 * Broken off before the first has it, the next opening finds it in the second and finishes.
 * @returns whether the second let it go as well; where not, the next opening finishes it there
 * @throws CannotNote where the second does not take it; what the browser throws where the first does not. Nothing is gone then
 */
export async function forgetInBoth(
  first: Database,
  second: Database | undefined,
  plot: string | undefined,
): Promise<boolean> {
  const mine = await listForgotten([first], plot);
  if (second === undefined) throw new CannotNote('the second place does not open');
  const [noted, done] = [drawWrite(), drawWrite()];
  let gone = mine;
  try {
    const theirs = await listForgotten([second], plot);
    gone = { ...mine, births: new Set([...mine.births, ...theirs.births]) };
    await strictWrite(second, NOTES, async (tx) => {
      await note(tx, gone);
      await countWrite(tx, noted);
    });
  } catch (cause) {
    throw new CannotNote('the second place does not take what is to be forgotten', { cause });
  }
  const goes = async (tx: WriteTx) => {
    const state = await stateIn(tx);
    await note(tx, gone);
    await remove(tx, gone);
    if (gone.everything) await beginEra(tx, state);
  };
  let atOnce = true;
  try {
    await strictWrite(first, ALL_TABLES, async (tx) => {
      await goes(tx);
      await countWrite(tx, noted);
      await countWrite(tx, done);
    });
  } catch (cause) {
    const makesRoom = gone.everything && failureOf(cause).why === 'full';
    // The second has it written down; the first makes room, and learns of it at the next opening.
    const madeRoom = makesRoom && (await strictWrite(first, ALL_TABLES, (tx) => remove(tx, gone)).then(yes, no));
    if (!madeRoom) {
      await strictWrite(second, NOTES, (tx) => revoke(tx, gone)).catch(() => undefined);
      throw cause;
    }
    atOnce = false;
  }
  const letGo = await strictWrite(second, ALL_TABLES, async (tx) => {
    await goes(tx);
    await countWrite(tx, done);
  }).then(yes, no);
  return atOnce && letGo;
}

const yes = () => true;
const no = () => false;

/**
 * Forgets everything where the second place cannot write it down: the first does, then the second is removed whole.
 * @throws what the browser throws; where the second place stays, nothing is gone
 */
export async function forgetWithPlace(first: Database, second: SecondPlace): Promise<void> {
  const gone = await listForgotten([first], undefined);
  const counted = async (tx: WriteTx) => {
    await note(tx, gone);
    await countWrite(tx, drawWrite());
  };
  // Where no room is left for the note, making room matters more: the second place is about to go.
  await strictWrite(first, NOTES, counted).catch(() => undefined);
  try {
    await second.drop();
  } catch (cause) {
    await strictWrite(first, NOTES, (tx) => revoke(tx, gone));
    throw cause;
  }
  // The note stays, for the new second place: a log of the first that loses its end must not bring back what it took.
  await letGoOf(first, gone, async () => undefined);
}

/** The second place could not write a forgetting down. */
export class CannotNote extends Error {}

async function note(tx: WriteTx, { name, births }: Forgotten): Promise<void> {
  await tx.objectStore('forgotten').put({ births: [...births] }, name);
}

/** Never deleted: a log that loses its end would bring the note back, and nothing would say that it failed. */
async function revoke(tx: WriteTx, { name }: Forgotten): Promise<void> {
  await tx.objectStore('forgotten').put('revoked', name);
  await countWrite(tx, drawWrite());
}

async function remove(tx: WriteTx, { births, everything }: Forgotten): Promise<void> {
  await removeRows(tx, births);
  const [photos, differing] = [tx.objectStore('photos'), tx.objectStore('differing')];
  for (const [id, birth] of await photoBirthsIn(photos)) if (births.has(birth)) await photos.delete(id);
  for (const birth of await differing.getAllKeys()) if (births.has(birth)) await differing.delete(birth);
  if (everything) await tx.objectStore('facts').clear();
}
