// Facts of the device over storages that refuse, are full, or are not there.

import { afterEach, describe, expect, it, vi } from 'vitest';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

/** A storage in memory that takes at most so many letters in one fact. */
function storage(room = Number.POSITIVE_INFINITY): Storage {
  const facts: Record<string, string> = {};
  const methods = {
    getItem: (name: string) => facts[name] ?? null,
    setItem(name: string, text: string) {
      if (text.length > room) throw new DOMException('no room', 'QuotaExceededError');
      facts[name] = text;
    },
    removeItem: (name: string) => Reflect.deleteProperty(facts, name),
  };
  return new Proxy(facts, { get: (_, name) => Reflect.get(methods, name) }) as unknown as Storage;
}

function refused() {
  Object.defineProperty(globalThis, 'localStorage', {
    configurable: true,
    get() {
      throw new DOMException('denied', 'SecurityError');
    },
  });
}

async function over(given: Storage | null | undefined) {
  vi.stubGlobal('localStorage', given);
  return await import('./device.ts');
}

describe('facts of the device', () => {
  it('are kept by the browser, and say so', async () => {
    const given = storage();
    const { lasting, factsKept } = await over(given);
    lasting.write('a', 'one');
    expect([given.getItem('a'), lasting.read('a'), factsKept()]).toEqual(['one', 'one', true]);
    lasting.remove('a');
    expect(lasting.read('a')).toBeUndefined();
  });

  it.each([
    ['null', null],
    ['not there', undefined],
  ])('hold while the page is open where the storage is %s', async (_, given) => {
    const { lasting, factsKept } = await over(given);
    expect(lasting.read('a')).toBeUndefined();
    lasting.write('a', 'one');
    expect([lasting.read('a'), factsKept()]).toEqual(['one', false]);
    lasting.remove('a');
    expect(lasting.read('a')).toBeUndefined();
  });

  it('hold while the page is open where asking for the storage throws', async () => {
    const { lasting, factsKept } = await over(undefined);
    refused();
    lasting.write('mine.a', 'one');
    lasting.write('other', 'two');
    expect([lasting.read('mine.a'), factsKept()]).toEqual(['one', false]);
    lasting.clear('mine.');
    expect([lasting.read('mine.a'), lasting.read('other')]).toEqual([undefined, 'two']);
  });

  it('give the newest text where a full storage still has an older one, and removing removes both', async () => {
    const { lasting } = await over(storage(3));
    lasting.write('a', 'one');
    lasting.write('a', 'a longer one');
    expect(lasting.read('a')).toBe('a longer one');
    lasting.remove('a');
    expect(lasting.read('a')).toBeUndefined();
  });

  it('are cleared by the beginning of their names alone', async () => {
    const { lasting } = await over(storage());
    lasting.write('mine.a', 'one');
    lasting.write('mine.b', 'two');
    lasting.write('other', 'three');
    lasting.clear('mine.');
    expect(['mine.a', 'mine.b', 'other'].map(lasting.read)).toEqual([undefined, undefined, 'three']);
  });
});
