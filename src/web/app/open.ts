// Opens the record a device shows: its own, in the browser's database, or the demo garden in memory.

import { openBrowserStore } from '#store/browser.ts';
import { type Store, StoreFailure } from '#store/store.ts';
import { createRecord, freshId, plotIn, type Record } from './record.ts';
import { keptTries } from './tries.ts';
import { hearFailure, NotOpened, part } from './trouble.ts';

/**
 * The own record of this device; the first opening gives the device and its plot their ids.
 * @throws NotOpened
 */
export async function openOwn(): Promise<Record> {
  // Fetched while the store is read; an empty record does not wait for it.
  const making = part(() => import('./plot-made.ts'));
  making.catch(() => undefined);
  const store = await openStore();
  try {
    return await recordIn(store, making);
  } catch (cause) {
    throw new NotOpened(cause, store);
  }
}

async function openStore(): Promise<Store> {
  const opened = await openBrowserStore().catch((cause: unknown) => {
    throw new NotOpened(cause);
  });
  if (opened.ok) return opened.store;
  throw new NotOpened(new StoreFailure(opened.why, `the store does not open: ${opened.why}`, { cause: opened.cause }));
}

async function recordIn(store: Store, making: Promise<typeof import('./plot-made.ts')>): Promise<Record> {
  const device = await made(store, 'device');
  const plotId = await made(store, 'plot');
  const { entries, cursor: read } = await store.since(0);
  let cursor = read;
  const maker = entries.length > 0 ? (await making).plotMaker() : undefined;
  // Where it fails, so does the fold, and the record says so.
  await maker?.ahead(entries, plotIn(entries, plotId)).catch(() => undefined);
  const clock = { nowMs: () => Date.now(), aliveMs: () => performance.now() };
  const record = createRecord({
    store,
    entries,
    plotId,
    device,
    isDemo: false,
    clock,
    maker,
    readOn: () => readOn(),
    tries: keptTries,
  });
  let reading = Promise.resolve();
  /** One after the other, so that nothing is read twice. */
  const readOn = () => {
    const next = reading.then(async () => {
      const since = await store.since(cursor);
      await record.hear(since.entries);
      cursor = since.cursor;
    });
    reading = next.catch(() => undefined);
    return next;
  };
  // Another tab, or this one: whatever is durable and not yet shown.
  store.watch(() => void readOn().catch(hearFailure));
  // Asks the browser not to wipe the record when room gets short; the record's sheet shows the answer.
  if (navigator.storage?.persist) navigator.storage.persist().catch(() => undefined);
  return record;
}

/** A small fact of this device, made once. */
async function made(store: Store, name: string): Promise<string> {
  const known = await store.getFact(name);
  if (typeof known === 'string') return known;
  const fresh = freshId();
  await store.setFact(name, fresh);
  return fresh;
}

/** The demo garden as it stood at noon of a day; acts made in it are forgotten with it. */
export async function openDemo(day: string): Promise<Record> {
  const [{ plotMaker }, { memoryStore }, { DEMO_PLOT, gardenEntries }] = await Promise.all([
    import('./plot-made.ts'),
    import('#store/memory.ts'),
    import('#tasks/demo/garden.ts'),
  ]);
  const store = memoryStore();
  const entries = gardenEntries(day);
  await store.append(entries);
  const opened = performance.now();
  const noon = Date.parse(`${day}T11:00:00Z`);
  const aliveMs = () => performance.now();
  const clock = { nowMs: () => Math.round(noon + (aliveMs() - opened)), aliveMs };
  return createRecord({
    store,
    entries,
    plotId: DEMO_PLOT,
    device: 'demo-phone',
    isDemo: true,
    clock,
    maker: plotMaker(),
  });
}
