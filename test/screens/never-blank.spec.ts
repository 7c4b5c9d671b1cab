// The page never goes blank: what a browser refuses, and what fails to arrive, is said in a sentence of its own, and what
// can still be done stays within reach.

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { app, titles } from '#words/en/app.ts';
import { demo } from '#words/en/demo.ts';
import { failures } from '#words/en/record.ts';
import { failed, notOpened, stopped, trouble } from '#words/en/trouble.ts';

// Parts are to fail as the server answers them, not as a worker kept them.
test.use({ serviceWorkers: 'block' });

/** Takes away both small storages of the browser before the page runs. */
async function withoutSmallStorage(page: Page, how: 'throws' | 'null'): Promise<void> {
  await page.addInitScript((kind) => {
    for (const name of ['localStorage', 'sessionStorage']) {
      Object.defineProperty(window, name, {
        configurable: true,
        get() {
          if (kind === 'null') return null;
          throw new DOMException('The operation is insecure.', 'SecurityError');
        },
      });
    }
  }, how);
}

for (const how of ['throws', 'null'] as const) {
  test(`a browser whose local storage ${how} goes on from sheet to sheet, and says what it does not keep`, async ({
    page,
  }) => {
    const faults: string[] = [];
    page.on('pageerror', (fault) => faults.push(fault.message));
    await withoutSmallStorage(page, how);
    await page.goto('/plot');
    await expect(page.locator('.stream')).toBeVisible();
    await expect(page.locator('#drafts-unkept')).toHaveCount(0);
    await page.getByRole('textbox').first().fill('Half a name');
    await expect(page.locator('#drafts-unkept')).toHaveText(app.draftsUnkept);
    // From sheet to sheet it still holds.
    await page.locator('.stream a').first().click();
    await expect(page).toHaveURL(/\/scraps$/);
    await page.goBack();
    await expect(page.getByRole('textbox').first()).toHaveValue('Half a name');
    // The demo garden opens too, and is left again.
    await page.goto('/');
    await page.getByRole('button', { name: demo.offer }).click();
    await expect(page.locator('.title-block')).toContainText(app.demo);
    expect(faults).toEqual([]);
  });
}

const assets = path.join(path.dirname(fileURLToPath(import.meta.url)), '../../dist/web/assets');

/** Address of the built part that offers a name. */
function partWith(offered: string): RegExp {
  const isIt = (file: string) =>
    file.endsWith('.js') && new RegExp(`as ${offered}\\b`).test(readFileSync(path.join(assets, file), 'utf8'));
  const [file = ''] = readdirSync(assets).filter(isIt);
  expect(file, `a part that offers ${offered}`).not.toBe('');
  return new RegExp(`/assets/${file.replaceAll('.', '\\.')}$`);
}

const failure = (page: Page) => page.locator('#failed [role="alert"]');

/** The record then holds one entry. */
async function namePlot(page: Page): Promise<void> {
  await page.goto('/plot');
  await page.getByLabel('Name', { exact: true }).fill('Sedge corner');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Name the plot: done')).toBeVisible();
}

/** Presses what saves the record, and gives the lines of the file that the browser was handed. */
async function savedLines(page: Page): Promise<readonly string[]> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.locator('#save-file').click()]);
  const lines: string[] = [];
  for await (const part of await download.createReadStream()) lines.push(String(part));
  return lines.join('').trim().split('\n');
}

