// Keeps versions of the page for the time without a signal. A version is put together in a cache of its own and counts only
// once every file is there with its digest; until then, and if that never happens, the version before goes on. Nothing that a
// network answers is ever kept unless its digest was known before.

import { SHELL, type Version, whyNot } from './version.ts';

const PREFIX = 'tilthwright-page:';
/** Stands in the cache of a version that is whole. */
const WHOLE = '/~whole';

/** Files asked for together, as browsers do with one server. */
const AT_ONCE = 6;

/** What of a worker's world is used here. */
export interface World {
  readonly caches: Pick<CacheStorage, 'open' | 'keys' | 'delete'>;
  /** Asks the network, past every other cache. */
  readonly ask: (path: string) => Promise<Response>;
}

/** A file of a version did not arrive as listed; the message says how. */
export class NotWhole extends Error {}

const nameOf = (version: Version) => `${PREFIX}${version.name}`;

/**
 * Puts a version together; what an earlier try, or the version before, already holds is not fetched again.
 * @throws NotWhole, or what the network or the cache threw; whatever stood before still stands
 */
export async function install(version: Version, world: World): Promise<void> {
  const cache = await world.caches.open(nameOf(version));
  if ((await cache.match(WHOLE)) !== undefined) return;
  await clearTries(version, world);
  const before = await wholeCaches(world);
  const files = [...version.files];
  for (let i = 0; i < files.length; i += AT_ONCE) {
    const tried = await Promise.allSettled(
      files.slice(i, i + AT_ONCE).map(async ([path, digest]) => {
        if (await holds(cache, path, digest)) return;
        await cache.put(path, (await fromBefore(before, path, digest)) ?? (await fetched(world, path, digest)));
      }),
    );
    // Thrown once all have ended: nothing goes on behind a try that failed.
    for (const one of tried) if (one.status === 'rejected') throw one.reason;
  }
  await cache.put(WHOLE, new Response(version.name));
}

async function holds(cache: Cache, path: string, digest: string): Promise<boolean> {
  const kept = await cache.match(path);
  return kept !== undefined && (await whyNot(kept, path, digest)) === undefined;
}

async function fromBefore(before: readonly Cache[], path: string, digest: string): Promise<Response | undefined> {
  for (const cache of before) if (await holds(cache, path, digest)) return await cache.match(path);
  return undefined;
}

async function fetched(world: World, path: string, digest: string): Promise<Response> {
  const answer = await world.ask(path);
  const why = await whyNot(answer.clone(), path, digest);
  if (why !== undefined) throw new NotWhole(`${path}: ${why}`);
  return answer;
}

/** Removes what earlier tries at other versions left; no two versions are put together at one time. */
async function clearTries(version: Version, world: World): Promise<void> {
  for (const name of await otherCaches(version, world)) {
    if (name.startsWith(PREFIX) && !(await isWhole(world, name))) await world.caches.delete(name);
  }
}

/**
 * Removes what no tab needs once a version was taken: all but its own cache and that of the version before, whose pages may
 * still be open in another tab. A version that is being put together meanwhile is left alone, and nothing goes unless the one
 * that was taken is whole.
 */
export async function clearAway(version: Version, world: World): Promise<void> {
  if (!(await isWhole(world, nameOf(version)))) return;
  const whole: string[] = [];
  for (const name of await otherCaches(version, world)) {
    if (!name.startsWith(PREFIX)) await world.caches.delete(name);
    else if (await isWhole(world, name)) whole.push(name);
  }
  for (const name of whole.slice(0, -1)) await world.caches.delete(name);
}

async function otherCaches(version: Version, world: World): Promise<readonly string[]> {
  return (await world.caches.keys()).filter((name) => name !== nameOf(version));
}

async function isWhole(world: World, name: string): Promise<boolean> {
  return (await (await world.caches.open(name)).match(WHOLE)) !== undefined;
}

async function wholeCaches(world: World): Promise<readonly Cache[]> {
  const found: Cache[] = [];
  for (const name of await world.caches.keys()) {
    if (name.startsWith(PREFIX) && (await isWhole(world, name))) found.push(await world.caches.open(name));
  }
  return found;
}

/**
 * The file at a path, out of what is kept: of this version, else of another whole one. Where the browser lost it, the network
 * is asked and answers only with the listed bytes. Nothing for a path that is no file of ours.
 */
export async function answerFile(version: Version, path: string, world: World): Promise<Response | undefined> {
  const own = await world.caches.open(nameOf(version));
  const kept = await own.match(path);
  if (kept !== undefined) return kept;
  const digest = version.files.get(path);
  if (digest === undefined) return await fromAnother(path, world);
  const answer = await fetched(world, path, digest);
  await own.put(path, answer.clone()).catch(() => undefined);
  return answer;
}

async function fromAnother(path: string, world: World): Promise<Response | undefined> {
  if (path === WHOLE) return undefined;
  for (const cache of await wholeCaches(world)) {
    const kept = await cache.match(path);
    if (kept !== undefined) return kept;
  }
  return undefined;
}

/** The one page, at every address that names no file. */
export async function answerPage(version: Version, path: string, world: World): Promise<Response | undefined> {
  return await answerFile(version, version.files.has(path) ? path : SHELL, world);
}
