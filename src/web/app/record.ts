// The record as the screens use it: entries from the store, the plot folded from them, and acts that are
// acknowledged only when they are durable. Nothing here decides; the journal gives the meaning.

import { batch, createMemo, createRoot, createSignal } from 'solid-js';
import { emptyPlot } from '#journal/empty-plot.ts';
import type { Entry, Kept } from '#journal/entry.ts';
import type { fold, Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { newId } from '#journal/new-id.ts';
import { correct, type Stamp, type Written, withdraw, write } from '#journal/write.ts';
import { type Store, StoreFailure } from '#store/store.ts';
import { deviceZone, localAt } from './clock.ts';
import { lasting } from './device.ts';
import { KEYHOLDER } from './places.ts';

/** Undo from where an act was made lasts this long; a correction from the record lasts for ever. */
export const UNDO_MINUTES = 10;

/** Where the record's time comes from: the device's clock, or the demo garden's own day. */
export interface Clock {
  readonly nowMs: () => number;
}

export interface Recent {
  readonly entry: Entry;
  readonly minutesLeft: number;
}

export type Record = ReturnType<typeof createRecord>;

interface Given {
  readonly store: Store;
  readonly entries: readonly Kept[];
  readonly plotId: string;
  readonly device: string;
  readonly isDemo: boolean;
  readonly clock: Clock;
  /** Absent while the record is empty: fetched before its first entry is shown. */
  readonly fold: Fold | undefined;
}

/** One of several acts. */
export interface ActAsked {
  readonly kind: Kind;
  readonly body: Body<Kind> | ((before: readonly Entry[]) => Body<Kind>);
  readonly on?: string;
}

type Fold = typeof fold;

/** A new id of this device. */
export function freshId(): string {
  return newId({ nowMs: Date.now(), random: crypto.getRandomValues(new Uint8Array(16)) });
}

/** The record of one plot on this device, with its memos in a root of their own; `close` ends them. */
export function createRecord(given: Given) {
  return createRoot((dispose) => recordOf(given, dispose));
}

function recordOf(given: Given, dispose: () => void) {
  const { store, device, clock } = given;
  const [entries, setEntries] = createSignal<readonly Kept[]>(given.entries);
  // A phone that has written nothing of its own takes over the plot of the file it reads.
  const plotId = createMemo(() => {
    const kept = entries();
    return kept.length === 0 || kept.some(({ plot }) => plot === given.plotId)
      ? given.plotId
      : (kept[0]?.plot ?? given.plotId);
  });
  const [folding, setFolding] = createSignal<Fold | undefined>(given.fold);
  const plot = createMemo<Plot>(() => folding()?.(entries(), plotId()) ?? emptyPlot(plotId()));
  const [keyholder, setKeyholder] = createSignal(readKeyholder());
  const [tick, setTick] = createSignal(clock.nowMs());
  const timer = setInterval(() => setTick(clock.nowMs()), 20_000);

  const zone = () => plot().facts.timeZone ?? deviceZone();
  // Kept: asking the calendar costs more than drawing, and whoever asks is only told anew when the minute changes.
  const now = createMemo(() => localAt(Math.max(tick(), 0), zone()));
  const today = createMemo(() => now().slice(0, 10));
  const nowExactly = () => localAt(clock.nowMs(), zone());

  /** The fold and its tables, fetched once. */
  async function readyToFold(): Promise<void> {
    if (folding() !== undefined) return;
    const fetched = await import('#journal/fold.ts');
    setFolding(() => fetched.fold);
  }
  readyToFold().catch(() => undefined);

  async function append(fresh: readonly Kept[], kept?: () => void): Promise<void> {
    await store.append(fresh);
    await readyToFold();
    show(fresh, kept);
  }

  /** Durable entries that are not shown yet, all in one drawing. */
  function show(fresh: readonly Kept[], also?: () => void) {
    const known = new Set(entries().map(({ id }) => id));
    const unseen = fresh.filter(({ id }) => !known.has(id));
    batch(() => {
      if (unseen.length > 0) setEntries([...entries(), ...unseen]);
      setTick(clock.nowMs());
      also?.();
    });
  }

  const stamp = (): Stamp => ({
    plot: plotId(),
    by: keyholder(),
    device,
    nowMs: clock.nowMs(),
    random: crypto.getRandomValues(new Uint8Array(10)),
  });

  return {
    plot,
    entries,
    plotId,
    device,
    isDemo: given.isDemo,
    keyholder,
    store,
    now,
    today,
    setKeyholder(tag: string) {
      lasting.write(KEYHOLDER, tag);
      setKeyholder(tag);
    },
    /**
     * Writes an act down; resolves with its entry only when it is durable.
     * @param kept called then, in one drawing with the plot as the act has made it
     */
    async act<K extends Kind>(kind: K, body: Body<K>, kept?: (entry: Entry) => void): Promise<Entry> {
      const entry = entryFrom(write({ kind, on: nowExactly(), body }, stamp()));
      await append([entry], () => kept?.(entry));
      return entry;
    },
    /** Tells an act anew; the first entry stays readable. */
    async correct(entry: Entry, told: { readonly on: string; readonly body: Body<Kind> }): Promise<void> {
      await append([entryFrom(correct(entry, told, stamp()))]);
    },
    /** Several acts that stand or fall together; a body may be made of the acts before it, to name one by its id. */
    async acts(list: readonly ActAsked[]): Promise<readonly Entry[]> {
      const fresh: Entry[] = [];
      for (const { kind, body, on } of list) {
        const told = typeof body === 'function' ? body(fresh) : body;
        fresh.push(entryFrom(write({ kind, on: on ?? nowExactly(), body: told }, stamp())));
      }
      await append(fresh);
      return fresh;
    },
    /** Entries that are durable already: another tab kept them, or they came with a file. */
    hear(fresh: readonly Kept[]) {
      readyToFold()
        .then(() => show(fresh))
        .catch(() => undefined);
    },
    /** Takes an act back: an entry that withdraws it; the first entry stays readable. */
    async takeBack(entry: Entry): Promise<void> {
      await append([entryFrom(withdraw(entry, stamp()))]);
    },
    /** Own acts of the last ten minutes that still stand, newest first. */
    recent(): readonly Recent[] {
      const withdrawn = new Set(entries().map((kept) => kept.replaces));
      const list: Recent[] = [];
      for (let i = entries().length - 1; i >= 0 && list.length < 20; i--) {
        const kept = entries()[i];
        if (kept === undefined || 'sealed' in kept || kept.device !== device) continue;
        const minutes = (tick() - Date.parse(kept.at)) / 60_000;
        if (minutes > UNDO_MINUTES) break;
        if (kept.replaces !== undefined || withdrawn.has(kept.id)) continue;
        list.push({ entry: kept, minutesLeft: Math.max(1, Math.ceil(UNDO_MINUTES - minutes)) });
      }
      return list;
    },
    close() {
      clearInterval(timer);
      dispose();
    },
  };
}

/** What was written, or a refusal: nothing is kept that could not be read again. */
function entryFrom(written: Written): Entry {
  if (written.ok) return written.entry;
  const fields = written.problems.map(({ field, message }) => `${field} ${message}`);
  throw new StoreFailure('unreadable', `the act could not be read again: ${fields.join('; ')}`);
}

function readKeyholder(): string {
  return lasting.read(KEYHOLDER) ?? 'me';
}
