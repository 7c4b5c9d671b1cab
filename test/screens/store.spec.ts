// The browser's store in the browser: the contract every store keeps, tabs, reloads, a full disk, a private window.

import { expect, type Page, test } from '@playwright/test';
import { storeContract } from '../contract/store-contract.ts';
import type { StoreTest } from './store-page.ts';
import { type StoreSite, storeSite } from './store-site.ts';

declare const storeTest: StoreTest;

let site: StoreSite;
test.beforeAll(async () => {
  site = await storeSite();
});
test.afterAll(() => site.close());

async function ready(page: Page): Promise<Page> {
  await page.goto(site.address);
  await page.waitForFunction(() => 'storeTest' in globalThis);
  return page;
}

test.describe('the contract of a store', () => {
  for (const [index, { name }] of storeContract.entries()) {
    test(name, async ({ page }) => {
      await ready(page);
      await page.evaluate((i) => storeTest.runCase(i), index);
    });
  }
});

test.describe('tabs and reloads', () => {
  test('what was kept is there after a reload', async ({ page }) => {
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    expect(await page.evaluate(() => storeTest.keep('s', 'leaves'))).toBe('kept');
    await page.reload();
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['leaves']);
  });

  test('a second tab hears of what the first kept', async ({ context }) => {
    const [one, other] = [await ready(await context.newPage()), await ready(await context.newPage())];
    for (const page of [one, other]) await page.evaluate(() => storeTest.open('s'));
    const heard = other.evaluate(() => storeTest.heard('s'));
    await one.evaluate(() => storeTest.keep('s', 'leaves'));
    expect(await heard).toEqual(['leaves']);
  });

  test('a tab with an older program gives way, says so, and loses nothing', async ({ context }) => {
    const [old, young] = [await ready(await context.newPage()), await ready(await context.newPage())];
    await old.evaluate(() => storeTest.open('s'));
    await old.evaluate(() => storeTest.keep('s', 'leaves'));
    expect(await young.evaluate(() => storeTest.open('s', 99))).toBe('open');
    expect(await old.evaluate(() => storeTest.keep('s', 'more'))).toBe('outdated');
    expect(await young.evaluate(() => storeTest.names('s'))).toEqual(['leaves']);
    expect(await old.evaluate(() => storeTest.open('s'))).toBe('outdated');
  });

  test('a tab that does not give way is told as blocking', async ({ context }) => {
    const [old, young] = [await ready(await context.newPage()), await ready(await context.newPage())];
    await old.evaluate(() => storeTest.holdOn('s', 2));
    expect(await young.evaluate(() => storeTest.open('s', 99))).toBe('blocked');
  });
});

test.describe('a database the browser lost', () => {
  const lose = (page: Page) => page.evaluate(() => storeTest.lose('s').then(() => storeTest.open('s')));

  test('comes back with entries, photos and facts, and takes more', async ({ page }) => {
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    for (const name of ['leaves', 'peel']) await page.evaluate((one) => storeTest.keep('s', one), name);
    await page.evaluate(() => storeTest.keepPhoto('s', 1000));
    await page.evaluate(() => storeTest.keepFact('s', 'device', { id: 'd' }));
    for (let i = 0; i < 2; i++) expect(await lose(page)).toBe('open');
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['leaves', 'peel']);
    expect(await page.evaluate(() => storeTest.photoCount('s'))).toBe(1);
    expect(await page.evaluate(() => storeTest.fact('s', 'device'))).toEqual({ id: 'd' });
    await page.evaluate(() => storeTest.keep('s', 'more'));
    await lose(page);
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['leaves', 'peel', 'more']);
  });

  test('comes back without what was forgotten', async ({ page }) => {
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    await page.evaluate(() => storeTest.keep('s', 'leaves'));
    await page.evaluate(() => storeTest.keepFact('s', 'device', { id: 'd' }));
    await page.evaluate(() => storeTest.forget('s', 'p'));
    await lose(page);
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual([]);
    expect(await page.evaluate(() => storeTest.fact('s', 'device'))).toEqual({ id: 'd' });
    await page.evaluate(() => storeTest.forget('s'));
    await lose(page);
    expect(await page.evaluate(() => storeTest.fact('s', 'device'))).toBe(undefined);
  });

  test('comes back with what an older program kept, once a newer one was open', async ({ page }) => {
    await ready(page);
    await page.evaluate(() => storeTest.keepAsOlder('s', 'old'));
    await page.evaluate(() => storeTest.open('s'));
    await page.evaluate(() => storeTest.keep('s', 'new'));
    await lose(page);
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['old', 'new']);
  });

  test('that lost its last 8 of 20 entries takes them back, and takes none from the second', async ({ page }) => {
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    for (let n = 1; n <= 20; n++) await page.evaluate((one) => storeTest.keep('s', one), `lot ${n}`);
    await page.evaluate(() => storeTest.loseLast('s', 8));
    for (let i = 0; i < 2; i++) {
      await page.evaluate(() => storeTest.open('s'));
      expect((await page.evaluate(() => storeTest.names('s'))).length).toBe(20);
      expect(await page.evaluate(() => storeTest.places('s'))).toBe(2);
      // The second time out of the second place alone.
      await page.evaluate(() => storeTest.lose('s'));
    }
  });

  test('while the second place failed to open once, clears nothing', async ({ page }) => {
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    for (const name of ['leaves', 'peel']) await page.evaluate((one) => storeTest.keep('s', one), name);
    await page.reload();
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    await page.evaluate(() => storeTest.lose('s'));
    await page.evaluate(() => storeTest.failSecond(3));
    // It had something, and the place that may still have it does not answer: an empty record would be no true answer.
    for (let i = 0; i < 3; i++) expect(await page.evaluate(() => storeTest.open('s'))).toBe('broken');
    expect(await page.evaluate(() => storeTest.open('s'))).toBe('open');
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['leaves', 'peel']);
  });

  test('whose second place never opens again locks nobody out', async ({ page }) => {
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    await page.evaluate(() => storeTest.keep('s', 'leaves'));
    await page.evaluate(() => storeTest.open('s'));
    await page.evaluate(() => storeTest.lose('s'));
    await page.evaluate(() => storeTest.failSecond(4));
    for (let i = 0; i < 3; i++) expect(await page.evaluate(() => storeTest.open('s'))).toBe('broken');
    expect(await page.evaluate(() => storeTest.open('s'))).toBe('open');
    await page.evaluate(() => storeTest.keep('s', 'peel'));
    // And should it open after all, both are there.
    expect(await page.evaluate(() => storeTest.open('s'))).toBe('open');
    expect((await page.evaluate(() => storeTest.names('s'))).toSorted()).toEqual(['leaves', 'peel']);
  });

  test('takes what was kept while the second place did not open, and the second takes it too', async ({ page }) => {
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    await page.evaluate(() => storeTest.keep('s', 'leaves'));
    await page.evaluate(() => storeTest.failSecond(1));
    await page.evaluate(() => storeTest.open('s'));
    expect(await page.evaluate(() => storeTest.places('s'))).toBe(1);
    await page.evaluate(() => storeTest.keep('s', 'peel'));
    await page.evaluate(() => storeTest.open('s'));
    expect(await page.evaluate(() => storeTest.places('s'))).toBe(2);
    await lose(page);
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['leaves', 'peel']);
  });
});

