// Both places made one: each gets by id what only the other holds, whichever holds more, and neither is ever cleared. What was
// forgotten, in whichever place that was written down, is taken out of both. Every step may be broken off: the
// states of the places differ until both hold all, and as long as they differ the next opening does it again.

import { sameContent } from '#journal/same.ts';
import { birthOf, type ReadRow, type Row } from './packs.ts';
import { addRows, allRows, birthsGone, keptUnder, photoBirths, removeRows } from './rows.ts';
import { birthOfFacts, drawWrite, isOwn, STATE, type State, sameState, stateFrom, stateIn, stateOf } from './state.ts';
import { ALL_TABLES, type Database, type Forgetting, strictWrite, type WriteTx } from './tables.ts';
import { markedPhotos } from './taking-in.ts';

interface Place {
  readonly rows: ReadonlyMap<string, ReadRow>;
  readonly photos: ReadonlyMap<string, string>;
  readonly facts: ReadonlyMap<string, unknown>;
  readonly forgettings: ReadonlyMap<string, Forgetting>;
  readonly differing: ReadonlyMap<string, Row>;
  readonly state: State;
}

/** What a place is to be given, and what must leave it. */
interface Amendment {
  readonly add: readonly Row[];
  readonly remove: ReadonlySet<string>;
  readonly forgettings: ReadonlyMap<string, Forgetting>;
  readonly forgotten: ReadonlySet<string>;
  readonly differing: ReadonlyMap<string, Row>;
  readonly photosOut: readonly string[];
  /** Absent where the place's own facts stay. */
  readonly facts: ReadonlyMap<string, unknown> | undefined;
  readonly read: State;
  /** The state both places have afterwards; absent where one of them could not be read whole. */
  readonly settled: State | undefined;
}

/**
 * Unites two places; the first is written first.
 * @returns whether the second holds all that the first does
 * @throws what the browser throws where the first place cannot be read or written; nothing is lost then
 */
export async function unite(first: Database, second: Database): Promise<boolean> {
  const own = await stateOf(first);
  const there = await stateOf(second).catch(() => undefined);
  if (there === undefined) return false;
  if (sameState(own, there)) return true;
  const mine = await readPlace(first);
  const theirs = await readPlace(second).catch(() => undefined);
  if (theirs === undefined) return false;
  const holdNothing = [mine, theirs].every(
    ({ rows, photos, facts, forgettings }) => rows.size + photos.size + facts.size + forgettings.size === 0,
  );
  if (holdNothing && own.count + there.count === 0) return true;
  const forgettings = merged(mine.forgettings, theirs.forgettings);
  const forgotten = birthsGone(forgettings.values());
  const whole = await pourPhotos({ from: second, there: theirs, to: first, here: mine, forgotten });
  const { toFirst, toSecond } = amendments(mine, theirs, { forgettings, forgotten, whole });
  await strictWrite(first, ALL_TABLES, (tx) => amend(tx, toFirst));
  try {
    await pourPhotos({ from: first, there: mine, to: second, here: theirs, forgotten });
    await strictWrite(second, ALL_TABLES, (tx) => amend(tx, toSecond));
    return whole;
  } catch {
    return false;
  }
}

async function readPlace(db: Database): Promise<Place> {
  const tx = db.transaction(['facts', 'forgotten', 'differing'], 'readonly');
  const [facts, forgotten, differing] = [
    tx.objectStore('facts'),
    tx.objectStore('forgotten'),
    tx.objectStore('differing'),
  ];
  // The state is read before the rows: a write that comes between is seen by the state having moved.
  const [names, values, births, other, gone, took] = await Promise.all([
    ...[facts.getAllKeys(), facts.getAll(), differing.getAllKeys(), differing.getAll()],
    ...[forgotten.getAllKeys(), forgotten.getAll()],
  ] as const);
  const all = new Map(names.map((name, i) => [name, values[i]]));
  const state = stateFrom(all.get(STATE));
  for (const name of names) if (isOwn(name)) all.delete(name);
  const rows = new Map((await allRows(db)).map((row) => [row.id, row]));
  const photos = new Map(await photoBirths(db));
  // Of a file that another tab is taking in: they are put in both places by that tab.
  for (const id of await markedPhotos(db)) photos.delete(id);
  return {
    ...{ rows, state, facts: all, photos },
    forgettings: new Map(gone.map((name, i) => [name, took[i] as Forgetting])),
    ...{ differing: new Map(births.map((birth, i) => [birth, other[i] as Row])) },
  };
}

/** The forgettings of both; one that was revoked in either is revoked. */
function merged(mine: Place['forgettings'], theirs: Place['forgettings']): ReadonlyMap<string, Forgetting> {
  const both = new Map([...theirs, ...mine]);
  for (const [name, one] of theirs) if (one === 'revoked') both.set(name, one);
  return both;
}

