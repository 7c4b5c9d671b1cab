// Random histories of a store with two places: appends, forgettings, facts and photos; writes and openings that fail; deaths
// in mid-work; logs that lose their end. Beside each runs a ledger of its own, which knows from the lengths of the logs alone
// what must be there at an opening and what must not.

import fc from 'fast-check';
import type { Entry } from '#journal/entry.ts';
import { openStore, STORE_VERSION } from '#store/browser.ts';
import type { Witness } from '#store/places.ts';
import type { Store } from '#store/store.ts';
import { type Recorder, recorder } from '../scenarios/recorder.ts';
import { LoggedPlace } from './logged-place.ts';

const PLOTS = ['p', 'q'] as const;
const PHOTO_BYTES = 3;

type Which = 'first' | 'second';
type Act =
  | { readonly act: 'append'; readonly plot: 0 | 1; readonly count: number }
  | { readonly act: 'again'; readonly of: number; readonly count: number }
  | { readonly act: 'photo'; readonly plot: 0 | 1 }
  | { readonly act: 'file'; readonly plot: 0 | 1; readonly count: number }
  | { readonly act: 'fact' }
  | { readonly act: 'forget'; readonly plot: 0 | 1 | undefined };
export type Step =
  | Act
  | { readonly act: 'refuse'; readonly place: Which; readonly after: number; readonly count: number }
  | { readonly act: 'reopen'; readonly fails?: Which; readonly times?: number }
  | { readonly act: 'lose'; readonly place: Which; readonly count: number; readonly fails?: Which | undefined }
  | { readonly act: 'die'; readonly firstAfter: number; readonly secondAfter: number; readonly during: Act };

const which = fc.constantFrom<Which>('first', 'second');
const plot = fc.constantFrom<0 | 1>(0, 1);
const act: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({ act: fc.constant('append' as const), plot, count: fc.integer({ min: 1, max: 3 }) }),
  },
  {
    weight: 3,
    arbitrary: fc.record({ act: fc.constant('again' as const), of: fc.nat(20), count: fc.integer({ min: 1, max: 4 }) }),
  },
  { weight: 1, arbitrary: fc.record({ act: fc.constant('photo' as const), plot }) },
  {
    weight: 1,
    arbitrary: fc.record({ act: fc.constant('file' as const), plot, count: fc.integer({ min: 1, max: 3 }) }),
  },
  { weight: 1, arbitrary: fc.record({ act: fc.constant('fact' as const) }) },
  {
    weight: 2,
    arbitrary: fc.record({
      act: fc.constant('forget' as const),
      plot: fc.constantFrom<0 | 1 | undefined>(0, 1, undefined),
    }),
  },
);
const fails = fc.option(which, { nil: undefined, freq: 1 });
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 10, arbitrary: act as fc.Arbitrary<Step> },
  {
    weight: 1,
    arbitrary: fc.record({
      ...{ act: fc.constant('refuse' as const), place: which },
      ...{ after: fc.nat(3), count: fc.integer({ min: 1, max: 3 }) },
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ act: fc.constant('reopen' as const), fails: which, times: fc.constantFrom(1, 2) }),
  },
  { weight: 1, arbitrary: fc.constant<Step>({ act: 'reopen' }) },
  {
    weight: 3,
    arbitrary: fc.record({
      ...{ act: fc.constant('lose' as const), place: which, fails },
      count: fc.oneof(fc.integer({ min: 1, max: 8 }), fc.constant(Number.POSITIVE_INFINITY)),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      act: fc.constant('die' as const),
      firstAfter: fc.nat(3),
      secondAfter: fc.nat(3),
      during: act,
    }),
  },
);

/** A history. */
export const history: fc.Arbitrary<readonly Step[]> = fc.array(step, { minLength: 4, maxLength: 24 });

/** What one history came to. */
export interface Told {
  openings: number;
  acknowledged: number;
  forgettings: number;
  losses: number;
  refusals: number;
}

/** One entry or photo, and what is known of it: that it is kept, or forgotten, down to which length of which log. */
interface Item {
  readonly plot: string | undefined;
  readonly entry: Entry | undefined;
  is: 'kept' | 'gone' | 'unsure';
  readonly since: Map<Which, number>;
}

/**
 * Runs a history to its end.
 * @throws Error where anything acknowledged and not forgotten is missing, or anything forgotten is back
 */
export async function live(steps: readonly Step[]): Promise<Told> {
  const run = new Run();
  try {
    await run.reopen();
    for (const one of steps) await run.take(one);
    await run.end();
    return run.told;
  } finally {
    run.letGo();
  }
}