test.describe('a part of the page that does not arrive', () => {
  for (const [how, answer] of [
    ['is not there', { status: 404, contentType: 'text/plain', body: 'Nothing is kept here under that name.' }],
    [
      'is a page of another type',
      { status: 200, contentType: 'text/html', body: '<!doctype html><title>Sign in</title>' },
    ],
  ] as const) {
    test(`${how}: the sheet says so, the way around works, and the next try shows it`, async ({ page }) => {
      const scrapsPart = partWith('ScrapsScreen');
      await page.route(scrapsPart, (route) => route.fulfill(answer));
      await namePlot(page);
      await page.locator('.stream a').first().click();
      await expect(failure(page)).toHaveText(failed.missing);
      await expect(page.getByText(trouble.kept)).toBeVisible();
      await expect(page.locator('#reload')).toBeVisible();
      // The way around still works, and the way to the file too.
      await page.getByRole('link', { name: trouble.toRecord }).click();
      await expect(page.locator('#make-file')).toBeVisible();
      await page.locator('.stream a').first().click();
      await expect(failure(page)).toHaveText(failed.missing);
      await page.unroute(scrapsPart);
      await page.locator('#reload').click();
      await expect(page.locator('#failed')).toHaveCount(0);
      await expect(page.locator('h1')).toHaveText(titles.scraps);
    });
  }

  for (const address of ['/', '/record'])
    test(`is the demo garden, asked for at ${address}: it says so, and loaded again it shows it`, async ({ page }) => {
      const garden = partWith('DEMO_TODAY');
      await page.route(garden, (route) => route.abort());
      await page.goto(address);
      await page.locator('#demo-open').click();
      await expect(page.getByRole('alert')).toHaveText(demo.missing);
      await page.unroute(garden);
      await page.reload();
      await page.locator('#demo-open').click();
      await expect(page.locator('#demo-open')).toHaveCount(0);
      await expect(page.locator('h1')).toBeVisible();
    });

  test('is the record sheet itself: the file is made all the same', async ({ page }) => {
    await page.route(partWith('RecordScreen'), (route) => route.abort());
    await namePlot(page);
    await page.evaluate(() => {
      const link = Object.assign(document.createElement('a'), {
        href: '/record',
        id: 'to-record',
        textContent: 'record',
      });
      document.querySelector('.page')?.append(link);
    });
    await page.locator('#to-record').click();
    await expect(failure(page)).toHaveText(failed.missing);
    await expect(page.getByRole('link', { name: trouble.toRecord })).toHaveCount(0);
    expect((await savedLines(page)).join('\n')).toContain('Sedge corner');
  });

  test('is the whole program: the page itself says that it did not load', async ({ page }) => {
    await page.route('**/assets/index-*.js', (route) => route.abort());
    await page.goto('/');
    await expect(page.locator('.not-loaded')).toBeVisible();
  });
});

test.describe('a record that does not open says why', () => {
  const opening = async (page: Page) => {
    await page.goto('/plot');
    return failure(page);
  };
  /** Every request to open a database answers as told. */
  const openAnswers = (page: Page, how: 'throws' | 'full' | 'broken' | 'blocked') =>
    page.addInitScript((answer) => {
      IDBFactory.prototype.open = () => {
        if (answer === 'throws') throw new DOMException('denied', 'SecurityError');
        const request = Object.setPrototypeOf(new EventTarget(), IDBOpenDBRequest.prototype) as IDBOpenDBRequest;
        const name = answer === 'full' ? 'QuotaExceededError' : 'UnknownError';
        Object.defineProperty(request, 'error', { value: new DOMException('told by the test', name) });
        setTimeout(() => request.dispatchEvent(new Event(answer === 'blocked' ? 'blocked' : 'error')));
        return request;
      };
    }, how);

  test('no storage at all', async ({ page }) => {
    await page.addInitScript(() => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }));
    await expect(await opening(page)).toHaveText(notOpened.refused);
    await expect(page.locator('#reload')).toBeVisible();
  });

  test('a private window that refuses', async ({ page }) => {
    await openAnswers(page, 'throws');
    await expect(await opening(page)).toHaveText(notOpened.refused);
  });

  test('a full disk', async ({ page }) => {
    await openAnswers(page, 'full');
    await expect(await opening(page)).toHaveText(notOpened.full);
  });

  test('a fault of the browser', async ({ page }) => {
    await openAnswers(page, 'broken');
    await expect(await opening(page)).toHaveText(notOpened.broken);
  });

  test('an older program in another tab', async ({ page }) => {
    await openAnswers(page, 'blocked');
    await expect(await opening(page)).toHaveText(notOpened.blocked);
  });

  test("a newer program's record, which stays as it is", async ({ page }) => {
    await page.goto('/peg.svg');
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const request = indexedDB.open('tilthwright', 99);
          request.onerror = () => reject(request.error);
          request.onsuccess = () => resolve(request.result.close());
        }),
    );
    await expect(await opening(page)).toHaveText(notOpened.outdated);
    const version = await page.evaluate(async () => (await indexedDB.databases()).map(({ version }) => version));
    expect(version).toEqual([99]);
  });

  test('a part that did not arrive', async ({ page }) => {
    await page.route('**/assets/open-*.js', (route) => route.abort());
    await expect(await opening(page)).toHaveText(notOpened.missing);
  });

  test('a part that did not arrive, and neither did what says so', async ({ page }) => {
    await page.route(/\/assets\/(open|failed)-[^/]*\.js$/, (route) => route.abort());
    await page.goto('/plot');
    await expect(page.locator('#failed-plainly')).toContainText(app.failedPlainly);
    await page.unrouteAll();
    await page.getByRole('link', { name: app.reload }).click();
    await expect(page.locator('.stream')).toBeVisible();
  });

  test('a record our program cannot read: the file is made of it all the same', async ({ page }) => {
    await namePlot(page);
    await page.route('**/assets/plot-made-*.js', async (route) => {
      const broken = await broke(await (await route.fetch()).text());
      await route.fulfill({ contentType: 'text/javascript', body: broken });
    });
    await expect(await opening(page)).toHaveText(notOpened.unreadable);
    expect((await savedLines(page)).join('\n')).toContain('Sedge corner');
  });
});