/** What each place lacks of the other. The first's content counts where they differ; the second's is kept beside it. */
function amendments(
  mine: Place,
  theirs: Place,
  {
    forgettings,
    forgotten,
    whole,
  }: Pick<Amendment, 'forgettings' | 'forgotten'> & {
    readonly whole: boolean;
  },
) {
  const stands = (row: ReadRow | undefined) => (row !== undefined && !forgotten.has(birthOf(row)) ? row : undefined);
  const dead = ({ rows }: Place) => new Set([...rows.values()].map(birthOf).filter((birth) => forgotten.has(birth)));
  const [addMine, addTheirs, differing] = [[] as Row[], [] as Row[], new Map([...theirs.differing, ...mine.differing])];
  const removeTheirs = dead(theirs);
  for (const row of theirs.rows.values()) {
    const [other, here] = [stands(row), stands(mine.rows.get(row.id))];
    if (other !== undefined && here === undefined) addMine.push(other);
    if (other === undefined || here === undefined || sameContent(here.kept, other.kept)) continue;
    differing.set(birthOf(other), other);
    removeTheirs.add(birthOf(other));
    addTheirs.push(here);
  }
  for (const row of mine.rows.values()) {
    const here = stands(row);
    if (here !== undefined && stands(theirs.rows.get(row.id)) === undefined) addTheirs.push(here);
  }
  for (const birth of differing.keys()) if (forgotten.has(birth)) differing.delete(birth);
  const facts = newerFacts(mine, theirs, forgotten);
  const count = Math.max(mine.state.count, theirs.state.count) + 1;
  const settled = whole ? { count, sum: drawWrite(), era: facts.era } : undefined;
  const both = { forgettings, forgotten, differing, settled };
  const photosOut = ({ photos }: Place) => [...photos].flatMap(([id, birth]) => (forgotten.has(birth) ? [id] : []));
  return {
    toFirst: {
      ...{ ...both, add: addMine, remove: dead(mine), photosOut: photosOut(mine), read: mine.state },
      facts: facts.of === mine ? undefined : (facts.of?.facts ?? new Map()),
    } satisfies Amendment,
    toSecond: {
      ...{ ...both, add: addTheirs, remove: removeTheirs, photosOut: photosOut(theirs), read: theirs.state },
      facts: facts.of === theirs ? undefined : (facts.of?.facts ?? new Map()),
    } satisfies Amendment,
  };
}

/**
 * Facts stand together and are taken whole from one place: the later era, then the place with more writes, then the first.
 * Of an era that was forgotten nothing is taken.
 */
function newerFacts(mine: Place, theirs: Place, forgotten: ReadonlySet<string>) {
  const standing = [mine, theirs].filter(({ state }) => !forgotten.has(birthOfFacts(state.era)));
  const era = Math.max(mine.state.era, theirs.state.era);
  if (standing.length === 0) return { of: undefined, era: era + 1 };
  const [one, other] = standing as [Place, Place | undefined];
  const isOther =
    other !== undefined &&
    (other.state.era > one.state.era || (other.state.era === one.state.era && other.state.count > one.state.count));
  return { of: isOther ? other : one, era };
}

async function amend(tx: WriteTx, asked: Amendment): Promise<void> {
  const [forgotten, differing, photos] = [
    tx.objectStore('forgotten'),
    tx.objectStore('differing'),
    tx.objectStore('photos'),
  ];
  for (const [name, one] of asked.forgettings)
    if ((await forgotten.get(name)) !== 'revoked') await forgotten.put(one, name);
  const known = birthsGone(await forgotten.getAll());
  if (asked.remove.size > 0) await removeRows(tx, asked.remove);
  for (const id of asked.photosOut) {
    const photo = await photos.get(id);
    // The same photo may have been put back under another birth.
    if (photo !== undefined && asked.forgotten.has(birthOf(photo))) await photos.delete(id);
  }
  await Promise.all([...asked.differing].map(([birth, row]) => differing.put(row, birth)));
  for (const birth of await differing.getAllKeys()) if (asked.forgotten.has(birth)) await differing.delete(birth);
  // Another tab may have kept or forgotten meanwhile.
  const here = await keptUnder(
    tx,
    asked.add.map(({ id }) => id),
  );
  const lacking: Row[] = [];
  for (const { id, plot, kept, birth = id } of asked.add) {
    const stood = here.get(id);
    if (known.has(birth)) continue;
    if (stood === undefined) lacking.push({ id, plot, kept, birth });
    else if (!sameContent(stood, kept)) await differing.put({ id, plot, kept, birth }, birth);
  }
  await addRows(tx, lacking);
  // Written to since it was read: the facts are newer than those read, and the next opening unites once more.
  const now = await stateIn(tx);
  if (asked.settled === undefined || now.sum !== asked.read.sum || now.count !== asked.read.count) return;
  const facts = tx.objectStore('facts');
  if (asked.facts !== undefined) {
    for (const name of await facts.getAllKeys()) if (!isOwn(name)) await facts.delete(name);
    for (const [name, value] of asked.facts) await facts.put(value, name);
  }
  await facts.put(asked.settled, STATE);
}

interface Pouring {
  readonly from: Database;
  readonly there: Place;
  readonly to: Database;
  readonly here: Place;
  readonly forgotten: ReadonlySet<string>;
}

/**
 * Puts the photos of one place that the other lacks there, one by one, since many do not fit into memory.
 * @returns whether all could be read
 * @throws what the browser throws where one cannot be written
 */
async function pourPhotos({ from, there, to, here, forgotten }: Pouring): Promise<boolean> {
  let whole = true;
  for (const [id, birth] of there.photos) {
    const held = here.photos.get(id);
    if (forgotten.has(birth) || (held !== undefined && !forgotten.has(held))) continue;
    const photo = await from.get('photos', id).catch(() => {
      whole = false;
    });
    if (photo === undefined) continue;
    await strictWrite(to, ['photos', 'forgotten'], async (tx) => {
      if ((await tx.objectStore('forgotten').get(birth)) === undefined)
        await tx.objectStore('photos').put({ ...photo, birth });
    });
  }
  return whole;
}