test.describe('where nothing can be kept', () => {
  test('a full disk is told, keeps what it held, and takes more once there is room', async ({ page }) => {
    await ready(page);
    const disk = await page.context().newCDPSession(page);
    // Set before the store is opened: the browser asks for its quota once and remembers the answer for a while.
    await disk.send('Storage.overrideQuotaForOrigin', { origin: site.address, quotaSize: 3_000_000 });
    await page.evaluate(() => storeTest.open('s'));
    expect(await page.evaluate(() => storeTest.keep('s', 'first'))).toBe('kept');
    const photos = [];
    for (let i = 0; i < 8; i++) photos.push(await page.evaluate(() => storeTest.keepPhoto('s', 1_000_000)));
    expect(new Set(photos)).toEqual(new Set(['kept', 'full']));
    expect(await page.evaluate(() => storeTest.photoCount('s'))).toBe(photos.filter((told) => told === 'kept').length);
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['first']);
    await disk.send('Storage.overrideQuotaForOrigin', { origin: site.address });
    await ready(page);
    await page.evaluate(() => storeTest.open('s'));
    expect(await page.evaluate(() => storeTest.keep('s', 'second'))).toBe('kept');
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['first', 'second']);
  });

  test('a full disk can be made empty: everything is forgotten, and there is room again', async ({ page }) => {
    await ready(page);
    const disk = await page.context().newCDPSession(page);
    await disk.send('Storage.overrideQuotaForOrigin', { origin: site.address, quotaSize: 3_000_000 });
    await page.evaluate(() => storeTest.open('s'));
    await page.evaluate(() => storeTest.keep('s', 'first'));
    let told = 'kept';
    while (told === 'kept') told = await page.evaluate(() => storeTest.keepPhoto('s', 300_000));
    expect(told).toBe('full');
    await page.evaluate(() => storeTest.forget('s'));
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual([]);
    expect(await page.evaluate(() => storeTest.photoCount('s'))).toBe(0);
    await page.evaluate(() => storeTest.open('s'));
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual([]);
  });

  test('a database deleted while it is open is told as deleted, at once and at each further act', async ({
    context,
  }) => {
    const [mine, other] = [await ready(await context.newPage()), await ready(await context.newPage())];
    await mine.evaluate(() => storeTest.open('s'));
    await mine.evaluate(() => storeTest.keep('s', 'leaves'));
    const heard = mine.evaluate(() => storeTest.heard('s').catch((failure) => failure.why));
    await other.evaluate(() => storeTest.lose('s'));
    expect(await heard).toBe('deleted');
    expect(await mine.evaluate(() => storeTest.keep('s', 'more'))).toBe('deleted');
  });

  test('a browser where no tab hears of another keeps everything, and says that it does not hear', async ({ page }) => {
    await page.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
    await ready(page);
    expect(await page.evaluate(() => storeTest.open('s'))).toBe('open');
    expect(await page.evaluate(() => storeTest.hearsTabs('s'))).toBe(false);
    expect(await page.evaluate(() => storeTest.keep('s', 'leaves'))).toBe('kept');
    expect(await page.evaluate(() => storeTest.names('s'))).toEqual(['leaves']);
  });

  test('a browser without a store is told as refusing', async ({ page }) => {
    await page.addInitScript(() => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }));
    await ready(page);
    expect(await page.evaluate(() => storeTest.open('s'))).toBe('refused');
  });

  test('a place that may not keep anything is told as refusing', async ({ page }) => {
    await page.route('**/sandboxed', (route) =>
      route.fulfill({
        contentType: 'text/html',
        headers: { 'content-security-policy': 'sandbox allow-scripts', 'access-control-allow-origin': '*' },
        body: '<!doctype html><title>store</title>',
      }),
    );
    const script = await (await page.request.get(`${site.address}/page.js`)).text();
    await page.goto(`${site.address}/sandboxed`);
    await page.addScriptTag({ type: 'module', content: script });
    await page.waitForFunction(() => 'storeTest' in globalThis);
    expect(await page.evaluate(() => storeTest.open('s'))).toBe('refused');
  });
});