/** A part of the page with the same names, each of which throws when it is used. */
async function broke(code: string): Promise<string> {
  const [, list = ''] = /export\s*\{([^}]*)\}/.exec(code) ?? [];
  const names = list.split(',').map(
    (one) =>
      one
        .trim()
        .split(/\s+as\s+/)
        .at(-1) ?? '',
  );
  const thrower = `const broken = () => { throw new Error('broken by the test'); };`;
  return `${thrower}\nexport { ${names.map((name) => `broken as ${name}`).join(', ')} };`;
}

test('a sheet with a fault of ours says so, and the other sheets work', async ({ page }) => {
  await page.route(partWith('PickScreen'), async (route) => {
    const body = await broke(await (await route.fetch()).text());
    await route.fulfill({ contentType: 'text/javascript', body });
  });
  await namePlot(page);
  await page.locator('.stream a').last().click();
  await expect(failure(page)).toHaveText(failed.fault);
  await expect(page.locator('#failed')).toContainText('broken by the test');
  expect((await savedLines(page)).join('\n')).toContain('Sedge corner');
  await page.locator('.stream a').first().click();
  await expect(page.locator('h1')).toHaveText(titles.scraps);
});

test.describe('a record taken away while it is open', () => {
  test('deleted: it is said at once, an act is refused in words, and the file holds what the page shows', async ({
    page,
  }) => {
    await namePlot(page);
    await page.evaluate(() => indexedDB.deleteDatabase('tilthwright') && undefined);
    await expect(page.locator('#record-taken [role="alert"]')).toHaveText(stopped.deleted);
    expect((await savedLines(page)).join('\n')).toContain('Sedge corner');
    await expect(page.getByText(/with every entry but no photo/)).toBeVisible();
    const steps = page.locator('.first-steps');
    await steps.getByLabel('Name').fill('old pail');
    await steps.getByLabel('Volume').fill('12 L');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect(page.getByText(failures.deleted)).toBeVisible();
  });

  test('by a newer version in another tab: the tab is told to reload', async ({ page }) => {
    await namePlot(page);
    await page.evaluate(() => indexedDB.open('tilthwright', 99) && undefined);
    await expect(page.locator('#record-taken [role="alert"]')).toHaveText(stopped.outdated);
  });
});

test('a full disk refuses an act in words, and what was typed stays', async ({ page }) => {
  await namePlot(page);
  const steps = page.locator('.first-steps');
  await steps.getByLabel('Name').fill('old pail');
  await steps.getByLabel('Volume').fill('12 L');
  await page.evaluate(() => {
    const full = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
    Object.assign(IDBObjectStore.prototype, { add: full, put: full });
  });
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText(failures.full)).toBeVisible();
  await expect(steps.getByLabel('Name')).toHaveValue('old pail');
});

test('without a broadcast channel all works, and that tabs do not hear of each other is said once', async ({
  page,
}) => {
  await page.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
  await namePlot(page);
  await expect(page.locator('#tabs-unheard')).toHaveText(app.tabsUnheard);
  await page.getByRole('button', { name: app.hideNote }).click();
  await expect(page.locator('#tabs-unheard')).toHaveCount(0);
  await page.reload();
  await expect(page.locator('#take-back')).toBeVisible();
  await expect(page.locator('#tabs-unheard')).toHaveCount(0);
});