class Run {
  readonly told: Told = { openings: 0, acknowledged: 0, forgettings: 0, losses: 0, refusals: 0 };
  readonly #places = { first: new LoggedPlace(), second: new LoggedPlace() };
  readonly #items = new Map<string, Item>();
  readonly #hands = PLOTS.map((id, i) => recorder({ plot: id, seed: i + 1 }));
  #facts = 0;
  #fact: { readonly value: number | undefined } | undefined;
  #witnessed = false;
  #store: Store | undefined;
  readonly #witness: Witness = {
    saw: () => this.#witnessed,
    note: () => {
      this.#witnessed = true;
    },
  };

  async take(one: Step): Promise<void> {
    if (one.act === 'refuse' || one.act === 'die') this.#fact = undefined;
    if (one.act === 'refuse') this.#places[one.place].failWrites = { after: one.after, count: one.count };
    else if (one.act === 'reopen') await this.reopen(one.fails, one.times);
    else if (one.act === 'lose') await this.#lose(one);
    else if (one.act === 'die') {
      this.#places.first.failWrites = { after: one.firstAfter, count: Number.POSITIVE_INFINITY };
      this.#places.second.failWrites = { after: one.secondAfter, count: Number.POSITIVE_INFINITY };
      await this.#do(one.during);
      this.#fact = undefined;
      await this.reopen();
    } else await this.#do(one);
  }

  /** Both places hold the same: the first is lost whole, and all comes back out of the second. */
  async end(): Promise<void> {
    await this.reopen();
    if (this.#opened.places() !== 2) throw new Error('two places that fail no more are not both kept');
    const before = [...(await this.#visible())].sort();
    await this.#lose({ place: 'first', count: Number.POSITIVE_INFINITY });
    const after = [...(await this.#visible())].sort();
    if (before.join() !== after.join())
      throw new Error(`the second place holds ${after.length}, the first ${before.length}`);
  }

  letGo(): void {
    this.#store?.close();
    for (const place of Object.values(this.#places)) place.letGo();
  }

  /** Opens anew until it opens; what had failed fails no more once it did so often enough. */
  async reopen(failing?: Which, times = 1): Promise<void> {
    this.letGo();
    const { first, second } = this.#places;
    for (const place of [first, second]) place.failWrites = undefined;
    if (failing !== undefined) this.#places[failing].failOpenings = times;
    for (let tries = 0; ; tries++) {
      const opened = await openStore(() => ({
        ...{ name: 'history', version: STORE_VERSION, first: first.factory, witness: this.#witness },
        second: { open: async () => second.factory, drop: () => second.lose(Number.POSITIVE_INFINITY) },
      }));
      if (opened.ok) {
        this.#store = opened.store;
        break;
      }
      if (tries > 3) throw new Error(`it does not open: ${opened.why} ${String(opened.cause)}`);
    }
    for (const place of [first, second]) place.failOpenings = 0;
    this.told.openings++;
    await this.#check();
  }

  get #opened(): Store {
    if (this.#store === undefined) throw new Error('nothing is open');
    return this.#store;
  }

  async #visible(): Promise<ReadonlySet<string>> {
    const [entries, photos] = [await this.#opened.all(), await this.#opened.photoIds()];
    return new Set([...entries.map(({ id }) => id), ...photos]);
  }

  async #check(): Promise<void> {
    const there = await this.#visible();
    const both = this.#opened.places() === 2;
    const fact = await this.#opened.getFact('draft');
    if (this.#fact !== undefined && this.#fact.value !== fact)
      throw new Error(`a fact is ${fact}, not ${this.#fact.value}`);
    for (const [id, item] of this.#items) {
      const known = both ? item.since.size > 0 : item.since.has('first');
      if (known && item.is === 'kept' && !there.has(id)) throw new Error(`${id} was acknowledged and is missing`);
      if (known && item.is === 'gone' && there.has(id)) throw new Error(`${id} was forgotten and is back`);
      if (!both) continue;
      if (item.is === 'unsure' && there.has(id)) item.is = 'kept';
      if (item.is !== 'unsure') this.#mark(item, item.is);
    }
    for (const id of there) if (!this.#items.has(id)) throw new Error(`${id} was never kept`);
  }

  /** From here on it stands so in every place that takes what is written. */
  #mark(item: Item, is: Item['is']): void {
    item.is = is;
    item.since.clear();
    if (is === 'unsure') return;
    item.since.set('first', this.#places.first.writes);
    if (this.#opened.places() === 2) item.since.set('second', this.#places.second.writes);
  }

  async #lose({
    place,
    count,
    fails: failing,
  }: {
    place: Which;
    count: number;
    fails?: Which | undefined;
  }): Promise<void> {
    this.letGo();
    await this.#places[place].lose(count);
    this.told.losses++;
    this.#fact = undefined;
    for (const item of this.#items.values()) {
      if ((item.since.get(place) ?? 0) > this.#places[place].writes) item.since.delete(place);
      if (item.since.size === 0) item.is = 'unsure';
    }
    await this.reopen(failing);
  }

  async #do(one: Act): Promise<void> {
    if (one.act === 'append') await this.#append(this.#fresh(one.plot, one.count));
    else if (one.act === 'again') {
      const known = [...this.#items.values()].flatMap(({ entry }) => entry ?? []);
      await this.#append(known.slice(one.of % Math.max(1, known.length)).slice(0, one.count));
    } else if (one.act === 'photo') await this.#photo(one.plot);
    else if (one.act === 'file') await this.#file(one.plot, one.count);
    else if (one.act === 'fact') await this.#setFact();
    else await this.#forget(one.plot === undefined ? undefined : PLOTS[one.plot]);
  }

  #fresh(of: 0 | 1, count: number): readonly Entry[] {
    const hand = this.#hands[of] as Recorder;
    return Array.from({ length: count }, (_, i) =>
      hand.did('scraps.weighed', '2026-06-01', { name: `lot ${i}`, mass: { typed: '1 kg', massKg: 1 } }),
    );
  }

  /** Facts are small and of this device: they are held to what was told only while nothing was lost or refused since. */
  async #setFact(): Promise<void> {
    const value = ++this.#facts;
    await this.#opened.setFact('draft', value).then(
      () => {
        this.#fact = { value };
      },
      () => {
        this.#fact = undefined;
        this.told.refusals++;
      },
    );
  }

  async #append(entries: readonly Entry[]): Promise<void> {
    const before = await this.#visible();
    // The same entry again is nothing new: what is known of it stays.
    const fresh = entries.filter(({ id }) => !before.has(id));
    await this.#acknowledged(
      this.#opened.append(entries),
      fresh.map((entry) => [entry.id, { plot: entry.plot, entry }]),
    );
  }

  async #photo(of: 0 | 1): Promise<void> {
    const [told] = this.#fresh(of, 1) as [Entry];
    const photo = { id: told.id, type: 'image/png' as const, bytes: new Uint8Array(PHOTO_BYTES) };
    await this.#acknowledged(this.#opened.putPhoto(photo), [[photo.id, { plot: undefined, entry: undefined }]]);
  }

  /** A file with a photo, taken in as one act; where it fails what is left of it is dropped, or swept at the next opening. */
  async #file(of: 0 | 1, count: number): Promise<void> {
    const entries = this.#fresh(of, count);
    const [told] = this.#fresh(of, 1) as [Entry];
    const work = async () => {
      const taking = await this.#opened.takeIn();
      try {
        await taking.putPhoto({ id: told.id, type: 'image/png', bytes: new Uint8Array(PHOTO_BYTES) });
        await taking.keep(entries);
      } catch (cause) {
        await taking.drop().catch(() => undefined);
        throw cause;
      }
    };
    const items = entries.map((entry) => [entry.id, { plot: entry.plot, entry }] as const);
    await this.#acknowledged(work(), [...items, [told.id, { plot: undefined, entry: undefined }]]);
  }

  async #acknowledged(
    work: Promise<void>,
    items: readonly (readonly [string, Pick<Item, 'plot' | 'entry'>])[],
  ): Promise<void> {
    const done = await work.then(
      () => true,
      () => false,
    );
    if (!done) this.told.refusals++;
    for (const [id, given] of items) {
      const item = this.#items.get(id) ?? { ...given, is: 'unsure', since: new Map() };
      this.#items.set(id, item);
      this.#mark(item, done ? 'kept' : 'unsure');
      if (done) this.told.acknowledged++;
    }
  }

  async #forget(of: string | undefined): Promise<void> {
    const before = await this.#visible();
    const done = await this.#opened.forget(of).then(
      () => true,
      () => false,
    );
    if (done) this.told.forgettings++;
    else this.told.refusals++;
    if (of === undefined) this.#fact = done ? { value: undefined } : undefined;
    for (const [id, item] of this.#items) {
      if (of !== undefined && item.plot !== of) continue;
      if (!done) this.#mark(item, 'unsure');
      // Forgotten at an earlier time: what is known of that stays.
      else if (item.is !== 'gone' || before.has(id)) {
        this.#mark(item, 'gone');
        // Both have it written down, even where the second takes nothing more for now; a second that was removed has not.
        if (this.#places.second.writes > 0) item.since.set('second', this.#places.second.writes);
      }
    }
  }
}
