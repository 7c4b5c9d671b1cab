// The record as the screens use it: entries from the store, the plot folded from them, and acts that are
// acknowledged only when they are durable. Nothing here decides; the journal gives the meaning.

import { createMemo, createRoot, createSignal } from 'solid-js';
import { emptyPlot } from '#journal/empty-plot.ts';
import type { Entry, Kept } from '#journal/entry.ts';
import type { fold, Plot } from '#journal/fold.ts';
import { type Body, type Kind, kinds } from '#journal/kinds/index.ts';
import { newId } from '#journal/new-id.ts';
import type { Store } from '#store/store.ts';
import { deviceZone, localAt } from './clock.ts';
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
  const now = () => localAt(Math.max(tick(), 0), zone());
  const nowExactly = () => localAt(clock.nowMs(), zone());

  /** The fold and its tables, fetched once. */
  async function readyToFold(): Promise<void> {
    if (folding() !== undefined) return;
    const fetched = await import('#journal/fold.ts');
    setFolding(() => fetched.fold);
  }
  readyToFold().catch(() => undefined);

  async function append(fresh: readonly Kept[]): Promise<void> {
    await store.append(fresh);
    await readyToFold();
    const known = new Set(entries().map((kept) => kept.id));
    setEntries([...entries(), ...fresh.filter((kept) => !known.has(kept.id))]);
    setTick(clock.nowMs());
  }

  function entryOf<K extends Kind>(kind: K, body: Body<K> | Readonly<{ [key: string]: never }>, also: Also): Entry {
    return {
      id: freshId(),
      plot: plotId(),
      by: keyholder(),
      device,
      at: new Date(clock.nowMs()).toISOString(),
      on: also.on ?? nowExactly(),
      kind,
      v: kinds[kind].v,
      body,
      ...(also.replaces === undefined ? {} : { replaces: also.replaces }),
    };
  }

  return {
    plot,
    entries,
    plotId,
    device,
    isDemo: given.isDemo,
    keyholder,
    store,
    now,
    today: () => now().slice(0, 10),
    setKeyholder(tag: string) {
      localStorage.setItem(KEYHOLDER, tag);
      setKeyholder(tag);
    },
    /** Writes an act down; resolves with its entry only when it is durable. */
    async act<K extends Kind>(kind: K, body: Body<K>, also: Also = {}): Promise<Entry> {
      const entry = entryOf(kind, body, also);
      await append([entry]);
      return entry;
    },
    /** Several acts that stand or fall together. */
    async acts(list: readonly { kind: Kind; body: Body<Kind>; on?: string }[]): Promise<readonly Entry[]> {
      const fresh = list.map(({ kind, body, on }) => entryOf(kind, body, on === undefined ? {} : { on }));
      await append(fresh);
      return fresh;
    },
    /** Entries from a file or another tab. */
    async take(fresh: readonly Kept[]): Promise<void> {
      await append(fresh);
    },
    /** Entries another tab has already made durable. */
    hear(fresh: readonly Kept[]) {
      const known = new Set(entries().map((kept) => kept.id));
      const unheard = fresh.filter((kept) => !known.has(kept.id));
      if (unheard.length === 0) return;
      readyToFold()
        .then(() =>
          setEntries([...entries(), ...unheard.filter((kept) => !entries().some((one) => one.id === kept.id))]),
        )
        .catch(() => undefined);
    },
    /** Takes an act back: an entry that withdraws it; the first entry stays readable. */
    async takeBack(entry: Entry): Promise<void> {
      await append([entryOf(entry.kind, {}, { on: entry.on, replaces: entry.id })]);
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

export interface Also {
  readonly on?: string;
  readonly replaces?: string;
}

function readKeyholder(): string {
  return localStorage.getItem(KEYHOLDER) ?? 'me';
}
