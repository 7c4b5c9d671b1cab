// The record as the screens use it: entries from the store, the plot folded from them, and acts that are
// acknowledged only when they are durable. Nothing here decides; the journal gives the meaning.

import { batch, createMemo, createRoot, createSignal } from 'solid-js';
import { emptyPlot } from '#journal/empty-plot.ts';
import type { Entry, Kept } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body, Kind } from '#journal/kinds/index.ts';
import { newId } from '#journal/new-id.ts';
import { correct, type Stamp, type Written, withdraw, write } from '#journal/write.ts';
import { type Store, StoreFailure } from '#store/store.ts';
import { lastTypedMs, onePress } from '../parts/one-press.ts';
import { deviceZone, localAt } from './clock.ts';
import { lasting } from './device.ts';
import { KEYHOLDER } from './places.ts';
import type { PlotMaker } from './plot-made.ts';
import { createPresses, type Tries } from './presses.ts';
import { type Recent, recentOf } from './recent.ts';

/** Where the record's time comes from: the device's clock, or the demo garden's own day. */
export interface Clock {
  readonly nowMs: () => number;
  /** Milliseconds that only ever count up while the page lives, however the clock is set. */
  readonly aliveMs: () => number;
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
  readonly maker: PlotMaker | undefined;
  /** Shows what the store keeps and the page does not show yet; absent where nobody else writes into it. */
  readonly readOn?: () => Promise<void>;
  /** Absent where nothing outlives the page. */
  readonly tries?: Tries;
}

/** Entries that are folded already, and how many of them were shown before. */
interface Ahead {
  readonly maker: PlotMaker;
  readonly entries: readonly Kept[];
  readonly countBefore: number;
}

/** One of several acts. */
export interface ActAsked {
  readonly kind: Kind;
  /** May be made of the acts before it, to name one by its id. */
  readonly body: Body<Kind> | ((before: readonly Entry[]) => Body<Kind>);
}

/** A new id of this device. */
export function freshId(): string {
  return newId({ nowMs: Date.now(), random: crypto.getRandomValues(new Uint8Array(16)) });
}

/** The plot a record shows: a phone that has written nothing of its own takes over the plot of the file it reads. */
export function plotIn(entries: readonly Kept[], own: string): string {
  const [first] = entries;
  return first === undefined || entries.some(({ plot }) => plot === own) ? own : first.plot;
}

/** The record of one plot on this device, with its memos in a root of their own; `close` ends them. */
export function createRecord(given: Given) {
  return createRoot((dispose) => recordOf(given, dispose));
}

