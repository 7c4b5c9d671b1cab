import { describe, expect, it } from 'vitest';
import { type StoreHarness, storeContract } from '../../test/contract/store-contract.ts';
import { failureOf } from './failure.ts';
import { memoryStore } from './memory.ts';
import { lineOfPhoto, photoOfLine } from './photos.ts';
import { StoreFailure } from './store.ts';

/** The memory store's disk is the copy it makes of each append: refusing that is its full disk. */
function harness(): StoreHarness {
  return {
    open: async () => memoryStore(),
    shared: false,
    failWrites: () => {
      const copy = globalThis.structuredClone;
      globalThis.structuredClone = () => {
        throw new StoreFailure('full', 'no room');
      };
      return () => {
        globalThis.structuredClone = copy;
      };
    },
  };
}

describe('the memory store', () => {
  it.each(storeContract.filter(({ needsShared }) => !needsShared))('$name', async ({ run }) => {
    await expect(run(harness())).resolves.toBeUndefined();
  });
});

describe('what a browser throws', () => {
  it.each([
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'refused'],
    ['VersionError', 'outdated'],
    ['InvalidStateError', 'closed'],
    ['UnknownError', 'broken'],
  ])('as %s is told as %s, with its cause', (name, why) => {
    const cause = new DOMException('x', name);
    expect(failureOf(cause)).toMatchObject({ name: 'StoreFailure', why, cause });
  });
  it('is told as it was where it has a name already, and as broken where it is nothing', () => {
    const failure = new StoreFailure('different', 'x');
    expect(failureOf(failure)).toBe(failure);
    expect(failureOf(undefined).why).toBe('broken');
  });
});

describe('a photo on a line', () => {
  // RFC 4648, section 10: "foobar" is Zm9vYmFy, "fo" is Zm8=.
  it.each([
    ['foobar', 'Zm9vYmFy'],
    ['fo', 'Zm8='],
    ['', ''],
  ])('is base64: %s', (text, base64) => {
    const bytes = new TextEncoder().encode(text);
    expect(lineOfPhoto({ id: 'p', type: 'image/png', bytes }).base64).toBe(base64);
  });
  it('comes back byte by byte, also a long one', () => {
    const bytes = Uint8Array.from({ length: 200_003 }, (_, i) => (i * 7) & 255);
    const back = photoOfLine(lineOfPhoto({ id: 'p', type: 'image/jpeg', bytes }));
    expect(back.bytes).toEqual(bytes);
  });
});
