// Which presses are one act: by what they say, while it is written, a second after, and after a failure.

import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { newId } from '#journal/new-id.ts';
import { createPresses, SAME_PRESS_MS, SAME_TRY_MS, type Try } from './presses.ts';

let count = 0;
/** A venting as one press would make it: an id of its own every time. */
function vent(found: string, more: Partial<Entry> = {}): Entry {
  count++;
  const id = newId({ nowMs: 1_780_000_000_000 + count, random: new Uint8Array(10).fill(count % 250) });
  const at = new Date(1_780_000_000_000 + count).toISOString();
  const around = { plot: 'p', by: 'me', device: 'd', kind: 'bottle.vented' as const, v: 1 };
  return { ...around, id, at, on: `2026-06-03T18:${String(count % 60).padStart(2, '0')}`, body: { found }, ...more };
}

/** A store that fails when told to, keeps what it is given, and can be made to take its time. */
function bench(tries: readonly Try[] = []) {
  const kept: Entry[] = [];
  const clock = { aliveMs: 5000, typedMs: 0, nowMs: Date.parse('2026-06-03T16:00:00.000Z') };
  let held = tries;
  const presses = createPresses({
    aliveMs: () => clock.aliveMs,
    nowMs: () => clock.nowMs,
    typedMs: () => clock.typedMs,
    tries: { read: () => held, keep: (now) => (held = now) },
  });
  const append = async (entries: readonly Entry[]) => {
    for (const one of entries) if (!kept.some(({ id }) => id === one.id)) kept.push(one);
  };
  const fail = async () => {
    throw new Error('full');
  };
  return { kept, clock, presses, append, fail, tries: () => held };
}

describe('two presses of one act', () => {
  it('while the first is being written write one entry, and both are acknowledged with it', async () => {
    const { kept, presses, append } = bench();
    let open: () => void = () => {};
    const slow = async (entries: readonly Entry[]) => {
      await new Promise<void>((resolve) => (open = resolve));
      await append(entries);
    };
    const both = [presses.press([vent('hiss')], slow), presses.press([vent('hiss')], slow)];
    open();
    const [first, second] = await Promise.all(both);
    expect(kept).toHaveLength(1);
    expect(second).toEqual(first);
  });

  it('within a second of its being written write one entry; a second later it is another act', async () => {
    const { kept, clock, presses, append } = bench();
    await presses.press([vent('hiss')], append);
    clock.aliveMs += SAME_PRESS_MS - 1;
    await presses.press([vent('hiss')], append);
    expect(kept).toHaveLength(1);
    clock.aliveMs += 1;
    await presses.press([vent('hiss')], append);
    expect(kept).toHaveLength(2);
  });

  it('with something typed between them are two acts', async () => {
    const { kept, clock, presses, append } = bench();
    await presses.press([vent('hiss')], append);
    clock.typedMs = clock.aliveMs += 1;
    await presses.press([vent('hiss')], append);
    expect(kept).toHaveLength(2);
  });

  it('that say different things are two acts, however quickly they come', async () => {
    const { kept, presses, append } = bench();
    await Promise.all(['hiss', 'froth'].map((found) => presses.press([vent(found)], append)));
    expect(kept).toHaveLength(2);
  });

  it('after a failure keep the id of the first press', async () => {
    const { kept, presses, append, fail } = bench();
    const first = vent('hiss');
    await expect(presses.press([first], fail)).rejects.toThrow('full');
    await presses.press([vent('hiss')], append);
    expect(kept).toEqual([first]);
  });

  it('of which the first was kept although it failed write nothing more', async () => {
    const { kept, presses, append, fail } = bench();
    const lost = async (entries: readonly Entry[]) => {
      await append(entries);
      await fail();
    };
    await expect(presses.press([vent('hiss')], lost)).rejects.toThrow();
    await presses.press([vent('hiss')], append);
    expect(kept).toHaveLength(1);
  });

  it('long after a failure are two acts', async () => {
    const { clock, presses, append, fail } = bench();
    const first = vent('hiss');
    await expect(presses.press([first], fail)).rejects.toThrow();
    clock.aliveMs += SAME_TRY_MS;
    const [entry] = await presses.press([vent('hiss')], append);
    expect(entry?.id).not.toBe(first.id);
  });

  it('with two acts each, of which one names the other by its id, write two entries', async () => {
    const { kept, presses, append } = bench();
    const two = () => {
      const first = vent('hiss');
      return [first, vent('froth', { body: { of: first.id } })];
    };
    await Promise.all([presses.press(two(), append), presses.press(two(), append)]);
    expect(kept).toHaveLength(2);
  });

  it('of which one corrects for another day are two corrections', async () => {
    const { kept, presses, append } = bench();
    const replaces = vent('hiss').id;
    for (const on of ['2026-06-01', '2026-06-02']) await presses.press([vent('hiss', { replaces, on })], append);
    expect(kept).toHaveLength(2);
  });
});

describe('a press that the page did not live to acknowledge', () => {
  it('is written under its first id when it is pressed again after the reload', async () => {
    const first = bench();
    const made = vent('hiss');
    void first.presses.press([made], () => new Promise(() => {}));
    const second = bench(first.tries());
    await second.presses.press([vent('hiss')], second.append);
    expect(second.kept).toEqual([made]);
    expect(second.tries()).toEqual([]);
  });

  it('is forgotten after a while, and where the clock was set back', async () => {
    for (const step of [SAME_TRY_MS, -60_000]) {
      const first = bench();
      const made = vent('hiss');
      void first.presses.press([made], () => new Promise(() => {}));
      const told = first
        .tries()
        .map((one) => ({ ...one, pressedAt: new Date(Date.parse(one.pressedAt) - step).toISOString() }));
      const second = bench(told);
      await second.presses.press([vent('hiss')], second.append);
      expect(second.kept).toHaveLength(1);
      expect(second.kept).not.toEqual([made]);
    }
  });
});