function recordOf(given: Given, dispose: () => void) {
  const { store, device, clock } = given;
  const [entries, setEntries] = createSignal<readonly Kept[]>(given.entries);
  const plotId = createMemo(() => plotIn(entries(), given.plotId));
  // One fold until many entries come at once: it remembers what the next entry does not touch.
  const [maker, setMaker] = createSignal(given.maker);
  const [unshown, setUnshown] = createSignal(false);
  /** A plot that could not be made is that of before, and is said to be. */
  const orBefore = (make: () => Plot, before: Plot | undefined): Plot => {
    try {
      return make();
    } catch {
      queueMicrotask(() => setUnshown(true));
      return before ?? emptyPlot(plotId());
    }
  };
  const folded = createMemo<Plot>((before) => {
    const fold = maker()?.fold;
    return orBefore(() => fold?.(entries(), plotId()) ?? emptyPlot(plotId()), before);
  });
  const [keyholder, setKeyholder] = createSignal(readKeyholder());
  const [tick, setTick] = createSignal({ nowMs: clock.nowMs(), aliveMs: clock.aliveMs() });
  const move = () => setTick({ nowMs: clock.nowMs(), aliveMs: clock.aliveMs() });
  const timer = setInterval(move, 20_000);
  const presses = createPresses({ ...clock, typedMs: lastTypedMs, ...(given.tries && { tries: given.tries }) });
  /** When an act came to this page, by the time that only counts up. */
  const cameMs = new Map<string, number>();

  const zone = () => folded().facts.timeZone ?? deviceZone();
  // Kept: asking the calendar costs more than drawing, and whoever asks is only told anew when the minute changes.
  const now = createMemo(() => localAt(Math.max(tick().nowMs, 0), zone()));
  const today = createMemo(() => now().slice(0, 10));
  // What lies ahead of this phone's clock counts on the careful side; where nothing does, it is the folded plot itself.
  const plot = createMemo<Plot>((before) => {
    const [of, at] = [folded(), now()];
    return orBefore(() => maker()?.counted(of, at) ?? of, before);
  });
  const nowExactly = () => localAt(clock.nowMs(), zone());

  /** The fold and its tables, fetched once. */
  async function readyToFold(): Promise<void> {
    if (maker() !== undefined) return;
    const fetched = await import('./plot-made.ts');
    if (maker() === undefined) setMaker(() => fetched.plotMaker());
  }
  readyToFold().catch(() => undefined);

  /**
   * Keeps what a press makes. Once the store has it the act is written down, and this resolves: what then fails to be
   * shown is told apart (`unshown`).
   */
  async function press(made: readonly Entry[], kept?: (entries: readonly Entry[]) => void): Promise<readonly Entry[]> {
    const done = onePress();
    try {
      const entries = await presses.press(made, (fresh) => store.append(fresh));
      for (const { id } of entries) if (!cameMs.has(id)) cameMs.set(id, clock.aliveMs());
      showDurable(entries, () => kept?.(entries));
      done('kept');
      return entries;
    } catch (failure) {
      done('failed');
      throw failure;
    }
  }

  /** Shows what is durable; a screen that fails on it says so, and nothing else is lost by that. */
  function showDurable(fresh: readonly Kept[], also?: () => void, ahead?: Ahead) {
    let told = false;
    const tell = () => {
      told = true;
      also?.();
    };
    try {
      show(fresh, tell, ahead);
    } catch (cause) {
      console.error(cause);
      setUnshown(true);
      if (!told) also?.();
    }
    readyToFold().catch(() => setUnshown(true));
  }

  const shown = new Set(given.entries.map(({ id }) => id));
  /** Durable entries that are not shown yet, all in one drawing. */
  function show(fresh: readonly Kept[], also: () => void, ahead?: Ahead) {
    const unseen = fresh.filter(({ id }) => !shown.has(id));
    for (const { id } of unseen) shown.add(id);
    batch(() => {
      if (ahead !== undefined) {
        setMaker(ahead.maker);
        // What was pressed meanwhile goes behind: the fold ahead is of what stands before it.
        setEntries([...ahead.entries, ...entries().slice(ahead.countBefore)]);
      } else if (unseen.length > 0) setEntries([...entries(), ...unseen]);
      move();
      also();
    });
  }

  /** Many entries with those that are shown already, folded in turns between which the page answers; of few nothing. */
  async function foldedAhead(unseen: readonly Kept[]): Promise<Ahead | undefined> {
    const { areMany, plotMaker } = await import('./plot-made.ts');
    if (!areMany(unseen.length)) return undefined;
    const countBefore = entries().length;
    const all = [...entries(), ...unseen];
    const next = plotMaker();
    await next.ahead(all, plotIn(all, given.plotId));
    return { maker: next, entries: all, countBefore };
  }

  const stamp = (): Stamp => ({
    plot: plotId(),
    by: keyholder(),
    device,
    nowMs: clock.nowMs(),
    random: crypto.getRandomValues(new Uint8Array(10)),
  });
  const made = (list: readonly ActAsked[]): readonly Entry[] => {
    const fresh: Entry[] = [];
    for (const { kind, body } of list) {
      const told = typeof body === 'function' ? body(fresh) : body;
      fresh.push(entryFrom(write({ kind, on: nowExactly(), body: told }, stamp())));
    }
    return fresh;
  };

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
    /** Whether something that is written down could not be shown: the page is to be loaded again. */
    unshown,
    /** An instant as the plot's clock showed it. */
    localAt: (instant: string) => localAt(Date.parse(instant), zone()),
    setKeyholder(tag: string) {
      lasting.write(KEYHOLDER, tag);
      setKeyholder(tag);
    },
    /**
     * Writes an act down; resolves with its entry as soon as it is durable, whatever a screen makes of it. Pressed again
     * within a second, or after a failure, it is the same act.
     * @param kept called then, in one drawing with the plot as the act has made it
     */
    async act<K extends Kind>(kind: K, body: Body<K>, kept?: (entry: Entry) => void): Promise<Entry> {
      const [entry] = await press(made([{ kind, body }]), ([first]) => first && kept?.(first));
      return entry as Entry;
    },
    /** Tells an act anew; the first entry stays readable. */
    async correct(entry: Entry, told: { readonly on: string; readonly body: Body<Kind> }): Promise<void> {
      await press([entryFrom(correct(entry, told, stamp()))]);
    },
    /** Several acts that stand or fall together. */
    acts: async (list: readonly ActAsked[], kept?: () => void): Promise<readonly Entry[]> => press(made(list), kept),
    /** Entries that are durable already: another tab kept them, or they came with a file. */
    async hear(fresh: readonly Kept[]): Promise<void> {
      const unseen = fresh.filter(({ id }) => !shown.has(id));
      // Where folding ahead fails, so does the fold, and that is said.
      const ahead = await foldedAhead(unseen).catch(() => undefined);
      showDurable(unseen, undefined, ahead);
    },
    /** Shows what the store keeps by now; a page that cannot says so. */
    readOn: async (): Promise<void> => {
      try {
        await given.readOn?.();
      } catch (cause) {
        setUnshown(true);
        throw cause;
      }
    },
    /** Takes an act back: an entry that withdraws it; the first entry stays readable. */
    async takeBack(entry: Entry): Promise<void> {
      await press([entryFrom(withdraw(entry, stamp()))]);
    },
    /** Own acts of the last minutes that still stand, newest first. */
    recent: (): readonly Recent[] => recentOf({ entries: entries(), device, cameMs, ...tick() }),
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
